package felloe.plate;

import felloe.geometry.Numbers;

/**
 * What a figure is held against.
 *
 * @param sense which side of the value is good
 * @param value the limit, in the figure's unit
 * @param source the standard, handbook or habit that it comes from, with its basis
 * @param overridden whether the shape file set it
 */
public record Limit(Sense sense, double value, String source, boolean overridden) {

  /** Which side is good. */
  public enum Sense {
    /** The figure must not be less. */
    AT_LEAST,
    /** The figure must not be more. */
    AT_MOST
  }

  /**
   * Refuses a value that is not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Limit {
    Numbers.finite("value", value);
  }

  /** Whether a figure keeps the limit. */
  public boolean keeps(double figure) {
    return sense == Sense.AT_LEAST ? figure >= value : figure <= value;
  }
}
