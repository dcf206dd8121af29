package felloe.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A symmetric sparse system over points, each with the same number of unknowns, some of them held
 * at zero: laid out and ordered once, factored for given element matrices, solved for many loads.
 *
 * <p>The factor is made in dense fronts, one a part of the {@link Dissection}: a part takes in its
 * elements and what is left of its children, eliminates its own unknowns, and hands on the rest.
 * Source: Duff and Reid, The multifrontal solution of indefinite sparse symmetric linear systems,
 * ACM TOMS 9 (1983) 302, from memory; here positive definite, so without pivoting.
 */
final class SparseSystem {

  /** An unknown that is held; while rows are given out, one that has none yet, now or at last. */
  private static final int HELD = -1;

  private static final int OPEN = -2;
  private static final int LAST = -3;

  private final MeshOrder order;

  /** For each unknown its place in the order of elimination, or -1 when held. */
  private final int[] row;

  private final int free;
  private final List<Dissection.Part> parts;

  /** For each part its equations in order, its own first. */
  private final int[][] rows;

  /** For each part how many equations there are up to its last own one. */
  private final int[] end;

  /** For each part the elements that it takes in. */
  private final int[][] taken;

  /**
   * Lays the system out.
   *
   * @param order how its points meet
   * @param held for each unknown whether it is held at zero
   * @param last points whose first unknowns are eliminated after all others: what is asked about
   *     them then takes the least work
   */
  SparseSystem(MeshOrder order, boolean[] held, int[] last) {
    this.order = order;
    int perPoint = order.perPoint();
    parts = new ArrayList<>(order.parts());
    row = new int[held.length];
    for (int u = 0; u < row.length; u++) {
      row[u] = held[u] ? HELD : OPEN;
    }
    for (int p : last) {
      row[perPoint * p] = row[perPoint * p] == OPEN ? LAST : HELD;
    }
    if (last.length > 0) {
      parts.add(new Dissection.Part(last.clone(), new int[] {parts.size() - 1}));
    }
    end = new int[parts.size()];
    int next = 0;
    for (int k = 0; k < end.length; k++) {
      int wanted = last.length > 0 && k == end.length - 1 ? LAST : OPEN;
      for (int p : parts.get(k).points()) {
        for (int u = perPoint * p; u < perPoint * (p + 1); u++) {
          row[u] = row[u] == wanted ? next++ : row[u];
        }
      }
      end[k] = next;
    }
    free = next;
    rows = fronts();
    taken = taken();
  }

  /**
   * For each part the equations of its front: its own, and those that come after and meet its
   * points or were handed on to it.
   */
  private int[][] fronts() {
    int[][] result = new int[parts.size()][];
    int[] seen = new int[free];
    int[] found = new int[free];
    for (int k = 0; k < result.length; k++) {
      int n = 0;
      for (int equation = end[k] - own(k); equation < end[k]; equation++) {
        found[n++] = equation;
      }
      for (int equation : met(parts.get(k), result)) {
        if (equation >= end[k] && seen[equation] != k + 1) {
          seen[equation] = k + 1;
          found[n++] = equation;
        }
      }
      Arrays.sort(found, own(k), n);
      result[k] = Arrays.copyOf(found, n);
    }
    return result;
  }

  /** What meets a part: its own and its neighbours' rows, and the fronts of its children. */
  private int[] met(Dissection.Part part, int[][] fronts) {
    int perPoint = order.perPoint();
    int[] start = order.start();
    int[] neighbours = order.neighbours();
    int most = 0;
    for (int p : part.points()) {
      most += perPoint * (1 + start[p + 1] - start[p]);
    }
    for (int child : part.children()) {
      most += fronts[child].length;
    }
    int[] met = new int[most];
    int n = 0;
    for (int p : part.points()) {
      System.arraycopy(row, perPoint * p, met, n, perPoint);
      n += perPoint;
      for (int i = start[p]; i < start[p + 1]; i++) {
        System.arraycopy(row, perPoint * neighbours[i], met, n, perPoint);
        n += perPoint;
      }
    }
    for (int child : part.children()) {
      System.arraycopy(fronts[child], 0, met, n, fronts[child].length);
      n += fronts[child].length;
    }
    return met;
  }

  /** Each element goes to the part that eliminates the first of its unknowns. */
  private int[][] taken() {
    int[] partOf = new int[free];
    for (int k = 0; k < end.length; k++) {
      Arrays.fill(partOf, end[k] - own(k), end[k], k);
    }
    int count = order.elements().length / order.perElement();
    int[] where = new int[count];
    int[] size = new int[parts.size()];
    for (int e = 0; e < count; e++) {
      int least = free;
      for (int i = 0; i < elementSize(); i++) {
        int equation = elementRow(e, i);
        least = equation >= 0 && equation < least ? equation : least;
      }
      where[e] = least < free ? partOf[least] : -1;
      if (where[e] >= 0) {
        size[where[e]]++;
      }
    }
    int[][] result = new int[parts.size()][];
    for (int k = 0; k < result.length; k++) {
      result[k] = new int[size[k]];
    }
    for (int e = count - 1; e >= 0; e--) {
      if (where[e] >= 0) {
        result[where[e]][--size[where[e]]] = e;
      }
    }
    return result;
  }

  /** Unknowns that are not held. */
  int free() {
    return free;
  }

  /** The equation of an unknown of a point, or -1 when it is held. */
  int equation(int unknown) {
    return row[unknown];
  }

  /** Figures of the factor. */
  long figures() {
    long sum = 0;
    for (int k = 0; k < end.length; k++) {
      sum += (long) own(k) * rows[k].length - (long) own(k) * (own(k) - 1) / 2;
    }
    return sum;
  }

  /**
   * Factors.
   *
   * @param k the matrices of all elements, one after another, each row by row
   * @return the factor; not {@link BlockFactor#sound()} when something can move freely
   */
  BlockFactor factor(double[] k) {
    return new BlockFactor(this, k);
  }

  List<Dissection.Part> parts() {
    return parts;
  }

  int[] rows(int part) {
    return rows[part];
  }

  /** How many equations of a part's front are its own: the first. */
  int own(int part) {
    return part == 0 ? end[0] : end[part] - end[part - 1];
  }

  int[] taken(int part) {
    return taken[part];
  }

  int elementSize() {
    return order.perElement() * order.perPoint();
  }

  int elementRow(int element, int unknown) {
    int perPoint = order.perPoint();
    int point = order.elements()[element * order.perElement() + unknown / perPoint];
    return row[perPoint * point + unknown % perPoint];
  }

  int unknowns() {
    return row.length;
  }
}
