package felloe.solid;

import felloe.geometry.Numbers;
import felloe.geometry.Point;

/**
 * A point in space, or the vector to it, in millimetres.
 *
 * @param x to the driver's right
 * @param y up the wheel
 * @param z towards the driver
 */
public record Vertex(double x, double y, double z) {

  /**
   * Refuses coordinates that are not finite.
   *
   * @throws IllegalArgumentException naming the coordinate
   */
  public Vertex {
    x = Numbers.finite("x", x) + 0.0; // turns -0.0 into 0.0, so that equals means equal place
    y = Numbers.finite("y", y) + 0.0;
    z = Numbers.finite("z", z) + 0.0;
  }

  /** A point of the plane at a height. */
  public static Vertex at(Point plan, double z) {
    return new Vertex(plan.x(), plan.y(), z);
  }

  /** Where it stands in the plane. */
  public Point plan() {
    return new Point(x, y);
  }

  /** The vector from {@code other} to this point. */
  public Vertex minus(Vertex other) {
    return new Vertex(x - other.x, y - other.y, z - other.z);
  }

  /** This point shifted by {@code factor} times the vector {@code direction}. */
  public Vertex plus(Vertex direction, double factor) {
    return new Vertex(x + factor * direction.x, y + factor * direction.y, z + factor * direction.z);
  }

  /** Scalar product. */
  public double dot(Vertex other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** Vector product. */
  public Vertex cross(Vertex other) {
    return new Vertex(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** Length of the vector. */
  public double norm() {
    return Math.sqrt(dot(this));
  }
}
