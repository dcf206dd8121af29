package felloe.bringin;

import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.measure.CircleFit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The part's upper edges to part of a pixel. Along each coarse line, every millimetre, a row of
 * values across it is fitted by steps of the photo's own blur. Where the camera sees the part's
 * wall, how wide the wall looks is known from the thickness, and both of its edges are fitted.
 */
final class PartEdges {

  /** Between places along a line, mm; a small hole has at least {@link #FEWEST}. */
  private static final double EVERY = 1;

  private static final int FEWEST = 32;

  /** How far the coarse line may lie from the edge, mm: its wall and its shadow mislead it. */
  private static final double COARSE = 2.5;

  private static final double FINE = 0.8;

  /** How far from a chain the edge is looked for, mm, each time once more. */
  private static final double[] REACHES = {0.8, 0.6, 0.5};

  /** The same where corners were rounded to see whether they are. */
  private static final double ROUNDED = 1.2;

  /** Neighbours err together, so that the whole spread is more than what they differ by. */
  private static final double TOGETHER = 2.5;

  private static final double LEAST_SPREAD = 0.03;

  /** A small hole whose edge leaves its circle by more is not round, mm. */
  private static final double NOT_ROUND = 0.8;

  /** Radius of a hole that is looked at as a whole, mm. */
  static final double SMALL = 12;

  /**
   * Radius of a hole of whose ground so little is seen that it is measured as a whole, mm; on the
   * ground in wider ones lies the shadow of their edge.
   */
  private static final double DEEP = 4.6;

  /** So many places in a row that lie so far off a chain, mm, make it doubtful there. */
  private static final int IN_A_ROW = 3;

  private static final double OFF_CHAIN = 0.6;

  /**
   * What a chain is left off its edge is told from here on, mm: less is what shade and shadow do.
   */
  private static final double MATTERS = 0.3;

  /** By how much the scale of what belongs to one stretch is changed where a chain goes astray. */
  private static final double[] OTHERWISE = {0.6, 1.6, 2.5};

  /** A place that differs more from its neighbours is none of the edge, mm. */
  private static final double APART = 0.35;

  private static final double ASTRAY = 0.2;

  /** Weights of thirteen places in the middle of their parabola, from the middle on, of 143. */
  private static final int[] PARABOLA = {25, 24, 21, 16, 9, 0, -11};

  private final EdgeRow row;
  private final Camera camera;
  private final double thickness;

  private PartEdges(Light light, Camera camera, double thickness, double blur) {
    this.row = new EdgeRow(light, camera, thickness, blur);
    this.camera = camera;
    this.thickness = thickness;
  }

  /** Places along an edge, the part to their left, and how far one lies from its neighbours. */
  private record Places(List<Point> points, double rough) {}

