package felloe.joints;

import felloe.geometry.Numbers;

/**
 * A torque to start from, by T = K d F. The clamp force F is three quarters of the screw's proof
 * load, or less where a face would be crushed. K is never known well, so the torque is a range for
 * the one force; who starts at its low end clamps with {@link #leastClamp} at least, as far as K
 * keeps its range.
 *
 * @param clamp the force F, N
 * @param low torque for the low end of K, N m
 * @param high torque for the high end of K, N m
 * @param leastClamp what the low torque clamps with when K is at its high end, N
 * @param limitedBy what set F, such as {@code screw} or {@code plate under the washer}
 * @param basis where K comes from
 */
public record StartingTorque(
    double clamp, double low, double high, double leastClamp, String limitedBy, String basis) {

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public StartingTorque {
    Numbers.finite("clamp", clamp);
    Numbers.finite("low", low);
    Numbers.finite("high", high);
    Numbers.finite("leastClamp", leastClamp);
  }

  /**
   * The torque for a clamp force.
   *
   * @param diameter of the thread, mm
   * @param clamp N
   */
  public static StartingTorque of(
      double diameter, double clamp, NutFactor factor, String limitedBy) {
    double meters = diameter / 1000;
    return new StartingTorque(
        clamp,
        factor.low() * meters * clamp,
        factor.high() * meters * clamp,
        clamp * factor.low() / factor.high(),
        limitedBy,
        factor.basis());
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
