package felloe.geometry;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The only place where a number becomes text. Decimal point always, no exponent, no {@code -0},
 * never the machine's locale.
 */
public final class Numbers {

  private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

  private Numbers() {}

  /**
   * Writes a number with exactly {@code decimals} places, rounded half away from zero on its exact
   * binary value, such as {@code 70.000}.
   *
   * @throws IllegalArgumentException when the value is not finite
   */
  public static String fixed(double value, int decimals) {
    return rounded(value, decimals).toPlainString();
  }

  /**
   * Writes a number with at most {@code decimals} places and no trailing zeros, such as {@code 70}
   * or {@code 2.5}.
   *
   * @throws IllegalArgumentException when the value is not finite
   */
  public static String brief(double value, int decimals) {
    BigDecimal rounded = rounded(value, decimals);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static BigDecimal rounded(double value, int decimals) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite number: " + value);
    }
    if (decimals >= 0 && decimals < TENS.length) {
      // A double holds the scaled value to 1e-4 here, so unless it lies by a half the nearest whole
      // number is the one that exact arithmetic finds, twenty times faster.
      double scaled = value * TENS[decimals];
      double whole = Math.rint(scaled);
      if (Math.abs(scaled) < 1e12 && Math.abs(scaled - whole) < 0.499) {
        return BigDecimal.valueOf((long) whole, decimals);
      }
    }
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
  }

  /**
   * Passes a finite number through.
   *
   * @param name the field's name, for the message
   * @throws IllegalArgumentException naming the field when the value is NaN or infinite
   */
  public static double finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be a finite number, not " + value);
    }
    return value;
  }
}
