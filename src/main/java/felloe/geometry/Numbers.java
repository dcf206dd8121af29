package felloe.geometry;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The only place where a number becomes text. Decimal point always, no exponent, no {@code -0},
 * never the machine's locale.
 */
public final class Numbers {

  private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

  /** Share of a last place that is rounding when a limit is told. */
  private static final double HAIR = 1e-4;

  /** Stands for a number that is too large, or lies too near to a half, for the fast way. */
  private static final long FAR = Long.MIN_VALUE;

  private Numbers() {}

  /**
   * Writes a number with exactly {@code decimals} places, rounded half away from zero on its exact
   * binary value, such as {@code 70.000}.
   *
   * @throws IllegalArgumentException when the value is not finite
   */
  public static String fixed(double value, int decimals) {
    long whole = whole(value, decimals);
    return whole == FAR
        ? exact(value, decimals).toPlainString()
        : text(whole, Long.toString(Math.abs(whole)), decimals);
  }

  /**
   * Writes a number with at most {@code decimals} places and no trailing zeros, such as {@code 70}
   * or {@code 2.5}.
   *
   * @throws IllegalArgumentException when the value is not finite
   */
  public static String brief(double value, int decimals) {
    long whole = whole(value, decimals);
    if (whole == FAR) {
      BigDecimal rounded = exact(value, decimals);
      return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
    int places = whole == 0 ? 0 : decimals;
    while (places > 0 && whole % 10 == 0) {
      whole /= 10;
      places--;
    }
    return text(whole, Long.toString(Math.abs(whole)), places);
  }

  /**
   * Writes a limit that may be kept: as {@link #brief}, but rounded down, so that who writes what
   * is told is within it; what lies a hair below a place counts as there.
   */
  public static String down(double value, int decimals) {
    return brief(Math.floor(value * TENS[decimals] + HAIR) / TENS[decimals], decimals);
  }

  /**
   * The value in units of its last place, or {@link #FAR} where only exact arithmetic can tell. A
   * double holds the scaled value to 1e-4 here, so unless it lies by a half the nearest whole
   * number is the one that exact arithmetic finds, many times faster.
   */
  private static long whole(double value, int decimals) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite number: " + value);
    }
    if (decimals >= 0 && decimals < TENS.length) {
      double scaled = value * TENS[decimals];
      double whole = Math.rint(scaled);
      if (Math.abs(scaled) < 1e12 && Math.abs(scaled - whole) < 0.499) {
        return (long) whole;
      }
    }
    return FAR;
  }

  private static BigDecimal exact(double value, int decimals) {
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
  }

  /** Digits with a sign and a point before the last places. */
  private static String text(long whole, String digits, int places) {
    StringBuilder text = new StringBuilder(digits.length() + places + 3);
    if (whole < 0) {
      text.append('-');
    }
    int before = digits.length() - places;
    if (before > 0) {
      text.append(digits, 0, before);
    } else {
      text.append('0');
    }
    if (places > 0) {
      text.append('.');
      for (int i = before; i < 0; i++) {
        text.append('0');
      }
      text.append(digits, Math.max(0, before), digits.length());
    }
    return text.toString();
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

  /**
   * Passes a number through that is not below zero.
   *
   * @param name the field's name, for the message
   * @throws IllegalArgumentException naming the field when the value is not finite or below zero
   */
  public static double notNegative(String name, double value) {
    if (finite(name, value) < 0) {
      throw new IllegalArgumentException(name + " must not be below zero, not " + value);
    }
    return value;
  }

  /**
   * Passes a number above zero through.
   *
   * @param name the field's name, for the message
   * @throws IllegalArgumentException naming the field when the value is not finite or not above
   *     zero
   */
  public static double positive(String name, double value) {
    if (finite(name, value) <= 0) {
      throw new IllegalArgumentException(name + " must be above zero, not " + value);
    }
    return value;
  }
}
