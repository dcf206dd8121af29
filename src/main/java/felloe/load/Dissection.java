package felloe.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Parts of points in which a sparse factor stays small: the plane is cut in two, both halves come
 * before the points that part them, and so on within each half. The parts make a tree, whose root
 * comes last.
 *
 * <p>Source: George, Nested dissection of a regular finite element mesh, SIAM J. Numer. Anal. 10
 * (1973) 345, from memory; the cut is by place, which meshes in the plane allow.
 */
final class Dissection {

  /** Parts this small are left as they are. */
  private static final int SMALL = 20;

  /**
   * A part.
   *
   * @param points that are its own
   * @param children numbers of the parts that come just before it in its tree
   */
  record Part(int[] points, int[] children) {}

  private final double[] x;
  private final double[] y;
  private final int[] start;
  private final int[] neighbours;
  private final byte[] side;
  private final List<Part> parts = new ArrayList<>();

  private Dissection(double[] x, double[] y, int[] start, int[] neighbours) {
    this.x = x;
    this.y = y;
    this.start = start;
    this.neighbours = neighbours;
    this.side = new byte[x.length];
  }

  /**
   * The parts, children before parents, the root last.
   *
   * @param start where the neighbours of each point start; one entry more than points
   * @param neighbours the neighbours of all points
   */
  static List<Part> parts(double[] x, double[] y, int[] start, int[] neighbours) {
    Dissection dissection = new Dissection(x, y, start, neighbours);
    dissection.part(IntStream.range(0, x.length).toArray());
    return dissection.parts;
  }

  private int part(int[] points) {
    Cut cut = points.length <= SMALL ? null : cut(points);
    if (cut == null || cut.low.length == 0 || cut.high.length == 0) {
      return leaf(points);
    }
    int one = part(cut.low);
    int two = part(cut.high);
    parts.add(new Part(cut.between, new int[] {one, two}));
    return parts.size() - 1;
  }

  /** Points on both sides of a cut, and those that part them. */
  private record Cut(int[] low, int[] high, int[] between) {}

  /** Stands by itself, so that Java does not compile it into itself where it is called again. */
  private Cut cut(int[] points) {
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
    return new Cut(
        Arrays.copyOf(low, lows), Arrays.copyOf(high, highs), Arrays.copyOf(between, betweens));
  }

  private int leaf(int[] points) {
    parts.add(new Part(points, new int[0]));
    return parts.size() - 1;
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
