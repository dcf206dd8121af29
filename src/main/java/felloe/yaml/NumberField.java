package felloe.yaml;

import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A number about to be read: set its bounds, then end with {@link #required}, {@link #or} or {@link
 * #optional}, once. Lengths are millimetres, angles and clock positions degrees.
 *
 * <p>A bound that is NaN (because it comes from a value that was itself wrong) is not checked, so
 * one mistake is reported once.
 */
public final class NumberField {

  // Bounds are computed from other figures; their rounding must not refuse what equals them.
  private static final double SLACK = Tolerances.ROUNDING;

  /**
   * From here to {@link #MOST_USUAL} lengths of a plate and its stock are usual, mm; common
   * practice.
   */
  private static final double LEAST_USUAL = 1;

  private static final double MOST_USUAL = 5000;

  /** A figure without a unit. */
  private static final String BARE = "[-+.0-9eE]+";

  private final Entry entry;
  private final Quantity quantity;
  private final List<Bound> bounds = new ArrayList<>();

  private record Bound(String words, double limit, boolean upper, boolean strict, String cure) {
    boolean refuses(double value) {
      double excess = upper ? value - limit : limit - value;
      return strict ? excess >= -SLACK : excess > SLACK;
    }
  }

  private String ownCure = "";

  NumberField(Entry entry, Quantity quantity) {
    this.entry = entry;
    this.quantity = quantity;
  }

  /** More than zero. */
  public NumberField positive() {
    return moreThan(0);
  }

  /** Zero or more. */
  public NumberField notNegative() {
    return atLeast(0);
  }

  public NumberField atLeast(double limit) {
    return bound("at least", limit, false, false, "", "");
  }

  /**
   * At least {@code limit}, which depends on something.
   *
   * @param why where the limit comes from, such as {@code the stock's thickness}
   * @param cure what to do, such as {@code raise it}; may be empty
   */
  public NumberField atLeast(double limit, String why, String cure) {
    return bound("at least", limit, false, false, why, cure);
  }

  public NumberField moreThan(double limit) {
    return bound("more than", limit, false, true, "", "");
  }

  /** More than {@code limit}, which depends on something; see {@link #atLeast}. */
  public NumberField moreThan(double limit, String why, String cure) {
    return bound("more than", limit, false, true, why, cure);
  }

  public NumberField atMost(double limit) {
    return bound("at most", limit, true, false, "", "");
  }

  /**
   * At most {@code limit}, which depends on something.
   *
   * @param why where the limit comes from, such as {@code half the window's height}
   * @param cure what to do, such as {@code lower it or raise height}; may be empty
   */
  public NumberField atMost(double limit, String why, String cure) {
    return bound("at most", limit, true, false, why, cure);
  }

  public NumberField lessThan(double limit) {
    return bound("less than", limit, true, true, "", "");
  }

  /** Less than {@code limit}, which depends on something; see {@link #atMost}. */
  public NumberField lessThan(double limit, String why, String cure) {
    return bound("less than", limit, true, true, why, cure);
  }

  /** From {@code low} to {@code high}, both allowed. */
  public NumberField between(double low, double high) {
    return atLeast(low).atMost(high);
  }

  private NumberField bound(
      String words, double limit, boolean upper, boolean strict, String why, String cure) {
    if (!Double.isNaN(limit)) {
      String here = why.isEmpty() ? "" : " here (" + why + ")";
      String text = "must be " + words + " " + quantity.withUnit(limit) + here;
      bounds.add(new Bound(text, limit, upper, strict, cure));
    }
    return this;
  }

  /** What to do where no such number can be read; without it the usual words are told. */
  public NumberField cure(String words) {
    ownCure = words;
    return this;
  }

  /** The number; a missing one is reported. NaN when it is missing or wrong. */
  public double required() {
    if (!entry.present()) {
      entry.reportMissing(quantity.wanted());
    }
    return read();
  }

  /** The number, or {@code standard} when it is missing; NaN when it is wrong. */
  public double or(double standard) {
    return entry.present() ? read() : standard;
  }

  /** The number; empty when it is missing or wrong. */
  public OptionalDouble optional() {
    double value = read();
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /** The unit that a length was meant in, where that would explain why it is far too small. */
  private String unit(Bound refused, double value) {
    if (refused.upper() || value <= 0 || value > refused.limit() / 2) {
      return "";
    }
    return UnitSlip.of(value, this::usual).orElse("");
  }

  private boolean usual(double length) {
    return length >= LEAST_USUAL
        && length <= MOST_USUAL
        && bounds.stream().noneMatch(bound -> bound.refuses(length));
  }

  private double read() {
    return entry
        .scalar("must be " + quantity.wanted())
        .map(
            scalar -> {
              Quantity.Reading reading = quantity.read(scalar);
              if (!reading.good()) {
                entry.problem(reading.wanted(), ownCure.isEmpty() ? reading.cure() : ownCure);
                return Double.NaN;
              }
              for (Bound bound : bounds) {
                if (bound.refuses(reading.value())) {
                  boolean bare = quantity == Quantity.LENGTH && scalar.text().matches(BARE);
                  String cure =
                      bound.cure().isEmpty() && bare ? unit(bound, reading.value()) : bound.cure();
                  entry.problem(bound.words(), cure);
                  return Double.NaN;
                }
              }
              return reading.value();
            })
        .orElse(Double.NaN);
  }
}
