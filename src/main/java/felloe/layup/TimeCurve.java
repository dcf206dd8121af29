package felloe.layup;

import java.util.List;

/**
 * A time that shortens with warmth, known at some temperatures. Between two of them its logarithm
 * is straight; beyond, it halves for every 10 degrees, the rule of thumb for amine hardeners
 * (common practice).
 *
 * @param known at least one, coldest first
 */
public record TimeCurve(List<Known> known) {

  static final double HALVING = 10;

  public TimeCurve {
    known = List.copyOf(known);
    if (known.isEmpty()) {
      throw new IllegalArgumentException("known must not be empty");
    }
  }

  /**
   * A known time.
   *
   * @param temperature degrees Celsius
   * @param time in whatever unit
   */
  public record Known(double temperature, double time) {}

  /** The time at a temperature in degrees Celsius, in the unit of the known times. */
  public double at(double temperature) {
    Known first = known.get(0);
    Known last = known.get(known.size() - 1);
    if (temperature <= first.temperature()) {
      return beyond(first, temperature);
    }
    for (int i = 1; i < known.size(); i++) {
      Known low = known.get(i - 1);
      Known high = known.get(i);
      if (temperature <= high.temperature()) {
        double share = (temperature - low.temperature()) / (high.temperature() - low.temperature());
        return low.time() * Math.pow(high.time() / low.time(), share);
      }
    }
    return beyond(last, temperature);
  }

  private static double beyond(Known from, double temperature) {
    return from.time() * Math.pow(2, (from.temperature() - temperature) / HALVING);
  }
}