  /** Edges as chains, in the order of the coarse lines; where none closes there is none. */
  static List<Optional<EdgeChain>> of(
      Light light, Camera camera, double thickness, double blur, List<List<Point>> coarse) {
    PartEdges edges = new PartEdges(light, camera, thickness, blur);
    HoleFit holes = new HoleFit(light, camera, thickness, blur);
    List<Optional<EdgeChain>> all = new ArrayList<>();
    List<Places> first = new ArrayList<>();
    for (List<Point> line : coarse) {
      double area = EdgeTrace.area(line);
      HoleFit.Hole hole = area < 0 && -area < SMALL * SMALL * Math.PI ? holes.of(line) : null;
      boolean round = hole != null && hole.well();
      boolean whole = round && hole.radius() < DEEP;
      all.add(whole ? Optional.of(EdgeChain.hole(hole)) : Optional.empty());
      List<Point> start = round ? EdgeChain.hole(hole).places() : smooth(line);
      first.add(whole ? null : edges.refined(even(start), COARSE));
    }
    edges.row.learn();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).isEmpty()) {
        Places second = edges.refined(even(fair(first.get(i).points())), COARSE);
        Places third = edges.refined(even(fair(second.points())), FINE);
        all.set(i, edges.chain(third).map(chain -> edges.doubted(chain, third.points())));
      }
    }
    return all;
  }

  /** Told where it lies farthest off what was seen, along itself or before there was a chain. */
  private EdgeChain doubted(EdgeChain chain, List<Point> before) {
    EdgeChain held = held(chain, before);
    Optional<EdgeChain.Astray> left =
        RowsOff.of(chain, edge(chain, REACHES[0]))
            .filter(astray -> astray.off() > MATTERS)
            .filter(astray -> held.astray().map(a -> a.off() < astray.off()).orElse(true));
    return left.map(held::doubted).orElse(held);
  }

  /** Told where a few places in a row, as they were seen before the chain was made, lie off it. */
  static EdgeChain held(EdgeChain chain, List<Point> seen) {
    if (chain.round()) {
      return chain;
    }
    List<Segment> segments = chain.segments();
    EdgeChain.Astray worst = null;
    int row = 0;
    for (int i = 0; i < seen.size() + IN_A_ROW; i++) {
      Point p = seen.get(i % seen.size());
      double off = ChainChoice.off(segments, p);
      row = off > OFF_CHAIN ? row + 1 : 0;
      if (row >= IN_A_ROW && (worst == null || off > worst.off())) {
        worst = new EdgeChain.Astray(p, off);
      }
    }
    return worst == null ? chain : chain.doubted(worst);
  }

  private Optional<EdgeChain> chain(Places places) {
    List<Point> points = places.points();
    double spread = Math.max(LEAST_SPREAD, TOGETHER * places.rough());
    Optional<EdgeChain> first =
        circle(points)
            .map(c -> EdgeChain.circle(c.centre(), c.radius(), EdgeTrace.area(points) < 0))
            .or(() -> StretchesJoined.of(points, EdgeStretches.of(points, spread), spread))
            .map(chain -> measured(chain, REACHES[0]));
    if (first.isEmpty()) {
      return first;
    }
    List<EdgeChain> begun = new ArrayList<>(List.of(circled(first.get())));
    if (!first.get().round()) {
      // One circle may be right where a stretch of its wall, as light as the face, is taken for
      // more.
      wide(points).map(chain -> measured(chain, REACHES[0])).ifPresent(begun::add);
      // Cut once more, now that each place knows how wide the wall looks there.
      List<Point> once =
          edge(first.get(), REACHES[0]).stream().map(EdgeChain.Measured::at).toList();
      Optional<EdgeChain> second =
          StretchesJoined.of(once, EdgeStretches.of(once, spread), spread)
              .map(chain -> circled(measured(chain, REACHES[0])));
      if (second.isEmpty()) {
        // An edge along which so little is seen is none.
        return second;
      }
      begun.add(second.get());
    }
    // Either may be the better one: a place that is astray can lead both ways of cutting astray.
    List<EdgeChain> tried = new ArrayList<>();
    begun.forEach(begin -> tried.addAll(settledWays(begin)));
    EdgeChain best = best(tried, points);
    if (held(best, points).astray().isPresent()) {
      // Cut otherwise, finer and more coarsely, one of them may hold to all that was seen.
      for (double other : OTHERWISE) {
        StretchesJoined.of(points, EdgeStretches.of(points, other * spread), other * spread)
            .map(chain -> circled(measured(chain, REACHES[0])))
            .ifPresent(begin -> tried.addAll(settledWays(begin)));
      }
      best = best(tried, points);
    }
    EdgeChain round = circled(best);
    return Optional.of(round.round() && !best.round() ? measured(round, REACHES[2]) : best);
  }

  /** How wide the wall under a place looks at most, mm. */
  private double wall(Point p) {
    return p.distance(row.foot(p));
  }

  /**
   * Settled, as it is and with arcs for lines that cut corners; and as it was cut, since looking
   * whether corners are round can lose one that is.
   */
  private List<EdgeChain> settledWays(EdgeChain begin) {
    EdgeChain uncut = ChainShape.uncut(begin);
    List<EdgeChain> ways = new ArrayList<>(List.of(settled(begin), measured(begin, REACHES[2])));
    if (uncut != begin) {
      ways.add(settled(uncut));
    }
    return ways;
  }

  private EdgeChain best(List<EdgeChain> chains, List<Point> before) {
    return ChainChoice.of(
        chains,
        chains.stream().map(c -> edge(c, REACHES[0])).toList(),
        before,
        OFF_CHAIN,
        this::wall);
  }

  /** With its corners as the photo has them. */
  private EdgeChain settled(EdgeChain begin) {
    EdgeChain near = measured(measured(ChainShape.rounded(begin), ROUNDED), REACHES[1]);
    return measured(ChainShape.sharpened(near), REACHES[2]);
  }

  private EdgeChain circled(EdgeChain chain) {
    return chain.round() ? chain : ChainShape.circled(chain, edge(chain, REACHES[0]));
  }

  /** Fitted to the edge as the photo has it along the chain itself. */
  private EdgeChain measured(EdgeChain chain, double reach) {
    List<EdgeChain.Measured> found = edge(chain, reach);
    int looked = (int) chain.sites().stream().filter(EdgeChain.Site::counts).count();
    EdgeChain fitted = ChainShape.tidied(chain, ChainFit.of(chain, found, looked));
    return ChainShape.simplified(fitted, found);
  }

  private List<EdgeChain.Measured> edge(EdgeChain chain, double reach) {
    List<EdgeChain.Site> sites = chain.sites();
    List<Point> line = chain.places();
    double radius = chain.round() && sites.get(0).bend() < 0 ? chain.radius() : SMALL;
    double small = radius < SMALL ? radius : 0;
    double most = small > 0 ? Math.min(reach, 0.4 * radius) : reach;
    List<EdgeChain.Measured> found = new ArrayList<>();
    for (int i = 0; i < sites.size(); i++) {
      EdgeChain.Site site = sites.get(i);
      if (site.counts()) {
        int k = site.stretch();
        row.edge(line, i, site, most, small)
            .ifPresent(at -> found.add(new EdgeChain.Measured(k, at)));
      }
    }
    return chain.inOrder(found);
  }

  private static boolean round(List<Point> line, double radius) {
    Point up = new Point(0, 1);
    double high = extent(line, up);
    double wide = extent(line, up.right());
    return Math.max(high, wide) < 2 * radius * 1.35 && Math.min(high, wide) > 2 * radius / 1.35;
  }

  private static double extent(List<Point> line, Point direction) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Point p : line) {
      low = Math.min(low, p.dot(direction));
      high = Math.max(high, p.dot(direction));
    }
    return high - low;
  }

  /** A line of squares without its steps. */
  private static List<Point> smooth(List<Point> line) {
    int n = line.size();
    int reach = Math.min(4, n / 12);
    List<Point> all = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point sum = Point.ORIGIN;
      for (int k = -reach; k <= reach; k++) {
        sum = sum.plus(line.get(Math.floorMod(i + k, n)));
      }
      all.add(sum.times(1.0 / (2 * reach + 1)));
    }
    return all;
  }

  /**
   * A line from which to look for its edge anew: each place by the parabola through thirteen (A.
   * Savitzky and M. Golay, 1964), so that one that is astray leads none of its neighbours astray.
   */
  private static List<Point> fair(List<Point> line) {
    int n = line.size();
    List<Point> all = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point sum = Point.ORIGIN;
      for (int k = 1 - PARABOLA.length; k < PARABOLA.length; k++) {
        sum = sum.plus(line.get(Math.floorMod(i + k, n)), PARABOLA[Math.abs(k)] / 143.0);
      }
      all.add(sum);
    }
    return all;
  }

  /** The same line by points that lie evenly along it. */
  private static List<Point> even(List<Point> line) {
    int n = line.size();
    double[] along = new double[n + 1];
    for (int i = 0; i < n; i++) {
      along[i + 1] = along[i] + line.get(i).distance(line.get((i + 1) % n));
    }
    int count = Math.max(FEWEST, (int) Math.round(along[n] / EVERY));
    List<Point> all = new ArrayList<>();
    int at = 0;
    for (int i = 0; i < count; i++) {
      double target = along[n] * i / count;
      while (along[at + 1] <= target) {
        at++;
      }
      double t = (target - along[at]) / (along[at + 1] - along[at]);
      all.add(line.get(at).towards(line.get((at + 1) % n), t));
    }
    return all;
  }

  private Places refined(List<Point> line, double reach) {
    int n = line.size();
    double area = EdgeTrace.area(line);
    double radius = Math.sqrt(Math.abs(area) / Math.PI);
    boolean small = area < 0 && radius < SMALL && round(line, radius);
    // A hole's edge is not looked for beyond its middle.
    double most = Math.min(reach, 0.4 * radius);
    Point[] outward = new Point[n];
    double[] off = new double[n];
    for (int i = 0; i < n; i++) {
      Point chord = line.get((i + 2) % n).minus(line.get(Math.floorMod(i - 2, n)));
      outward[i] = chord.norm() > 0 ? chord.unit().right() : Point.ORIGIN;
      off[i] =
          row.across(
              line.get(i),
              outward[i],
              most,
              reach > FINE,
              small ? EdgeRow.clear(radius) : row.clear(line, i, outward[i]),
              row.wall(line, i, outward[i]));
    }
    double[] even = new double[n];
    for (int i = 0; i < n; i++) {
      double median = median(off, i);
      boolean astray =
          Double.isNaN(off[i]) || Math.abs(off[i] - median) > (reach > FINE ? APART : ASTRAY);
      even[i] = astray ? median : off[i];
    }
    List<Point> points = new ArrayList<>();
    double squares = 0;
    for (int i = 0; i < n; i++) {
      points.add(line.get(i).plus(outward[i], even[i]));
    }
    for (int i = 0; i < n; i++) {
      // Third differences: a bend does not count. Their variance is 20 times a point's.
      double d = even[(i + 3) % n] - 3 * even[(i + 2) % n] + 3 * even[(i + 1) % n] - even[i];
      squares += Math.min(d * d, 20 * APART * APART);
    }
    return new Places(points, Math.sqrt(squares / n / 20));
  }

  /** A small hole's circle. */
  private static Optional<CircleFit.Circle> circle(List<Point> line) {
    double area = EdgeTrace.area(line);
    double radius = Math.sqrt(Math.abs(area) / Math.PI);
    return area > 0 || radius > SMALL ? Optional.empty() : fitted(line, radius);
  }

  /** One circle for all of an edge that is nearly round, a first guess among others. */
  private static Optional<EdgeChain> wide(List<Point> line) {
    double area = EdgeTrace.area(line);
    return fitted(line, Math.sqrt(Math.abs(area) / Math.PI))
        .map(c -> EdgeChain.circle(c.centre(), c.radius(), area < 0));
  }

  private static Optional<CircleFit.Circle> fitted(List<Point> line, double radius) {
    if (!round(line, radius)) {
      return Optional.empty();
    }
    List<Point> kept = line;
    CircleFit.Circle circle = null;
    for (int round = 0; round < 4; round++) {
      Optional<CircleFit.Circle> fitted = CircleFit.GEOMETRIC.of(kept);
      if (fitted.isEmpty()) {
        return fitted;
      }
      circle = fitted.get();
      CircleFit.Circle now = circle;
      double[] off = line.stream().mapToDouble(p -> off(now, p)).sorted().toArray();
      double limit = Math.max(0.05, 2.5 * off[off.length / 2]);
      kept = line.stream().filter(p -> off(now, p) <= limit).toList();
    }
    CircleFit.Circle last = circle;
    double out = kept.stream().mapToDouble(p -> off(last, p)).max().orElse(0);
    return out > NOT_ROUND || kept.size() < line.size() / 2 ? Optional.empty() : Optional.of(last);
  }

  private static double off(CircleFit.Circle circle, Point p) {
    return Math.abs(p.distance(circle.centre()) - circle.radius());
  }

  private static double median(double[] off, int i) {
    double[] near = new double[9];
    int count = 0;
    for (int k = -4; k <= 4; k++) {
      double value = off[Math.floorMod(i + k, off.length)];
      if (!Double.isNaN(value)) {
        near[count++] = value;
      }
    }
    if (count == 0) {
      return 0;
    }
    double[] sorted = Arrays.copyOf(near, count);
    Arrays.sort(sorted);
    return (sorted[count / 2] + sorted[(count - 1) / 2]) / 2;
  }
}
