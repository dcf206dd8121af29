package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Places on a contour by the length travelled from its start, counter-clockwise, mm. */
final class PathLength {

  private final List<Segment> segments;
  private final SegmentIndex index;
  private final double[] starts;

  PathLength(Contour contour) {
    this.segments = contour.segments();
    this.index = new SegmentIndex(segments);
    this.starts = new double[segments.size() + 1];
    for (int i = 0; i < segments.size(); i++) {
      starts[i + 1] = starts[i] + segments.get(i).length();
    }
  }

  /**
   * A place.
   *
   * @param number the segment that it lies on; at a joint the one that starts there
   * @param point the place itself
   * @param position length travelled to it
   */
  record Spot(int number, Point point, double position) {}

  double length() {
    return starts[segments.size()];
  }

  SegmentIndex index() {
    return index;
  }

  /** The place nearest to a point; a joint where one lies within the tolerance of equal points. */
  Spot nearest(Point p) {
    int i = index.nearest(p);
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
    if (segment instanceof Arc arc) {
      Point u = arc.from().minus(arc.centre());
      Point v = p.minus(arc.centre());
      double angle = Math.atan2(u.cross(v), u.dot(v)) * Math.signum(arc.sweep());
      return arc.radius() * (angle < 0 ? angle + 2 * Math.PI : angle);
    }
    return segment.from().distance(p);
  }

  /**
   * Whether something holds at the ends and in the middle of each segment on the way from one place
   * forward to another; stops at the first where it does not.
   */
  boolean every(Spot from, Spot to, Predicate<Point> test) {
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
  List<Segment> stretch(Spot from, Spot to) {
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
}
