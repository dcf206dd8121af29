package felloe.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Positions along a closed chain by length travelled from the start of its first segment, in
 * millimetres. A position beyond the length goes round again, one below 0 goes backward.
 */
public final class ArcLengthIndex {

  private final List<Segment> segments;
  private final double[] starts;
  // Made when it is first asked for: many chains are only travelled.
  private SegmentIndex byPlace;

  /** Measures a contour, which runs counter-clockwise. */
  public ArcLengthIndex(Contour contour) {
    this(contour.segments());
  }

  /**
   * Measures a closed chain.
   *
   * @param chain at least one segment, each starting where the one before ends
   */
  public ArcLengthIndex(List<Segment> chain) {
    this.segments = List.copyOf(chain);
    this.starts = new double[segments.size() + 1];
    for (int i = 0; i < segments.size(); i++) {
      starts[i + 1] = starts[i] + segments.get(i).length();
    }
  }

  /**
   * A place on the chain.
   *
   * @param number the segment that it lies on; at a joint the one that starts there
   * @param point the place itself
   * @param position length travelled to it
   */
  public record Spot(int number, Point point, double position) {}

  /** The segments in order of travel. */
  public List<Segment> segments() {
    return segments;
  }

  /** Length all the way round, mm. */
  public double length() {
    return starts[segments.size()];
  }

  /** Position at which a segment starts; for the number of segments, the whole length. */
  public double start(int number) {
    return starts[number];
  }

  /** The segment that a position within one lap lies on. */
  public int number(double position) {
    int low = 0;
    int high = segments.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (starts[middle] <= position) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  private double withinALap(double position) {
    double length = length();
    return Math.max(0, position - length * Math.floor(position / length));
  }

  private double fraction(int number, double position) {
    double part = (position - starts[number]) / (starts[number + 1] - starts[number]);
    return Math.min(1, Math.max(0, part));
  }

  public Point at(double position) {
    double s = withinALap(position);
    int i = number(s);
    return segments.get(i).at(fraction(i, s));
  }

  /** The direction of travel at a position, a vector of length one. */
  public Point tangent(double position) {
    double s = withinALap(position);
    int i = number(s);
    return segments.get(i).tangent(fraction(i, s));
  }

  /** Curvature at a position, 1/mm, positive where it turns left. */
  public double curvature(double position) {
    return segments.get(number(withinALap(position))).curvature();
  }

  /**
   * Positions of the corners, in order.
   *
   * @param smooth a turn up to this, radians, is no corner
   */
  public List<Double> corners(double smooth) {
    List<Double> corners = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      Point before = segments.get(Math.floorMod(i - 1, segments.size())).tangent(1);
      Point after = segments.get(i).tangent(0);
      if (Math.abs(Math.atan2(before.cross(after), before.dot(after))) > smooth) {
        corners.add(starts[i]);
      }
    }
    return corners;
  }

  /** The segments findable by place. */
  public SegmentIndex byPlace() {
    if (byPlace == null) {
      byPlace = new SegmentIndex(segments);
    }
    return byPlace;
  }

  /** The place nearest to a point; a joint where one lies within the tolerance of equal points. */
  public Spot nearest(Point p) {
    int i = byPlace().nearest(p);
    Segment segment = segments.get(i);
    Point foot = segment.nearest(p);
    if (foot.near(segment.from(), Tolerances.SAME_POINT)) {
      return new Spot(i, segment.from(), starts[i]);
    }
    if (foot.near(segment.to(), Tolerances.SAME_POINT)) {
      int next = (i + 1) % segments.size();
      return new Spot(next, segment.to(), starts[next]);
    }
    return new Spot(i, foot, starts[i] + travelled(segment, foot));
  }

  private static double travelled(Segment segment, Point p) {
    return segment instanceof Arc arc
        ? arc.radius() * Math.min(Math.abs(arc.sweep()), arc.travelled(p))
        : segment.from().distance(p);
  }

  /** The position of the chain's point that lies nearest to {@code p}. */
  public double position(Point p) {
    return nearest(p).position();
  }

  /**
   * Whether something holds at the ends and in the middle of each segment on the way from one place
   * forward to another; stops at the first where it does not.
   */
  public boolean every(Spot from, Spot to, Predicate<Point> test) {
    int n = segments.size();
    Point at = from.point();
    for (int k = 0; k <= n; k++) {
      int i = (from.number() + k) % n;
      boolean last = i == to.number() && (k > 0 || to.position() > from.position());
      Segment segment = segments.get(i);
      Point end = last ? to.point() : segment.to();
      boolean whole = at.equals(segment.from()) && end.equals(segment.to());
      boolean arc = segment instanceof Arc && !at.near(end, Tolerances.SAME_POINT);
      Segment part = whole || !arc ? segment : segment.between(at, end);
      if (!test.test(end) || (arc && !test.test(part.at(0.5)))) {
        return false;
      }
      if (last) {
        break;
      }
      at = end;
    }
    return true;
  }

  /** The chain from one place forward to another; the same place gives nothing. */
  public List<Segment> stretch(Spot from, Spot to) {
    List<Segment> chain = new ArrayList<>();
    if (from.point().equals(to.point())) {
      return chain;
    }
    int n = segments.size();
    Point at = from.point();
    for (int k = 0; k <= n; k++) {
      int i = (from.number() + k) % n;
      Segment segment = segments.get(i);
      boolean last = i == to.number() && (k > 0 || to.position() > from.position());
      Point end = last ? to.point() : segment.to();
      if (!at.near(end, Tolerances.SAME_POINT)) {
        boolean whole = at.equals(segment.from()) && end.equals(segment.to());
        chain.add(whole ? segment : segment.between(at, end));
        at = end;
      }
      if (last) {
        break;
      }
    }
    return chain;
  }

  /**
   * The chain's point that lies farthest from the origin in a direction.
   *
   * @param angle radians counter-clockwise from +x
   * @return empty when the chain has no point in that direction
   */
  public Optional<Point> outermost(double angle) {
    Point direction = Point.polar(1, angle);
    Curve ray = new Curve.Straight(Point.ORIGIN, direction);
    return segments.stream()
        .flatMap(
            segment ->
                Curve.meetings(Curve.of(segment), ray, Tolerances.SAME_POINT).stream()
                    .filter(p -> segment.distance(p) <= Tolerances.SAME_POINT))
        .filter(p -> p.dot(direction) > 0)
        .max(Comparator.comparingDouble(Point::norm));
  }
}
