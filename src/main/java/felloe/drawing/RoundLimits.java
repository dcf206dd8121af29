package felloe.drawing;

import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * Round figures that part a range into a fair number of bands, all of one width.
 *
 * @param step width of a band
 * @param limits between the bands, rising; each a whole number of steps
 * @param decimals that tell them
 */
record RoundLimits(double step, List<Double> limits, int decimals) {

  /** A smaller range has no figure of nine decimals in it. */
  private static final double LEAST_RANGE = 1e-8;

  /** Share of a step within which a limit lies on the end of the range. */
  private static final double HAIR = 1e-6;

  private static final double[] ROUND = {1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10};

  /** No step is finer than this: figures have no more decimals in text. */
  private static final int FINEST = -9;

  RoundLimits {
    limits = List.copyOf(limits);
  }

  /**
   * Parts a range.
   *
   * @param most the most bands; there are at least half as many less one, save where the range is
   *     too small for a figure of nine decimals, which has no limits
   */
  static RoundLimits of(double from, double to, int most) {
    double range = Numbers.finite("to", to) - Numbers.finite("from", from);
    Numbers.finite("range", range);
    double size = Math.max(Math.abs(from), Math.abs(to));
    // Less is what rounding makes of a field that is the same all over.
    if (!(range > Tolerances.ROUNDING * size) || range < LEAST_RANGE) {
      return new RoundLimits(0, List.of(), 0);
    }
    int power = (int) Math.floor(Math.log10(range / most)) - 1;
    for (; ; power++) {
      for (double round : ROUND) {
        double step = round * Math.pow(10, power);
        List<Double> limits = between(from, to, step, most);
        if (limits.size() < most && power >= FINEST) {
          return new RoundLimits(step, limits, decimals(round, power));
        }
      }
    }
  }

  private static List<Double> between(double from, double to, double step, int most) {
    List<Double> limits = new ArrayList<>();
    double hair = HAIR * step;
    double first = Math.ceil((from + hair) / step);
    for (double i = first; i * step < to - hair && limits.size() <= most; i++) {
      // Adding 0 turns -0 into 0.
      limits.add(i * step + 0.0);
    }
    return limits;
  }

  private static int decimals(double round, int power) {
    boolean half = round != Math.rint(round);
    return Math.max(0, (half ? 1 : 0) - power);
  }

  /** The same without a limit at 0: one band about it. */
  RoundLimits withoutZero() {
    return new RoundLimits(step, limits.stream().filter(limit -> limit != 0).toList(), decimals);
  }

  /** A figure of this scale as text, with a proper minus. */
  String text(double value) {
    return Numbers.fixed(value, Math.min(9, decimals)).replace('-', '\u2212');
  }
}
