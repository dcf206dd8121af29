package felloe.geometry;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Measures an offset against its source, sharing nothing with the code that made it: every edge
 * must keep the distance, and nowhere may the source come nearer.
 */
final class OffsetProof {

  private final SegmentIndex source;
  private final double distance;
  private final double tolerance;

  /**
   * Prepares to measure.
   *
   * @param source every edge of the source
   * @param distance the distance to keep, above zero, mm
   * @param tolerance greatest error allowed, mm
   */
  OffsetProof(SegmentIndex source, double distance, double tolerance) {
    this.source = source;
    this.distance = distance;
    this.tolerance = tolerance;
  }

  /**
   * The numbers of the source's edges that come nearer to an edge of the result than the distance.
   *
   * @throws GeometryException at a point that lies farther off than the distance
   */
  SortedSet<Integer> tooNear(List<Region> result) {
    SortedSet<Integer> found = new TreeSet<>();
    for (Region region : result) {
      for (Contour contour : region.contours()) {
        contour.segments().forEach(edge -> check(edge, found));
      }
    }
    return found;
  }

  /** Whether a chain of edges keeps the distance everywhere, and nowhere lies farther off. */
  boolean keeps(List<Segment> chain) {
    SortedSet<Integer> found = new TreeSet<>();
    try {
      chain.forEach(edge -> check(edge, found));
      return found.isEmpty();
    } catch (GeometryException farther) {
      return false;
    }
  }

  private void check(Segment edge, SortedSet<Integer> found) {
    check(edge.from(), found);
    check(edge.at(0.5), found);
    // What comes nearer between these points is bounded by curves no sharper than the distance, so
    // it is no deeper than the rise of such a curve over half the edge.
    double bend = 1 / distance + Math.abs(edge.curvature());
    if (edge.length() * edge.length() * bend / 32 > tolerance) {
      source.touching(
          edge.box().grown(distance),
          number -> {
            if (Gap.between(edge, source.get(number)).distance() < distance - tolerance) {
              found.add(number);
            }
          });
    }
  }

  private void check(Point p, SortedSet<Integer> found) {
    int nearest = source.nearest(p);
    double far = source.get(nearest).distance(p);
    if (far > distance + tolerance) {
      throw new GeometryException("an offset edge lies off its distance", p);
    }
    if (far < distance - tolerance) {
      found.add(nearest);
    }
  }
}
