package felloe.load;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/**
 * A symmetric sparse system over points, each with the same number of unknowns, some of them held
 * at zero: assembled from elements, factored once, solved for many loads. The only user of EJML.
 */
final class SparseSystem {

  private final int perPoint;
  private final int perElement;
  private final int[] elements;
  private final int[] row;
  private final int free;
  private final DMatrixSparseCSC matrix;
  private LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver;

  /**
   * Lays the pattern out.
   *
   * @param x abscissas of the points, for a good order
   * @param y ordinates of the points
   * @param perPoint unknowns of a point
   * @param elements the points of all elements, one element after another
   * @param perElement points of an element
   * @param held for each unknown whether it is held at zero
   */
  SparseSystem(
      double[] x, double[] y, int perPoint, int[] elements, int perElement, boolean[] held) {
    this.perPoint = perPoint;
    this.perElement = perElement;
    this.elements = elements;
    int points = x.length;
    long[] pairs = pairs(points);
    int[] start = new int[points + 1];
    int[] neighbours = neighbours(pairs, points, start);
    int[] order = Dissection.order(x, y, start, neighbours);
    row = new int[points * perPoint];
    int next = 0;
    for (int p : order) {
      for (int u = 0; u < perPoint; u++) {
        row[perPoint * p + u] = held[perPoint * p + u] ? -1 : next++;
      }
    }
    free = next;
    matrix = pattern(order, start, neighbours);
  }

  /** Each pair of points of a common element once, both ways, and each point with itself. */
  private long[] pairs(int points) {
    long[] pairs = new long[elements.length * perElement];
    int n = 0;
    for (int e = 0; e < elements.length; e += perElement) {
      for (int i = 0; i < perElement; i++) {
        for (int j = 0; j < perElement; j++) {
          pairs[n++] = (long) elements[e + i] * points + elements[e + j];
        }
      }
    }
    Arrays.sort(pairs);
    int kept = 0;
    for (int i = 0; i < pairs.length; i++) {
      if (i == 0 || pairs[i] != pairs[i - 1]) {
        pairs[kept++] = pairs[i];
      }
    }
    return Arrays.copyOf(pairs, kept);
  }

  private static int[] neighbours(long[] pairs, int points, int[] start) {
    int[] neighbours = new int[pairs.length];
    for (int i = 0; i < pairs.length; i++) {
      neighbours[i] = (int) (pairs[i] % points);
      start[(int) (pairs[i] / points) + 1]++;
    }
    for (int p = 0; p < points; p++) {
      start[p + 1] += start[p];
    }
    return neighbours;
  }

  /** The upper triangle, columns in the order of elimination, rows sorted. */
  private DMatrixSparseCSC pattern(int[] order, int[] start, int[] neighbours) {
    int[] column = new int[free + 1];
    int[] rows = new int[neighbours.length * perPoint * perPoint];
    int n = 0;
    for (int p : order) {
      for (int u = 0; u < perPoint; u++) {
        int c = row[perPoint * p + u];
        if (c < 0) {
          continue;
        }
        int from = n;
        for (int i = start[p]; i < start[p + 1]; i++) {
          for (int v = 0; v < perPoint; v++) {
            int r = row[perPoint * neighbours[i] + v];
            if (r >= 0 && r <= c) {
              rows[n++] = r;
            }
          }
        }
        Arrays.sort(rows, from, n);
        column[c + 1] = n;
      }
    }
    DMatrixSparseCSC laid = new DMatrixSparseCSC(free, free, n);
    laid.nz_length = n;
    laid.nz_rows = Arrays.copyOf(rows, n);
    laid.nz_values = new double[n];
    laid.col_idx = column;
    laid.indicesSorted = true;
    return laid;
  }

  /** Unknowns that are not held. */
  int free() {
    return free;
  }

  /** Adds the matrix of an element, row by row. */
  void add(int element, double[] k) {
    int size = perElement * perPoint;
    for (int i = 0; i < size; i++) {
      int c = row(element, i);
      if (c < 0) {
        continue;
      }
      for (int j = 0; j < size; j++) {
        int r = row(element, j);
        if (r >= 0 && r <= c) {
          int at = Arrays.binarySearch(matrix.nz_rows, matrix.col_idx[c], matrix.col_idx[c + 1], r);
          matrix.nz_values[at] += k[size * i + j];
        }
      }
    }
  }

  private int row(int element, int unknown) {
    int point = elements[element * perElement + unknown / perPoint];
    return row[perPoint * point + unknown % perPoint];
  }

  /**
   * Factors the matrix.
   *
   * @return false when it is not positive definite: something can move freely
   */
  boolean factor() {
    if (free == 0) {
      return true;
    }
    solver = LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    return solver.setA(matrix);
  }

  /** The unknowns under some loads, held ones 0; both numbered by point and unknown. */
  double[] solve(double[] load) {
    double[] unknowns = new double[row.length];
    if (free == 0) {
      return unknowns;
    }
    DMatrixRMaj right = new DMatrixRMaj(free, 1);
    for (int i = 0; i < row.length; i++) {
      if (row[i] >= 0) {
        right.data[row[i]] = load[i];
      }
    }
    DMatrixRMaj solution = new DMatrixRMaj(free, 1);
    solver.solve(right, solution);
    for (int i = 0; i < row.length; i++) {
      if (row[i] >= 0) {
        unknowns[i] = solution.data[row[i]];
      }
    }
    return unknowns;
  }
}
