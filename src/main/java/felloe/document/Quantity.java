package felloe.document;

import felloe.geometry.Numbers;

/**
 * A figure with its unit: the one place where an answer's numbers become words.
 *
 * @param value how much
 * @param unit its unit; may be empty
 * @param decimals places behind the point
 * @param brief whether zeros at the end are left out
 */
public record Quantity(double value, String unit, int decimals, boolean brief) implements Cell {

  /** Stands before figures below zero; a terminal shows a hyphen. */
  public static final char MINUS = '\u2212';

  /**
   * @throws IllegalArgumentException when the value is not finite
   */
  public Quantity {
    Numbers.finite("value", value);
  }

  /** A figure with so many places. */
  public static Quantity fixed(double value, int decimals, String unit) {
    return new Quantity(value, unit, decimals, false);
  }

  /** A figure with at most so many places, without zeros at its end. */
  public static Quantity brief(double value, int decimals, String unit) {
    return new Quantity(value, unit, decimals, true);
  }

  /** A length with at most two places, mm. */
  public static Quantity mm(double value) {
    return brief(value, 2, "mm");
  }

  /** A mass in whole grams. */
  public static Quantity grams(double value) {
    return fixed(value, 0, "g");
  }

  /** A part of one as percent. */
  public static Quantity percent(double part, int decimals) {
    return fixed(100 * part, decimals, "%");
  }

  /** A figure with no more digits than anybody knows: three or so that count. */
  public static Quantity rounded(double value, String unit) {
    double size = Math.abs(value);
    return brief(value, size >= 100 ? 0 : size >= 10 ? 1 : 3, unit);
  }

  /** The figure without its unit. */
  public String figure() {
    return (brief ? Numbers.brief(value, decimals) : Numbers.fixed(value, decimals))
        .replace('-', MINUS);
  }

  /** The figure with its unit. */
  public String text() {
    return text("");
  }

  @Override
  public String text(String told) {
    return unit.isEmpty() || unit.equals(told) ? figure() : figure() + " " + unit;
  }

  @Override
  public String toString() {
    return text();
  }
}
