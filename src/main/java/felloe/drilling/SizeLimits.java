package felloe.drilling;

import felloe.geometry.Numbers;

/**
 * Between what sizes a hole is good.
 *
 * @param least smallest diameter, mm
 * @param most largest diameter, mm
 */
public record SizeLimits(double least, double most) {

  /**
   * Refuses limits that stand the wrong way round.
   *
   * @throws IllegalArgumentException naming the field
   */
  public SizeLimits {
    if (!(Numbers.finite("least", least) <= Numbers.finite("most", most))) {
      throw new IllegalArgumentException("least must not be above most");
    }
  }
}
