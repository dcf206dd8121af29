package felloe.geometry;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Positions along a contour by length, counted counter-clockwise from the start of its first
 * segment, in millimetres.
 */
public final class ArcLengthIndex {

  private final Contour contour;
  private final double[] starts;
  private final double length;

  /** Measures a contour. */
  public ArcLengthIndex(Contour contour) {
    this.contour = contour;
    List<Segment> segments = contour.segments();
    this.starts = new double[segments.size()];
    double sum = 0;
    for (int i = 0; i < starts.length; i++) {
      starts[i] = sum;
      sum += segments.get(i).length();
    }
    this.length = sum;
  }

  /** Length all the way round, mm. */
  public double length() {
    return length;
  }

  /** The point at a position; positions beyond the length go round again, below 0 backward. */
  public Point point(double position) {
    double s = position - length * Math.floor(position / length);
    int i = starts.length - 1;
    while (i > 0 && starts[i] > s) {
      i--;
    }
    Segment segment = contour.segments().get(i);
    return segment.at(Math.min(1, (s - starts[i]) / segment.length()));
  }

  /** The position of the contour's point that lies nearest to {@code p}. */
  public double position(Point p) {
    List<Segment> segments = contour.segments();
    int best = 0;
    for (int i = 1; i < starts.length; i++) {
      if (segments.get(i).distance(p) < segments.get(best).distance(p)) {
        best = i;
      }
    }
    Segment segment = segments.get(best);
    Point foot = segment.nearest(p);
    double along =
        segment instanceof Arc arc
            ? arc.radius() * (foot.equals(arc.to()) ? Math.abs(arc.sweep()) : arc.travelled(foot))
            : segment.from().distance(foot);
    return starts[best] + along;
  }

  /**
   * The contour's point that lies farthest from the origin in a direction.
   *
   * @param angle radians counter-clockwise from +x
   * @return empty when the contour has no point in that direction
   */
  public Optional<Point> outermost(double angle) {
    Point direction = Point.polar(1, angle);
    Curve ray = new Curve.Straight(Point.ORIGIN, direction);
    return contour.segments().stream()
        .flatMap(
            segment ->
                Curve.meetings(Curve.of(segment), ray, Tolerances.SAME_POINT).stream()
                    .filter(p -> segment.distance(p) <= Tolerances.SAME_POINT))
        .filter(p -> p.dot(direction) > 0)
        .max(Comparator.comparingDouble(Point::norm));
  }
}
