package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts measured places along a closed edge into the fewest lines and arcs that they lie on: of all
 * ways to cut the one with the least sum of squares, each stretch with a price of its own (dynamic
 * programming, as R. Bellman fitted curves by segments, 1961). Places that lie on neither, such as
 * those beside a shadow or in a corner that blur has rounded, may be left to nobody.
 */
final class EdgeStretches {

  /** What a stretch costs, in squares of the spread: what a chance bend would gain is less. */
  private static final double PRICE = 16;

  /** What an arc costs more than a line: one more figure. */
  private static final double ARC_MORE = 6;

  /** What a place costs that is left to nobody. */
  private static final double NOBODY = 7;

  /** Fewest places on a line and on an arc. */
  private static final int ON_LINE = 4;

  private static final int ON_ARC = 6;

  /** More places in a row than this are not left to nobody. */
  private static final int MOST_LOST = 26;

  /** Arcs flatter than this are lines, mm; and sharper ones are corners. */
  private static final double FLATTEST = 5_000;

  private static final double SHARPEST = 1.0;

  private final List<Point> places;
  private final double spread;
  private final int n;

  /** Sums up to each place: x, y, xx, xy, yy, xz, yz, zz with z = xx + yy. */
  private final double[][] sums;

  private EdgeStretches(List<Point> places, double spread) {
    this.places = places;
    this.spread = spread;
    this.n = places.size();
    sums = new double[n + 1][8];
    for (int i = 0; i < n; i++) {
      double x = places.get(i).x();
      double y = places.get(i).y();
      double z = x * x + y * y;
      double[] own = {x, y, x * x, x * y, y * y, x * z, y * z, z * z};
      for (int k = 0; k < own.length; k++) {
        sums[i + 1][k] = sums[i][k] + own[k];
      }
    }
  }

  /** What a stretch is of. */
  enum Kind {
    LINE,
    ARC,
    NOBODY
  }

  /**
   * A stretch.
   *
   * @param from first place
   * @param to the place after its last one; beyond the number of places where it runs over the
   *     start
   */
  record Stretch(Kind kind, int from, int to) {}

  /**
   * Cuts.
   *
   * @param places in order, the last one beside the first
   * @param spread standard deviation of a place across the edge, mm
   */
  static List<Stretch> of(List<Point> places, double spread) {
    // Sums of fourth powers keep their digits about the middle.
    Point middle = Point.ORIGIN;
    for (Point p : places) {
      middle = middle.plus(p, 1.0 / places.size());
    }
    List<Point> about = new ArrayList<>();
    for (Point p : places) {
      about.add(p.minus(middle));
    }
    int n = about.size();
    // Begun anywhere at first, then where a long stretch ends.
    int start = 0;
    List<Stretch> all = List.of();
    for (int round = 0; round < 2; round++) {
      List<Point> turned = new ArrayList<>(about.subList(start, n));
      turned.addAll(about.subList(0, start));
      all = new ArrayList<>();
      Stretch longest = null;
      for (Stretch s : new EdgeStretches(turned, spread).cut()) {
        all.add(new Stretch(s.kind(), s.from() + start, s.to() + start));
        boolean inner = s.to() < n;
        if (inner && (longest == null || s.to() - s.from() > longest.to() - longest.from())) {
          longest = s;
        }
      }
      if (longest != null && round == 0) {
        start = longest.to() % n;
      }
    }
    return all;
  }

  private List<Stretch> cut() {
    double[] cost = new double[n + 1];
    int[] from = new int[n + 1];
    Kind[] kinds = new Kind[n + 1];
    java.util.Arrays.fill(cost, Double.POSITIVE_INFINITY);
    cost[0] = 0;
    double[] m = new double[8];
    for (int i = 0; i < n; i++) {
      boolean line = true;
      for (int j = i + 1; j <= n; j++) {
        int count = j - i;
        if (count <= MOST_LOST) {
          better(cost, from, kinds, i, j, PRICE / 2 + NOBODY * count, Kind.NOBODY);
        }
        if (count < ON_LINE) {
          continue;
        }
        moments(i, j, m);
        double off = Double.POSITIVE_INFINITY;
        if (line) {
          off = line(m) * count / (spread * spread);
          better(cost, from, kinds, i, j, PRICE + off, Kind.LINE);
          line = off < hopeless(count);
        }
        if (count >= ON_ARC && off > 1) {
          double arc = arc(m) * count / (spread * spread);
          better(cost, from, kinds, i, j, PRICE + ARC_MORE + arc, Kind.ARC);
          off = Math.min(off, arc);
        }
        // A longer stretch lies no better.
        if (count >= 2 * ON_ARC && off > hopeless(count)) {
          break;
        }
      }
    }
    List<Stretch> all = new ArrayList<>();
    for (int at = n; at > 0; at = from[at]) {
      all.add(0, new Stretch(kinds[at], from[at], at));
    }
    return all;
  }

