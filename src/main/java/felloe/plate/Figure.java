package felloe.plate;

import felloe.geometry.Numbers;

/**
 * A measured or computed quantity.
 *
 * @param name what it is, such as {@code edge distance e/D}
 * @param value the figure
 * @param unit its unit, such as {@code mm}; empty for a ratio
 */
public record Figure(String name, double value, String unit) {

  /**
   * Refuses a value that is not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Figure {
    Numbers.finite("value", value);
  }
}
