package felloe.bringin;

/** Gathers weighted residuals with their derivatives and solves for the step that lessens them. */
final class NormalEquations {

  /** Share of a pivot that is rounding. */
  private static final double ROUNDING = 1e-14;

  private final double[][] matrix;
  private final double[] right;

  NormalEquations(int unknowns) {
    matrix = new double[unknowns][unknowns];
    right = new double[unknowns];
  }

  /**
   * Those of a quadratic.
   *
   * @param bend its second derivatives
   * @param slope its first ones, where the step begins
   */
  static NormalEquations of(double[][] bend, double[] slope) {
    NormalEquations all = new NormalEquations(slope.length);
    for (int i = 0; i < slope.length; i++) {
      all.matrix[i] = bend[i].clone();
      all.right[i] = -slope[i];
    }
    return all;
  }

  /**
   * One residual.
   *
   * @param derivatives by each unknown
   * @param weight less than 0 for what an unknown that is not among these takes away
   */
  record Weighted(double[] derivatives, double residual, double weight) {}

  void add(Weighted one) {
    add(one.derivatives(), one.residual(), one.weight());
  }

  /** One residual: its derivatives by each unknown, its value, its weight. */
  void add(double[] derivatives, double residual, double weight) {
    for (int i = 0; i < right.length; i++) {
      double wi = weight * derivatives[i];
      if (wi != 0) {
        right[i] -= wi * residual;
        for (int j = 0; j <= i; j++) {
          matrix[i][j] += wi * derivatives[j];
        }
      }
    }
  }

  /**
   * The same in other unknowns: one of them carries others along.
   *
   * @param direction by which the others move when that one moves by one; 0 at itself
   */
  NormalEquations carried(int one, double[] direction) {
    int n = right.length;
    NormalEquations all = new NormalEquations(n);
    double[] product = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        all.matrix[i][j] = matrix[i][j];
        product[i] += matrix[i][j] * direction[j];
        product[j] += i == j ? 0 : matrix[i][j] * direction[i];
      }
      all.right[i] = right[i];
    }
    for (int i = 0; i < n; i++) {
      all.matrix[Math.max(i, one)][Math.min(i, one)] += (i == one ? 2 : 1) * product[i];
      all.matrix[one][one] += direction[i] * product[i];
      all.right[one] += direction[i] * right[i];
    }
    return all;
  }

  /** The step, each unknown held by a share of its own weight. */
  double[] step(double damping) {
    return solve(factor(damping), right);
  }

  /** The inverse: variances and covariances for residuals of unit variance. */
  double[][] inverse() {
    double[][] factor = factor(0);
    int n = right.length;
    double[][] all = new double[n][];
    for (int i = 0; i < n; i++) {
      double[] unit = new double[n];
      unit[i] = 1;
      all[i] = solve(factor, unit);
    }
    return all;
  }

  /** The Cholesky factor. */
  private double[][] factor(double damping) {
    int n = right.length;
    double[][] l = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = matrix[i][j] * (i == j ? 1 + damping : 1);
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        if (i == j) {
          // An unknown that nothing speaks of stays where it is.
          l[i][i] = sum > ROUNDING * matrix[i][i] ? Math.sqrt(sum) : Double.MAX_VALUE;
        } else {
          l[i][j] = sum / l[j][j];
        }
      }
    }
    return l;
  }

  private static double[] solve(double[][] l, double[] b) {
    int n = b.length;
    double[] x = b.clone();
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= l[i][k] * x[k];
      }
      x[i] /= l[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int k = i + 1; k < n; k++) {
        x[i] -= l[k][i] * x[k];
      }
      x[i] /= l[i][i];
    }
    return x;
  }
}