  private static double hopeless(int count) {
    return 200 + NOBODY * count;
  }

  private static void better(
      double[] cost, int[] from, Kind[] kinds, int i, int j, double more, Kind kind) {
    if (cost[i] + more < cost[j]) {
      cost[j] = cost[i] + more;
      from[j] = i;
      kinds[j] = kind;
    }
  }

  /** Means of places i to j about their own middle: xx, xy, yy, xz, yz, zz, z. */
  private void moments(int i, int j, double[] m) {
    double c = j - i;
    double[] a = sums[i];
    double[] b = sums[j];
    double mx = (b[0] - a[0]) / c;
    double my = (b[1] - a[1]) / c;
    double xx = (b[2] - a[2]) / c;
    double xy = (b[3] - a[3]) / c;
    double yy = (b[4] - a[4]) / c;
    double xz = (b[5] - a[5]) / c;
    double yz = (b[6] - a[6]) / c;
    double zz = (b[7] - a[7]) / c;
    double z = xx + yy;
    double mm = mx * mx + my * my;
    double cxx = xx - mx * mx;
    double cxy = xy - mx * my;
    double cyy = yy - my * my;
    // With u = x - mx and v = y - my: w = uu + vv = z - 2 mx x - 2 my y + mm.
    double w = cxx + cyy;
    double xw = xz - 2 * mx * xx - 2 * my * xy + mm * mx;
    double yw = yz - 2 * mx * xy - 2 * my * yy + mm * my;
    double ww =
        zz
            + 4 * mx * mx * xx
            + 4 * my * my * yy
            + mm * mm
            - 4 * mx * xz
            - 4 * my * yz
            + 2 * mm * z
            + 8 * mx * my * xy
            - 4 * mm * (mx * mx + my * my);
    m[0] = cxx;
    m[1] = cxy;
    m[2] = cyy;
    m[3] = xw - mx * w;
    m[4] = yw - my * w;
    m[5] = ww;
    m[6] = w;
  }

  /** Mean square distance from the best line. */
  private static double line(double[] m) {
    double half = (m[0] + m[2]) / 2;
    double root = Math.hypot((m[0] - m[2]) / 2, m[1]);
    return Math.max(0, half - root);
  }

  /** Mean square distance from the best circle (G. Taubin's, 1991, by its moments). */
  private static double arc(double[] m) {
    double mz = m[6];
    double cov = m[0] * m[2] - m[1] * m[1];
    double var = m[5] - mz * mz;
    double a3 = 4 * mz;
    double a2 = -3 * mz * mz - m[5];
    double a1 = var * mz + 4 * cov * mz - m[3] * m[3] - m[4] * m[4];
    double a0 = m[3] * (m[3] * m[2] - m[4] * m[1]) + m[4] * (m[4] * m[0] - m[3] * m[1]) - var * cov;
    double x = 0;
    double y = a0;
    for (int round = 0; round < 30; round++) {
      double slope = a1 + x * (2 * a2 + 3 * a3 * x);
      double next = x - y / slope;
      if (next == x || Double.isNaN(next) || Double.isInfinite(next)) {
        break;
      }
      double there = a0 + next * (a1 + next * (a2 + next * a3));
      if (Math.abs(there) >= Math.abs(y)) {
        break;
      }
      x = next;
      y = there;
    }
    double det = x * x - x * mz + cov;
    double cx = (m[3] * (m[2] - x) - m[4] * m[1]) / det / 2;
    double cy = (m[4] * (m[0] - x) - m[3] * m[1]) / det / 2;
    double rr = cx * cx + cy * cy + mz;
    if (!(rr < FLATTEST * FLATTEST) || rr < SHARPEST * SHARPEST) {
      return Double.POSITIVE_INFINITY;
    }
    // Mean of (w - 2 cx u - 2 cy v - mz)², over four times the square of the radius.
    double square =
        var
            + 4 * cx * cx * m[0]
            + 4 * cy * cy * m[2]
            + 8 * cx * cy * m[1]
            - 4 * cx * m[3]
            - 4 * cy * m[4];
    return Math.max(0, square) / (4 * rr);
  }
}
