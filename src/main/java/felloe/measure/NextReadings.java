package felloe.measure;

import felloe.geometry.Tolerances;
import felloe.measure.Measured.Pair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Which readings to take next: each time the one whose outcome is least sure from what is known so
 * far, which is the one that makes the whole surest. What nothing holds yet counts as unsure by a
 * kilometre, so such pairs come first.
 */
final class NextReadings {

  /** Weight of what nothing holds yet, so that the normal matrix can be inverted. */
  private static final double UNSURE = 1e-12;

  private static final double ABOUT = 1e-3;

  /** A gain must be larger by this than the best, so that rounding chooses nothing. */
  private static final double MORE = 1 + Tolerances.ROUNDING;

  private NextReadings() {}

  /**
   * The next readings, the most useful first.
   *
   * @param adjustment with the centres about where they are; its readings are those taken
   * @param most how many
   * @param sigma standard deviation that the new readings will have, mm
   */
  static List<Pair> of(Adjustment adjustment, int most, double sigma) {
    Equations equations = adjustment.equations();
    double[] z = adjustment.z();
    Unknowns unknowns = equations.unknowns();
    int n = unknowns.all();
    double[][] normal = new double[n][n];
    for (int i = 0; i < n; i++) {
      normal[i][i] = UNSURE;
    }
    for (int k = 0; k < equations.count(); k++) {
      add(normal, equations.gradient(k, z), equations.readings().get(k).sigma());
    }
    List<Reading> candidates = candidates(equations, sigma);
    List<Pair> next = new ArrayList<>();
    for (int round = 0; round < most && !candidates.isEmpty(); round++) {
      RealMatrix inverse =
          new LUDecomposition(MatrixUtils.createRealMatrix(normal), 0).getSolver().getInverse();
      Reading best = null;
      double[] bestRow = null;
      double bestGain = 0;
      for (Reading candidate : candidates) {
        double[] row = equations.gradient(candidate, z);
        double unsure = Adjustment.quadratic(inverse, row);
        // Of readings that are as good, the widest: it needs no care where the jaws sit.
        double gain = unsure * (1 + ABOUT * width(candidate, unknowns, z));
        // Nothing over the edges means anything as long as the size is not known.
        boolean size = candidate.over() == ReadingKind.DIAMETER;
        if (best == null
            || (best.over() != ReadingKind.DIAMETER && (size || gain > bestGain * MORE))) {
          best = candidate;
          bestRow = row;
          bestGain = gain;
        }
      }
      next.add(new Pair(best.from(), best.to(), best.edge(), best.over()));
      add(normal, bestRow, sigma);
      candidates.remove(best);
    }
    return List.copyOf(next);
  }

  private static double width(Reading r, Unknowns unknowns, double[] z) {
    if (!r.isPair()) {
      return 1;
    }
    double all = Tolerances.ROUNDING;
    for (int i = 0; i < 2 * unknowns.holes(); i++) {
      all = Math.max(all, 2 * Math.abs(z[i]));
    }
    int i = r.from();
    int j = r.to();
    return Math.hypot(z[2 * i] - z[2 * j], z[2 * i + 1] - z[2 * j + 1]) / all;
  }

  private static void add(double[][] normal, double[] row, double sigma) {
    for (int i = 0; i < row.length; i++) {
      if (row[i] != 0) {
        for (int j = 0; j < row.length; j++) {
          normal[i][j] += row[i] * row[j] / (sigma * sigma);
        }
      }
    }
  }

  /** A size that nothing tells first; then the pairs that were not taken over outside. */
  private static List<Reading> candidates(Equations equations, double sigma) {
    List<Reading> all = new ArrayList<>();
    int n = equations.unknowns().holes();
    boolean sized = equations.readings().stream().anyMatch(r -> r.over() == ReadingKind.DIAMETER);
    if (!sized) {
      all.add(reading(0, 0, ReadingKind.DIAMETER, sigma));
    }
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        Reading pair = reading(i, j, ReadingKind.OUTSIDE, sigma);
        if (equations.readings().stream().noneMatch(r -> r.sameHoles(pair))) {
          all.add(pair);
        }
      }
    }
    return all;
  }

  private static Reading reading(int i, int j, ReadingKind over, double sigma) {
    return new Reading(
        i, j, Optional.empty(), over, 1, Reading.COVERAGE * sigma, felloe.plate.Place.BUILT_IN);
  }
}
