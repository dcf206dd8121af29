package felloe.measure;

import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Eigenvalues of a symmetric matrix that may have many zeros among them. The library's search never
 * ends on some matrices of low rank, since it asks what is small beside its neighbours; with the
 * trace added along the diagonal nothing is zero. The shift moves no eigenvector, and is taken from
 * the eigenvalues again: they are good to 1e-15 of the trace.
 */
final class SymmetricEigen {

  private final EigenDecompositionSymmetric parts;
  private final double shift;

  private SymmetricEigen(EigenDecompositionSymmetric parts, double shift) {
    this.parts = parts;
    this.shift = shift;
  }

  static SymmetricEigen of(RealMatrix matrix) {
    int n = matrix.getRowDimension();
    double size = 0;
    for (int i = 0; i < n; i++) {
      size += Math.abs(matrix.getEntry(i, i));
    }
    double shift = Math.max(size, Double.MIN_NORMAL);
    RealMatrix shifted = matrix.add(MatrixUtils.createRealIdentityMatrix(n).scalarMultiply(shift));
    return new SymmetricEigen(new EigenDecompositionSymmetric(shifted), shift);
  }

  /** The eigenvalues, the greatest first. */
  double value(int i) {
    return parts.getEigenvalue(i) - shift;
  }

  /** The eigenvector of length one that belongs to {@link #value}. */
  double[] vector(int i) {
    return parts.getEigenvector(i).toArray();
  }
}
