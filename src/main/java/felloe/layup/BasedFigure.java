package felloe.layup;

import felloe.geometry.Numbers;

/**
 * A figure that the plan rests on.
 *
 * @param name what it is
 * @param value how much
 * @param unit its unit; may be empty
 * @param basis where it comes from
 */
public record BasedFigure(String name, double value, String unit, String basis) {

  /**
   * Refuses a value that is not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public BasedFigure {
    Numbers.finite("value", value);
  }

  /** Whether it rests on memory or on the trade's habit, and not on a source. */
  public boolean assumed() {
    return Bases.isAssumed(basis);
  }
}
