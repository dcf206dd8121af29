package felloe.plate;

import felloe.geometry.Numbers;

/**
 * A figure that an answer rests on, with where it comes from. There is no other type for this.
 *
 * @param name what it is, in words
 * @param value how much
 * @param unit its unit; empty for a ratio
 * @param basis where it comes from: a standard, a measurement, common practice, or memory
 */
public record SourcedFigure(String name, double value, String unit, String basis) {

  /**
   * Refuses a value that is not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public SourcedFigure {
    Numbers.finite("value", value);
  }

  /** Whether it rests on memory or on the trade's habit, and not on a source. */
  public boolean assumed() {
    return Basis.isAssumed(basis);
  }
}
