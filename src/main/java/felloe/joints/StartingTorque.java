package felloe.joints;

import felloe.geometry.Numbers;

/**
 * A torque to start from, by T = K d F: one figure. The clamp force F is three quarters of the
 * screw's proof load, or less where a face would be crushed. K is never known well: the torque is
 * that at which the slipperiest thread of its kind, K at its low end, reaches F and no more, so
 * that no screw is overstressed; the driest then clamps with {@link #leastClamp}.
 *
 * @param clamp the most that it clamps with, F, N
 * @param torque N m
 * @param leastClamp what it clamps with at least, when K is at its high end, N
 * @param factor the range of K
 * @param limitedBy what set F, such as {@code screw} or {@code plate under the washer}
 */
public record StartingTorque(
    double clamp, double torque, double leastClamp, NutFactor factor, String limitedBy) {

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public StartingTorque {
    Numbers.finite("clamp", clamp);
    Numbers.finite("torque", torque);
    Numbers.finite("leastClamp", leastClamp);
  }

  /**
   * The torque for a clamp force.
   *
   * @param diameter of the thread, mm
   * @param clamp the most, N
   */
  public static StartingTorque of(
      double diameter, double clamp, NutFactor factor, String limitedBy) {
    return new StartingTorque(
        clamp,
        factor.low() * diameter / 1000 * clamp,
        clamp * factor.low() / factor.high(),
        factor,
        limitedBy);
  }

  /** What it clamps with when K is in the middle of its range, N. */
  public double usualClamp() {
    return 2 * clamp * factor.low() / (factor.low() + factor.high());
  }

  /**
   * Area of a ring, mm².
   *
   * @param outer diameter, mm
   * @param inner diameter, mm
   */
  public static double ring(double outer, double inner) {
    return Math.PI / 4 * (outer * outer - inner * inner);
  }
}
