package felloe.joints;

import felloe.geometry.Numbers;

/**
 * A figure of practice.
 *
 * @param value in the unit that its owner tells
 * @param basis where it comes from
 */
public record BasedValue(double value, String basis) {

  /**
   * Refuses a value that is not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public BasedValue {
    Numbers.finite("value", value);
  }
}
