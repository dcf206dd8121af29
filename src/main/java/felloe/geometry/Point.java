package felloe.geometry;

/**
 * A point of the plane, or the vector to it, in millimetres.
 *
 * @param x to the driver's right
 * @param y up
 */
public record Point(double x, double y) {

  /**
   * A direction this near to the x axis, degrees, is told as 0: four decimals must not read 360.
   */
  private static final double LEVEL = 5e-5;

  /** The hub axis. */
  public static final Point ORIGIN = new Point(0, 0);

  /**
   * Refuses coordinates that are not finite.
   *
   * @throws IllegalArgumentException naming the coordinate
   */
  public Point {
    Numbers.finite("x", x);
    Numbers.finite("y", y);
    x += 0.0; // turns -0.0 into 0.0, so that equals means equal place
    y += 0.0;
  }

  /** The point at a distance and an angle (radians, counter-clockwise from +x) from the origin. */
  public static Point polar(double radius, double angle) {
    return new Point(radius * Math.cos(angle), radius * Math.sin(angle));
  }

  /** The sum of the two vectors. */
  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  /** This point shifted by {@code factor} times the vector {@code direction}. */
  public Point plus(Point direction, double factor) {
    return new Point(x + factor * direction.x, y + factor * direction.y);
  }

  /** The vector from {@code other} to this point. */
  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  /** The vector stretched by a factor. */
  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  /** Scalar product. */
  public double dot(Point other) {
    return x * other.x + y * other.y;
  }

  /** The z component of the vector product: positive when {@code other} lies to the left. */
  public double cross(Point other) {
    return x * other.y - y * other.x;
  }

  /** Length of the vector. */
  public double norm() {
    return length(x, y);
  }

  /**
   * The vector of length one in the same direction.
   *
   * @throws GeometryException when the vector has no length
   */
  public Point unit() {
    double norm = norm();
    if (norm == 0) {
      throw new GeometryException("a vector of no length has no direction", this);
    }
    return new Point(x / norm, y / norm);
  }

  /** The vector turned a quarter turn counter-clockwise. */
  public Point left() {
    return new Point(-y, x);
  }

  /** The vector turned a quarter turn clockwise. */
  public Point right() {
    return new Point(y, -x);
  }

  /** Direction of the vector, radians in (-pi, pi]. */
  public double angle() {
    return Math.atan2(y, x);
  }

  /** Direction from the origin, degrees counter-clockwise from +x, 0 to under 360; 0 there. */
  public double bearing() {
    double degrees = norm() <= Tolerances.SAME_POINT ? 0 : Math.toDegrees(angle());
    return Math.abs(degrees) < LEVEL ? 0 : degrees < 0 ? degrees + 360 : degrees;
  }

  /** Distance to another point. */
  public double distance(Point other) {
    return length(x - other.x, y - other.y);
  }

  /** As {@link Math#hypot}, good to the last digit but one at a fifth of its time. */
  static double length(double dx, double dy) {
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** The point half way to another. */
  public Point middle(Point other) {
    return towards(other, 0.5);
  }

  /** The point a fraction of the way to another. */
  public Point towards(Point other, double fraction) {
    return new Point(x + fraction * (other.x - x), y + fraction * (other.y - y));
  }

  /** Whether the other point is the same within a tolerance. */
  public boolean near(Point other, double tolerance) {
    return distance(other) <= tolerance;
  }

  // Written out, as the ones that records bring are linked anew in each start, some 10 ms.
  @Override
  public boolean equals(Object other) {
    return other instanceof Point p && Double.compare(x, p.x) == 0 && Double.compare(y, p.y) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(x) + Double.hashCode(y);
  }

  @Override
  public String toString() {
    return "(" + Numbers.brief(x, 3) + ", " + Numbers.brief(y, 3) + ")";
  }
}
