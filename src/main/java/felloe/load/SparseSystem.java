package felloe.load;

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

  private final int perPoint;
  private final int perElement;
  private final int[] elements;

  /** For each unknown its place in the order of elimination, or -1 when held. */
  private final int[] row;

  private final int free;
  private final List<Dissection.Part> parts;

  /** For each part its equations in order, its own first. */
  private final int[][] rows;

  private final int[] own;

  /** For each part the elements that it takes in. */
  private final int[][] taken;

  /**
   * Lays the system out.
   *
   * @param x abscissas of the points, for a good order
   * @param y ordinates of the points
   * @param perPoint unknowns of a point
   * @param elements the points of all elements, one element after another
   * @param perElement points of an element
   * @param held for each unknown whether it is held at zero
   * @param last points that are eliminated last, and of their unknowns the first of each point
   *     after all others: what is asked about them then takes the least work
   */
  SparseSystem(
      double[] x,
      double[] y,
      int perPoint,
      int[] elements,
      int perElement,
      boolean[] held,
      int[] last) {
    this.perPoint = perPoint;
    this.perElement = perElement;
    this.elements = elements;
    int points = x.length;
    int[] start = new int[points + 1];
    int[] neighbours = neighbours(points, start);
    parts = Dissection.parts(x, y, start, neighbours, last);
    row = new int[points * perPoint];
    int[] partOf = new int[points];
    int[] place = new int[points];
    int next = 0;
    int at = 0;
    for (int k = 0; k < parts.size(); k++) {
      int[] here = parts.get(k).points();
      boolean asked = last.length > 0 && k == parts.size() - 1;
      for (int p : here) {
        partOf[p] = k;
        place[p] = at++;
        next = number(held, perPoint * p + (asked ? 1 : 0), perPoint * (p + 1), next);
      }
      for (int p : asked ? here : new int[0]) {
        next = number(held, perPoint * p, perPoint * p + 1, next);
      }
    }
    free = next;
    own = new int[parts.size()];
    rows = fronts(start, neighbours, place, partOf);
    taken = taken(partOf, place);
  }

  /** Numbers unknowns, and gives the next number. */
  private int number(boolean[] held, int from, int to, int first) {
    int next = first;
    for (int u = from; u < to; u++) {
      row[u] = held[u] ? -1 : next++;
    }
    return next;
  }

  /** The points that share an element with each point, without itself. */
  private int[] neighbours(int points, int[] start) {
    int count = elements.length / perElement;
    int[] first = new int[points + 1];
    for (int p : elements) {
      first[p + 1]++;
    }
    for (int p = 0; p < points; p++) {
      first[p + 1] += first[p];
    }
    int[] about = new int[elements.length];
    int[] fill = Arrays.copyOf(first, points);
    for (int e = 0; e < count; e++) {
      for (int i = 0; i < perElement; i++) {
        about[fill[elements[perElement * e + i]]++] = e;
      }
    }
    int[] found = new int[elements.length * perElement];
    int[] seen = new int[points];
    int n = 0;
    for (int p = 0; p < points; p++) {
      seen[p] = p + 1;
      for (int k = first[p]; k < first[p + 1]; k++) {
        for (int i = 0; i < perElement; i++) {
          int q = elements[perElement * about[k] + i];
          if (seen[q] != p + 1) {
            seen[q] = p + 1;
            found[n++] = q;
          }
        }
      }
      start[p + 1] = n;
    }
    return Arrays.copyOf(found, n);
  }

  private int[][] fronts(int[] start, int[] neighbours, int[] place, int[] partOf) {
    int[] pointAt = new int[place.length];
    for (int p = 0; p < place.length; p++) {
      pointAt[place[p]] = p;
    }
    int[][] later = new int[parts.size()][];
    int[][] result = new int[parts.size()][];
    int[] seen = new int[place.length];
    int[] found = new int[place.length];
    for (int k = 0; k < parts.size(); k++) {
      Dissection.Part part = parts.get(k);
      int n = 0;
      for (int p : part.points()) {
        for (int i = start[p]; i < start[p + 1]; i++) {
          int q = neighbours[i];
          if (partOf[q] > k && seen[q] != k + 1) {
            seen[q] = k + 1;
            found[n++] = place[q];
          }
        }
      }
      for (int child : part.children()) {
        for (int at : later[child]) {
          int q = pointAt[at];
          if (partOf[q] > k && seen[q] != k + 1) {
            seen[q] = k + 1;
            found[n++] = at;
          }
        }
      }
      later[k] = Arrays.copyOf(found, n);
      Arrays.sort(later[k]);
      int[] equations = new int[perPoint * (part.points().length + n)];
      int m = 0;
      for (int p : part.points()) {
        m = equations(p, equations, m);
      }
      own[k] = m;
      for (int at : later[k]) {
        m = equations(pointAt[at], equations, m);
      }
      Arrays.sort(equations, 0, own[k]);
      Arrays.sort(equations, own[k], m);
      result[k] = Arrays.copyOf(equations, m);
    }
    return result;
  }

  private int equations(int point, int[] into, int from) {
    int n = from;
    for (int u = 0; u < perPoint; u++) {
      if (row[perPoint * point + u] >= 0) {
        into[n++] = row[perPoint * point + u];
      }
    }
    return n;
  }

  /** Each element goes to the part of the first of its points that is not held. */
  private int[][] taken(int[] partOf, int[] place) {
    int count = elements.length / perElement;
    int[] where = new int[count];
    int[] size = new int[parts.size()];
    for (int e = 0; e < count; e++) {
      where[e] = -1;
      int least = Integer.MAX_VALUE;
      for (int i = 0; i < perElement; i++) {
        int p = elements[perElement * e + i];
        boolean moves = false;
        for (int u = 0; u < perPoint; u++) {
          moves |= row[perPoint * p + u] >= 0;
        }
        if (moves && place[p] < least) {
          least = place[p];
          where[e] = partOf[p];
        }
      }
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
    for (int k = 0; k < own.length; k++) {
      sum += (long) own[k] * rows[k].length - (long) own[k] * (own[k] - 1) / 2;
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

  int own(int part) {
    return own[part];
  }

  int[] taken(int part) {
    return taken[part];
  }

  int elementSize() {
    return perElement * perPoint;
  }

  int elementRow(int element, int unknown) {
    int point = elements[element * perElement + unknown / perPoint];
    return row[perPoint * point + unknown % perPoint];
  }

  int unknowns() {
    return row.length;
  }
}
