package felloe.load;

import java.util.Arrays;
import java.util.List;

/**
 * How the points of elements meet, and in which order they are best eliminated: laid out once for
 * all systems over them. Its arrays are not to be changed.
 *
 * @param perPoint unknowns of a point
 * @param elements the points of all elements, one element after another
 * @param perElement points of an element
 * @param start where the neighbours of each point start; one entry more than points
 * @param neighbours the points that share an element with each point, without itself
 * @param parts in their order, see {@link Dissection}
 */
record MeshOrder(
    int perPoint,
    int[] elements,
    int perElement,
    int[] start,
    int[] neighbours,
    List<Dissection.Part> parts) {

  /**
   * Finds the order.
   *
   * @param x abscissas of the points
   * @param y ordinates of the points
   */
  static MeshOrder of(double[] x, double[] y, int perPoint, int[] elements, int perElement) {
    int[] start = new int[x.length + 1];
    int[] neighbours = neighbours(x.length, elements, perElement, start);
    List<Dissection.Part> parts = List.copyOf(Dissection.parts(x, y, start, neighbours));
    return new MeshOrder(perPoint, elements, perElement, start, neighbours, parts);
  }

  /** The points that share an element with each point, without itself. */
  private static int[] neighbours(int points, int[] elements, int perElement, int[] start) {
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
}
