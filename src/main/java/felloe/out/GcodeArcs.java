package felloe.out;

import felloe.cutting.Dialect;
import felloe.geometry.Arc;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/** Where an arc is parted so that every piece says the same to every controller. */
final class GcodeArcs {

  /**
   * An arc longer than this is written as two, since rounding its ends could turn a nearly whole
   * circle into next to nothing.
   */
  private static final double LONGEST = Math.toRadians(350);

  private GcodeArcs() {}

  /**
   * Fractions of the arc at which its pieces end; the last is 1.
   *
   * @param dialect tells whether whole circles and arcs over several quadrants are wanted
   */
  static List<Double> ends(Arc arc, Dialect dialect) {
    if (dialect.splitAtQuadrants()) {
      return quadrants(arc);
    }
    boolean whole = arc.isCircle() && dialect.wholeCircles();
    boolean one = whole || Math.abs(arc.sweep()) <= LONGEST;
    return one ? List.of(1.0) : List.of(0.5, 1.0);
  }

  private static List<Double> quadrants(Arc arc) {
    List<Double> ends = new ArrayList<>();
    double quarter = Math.PI / 2;
    double sign = Math.signum(arc.sweep());
    double start = arc.startAngle() * sign;
    double next = (Math.floor(start / quarter + Tolerances.ROUNDING) + 1) * quarter;
    while (next - start < Math.abs(arc.sweep()) - Tolerances.SAME_DIRECTION) {
      ends.add((next - start) / Math.abs(arc.sweep()));
      next += quarter;
    }
    ends.add(1.0);
    return ends;
  }

  /** The height of the arc's middle over its chord, mm. */
  static double rise(Arc arc, double share) {
    return arc.radius() * (1 - Math.cos(Math.abs(arc.sweep()) * share / 2));
  }

  /** A point of the arc; quadrant points are exact. */
  static Point at(Arc arc, double fraction) {
    Point p = arc.at(fraction);
    Point c = arc.centre();
    if (fraction == 1) {
      return p;
    }
    double x = Math.abs(p.x() - c.x()) < Tolerances.ROUNDING ? c.x() : p.x();
    double y = Math.abs(p.y() - c.y()) < Tolerances.ROUNDING ? c.y() : p.y();
    return new Point(x, y);
  }
}
