package felloe.load;

import felloe.geometry.Numbers;

/**
 * A fall that the plate's own springing takes up.
 *
 * @param height of the fall, mm
 * @param mass that falls with the plate, kg
 */
public record Fall(double height, double mass) {

  /** Standard gravity, m/s². */
  private static final double GRAVITY = 9.80665;

  /** Refuses figures that are not finite. */
  public Fall {
    Numbers.finite("height", height);
    Numbers.finite("mass", mass);
  }

  /**
   * The static force that bends the plate as far as the fall does, N: what weight m g does on its
   * way, height and deflection, is what the bent spring holds, F²/2k. Source: suddenly applied
   * loads of machine-design textbooks, F = m g + sqrt((m g)² + 2 k m g h).
   *
   * @param plate mass of the plate, kg
   * @param stiffness of the plate where it strikes, N/mm
   */
  double force(double plate, double stiffness) {
    double weight = (plate + mass) * GRAVITY;
    return weight + Math.sqrt(weight * weight + 2 * stiffness * weight * height);
  }
}
