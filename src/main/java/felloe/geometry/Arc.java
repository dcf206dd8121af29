package felloe.geometry;

/**
 * A circular arc. A whole circle is an arc whose ends are the same point and whose sweep is a full
 * turn.
 *
 * @param from where it starts
 * @param to where it ends
 * @param centre centre of its circle
 * @param radius radius, millimetres, more than {@link Tolerances#SAME_POINT} and at most {@link
 *     Tolerances#FLATTEST}
 * @param sweep angle travelled, radians, positive counter-clockwise, not 0, at most a full turn
 */
public record Arc(Point from, Point to, Point centre, double radius, double sweep)
    implements Segment {

  /** Share of a radius that is rounding where the centre lies far away. */
  private static final double FAR = 1e-15;

  private static final double TURN = 2 * Math.PI;

  /**
   * Refuses figures that do not say one and the same arc.
   *
   * @throws GeometryException when an end lies off the circle, or the sweep does not lead from one
   *     end to the other, by more than {@link Tolerances#SAME_POINT}
   * @throws IllegalArgumentException when a figure is not finite
   */
  public Arc {
    Numbers.finite("radius", radius);
    Numbers.finite("sweep", sweep);
    if (radius <= Tolerances.SAME_POINT) {
      throw new GeometryException(
          "an arc needs a radius above zero, not " + Numbers.brief(radius, 9), centre);
    }
    if (radius > Tolerances.FLATTEST) {
      throw new GeometryException(
          "an arc of radius " + Numbers.brief(radius, 0) + " mm is a straight line", from);
    }
    if (sweep == 0 || Math.abs(sweep) > TURN) {
      throw new GeometryException("an arc sweeps more than 0 and at most 360 degrees", from);
    }
    boolean full = Math.abs(sweep) == TURN;
    if (full != from.equals(to)) {
      throw new GeometryException("only a full circle ends where it starts", from);
    }
    if (radius * Math.abs(sweep) <= Tolerances.SAME_POINT) {
      throw new GeometryException("an arc needs a length", from);
    }
    double slack = Tolerances.SAME_POINT + FAR * radius;
    if (Math.abs(from.distance(centre) - radius) > slack
        || Math.abs(to.distance(centre) - radius) > slack) {
      throw new GeometryException("an arc's ends must lie on its circle", from);
    }
    Point led = turned(from, centre, sweep);
    if (led.distance(to) > 4 * slack) {
      throw new GeometryException("the sweep does not lead from one end to the other", to);
    }
  }

  /** A whole circle, travelled counter-clockwise from its rightmost point. */
  public static Arc circle(Point centre, double radius) {
    Point start = new Point(centre.x() + radius, centre.y());
    return new Arc(start, start, centre, radius, TURN);
  }

  /** The arc of a circle from an angle through a sweep (radians, positive counter-clockwise). */
  public static Arc of(Point centre, double radius, double startAngle, double sweep) {
    Point from = centre.plus(Point.polar(radius, startAngle));
    Point to =
        Math.abs(sweep) == TURN ? from : centre.plus(Point.polar(radius, startAngle + sweep));
    return new Arc(from, to, centre, radius, sweep);
  }

  /**
   * The arc between two different points of a circle, the one way round or the other.
   *
   * @param counterClockwise the way round
   */
  public static Arc about(Point centre, Point from, Point to, boolean counterClockwise) {
    double radius = (from.distance(centre) + to.distance(centre)) / 2;
    double sweep = sweepBetween(centre, from, to);
    if (!counterClockwise) {
      sweep -= TURN;
    }
    return new Arc(from, to, centre, radius, sweep);
  }

  /**
   * The arc over a chord with a given rise (sagitta) at its middle.
   *
   * @param rise height over the chord, millimetres, positive to the right of travel (outward on a
   *     counter-clockwise contour); a rise of half the chord is a half circle
   * @throws GeometryException when the rise is too small to tell the arc from its chord
   */
  public static Arc withRise(Point from, Point to, double rise) {
    double half = from.distance(to) / 2;
    if (isStraight(from, to, rise)) {
      throw new GeometryException("a rise so small makes no arc: it is a straight line", from);
    }
    double radius = (half * half + rise * rise) / (2 * Math.abs(rise));
    Point outward = to.minus(from).unit().right();
    Point centre = from.middle(to).plus(outward, rise - Math.copySign(radius, rise));
    double sweep = 4 * Math.atan2(rise, half);
    return new Arc(from, to, centre, radius, sweep);
  }

  /**
   * Whether a rise is too small to tell an arc from its chord: no arc of a radius allowed has it.
   */
  public static boolean isStraight(Point from, Point to, double rise) {
    double half = from.distance(to) / 2;
    return Math.abs(rise) * 2 * Tolerances.FLATTEST <= half * half;
  }

  /** Angle from {@code a} to {@code b} about a centre, counter-clockwise, radians in [0, 2 pi). */
  static double sweepBetween(Point centre, Point a, Point b) {
    Point u = a.minus(centre);
    Point v = b.minus(centre);
    double angle = Math.atan2(u.cross(v), u.dot(v));
    return angle < 0 ? Math.min(angle + TURN, Math.nextDown(TURN)) : angle;
  }

  private static Point turned(Point p, Point centre, double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double dx = p.x() - centre.x();
    double dy = p.y() - centre.y();
    return new Point(centre.x() + cos * dx - sin * dy, centre.y() + sin * dx + cos * dy);
  }

  /** Whether it is a whole circle. */
  public boolean isCircle() {
    return Math.abs(sweep) == TURN;
  }

  /** Angle of the start about the centre, radians in (-pi, pi]. */
  public double startAngle() {
    return from.minus(centre).angle();
  }

  @Override
  public double length() {
    return radius * Math.abs(sweep);
  }

  @Override
  public Point at(double fraction) {
    if (fraction == 0) {
      return from;
    }
    return fraction == 1 ? to : turned(from, centre, fraction * sweep);
  }

  @Override
  public Point tangent(double fraction) {
    Point outward = at(fraction).minus(centre).unit();
    return sweep > 0 ? outward.left() : outward.right();
  }

  @Override
  public double curvature() {
    return Math.copySign(1 / radius, sweep);
  }

  @Override
  public Arc reversed() {
    return new Arc(to, from, centre, radius, -sweep);
  }

  @Override
  public Arc moved(RigidTransform motion) {
    Point movedFrom = motion.of(from);
    Point movedTo = isCircle() ? movedFrom : motion.of(to);
    return new Arc(
        movedFrom, movedTo, motion.of(centre), radius, motion.mirrored() ? -sweep : sweep);
  }

  @Override
  public Box box() {
    Box box = Box.of(from, to);
    double[][] tips = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
    for (double[] tip : tips) {
      Point p = new Point(centre.x() + radius * tip[0], centre.y() + radius * tip[1]);
      if (passes(p)) {
        box = box.union(Box.of(p, p));
      }
    }
    return box;
  }

  /** Whether the direction from the centre to {@code p} is one that the arc passes. */
  public boolean passes(Point p) {
    if (isCircle()) {
      return true;
    }
    Point start = (sweep > 0 ? from : to).minus(centre);
    Point end = (sweep > 0 ? to : from).minus(centre);
    Point way = p.minus(centre);
    // By the sides of the two radii: angles would take ten times as long.
    return Math.abs(sweep) <= Math.PI
        ? start.cross(way) >= 0 && way.cross(end) >= 0
        : start.cross(way) >= 0 || way.cross(end) >= 0;
  }

  /** Angle travelled from the start to the direction of {@code p}, radians in [0, 2 pi). */
  double travelled(Point p) {
    return sweep > 0 ? sweepBetween(centre, from, p) : sweepBetween(centre, p, from);
  }

  @Override
  public Point nearest(Point p) {
    Point out = p.minus(centre);
    double far = out.norm();
    if (far == 0) {
      return from;
    }
    if (passes(p)) {
      return centre.plus(out, radius / far);
    }
    return p.distance(from) <= p.distance(to) ? from : to;
  }

  @Override
  public Arc between(Point newFrom, Point newTo) {
    return about(centre, newFrom, newTo, sweep > 0);
  }
}
