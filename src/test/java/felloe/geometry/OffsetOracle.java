package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Judges an offset by dense samples on both sides, with no help from the code that made it. */
final class OffsetOracle {

  private static final double ON = 1e-6;

  private OffsetOracle() {}

  /** What is wrong with an offset, if anything. */
  static Optional<String> fault(Region source, double d, List<Region> result) {
    SegmentIndex from = SegmentIndex.of(source.contours());
    double far = Math.abs(d);
    List<Contour> edges = new ArrayList<>();
    result.forEach(region -> edges.addAll(region.contours()));
    for (Contour edge : edges) {
      for (Segment s : edge.segments()) {
        int steps = s instanceof Arc ? 12 : 4;
        for (int k = 0; k <= steps; k++) {
          Point p = s.at((double) k / steps);
          double off = from.distance(p) - far;
          if (Math.abs(off) > ON) {
            return Optional.of("result is off by " + off + " at " + p);
          }
          if (source.contains(p) != d < 0) {
            return Optional.of("result lies on the wrong side at " + p);
          }
        }
      }
    }
    SegmentIndex to = edges.isEmpty() ? null : SegmentIndex.of(edges);
    for (int h = 0; h < source.contours().size(); h++) {
      Contour contour = source.contours().get(h);
      double right = h == 0 ? d : -d;
      List<Segment> segments = contour.segments();
      for (int i = 0; i < segments.size(); i++) {
        Segment s = segments.get(i);
        int steps = s instanceof Arc ? 24 : 8;
        for (int k = 0; k <= steps; k++) {
          double f = (double) k / steps;
          Point q = s.at(f).plus(s.tangent(f).right(), right);
          Optional<String> missing = missing(q, source, from, to, d);
          if (missing.isPresent()) {
            return missing;
          }
        }
        Segment next = segments.get((i + 1) % segments.size());
        for (int k = 0; k <= 16; k++) {
          Point q = s.to().plus(Point.polar(far, 2 * Math.PI * k / 16));
          if (source.contains(q) == d < 0) {
            Optional<String> missing = missing(q, source, from, to, d);
            if (missing.isPresent()) {
              return missing.map(m -> m + " (corner before " + next.from() + ")");
            }
          }
        }
      }
    }
    return Optional.empty();
  }

  /** A moved point that is no nearer to the source than the distance must lie on the result. */
  private static Optional<String> missing(
      Point q, Region source, SegmentIndex from, SegmentIndex to, double d) {
    double far = Math.abs(d);
    boolean inside = d < 0;
    double short_ = far - from.distance(q);
    if (short_ > 1e-9) {
      return Optional.empty();
    }
    double gap = to == null ? Double.POSITIVE_INFINITY : to.distance(q);
    if (gap <= 1e-5) {
      return Optional.empty();
    }
    // A touching that borders no area, as the middle of a slot shrunk by its radius, may go.
    boolean borders = false;
    for (int k = 0; k < 24; k++) {
      Point beside = q.plus(Point.polar(0.02, Math.PI * k / 12));
      borders |= from.distance(beside) > far + 0.003 && source.contains(beside) == inside;
    }
    return borders ? Optional.of("result lacks " + q + " by " + gap) : Optional.empty();
  }
}
