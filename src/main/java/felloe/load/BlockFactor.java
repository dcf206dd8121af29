package felloe.load;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.RecursiveTask;

/** Cholesky's factor of a {@link SparseSystem}, in dense fronts. Immutable once built. */
final class BlockFactor {

  /** Fronts of a subtree with fewer unknowns than this are not shared out. */
  private static final int WORTH = 1500;

  private final SparseSystem system;

  /** For each part its own columns, each from its first row to its last. */
  private final double[][][] columns;

  /** What stood on the diagonal at first. */
  private final double[] diagonal;

  private volatile boolean sound = true;

  BlockFactor(SparseSystem system, double[] k) {
    this.system = system;
    List<Dissection.Part> parts = system.parts();
    columns = new double[parts.size()][][];
    int[] weight = new int[parts.size()];
    for (int p = 0; p < weight.length; p++) {
      weight[p] = system.own(p);
      for (int child : parts.get(p).children()) {
        weight[p] += weight[child];
      }
    }
    diagonal = diagonal(k);
    new Front(parts.size() - 1, k, weight).invoke();
  }

  private double[] diagonal(double[] k) {
    double[] sum = new double[system.free()];
    int size = system.elementSize();
    for (int e = 0; e < k.length / size / size; e++) {
      for (int i = 0; i < size; i++) {
        int row = system.elementRow(e, i);
        if (row >= 0) {
          sum[row] += k[size * size * e + (size + 1) * i];
        }
      }
    }
    return sum;
  }

  /** Whether the matrix was positive definite: nothing can move freely. */
  boolean sound() {
    return sound;
  }

  /** Makes the front of a part, after those of its children, and gives what it hands on. */
  private final class Front extends RecursiveTask<double[][]> {
    private static final long serialVersionUID = 1;
    private final int part;
    private final transient double[] k;
    private final int[] weight;

    Front(int part, double[] k, int[] weight) {
      this.part = part;
      this.k = k;
      this.weight = weight;
    }

    @Override
    protected double[][] compute() {
      int[] children = system.parts().get(part).children();
      double[][][] handed = new double[children.length][][];
      boolean share = children.length == 2;
      for (int child : children) {
        share &= weight[child] >= WORTH;
      }
      if (share) {
        Front other = new Front(children[1], k, weight);
        other.fork();
        handed[0] = new Front(children[0], k, weight).compute();
        handed[1] = other.join();
      } else {
        for (int i = 0; i < children.length; i++) {
          handed[i] = new Front(children[i], k, weight).compute();
        }
      }
      return make(children, handed);
    }

    private double[][] make(int[] children, double[][][] handed) {
      int[] rows = system.rows(part);
      int n = system.own(part);
      int m = rows.length;
      double[][] front = new double[m][m];
      for (int element : system.taken(part)) {
        take(front, rows, element);
      }
      for (int i = 0; i < children.length; i++) {
        takeIn(front, rows, children[i], handed[i]);
      }
      if (!DenseFront.eliminate(front, n, at(rows, n))) {
        sound = false;
      }
      columns[part] = Arrays.copyOf(front, n);
      return Arrays.copyOfRange(front, n, m);
    }

    private double[] at(int[] rows, int n) {
      double[] first = new double[n];
      for (int i = 0; i < n; i++) {
        first[i] = diagonal[rows[i]];
      }
      return first;
    }

    private void take(double[][] front, int[] rows, int element) {
      int size = system.elementSize();
      int[] at = new int[size];
      for (int i = 0; i < size; i++) {
        int row = system.elementRow(element, i);
        at[i] = row < 0 ? -1 : place(rows, row);
      }
      int base = size * size * element;
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          if (at[j] >= 0 && at[i] >= at[j]) {
            front[at[j]][at[i]] += k[base + size * i + j];
          }
        }
      }
    }

    private int place(int[] rows, int row) {
      return Arrays.binarySearch(rows, row);
    }

    private void takeIn(double[][] front, int[] rows, int child, double[][] rest) {
      int[] from = system.rows(child);
      int first = system.own(child);
      int[] at = new int[from.length];
      int p = 0;
      for (int i = first; i < from.length; i++) {
        while (rows[p] != from[i]) {
          p++;
        }
        at[i] = p;
      }
      for (int j = first; j < from.length; j++) {
        double[] column = rest[j - first];
        double[] into = front[at[j]];
        for (int i = j; i < from.length; i++) {
          into[at[i]] += column[i];
        }
      }
    }
  }

  /** The unknowns under a load, held ones 0; both numbered by point and unknown. */
  double[] solve(double[] load) {
    double[] b = new double[system.free()];
    for (int i = 0; i < load.length; i++) {
      int row = system.equation(i);
      if (row >= 0) {
        b[row] = load[i];
      }
    }
    forward(b);
    back(b);
    double[] unknowns = new double[system.unknowns()];
    for (int i = 0; i < unknowns.length; i++) {
      int row = system.equation(i);
      unknowns[i] = row >= 0 ? b[row] : 0;
    }
    return unknowns;
  }

  /** Replaces the right side by what forward elimination makes of it. */
  void forward(double[] b) {
    for (int p = 0; p < columns.length; p++) {
      int[] rows = system.rows(p);
      double[][] own = columns[p];
      for (int j = 0; j < own.length; j++) {
        double[] column = own[j];
        double value = b[rows[j]] / column[j];
        b[rows[j]] = value;
        if (value != 0) {
          for (int i = j + 1; i < rows.length; i++) {
            b[rows[i]] -= column[i] * value;
          }
        }
      }
    }
  }

  /** Replaces what forward elimination left by the unknowns. */
  void back(double[] b) {
    for (int p = columns.length - 1; p >= 0; p--) {
      int[] rows = system.rows(p);
      double[][] own = columns[p];
      for (int j = own.length - 1; j >= 0; j--) {
        double[] column = own[j];
        double sum = b[rows[j]];
        for (int i = j + 1; i < rows.length; i++) {
          sum -= column[i] * b[rows[i]];
        }
        b[rows[j]] = sum / column[j];
      }
    }
  }

  /**
   * Unknowns of the points that are eliminated last, under a unit load at one of them. All other
   * unknowns are gone by then, so that only the last front is asked.
   *
   * @param unknowns numbers of unknowns, all of those points and free
   * @param loaded which of them is loaded
   */
  double[] amongLast(int[] unknowns, int loaded) {
    int last = columns.length - 1;
    double[][] own = columns[last];
    int first = system.rows(last)[0];
    double[] b = new double[own.length];
    b[system.equation(unknowns[loaded]) - first] = 1;
    for (int j = 0; j < b.length; j++) {
      b[j] /= own[j][j];
      for (int i = j + 1; i < b.length && b[j] != 0; i++) {
        b[i] -= own[j][i] * b[j];
      }
    }
    for (int j = b.length - 1; j >= 0; j--) {
      double sum = b[j];
      for (int i = j + 1; i < b.length; i++) {
        sum -= own[j][i] * b[i];
      }
      b[j] = sum / own[j][j];
    }
    double[] found = new double[unknowns.length];
    for (int i = 0; i < found.length; i++) {
      found[i] = b[system.equation(unknowns[i]) - first];
    }
    return found;
  }
}
