package felloe.geometry;

/**
 * A straight line between two points, never shorter than {@link Tolerances#SAME_POINT}.
 *
 * @param from where it starts
 * @param to where it ends
 */
public record Line(Point from, Point to) implements Segment {

  /**
   * Refuses a line of no length.
   *
   * @throws GeometryException when the ends are the same point
   */
  public Line {
    if (from.near(to, Tolerances.SAME_POINT)) {
      throw new GeometryException("a line needs two different ends", from);
    }
  }

  @Override
  public double length() {
    return from.distance(to);
  }

  @Override
  public Point at(double fraction) {
    return fraction == 1 ? to : from.towards(to, fraction);
  }

  @Override
  public Point tangent(double fraction) {
    return direction();
  }

  /** The direction of travel, a vector of length one. */
  public Point direction() {
    return to.minus(from).unit();
  }

  @Override
  public double curvature() {
    return 0;
  }

  @Override
  public Line reversed() {
    return new Line(to, from);
  }

  @Override
  public Line moved(RigidTransform motion) {
    return new Line(motion.of(from), motion.of(to));
  }

  @Override
  public Box box() {
    return Box.of(from, to);
  }

  @Override
  public Point nearest(Point p) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double t = ((p.x() - from.x()) * dx + (p.y() - from.y()) * dy) / (dx * dx + dy * dy);
    if (t <= 0) {
      return from;
    }
    return t >= 1 ? to : new Point(from.x() + t * dx, from.y() + t * dy);
  }

  @Override
  public Line between(Point newFrom, Point newTo) {
    return new Line(newFrom, newTo);
  }
}
