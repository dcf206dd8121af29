package felloe.measure;

import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Readings adjusted by least squares, each weighted by its standard deviation.
 *
 * <p>With J the derivatives of the readings over their standard deviations, the cofactor matrix is
 * Q = (J'J)⁻¹; where the readings leave the place and turn of the whole free, it is that of the
 * inner constraints: of all choices the one that keeps the middle and the mean turn of the holes
 * and makes their standard errors least. The redundancy number of a reading is r = 1 - (J Q J')kk:
 * the part of a slip in it that shows in its own residual. Its standardised residual is w = v / √r,
 * v the residual over the standard deviation (W. Baarda, A testing procedure for use in geodetic
 * networks, 1968).
 */
final class Adjustment {

  /** An eigenvalue below this part of the greatest belongs to what the readings do not hold. */
  private static final double NOTHING = 1e-9;

  /** A reading with a redundancy below this is checked by no other. */
  private static final double UNCONTROLLED = 1e-6;

  private final Equations equations;
  private final Layout layout;
  private final double[] z;
  private final double[] residuals;
  private final double[] redundancies;
  private final RealMatrix cofactors;
  private final RealMatrix held;
  private final double cost;
  private final int rank;
  private final boolean settled;

  /**
   * The adjustment whose figures are those that the search found.
   *
   * @param settled whether the search ended where no step makes the squares less
   */
  Adjustment(Equations equations, Layout layout, double[] figures, boolean settled) {
    this.settled = settled;
    this.equations = equations;
    this.layout = layout;
    this.z = layout.all(figures);
    int m = equations.count();
    double[][] rows = new double[m][];
    residuals = new double[m];
    double sum = 0;
    for (int k = 0; k < m; k++) {
      double sigma = equations.readings().get(k).sigma();
      rows[k] = layout.row(equations.gradient(k, z), figures);
      for (int i = 0; i < rows[k].length; i++) {
        rows[k][i] /= sigma;
      }
      residuals[k] = equations.readings().get(k).reads() - equations.value(k, z);
      sum += residuals[k] * residuals[k] / (sigma * sigma);
    }
    cost = sum;
    int n = layout.size();
    RealMatrix normal = m == 0 ? MatrixUtils.createRealMatrix(n, n) : normal(rows, n);
    SymmetricEigen eigen = SymmetricEigen.of(normal);
    double limit = NOTHING * Math.max(eigen.value(0), Double.MIN_NORMAL);
    RealMatrix inverse = MatrixUtils.createRealMatrix(n, n);
    RealMatrix loose = MatrixUtils.createRealMatrix(n, n);
    int kept = 0;
    for (int e = 0; e < n; e++) {
      boolean holds = eigen.value(e) > limit;
      kept += holds ? 1 : 0;
      add(holds ? inverse : loose, eigen.vector(e), holds ? 1 / eigen.value(e) : 1);
    }
    rank = kept;
    redundancies = new double[m];
    for (int k = 0; k < m; k++) {
      redundancies[k] = Math.max(0, 1 - quadratic(inverse, rows[k]));
    }
    RealMatrix spread = MatrixUtils.createRealMatrix(layout.spread(figures));
    cofactors = layout instanceof Layout.Free ? onHoles(inverse) : sandwich(spread, inverse);
    held = layout instanceof Layout.Free ? loose : sandwich(spread, loose);
  }

  private static RealMatrix normal(double[][] rows, int n) {
    double[][] sum = new double[n][n];
    for (double[] row : rows) {
      for (int i = 0; i < n; i++) {
        if (row[i] != 0) {
          for (int j = 0; j < n; j++) {
            sum[i][j] += row[i] * row[j];
          }
        }
      }
    }
    return MatrixUtils.createRealMatrix(sum);
  }

  private static void add(RealMatrix to, double[] v, double factor) {
    for (int i = 0; i < v.length; i++) {
      for (int j = 0; j < v.length; j++) {
        to.addToEntry(i, j, factor * v[i] * v[j]);
      }
    }
  }

  private static RealMatrix sandwich(RealMatrix spread, RealMatrix inner) {
    return spread.multiply(inner).multiplyTransposed(spread);
  }

  static double quadratic(RealMatrix matrix, double[] row) {
    double sum = 0;
    for (int i = 0; i < row.length; i++) {
      if (row[i] != 0) {
        for (int j = 0; j < row.length; j++) {
          sum += row[i] * matrix.getEntry(i, j) * row[j];
        }
      }
    }
    return sum;
  }

  /** The same with the middle and the turn of the holes alone held, whatever the edges say. */
  private RealMatrix onHoles(RealMatrix inverse) {
    if (equations.unknowns().edges().isEmpty()) {
      return inverse;
    }
    double[][] motions = equations.unknowns().motions(z);
    int n = layout.size();
    int holes = 2 * equations.unknowns().holes();
    RealMatrix change = MatrixUtils.createRealIdentityMatrix(n);
    for (double[] motion : motions) {
      double norm = 0;
      for (int i = 0; i < holes; i++) {
        norm += motion[i] * motion[i];
      }
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < holes; j++) {
          change.addToEntry(i, j, -motion[i] * motion[j] / norm);
        }
      }
    }
    return sandwich(change, inverse);
  }

  Equations equations() {
    return equations;
  }

  Layout layout() {
    return layout;
  }

  /** All unknowns; see {@link Unknowns}. */
  double[] z() {
    return z.clone();
  }

  /** Whether the search for the figures ended; if not, they are no answer. */
  boolean settled() {
    return settled;
  }

  /** The least size of a hole that the readings tell, mm; endless when they tell none. */
  double leastSize() {
    Unknowns unknowns = equations.unknowns();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < unknowns.holes(); i++) {
      double size = z[unknowns.size(i)];
      if (size < least && (size > 0 || ObservabilityTest.size(this, i))) {
        least = size;
      }
    }
    return least;
  }

  /** Whether every hole has a size above zero, as far as the readings tell it. */
  boolean possible() {
    return leastSize() > 0;
  }

  List<Reading> readings() {
    return equations.readings();
  }

  /** What was read less what it should be, mm. */
  double residual(int k) {
    return residuals[k];
  }

  /** The redundancy number of a reading, 0 to 1. */
  double redundancy(int k) {
    return redundancies[k];
  }

  /** The standardised residual of a reading; 0 where no other reading checks it. */
  double w(int k) {
    return redundancies[k] < UNCONTROLLED
        ? 0
        : residuals[k] / (readings().get(k).sigma() * Math.sqrt(redundancies[k]));
  }

  /** By how much a reading is off if it alone is, mm. */
  double slip(int k) {
    return redundancies[k] < UNCONTROLLED ? 0 : residuals[k] / redundancies[k];
  }

  /** Sum of the squares of residuals over standard deviations. */
  double cost() {
    return cost;
  }

  /** How many readings there are beyond those that are needed. */
  int freedom() {
    return readings().size() - rank;
  }

  /** Standard error of what changes with the unknowns as a row says, by the readings' own sigma. */
  double standardError(double[] row) {
    return Math.sqrt(Math.max(0, quadratic(cofactors, row)));
  }

  /** Covariance of two unknowns. */
  double covariance(int i, int j) {
    return cofactors.getEntry(i, j);
  }

  /** How much of a change is held by no reading: 0 for a figure that the readings tell. */
  double loose(double[] row) {
    return Math.sqrt(Math.max(0, quadratic(held, row)));
  }
}
