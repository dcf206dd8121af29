package felloe.load;

import felloe.geometry.Numbers;
import felloe.geometry.Point;

/**
 * A force of a hand on the plate, N: x to the driver's right, y up, z toward the driver.
 *
 * @param at where, mm
 * @param x part to the right
 * @param y part up
 * @param z part toward the driver
 */
public record HandForce(Point at, double x, double y, double z) {

  /** Refuses figures that are not finite, and no force at all. */
  public HandForce {
    Numbers.finite("x", x);
    Numbers.finite("y", y);
    Numbers.finite("z", z);
    if (x == 0 && y == 0 && z == 0) {
      throw new IllegalArgumentException("a force must not be zero");
    }
  }

  /** How large it is, N. */
  public double size() {
    return Math.sqrt(x * x + y * y + z * z);
  }
}
