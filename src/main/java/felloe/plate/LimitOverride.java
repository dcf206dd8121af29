package felloe.plate;

import felloe.geometry.Numbers;

/**
 * A review limit that the maker set in the shape file.
 *
 * @param rule id of the rule
 * @param value the limit, in the rule's own unit
 * @param place where it was written
 */
public record LimitOverride(String rule, double value, Place place) {

  /**
   * Refuses a value that is not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public LimitOverride {
    Numbers.finite("value", value);
  }
}
