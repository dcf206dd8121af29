package felloe.yaml;

import java.util.OptionalInt;

/**
 * A whole number about to be read: set its bounds, then end with {@link #required}, {@link #or} or
 * {@link #optional}, once.
 */
public final class WholeField {

  private final Entry entry;
  private final NumberField number;

  WholeField(Entry entry) {
    this.entry = entry;
    this.number = new NumberField(entry, Quantity.WHOLE);
  }

  public WholeField atLeast(int limit) {
    number.atLeast(limit);
    return this;
  }

  /** At least {@code limit}, with the reason and the cure; see {@link NumberField#atLeast}. */
  public WholeField atLeast(int limit, String why, String cure) {
    number.atLeast(limit, why, cure);
    return this;
  }

  public WholeField atMost(int limit) {
    number.atMost(limit);
    return this;
  }

  /** At most {@code limit}, with the reason and the cure; see {@link NumberField#atMost}. */
  public WholeField atMost(int limit, String why, String cure) {
    number.atMost(limit, why, cure);
    return this;
  }

  /** From {@code low} to {@code high}, both allowed. */
  public WholeField between(int low, int high) {
    return atLeast(low).atMost(high);
  }

  /** The number; a missing one is reported. 0 when it is missing or wrong. */
  public int required() {
    return whole(number.required());
  }

  /** The number, or {@code standard} when it is missing or wrong. */
  public int or(int standard) {
    return optional().orElse(standard);
  }

  /** The number; empty when it is missing or wrong. */
  public OptionalInt optional() {
    double value = entry.present() ? number.required() : Double.NaN;
    return Double.isNaN(value) ? OptionalInt.empty() : OptionalInt.of(whole(value));
  }

  private static int whole(double value) {
    return Double.isNaN(value) ? 0 : (int) Math.round(value);
  }
}
