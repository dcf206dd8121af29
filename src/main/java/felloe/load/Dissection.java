package felloe.load;

import java.util.Arrays;

/**
 * An order of points in which a sparse factor stays small: the plane is cut in two, both halves
 * come before the points that part them, and so on within each half.
 *
 * <p>Source: George, Nested dissection of a regular finite element mesh, SIAM J. Numer. Anal. 10
 * (1973) 345, from memory; the cut is by place, which meshes in the plane allow.
 */
final class Dissection {

  /** Parts this small are left as they are. */
  private static final int SMALL = 16;

  private final double[] x;
  private final double[] y;
  private final int[] start;
  private final int[] neighbours;
  private final int[] order;
  private final byte[] side;
  private int next;

  private Dissection(double[] x, double[] y, int[] start, int[] neighbours) {
    this.x = x;
    this.y = y;
    this.start = start;
    this.neighbours = neighbours;
    this.order = new int[x.length];
    this.side = new byte[x.length];
  }

  /**
   * The points in their order.
   *
   * @param start where the neighbours of each point start; one entry more than points
   * @param neighbours the neighbours of all points
   */
  static int[] order(double[] x, double[] y, int[] start, int[] neighbours) {
    Dissection dissection = new Dissection(x, y, start, neighbours);
    int[] all = new int[x.length];
    Arrays.setAll(all, i -> i);
    dissection.part(all);
    return dissection.order;
  }

  private void part(int[] points) {
    if (points.length <= SMALL) {
      for (int p : points) {
        order[next++] = p;
      }
      return;
    }
    double[] along = wider(points);
    double cut = middle(points, along);
    for (int p : points) {
      side[p] = (byte) (along[p] < cut ? 1 : 2);
    }
    int[] low = new int[points.length];
    int[] high = new int[points.length];
    int[] between = new int[points.length];
    int lows = 0;
    int highs = 0;
    int betweens = 0;
    for (int p : points) {
      if (side[p] == 1) {
        low[lows++] = p;
      } else if (touchesLow(p)) {
        between[betweens++] = p;
      } else {
        high[highs++] = p;
      }
    }
    for (int p : points) {
      side[p] = 0;
    }
    if (lows == 0 || highs == 0) {
      for (int p : points) {
        order[next++] = p;
      }
      return;
    }
    part(Arrays.copyOf(low, lows));
    part(Arrays.copyOf(high, highs));
    for (int i = 0; i < betweens; i++) {
      order[next++] = between[i];
    }
  }

  private boolean touchesLow(int point) {
    for (int i = start[point]; i < start[point + 1]; i++) {
      if (side[neighbours[i]] == 1) {
        return true;
      }
    }
    return false;
  }

  private double[] wider(int[] points) {
    double minX = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (int p : points) {
      minX = Math.min(minX, x[p]);
      maxX = Math.max(maxX, x[p]);
      minY = Math.min(minY, y[p]);
      maxY = Math.max(maxY, y[p]);
    }
    return maxX - minX >= maxY - minY ? x : y;
  }

  private static double middle(int[] points, double[] along) {
    double[] places = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      places[i] = along[points[i]];
    }
    Arrays.sort(places);
    return places[places.length / 2];
  }
}
