package felloe.load;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RecursiveTask;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** Cholesky's factor of a {@link SparseSystem}, in dense fronts. Immutable once built. */
final class BlockFactor {

  /** Fronts of a subtree with fewer unknowns than this are not shared out. */
  private static final int WORTH = 1500;

  /** Fewer right sides than this are not shared out. */
  private static final int FEW = 4;

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
    return solve(new double[][] {load}, new int[0], moved -> moved)[0];
  }

  /**
   * The unknowns under some loads, each with what it calls forth at those that are eliminated last.
   * All are solved together: most of the time goes into reading the factor.
   *
   * @param places numbers of unknowns, all of those; none when nothing is called forth
   * @param answer gives, for what the load by itself makes of those unknowns, the loads there that
   *     come on top
   */
  double[][] solve(double[][] loads, int[] places, UnaryOperator<double[]> answer) {
    double[][] b = new double[loads.length][system.free()];
    for (int r = 0; r < b.length; r++) {
      for (int i = 0; i < loads[r].length; i++) {
        int row = system.equation(i);
        if (row >= 0) {
          b[r][row] = loads[r][i];
        }
      }
    }
    int last = columns.length - 1;
    shared(b, some -> forward(some, 0, last));
    for (double[] one : places.length == 0 ? new double[0][] : b) {
      double[][] alone = {one.clone()};
      forward(alone, last, last + 1);
      back(alone, last, last + 1);
      double[] moved = new double[places.length];
      for (int i = 0; i < moved.length; i++) {
        moved[i] = alone[0][system.equation(places[i])];
      }
      double[] more = answer.apply(moved);
      for (int i = 0; i < more.length; i++) {
        one[system.equation(places[i])] += more[i];
      }
    }
    shared(
        b,
        some -> {
          forward(some, last, last + 1);
          back(some, 0, last + 1);
        });
    double[][] unknowns = new double[b.length][system.unknowns()];
    for (int r = 0; r < b.length; r++) {
      for (int i = 0; i < unknowns[r].length; i++) {
        int row = system.equation(i);
        unknowns[r][i] = row >= 0 ? b[r][row] : 0;
      }
    }
    return unknowns;
  }

  /** Does work on right sides, in two heaps where there are many. */
  private static void shared(double[][] b, Consumer<double[][]> work) {
    if (b.length < FEW) {
      work.accept(b);
      return;
    }
    int half = b.length / 2;
    CompletableFuture<Void> other =
        CompletableFuture.runAsync(() -> work.accept(Arrays.copyOf(b, half)));
    work.accept(Arrays.copyOfRange(b, half, b.length));
    other.join();
  }

  /** Replaces right sides by what forward elimination of some parts makes of them. */
  private void forward(double[][] b, int from, int to) {
    for (int p = from; p < to; p++) {
      int[] rows = system.rows(p);
      double[][] own = columns[p];
      double[][] here = gathered(b, rows);
      for (int j = 0; j < own.length; j++) {
        double[] column = own[j];
        for (double[] one : here) {
          double value = one[j] / column[j];
          one[j] = value;
          if (value != 0) {
            subtract(one, column, value, j + 1);
          }
        }
      }
      for (int r = 0; r < b.length; r++) {
        for (int i = 0; i < rows.length; i++) {
          b[r][rows[i]] = here[r][i];
        }
      }
    }
  }

  private static void subtract(double[] into, double[] column, double value, int from) {
    for (int i = from; i < into.length; i++) {
      into[i] -= column[i] * value;
    }
  }

  private static double[][] gathered(double[][] b, int[] rows) {
    double[][] here = new double[b.length][rows.length];
    for (int r = 0; r < b.length; r++) {
      for (int i = 0; i < rows.length; i++) {
        here[r][i] = b[r][rows[i]];
      }
    }
    return here;
  }

  /** Replaces what forward elimination left in some parts by the unknowns. */
  private void back(double[][] b, int from, int to) {
    for (int p = to - 1; p >= from; p--) {
      int[] rows = system.rows(p);
      double[][] own = columns[p];
      double[][] here = gathered(b, rows);
      for (int j = own.length - 1; j >= 0; j--) {
        double[] column = own[j];
        int r = 0;
        for (; r + 2 < here.length; r += 3) {
          dot(here[r], here[r + 1], here[r + 2], column, j);
        }
        for (; r < here.length; r++) {
          dot(here[r], column, j);
        }
      }
      for (int r = 0; r < b.length; r++) {
        for (int i = 0; i < own.length; i++) {
          b[r][rows[i]] = here[r][i];
        }
      }
    }
  }

  private static void dot(double[] one, double[] column, int j) {
    double sum = one[j];
    for (int i = j + 1; i < one.length; i++) {
      sum -= column[i] * one[i];
    }
    one[j] = sum / column[j];
  }

  /** Three at once, so that no sum waits for another. */
  private static void dot(double[] one, double[] two, double[] three, double[] column, int j) {
    double a = one[j];
    double b = two[j];
    double c = three[j];
    for (int i = j + 1; i < one.length; i++) {
      double by = column[i];
      a -= by * one[i];
      b -= by * two[i];
      c -= by * three[i];
    }
    one[j] = a / column[j];
    two[j] = b / column[j];
    three[j] = c / column[j];
  }

  /**
   * Unknowns that are eliminated last, under a unit load at one of them. All others are gone by
   * then, so that only the last front is asked.
   *
   * @param unknowns numbers of unknowns, all of those that are eliminated last
   * @param loaded which of them is loaded
   */
  double[] amongLast(int[] unknowns, int loaded) {
    int last = columns.length - 1;
    double[][] own = columns[last];
    int first = system.rows(last)[0];
    int[] at = new int[unknowns.length];
    int least = own.length;
    for (int i = 0; i < at.length; i++) {
      at[i] = system.equation(unknowns[i]) - first;
      least = Math.min(least, at[i]);
    }
    double[] b = new double[own.length];
    b[at[loaded]] = 1;
    for (int j = at[loaded]; j < b.length; j++) {
      b[j] /= own[j][j];
      for (int i = j + 1; i < b.length; i++) {
        b[i] -= own[j][i] * b[j];
      }
    }
    for (int j = b.length - 1; j >= least; j--) {
      dot(b, own[j], j);
    }
    double[] found = new double[at.length];
    for (int i = 0; i < found.length; i++) {
      found[i] = b[at[i]];
    }
    return found;
  }
}
