package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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
  private static final double COARSE = 2;

  private static final double FINE = 0.8;

  /** A place that differs more from its neighbours is none of the edge, mm. */
  private static final double APART = 0.35;

  /** Pixels beyond the steps that a row of values takes in: more would reach other edges. */
  private static final double BEYOND = 3;

  /** Without anything seen of the wall: as much lighter or darker as the ground is, halfway. */
  private static final double WALL_SHARE = 0.5;

  private final Light light;
  private final Camera camera;
  private final double thickness;
  private final double blur;
  private final double[] stands;
  private final List<Double> walls = new ArrayList<>();
  private double share = WALL_SHARE;

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
      first.add(edges.refined(even(smooth(line)), COARSE));
    }
    if (edges.walls.size() > 10) {
      double[] sorted = edges.walls.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      edges.share = Math.max(-1, Math.min(2, sorted[sorted.length / 2]));
    }
    List<Edge> all = new ArrayList<>();
    for (Edge edge : first) {
      Edge second = edges.refined(even(edge.points()), FINE);
      all.add(edges.refined(even(second.points()), FINE));
    }
    return all;
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
    double girth = Math.abs(EdgeTrace.area(line));
    // A hole's edge is not looked for beyond its middle.
    double most = Math.min(reach, 0.4 * Math.sqrt(girth / Math.PI));
    Point[] outward = new Point[n];
    double[] off = new double[n];
    for (int i = 0; i < n; i++) {
      Point chord = line.get((i + 2) % n).minus(line.get(Math.floorMod(i - 2, n)));
      outward[i] = chord.norm() > 0 ? chord.unit().right() : Point.ORIGIN;
      off[i] = across(line.get(i), outward[i], most);
    }
    double[] even = new double[n];
    int lost = 0;
    for (int i = 0; i < n; i++) {
      double median = median(off, i);
      boolean astray = Double.isNaN(off[i]) || Math.abs(off[i] - median) > APART;
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
      double d =
          even[(i + 3) % n] - 3 * even[(i + 2) % n] + 3 * even[(i + 1) % n] - even[i];
      squares += Math.min(d * d, 20 * APART * APART);
    }
    return new Edge(points, Math.sqrt(squares / n / 20), 1 - lost / (double) n);
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
  private double across(Point p, Point outward, double reach) {
    double[] growth = camera.growth(p, thickness);
    double du = growth[0] * outward.x() + growth[1] * outward.y();
    double dv = growth[2] * outward.x() + growth[3] * outward.y();
    double perMm = Math.hypot(du, dv);
    Point tangent = outward.left();
    // The wall's foot, seen through the plane of the upper face.
    double foot = thickness / stands[2];
    double wall =
        ((stands[0] - p.x()) * outward.x() + (stands[1] - p.y()) * outward.y()) * foot;
    double second = Math.max(0, wall);
    double step = 0.5 / perMm;
    int inside = (int) Math.ceil((reach + BEYOND / perMm) / step);
    int outside = (int) Math.ceil((reach + second + BEYOND / perMm) / step);
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
            values, -inside * step, step, -reach, reach, second, share, blur / perMm);
    if (found.well() && second * perMm > 3) {
      walls.add(found.wall());
    }
    return found.at();
  }
}
