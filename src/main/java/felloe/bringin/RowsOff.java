package felloe.bringin;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Where a fitted chain leaves its edge: along it places lie off to one side in a row, by more than
 * chance allows.
 */
final class RowsOff {

  /** So many neighbours are taken together: what they lie off in the mean is hardly chance. */
  private static final int TOGETHER = 5;

  /** A row lies off by so many times what single places do. */
  private static final double TIMES = 4;

  /** Single places lie off by no less than this, mm. */
  private static final double LEAST_SPREAD = 0.03;

  /** Neighbours err together, so that the whole spread is more than what they differ by. */
  private static final double NEIGHBOURS = 2.5;

  /** The variance of third differences is so many times a place's. */
  private static final double OF_THIRD = 20;

  /** The median deviation of a normal distribution times this is its standard deviation. */
  private static final double OF_MEDIAN = 1.4826;

  private RowsOff() {}

  /**
   * Where a chain lies farthest off a row of places; empty where chance explains what is left.
   *
   * @param places along the chain, in order
   */
  static Optional<EdgeChain.Astray> of(EdgeChain chain, List<EdgeChain.Measured> places) {
    int n = places.size();
    if (chain.round() || n < 2 * TOGETHER) {
      return Optional.empty();
    }
    double[] off = places.stream().mapToDouble(chain::off).toArray();
    int worst = 0;
    double most = 0;
    for (int i = 0; i < n; i++) {
      double mean = 0;
      for (int k = -TOGETHER / 2; k <= TOGETHER / 2; k++) {
        mean += off[Math.floorMod(i + k, n)] / TOGETHER;
      }
      if (Math.abs(mean) > most) {
        most = Math.abs(mean);
        worst = i;
      }
    }
    return most > TIMES * Math.max(LEAST_SPREAD, NEIGHBOURS * rough(off))
        ? Optional.of(new EdgeChain.Astray(places.get(worst).at(), most))
        : Optional.empty();
  }

  /** Standard deviation of single places by what neighbours differ, mm: a bend does not count. */
  private static double rough(double[] off) {
    int n = off.length;
    double[] third = new double[n];
    for (int i = 0; i < n; i++) {
      third[i] = Math.abs(off[(i + 3) % n] - 3 * off[(i + 2) % n] + 3 * off[(i + 1) % n] - off[i]);
    }
    Arrays.sort(third);
    return OF_MEDIAN * third[n / 2] / Math.sqrt(OF_THIRD);
  }
}
