package felloe.load;

/** Cholesky's elimination of the first unknowns of a dense symmetric matrix. */
final class DenseFront {

  /** Columns that are put to the rest together. */
  private static final int BLOCK = 32;

  /**
   * A pivot that is so small a part of its diagonal is what rounding left of nothing. That of a
   * plate which is held is the square of an edge over its size, no less than some 1e-7.
   */
  private static final double LOST = 1e-11;

  private DenseFront() {}

  /**
   * Eliminates.
   *
   * @param c columns, of which the part from the diagonal down counts
   * @param n how many of them to eliminate
   * @param diagonal what stood on their diagonal before anything was eliminated
   * @return false when a pivot was not above 0; it then goes on with a harmless one
   */
  static boolean eliminate(double[][] c, int n, double[] diagonal) {
    int m = c.length;
    boolean sound = true;
    for (int from = 0; from < n; from += BLOCK) {
      int to = Math.min(n, from + BLOCK);
      for (int j = from; j < to; j++) {
        double[] column = c[j];
        subtract(c, column, from, j, j, m);
        double pivot = column[j];
        // What rounding leaves of a pivot is not taken for one.
        if (!(pivot > LOST * diagonal[j])) {
          sound = false;
          pivot = 1;
        }
        double root = Math.sqrt(pivot);
        column[j] = root;
        double scale = 1 / root;
        for (int i = j + 1; i < m; i++) {
          column[i] *= scale;
        }
      }
      int j = to;
      for (; j + 1 < m; j += 2) {
        subtractFromTwo(c, from, to, j, m);
      }
      if (j < m) {
        subtract(c, c[j], from, to, j, m);
      }
    }
    return sound;
  }

  /** The same from column j and the next at once: what is read serves both. */
  private static void subtractFromTwo(double[][] c, int from, int to, int j, int m) {
    double[] one = c[j];
    double[] two = c[j + 1];
    int k = from;
    for (; k + 3 < to; k += 4) {
      double[] p = c[k];
      double[] q = c[k + 1];
      double[] r = c[k + 2];
      double[] s = c[k + 3];
      one[j] -= p[j] * p[j] + q[j] * q[j] + r[j] * r[j] + s[j] * s[j];
      subtract(one, two, p, q, r, s, j, m);
    }
    for (; k < to; k++) {
      subtract(one, c[k], j, m);
      subtract(two, c[k], j + 1, m);
    }
  }

  private static void subtract(
      double[] one, double[] two, double[] p, double[] q, double[] r, double[] s, int j, int m) {
    double a = p[j];
    double b = q[j];
    double c = r[j];
    double d = s[j];
    double e = p[j + 1];
    double f = q[j + 1];
    double g = r[j + 1];
    double h = s[j + 1];
    for (int i = j + 1; i < m; i++) {
      double x = p[i];
      double y = q[i];
      double z = r[i];
      double w = s[i];
      one[i] -= a * x + b * y + c * z + d * w;
      two[i] -= e * x + f * y + g * z + h * w;
    }
  }

  /** From a column what the columns from one to another make of it, from row j down. */
  private static void subtract(double[][] c, double[] into, int from, int to, int j, int m) {
    int k = from;
    for (; k + 3 < to; k += 4) {
      subtract(into, c[k], c[k + 1], c[k + 2], c[k + 3], j, m);
    }
    for (; k < to; k++) {
      subtract(into, c[k], j, m);
    }
  }

  private static void subtract(
      double[] into, double[] p, double[] q, double[] r, double[] s, int j, int m) {
    double a = p[j];
    double b = q[j];
    double c = r[j];
    double d = s[j];
    for (int i = j; i < m; i++) {
      into[i] -= a * p[i] + b * q[i] + c * r[i] + d * s[i];
    }
  }

  private static void subtract(double[] into, double[] p, int j, int m) {
    double a = p[j];
    for (int i = j; i < m; i++) {
      into[i] -= a * p[i];
    }
  }
}
