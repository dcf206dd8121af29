package felloe.bringin;

/**
 * Small systems of normal equations, solved in place by Cholesky's way, thousands of times a photo:
 * a matrix whose last column is the right side, its lower triangle filled.
 */
final class LeastSquares {

  private LeastSquares() {}

  /**
   * What is left of a sum of squares once the terms have explained what they can; the matrix then
   * holds its factor.
   *
   * @param least what a pivot is at least
   */
  static double left(double[][] m, double squares, double least) {
    int terms = m.length;
    double left = squares;
    for (int i = 0; i < terms; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = m[i][j];
        for (int k = 0; k < j; k++) {
          sum -= m[i][k] * m[j][k];
        }
        m[i][j] = i == j ? Math.sqrt(Math.max(sum, least)) : sum / m[j][j];
      }
      double b = m[i][terms];
      for (int k = 0; k < i; k++) {
        b -= m[i][k] * m[k][terms];
      }
      m[i][terms] = b / m[i][i];
      left -= m[i][terms] * m[i][terms];
    }
    return left;
  }

  /** The terms themselves, of a matrix that {@link #left} has been at. */
  static void terms(double[][] m, double[] levels) {
    int terms = m.length;
    for (int i = terms - 1; i >= 0; i--) {
      double x = m[i][terms];
      for (int k = i + 1; k < terms; k++) {
        x -= m[k][i] * levels[k];
      }
      levels[i] = x / m[i][i];
    }
  }
}
