package felloe.kit;

import felloe.out.Json;
import java.util.ArrayList;
import java.util.List;

/**
 * Figures as JSON with about ten significant digits, since strains are millionths and stiffnesses
 * millions. What is no more than rounding of its neighbours becomes 0.
 */
final class Significant {

  private static final int DIGITS = 10;

  private Significant() {}

  static Json number(double value) {
    return Json.number(value, decimals(Math.abs(value)));
  }

  /** Figures that belong together, as many decimals each as the largest has. */
  static Json array(double... values) {
    double scale = 0;
    for (double value : values) {
      scale = Math.max(scale, Math.abs(value));
    }
    return scaled(scale, values);
  }

  /** Figures beside others of which the largest is {@code scale}. */
  static Json scaled(double scale, double... values) {
    int decimals = decimals(scale);
    List<Json> numbers = new ArrayList<>();
    for (double value : values) {
      numbers.add(Json.number(value, decimals));
    }
    return new Json.Array(numbers);
  }

  private static int decimals(double scale) {
    if (scale == 0) {
      return 0;
    }
    return (int) Math.max(0, Math.min(30, DIGITS - 1 - Math.floor(Math.log10(scale))));
  }
}
