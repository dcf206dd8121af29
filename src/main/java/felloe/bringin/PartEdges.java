package felloe.bringin;

import felloe.geometry.Point;
import felloe.measure.CircleFit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

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

  /** Share of a small hole's radius that is looked at from its edge. */
  private static final double ACROSS = 1.4;

  /** A small hole whose edge leaves its circle by more is not round, mm. */
  private static final double NOT_ROUND = 0.8;

  /** Places to either side among which the wall's foot is looked for. */
  private static final int NEIGHBOURS = 12;

  /** Radius of a hole that may hide behind its own wall, mm. */
  private static final double SMALL = 12;

  /** A place that differs more from its neighbours is none of the edge, mm. */
  private static final double APART = 0.35;

  private static final double ASTRAY = 0.2;

  /** Weights of thirteen places in the middle of their parabola, from the middle on, of 143. */
  private static final int[] PARABOLA = {25, 24, 21, 16, 9, 0, -11};

  /** Pixels beyond the steps that a row of values takes in: more would reach other edges. */
  private static final double BEYOND = 3;

  /** How much darker than the face a wall is, before anything is seen of it; an assumption. */
  private static final double WALL_DARKER = 0.3;

  /** How much a wall's shade that is guessed, and one that was seen, is believed. */
  private static final double GUESSED = 0.05;

  private static final double SEEN = 0.3;

  private final Light light;
  private final Camera camera;
  private final double thickness;
  private final double blur;
  private final double[] stands;
  private final List<Double> walls = new ArrayList<>();
  private double darker = WALL_DARKER;
  private double held = GUESSED;

  private PartEdges(Light light, Camera camera, double thickness, double blur) {
    this.light = light;
    this.camera = camera;
    this.thickness = thickness;
    this.blur = blur;
    this.stands = camera.stands();
  }

  /**
   * One closed edge.
   *
   * @param points mm on the plane of the paper, the part to their left
   * @param rough how far a point lies from its neighbours' line, standard deviation, mm
   * @param found share of the places at which the edge was found
   */
  record Edge(List<Point> points, double rough, double found) {}

  static List<Edge> of(
      Light light, Camera camera, double thickness, double blur, List<List<Point>> coarse) {
    PartEdges edges = new PartEdges(light, camera, thickness, blur);
    List<Edge> first = new ArrayList<>();
    for (List<Point> line : coarse) {
      first.add(edges.refined(even(edges.whole(smooth(line))), COARSE));
    }
    if (edges.walls.size() > 10) {
      double[] sorted = edges.walls.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      edges.darker = Math.max(-1, Math.min(1, sorted[sorted.length / 2]));
      edges.held = SEEN;
    }
    List<Edge> all = new ArrayList<>();
    for (Edge edge : first) {
      Edge second = edges.refined(even(fair(rounded(edge.points()))), COARSE);
      Edge third = edges.refined(even(fair(rounded(second.points()))), FINE);
      Edge last = edges.refined(even(fair(rounded(third.points()))), FINE);
      all.add(new Edge(rounded(last.points()), last.rough(), last.found()));
    }
    return all;
  }

  /**
   * A small round hole whose wall hides a part of it, as the circle that it is: what is seen of the
   * ground through it is what two circles share, the upper one and the lower one.
   */
  private List<Point> whole(List<Point> line) {
    double area = EdgeTrace.area(line);
    if (area > 0 || area < -SMALL * SMALL * Math.PI) {
      return line;
    }
    Point middle = Point.ORIGIN;
    for (Point p : line) {
      middle = middle.plus(p, 1.0 / line.size());
    }
    Point shift = new Point(stands[0], stands[1]).minus(middle).times(thickness / stands[2]);
    if (shift.norm() < 0.2) {
      return line;
    }
    double along = extent(line, shift.unit());
    double beside = extent(line, shift.unit().left());
    double radius = Math.hypot(beside, shift.norm()) / 2;
    boolean hidden = Math.abs(2 * radius - shift.norm() - along) < Math.abs(beside - along);
    if (!hidden) {
      return line;
    }
    Point centre = middle.plus(shift, -0.5);
    List<Point> circle = new ArrayList<>();
    for (int i = 0; i < FEWEST; i++) {
      circle.add(centre.plus(Point.polar(radius, -2 * Math.PI * i / FEWEST)));
    }
    return circle;
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

  private Edge refined(List<Point> line, double reach) {
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
          across(
              line.get(i),
              outward[i],
              most,
              reach > FINE,
              small ? radius : 0,
              wall(line, i, outward[i]));
    }
    double[] even = new double[n];
    int lost = 0;
    for (int i = 0; i < n; i++) {
      double median = median(off, i);
      boolean astray =
          Double.isNaN(off[i]) || Math.abs(off[i] - median) > (reach > FINE ? APART : ASTRAY);
      even[i] = astray ? median : off[i];
      lost += astray ? 1 : 0;
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
    return new Edge(points, Math.sqrt(squares / n / 20), 1 - lost / (double) n);
  }

  /**
   * How wide the wall looks outward of a place, mm on the plane of the upper face: up to the lower
   * edge as it is seen through that plane. Less than 0 where the upper face hides it.
   */
  private double wall(List<Point> line, int i, Point outward) {
    Point p = line.get(i);
    Point side = outward.left();
    double straight = foot(p).minus(p).dot(outward);
    double best = straight;
    double least = Double.POSITIVE_INFINITY;
    int n = line.size();
    Point a = null;
    int reach = Math.min(n / 2, NEIGHBOURS);
    for (int k = -reach; k <= reach; k++) {
      Point b = foot(line.get(Math.floorMod(i + k, n))).minus(p);
      if (a != null) {
        double sa = a.dot(side);
        double sb = b.dot(side);
        if (sa * sb <= 0 && sa != sb) {
          double t = sa / (sa - sb);
          double at = a.towards(b, t).dot(outward);
          if (Math.abs(at - straight) < least) {
            least = Math.abs(at - straight);
            best = at;
          }
        }
      }
      a = b;
    }
    return best;
  }

  /** Where the lower edge under a place is seen, on the plane of the upper face. */
  private Point foot(Point p) {
    return p.towards(new Point(stands[0], stands[1]), thickness / stands[2]);
  }

  /** The circle of a small round hole, places that are astray left out; else the line itself. */
  private static List<Point> rounded(List<Point> line) {
    double area = EdgeTrace.area(line);
    double radius = Math.sqrt(Math.abs(area) / Math.PI);
    if (area > 0 || radius > SMALL || !round(line, radius)) {
      return line;
    }
    List<Point> kept = line;
    CircleFit.Circle circle = null;
    for (int round = 0; round < 4; round++) {
      Optional<CircleFit.Circle> fitted = CircleFit.GEOMETRIC.of(kept);
      if (fitted.isEmpty()) {
        return line;
      }
      circle = fitted.get();
      CircleFit.Circle now = circle;
      double[] off = line.stream().mapToDouble(p -> off(now, p)).sorted().toArray();
      double limit = Math.max(0.05, 2.5 * off[off.length / 2]);
      kept = line.stream().filter(p -> off(now, p) <= limit).toList();
    }
    double out = kept.stream().mapToDouble(PartEdges.offFrom(circle)).max().orElse(0);
    if (out > NOT_ROUND || kept.size() < line.size() / 2) {
      return line;
    }
    List<Point> all = new ArrayList<>();
    for (int i = 0; i < FEWEST; i++) {
      all.add(circle.centre().plus(Point.polar(circle.radius(), -2 * Math.PI * i / FEWEST)));
    }
    return all;
  }

  private static ToDoubleFunction<Point> offFrom(CircleFit.Circle circle) {
    return p -> off(circle, p);
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

  /** How far outward of a place the edge lies, mm; NaN where none is found. */
  private double across(
      Point p, Point outward, double reach, boolean coarse, double radius, double wall) {
    double[] growth = camera.growth(p, thickness);
    double du = growth[0] * outward.x() + growth[1] * outward.y();
    double dv = growth[2] * outward.x() + growth[3] * outward.y();
    double perMm = Math.hypot(du, dv);
    Point tangent = outward.left();
    double second = Math.max(0, wall);
    double step = 0.5 / perMm;
    // The coarse line may follow the wall's foot.
    double back = coarse ? reach + Math.min(second, 2 * reach) : reach;
    int inside = (int) Math.ceil((back + BEYOND / perMm) / step);
    int outside = (int) Math.ceil((reach + second + BEYOND / perMm) / step);
    if (radius > 0) {
      // Not so far that the hole's other side comes in.
      outside = Math.min(outside, (int) (ACROSS * radius / step));
    }
    double[] values = new double[inside + outside + 1];
    double[] pixel = new double[2];
    for (int i = -inside; i <= outside; i++) {
      double sum = 0;
      for (int j = -1; j <= 1; j++) {
        Point at = p.plus(outward, i * step).plus(tangent, j / perMm);
        camera.project(at.x(), at.y(), thickness, pixel);
        if (!light.holds(pixel[0], pixel[1], 2)) {
          return Double.NaN;
        }
        sum += light.at(pixel[0], pixel[1]);
      }
      values[i + inside] = sum / 3;
    }
    EdgeFit.Found found =
        EdgeFit.strongest(
            values,
            -inside * step,
            step,
            -back,
            reach,
            new EdgeFit.Steps(second, darker, held, blur / perMm, !coarse));
    if (found.well() && second * perMm > 3) {
      walls.add(found.wall());
    }
    return found.at();
  }
}
