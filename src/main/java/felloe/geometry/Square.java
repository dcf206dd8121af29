package felloe.geometry;

import java.util.ArrayList;
import java.util.List;

/** Points of segments from which a way goes off at a right angle. */
final class Square {

  private Square() {}

  /** The direction of travel of a segment at one of its points. */
  static Point direction(Segment on, Point p) {
    if (on instanceof Line line) {
      return line.direction();
    }
    Arc arc = (Arc) on;
    Point out = p.minus(arc.centre()).unit();
    return arc.sweep() > 0 ? out.left() : out.right();
  }

  /** The points of a segment that are square to a point. */
  static List<Point> feet(Point p, Segment on) {
    if (on instanceof Line line) {
      Point foot = line.nearest(p);
      Point along = line.direction();
      double off = foot.minus(p).dot(along);
      return Math.abs(off) <= NarrowestWeb.SLANT * Math.max(1e-3, foot.distance(p))
          ? List.of(foot)
          : List.of();
    }
    Arc arc = (Arc) on;
    return facing(arc, p.minus(arc.centre()));
  }

  /** The points of an arc whose normal may be square to the other segment. */
  static List<Point> fromArc(Arc arc, Segment other) {
    Point axis =
        other instanceof Line line
            ? line.direction().left()
            : ((Arc) other).centre().minus(arc.centre());
    return facing(arc, axis);
  }

  /** None where the axis has no direction: then all points are alike. */
  private static List<Point> facing(Arc arc, Point axis) {
    return axis.norm() <= Tolerances.SAME_POINT ? List.of() : onAxis(arc, axis);
  }

  /** The points of an arc that lie on an axis through its centre; the axis has a length. */
  static List<Point> onAxis(Arc arc, Point axis) {
    double norm = axis.norm();
    List<Point> points = new ArrayList<>(2);
    for (double side : new double[] {arc.radius() / norm, -arc.radius() / norm}) {
      Point p = arc.centre().plus(axis, side);
      if (arc.passes(p)) {
        points.add(p);
      }
    }
    return points;
  }
}
