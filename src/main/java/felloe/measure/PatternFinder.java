package felloe.measure;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.measure.CircleFit.Circle;
import felloe.measure.Pattern.Bounded;
import felloe.measure.Pattern.Spacing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * The circle through holes that were found: the geometric one, whatever their errors, so that it is
 * the circle that would be found on the true holes. Its errors follow from theirs.
 */
final class PatternFinder {

  private static final double INCH = 25.4;
  private static final double RARE = 0.01;

  /**
   * A circle whose bounds are wider than this part of it is none: the holes stand nearly in line.
   */
  private static final double VAGUE = 0.2;

  private final Adjustment adjustment;
  private final HoleAxes frame;
  private final VarianceFactor scatter;
  private final MeasurePractice practice;

  PatternFinder(
      Adjustment adjustment, HoleAxes frame, VarianceFactor scatter, MeasurePractice practice) {
    this.adjustment = adjustment;
    this.frame = frame;
    this.scatter = scatter;
    this.practice = practice;
  }

  /** The middle of the circle through points; of two it is the middle between them. */
  static Optional<Circle> circle(List<Point> points) {
    if (points.size() == 2) {
      double radius = points.get(0).distance(points.get(1)) / 2;
      return Optional.of(new Circle(points.get(0).middle(points.get(1)), radius));
    }
    return CircleFit.GEOMETRIC.of(points);
  }

  /**
   * The pattern; none for holes on one line, or so near to one that their circle is not told.
   *
   * @param even the same readings adjusted to an even ring, when that was not taken for granted and
   *     they tell one
   * @param holes as found
   */
  Optional<Pattern> pattern(Optional<Adjustment> even, List<FoundHole> holes) {
    List<Point> points = frame.points();
    Optional<Circle> found = circle(points);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Circle circle = found.get();
    double error = adjustment.standardError(diameterRow(points, circle));
    double pcd = 2 * circle.radius();
    double half = scatter.half(error);
    if (half > VAGUE * pcd) {
      return Optional.empty();
    }
    boolean assumed = adjustment.layout() instanceof Layout.EvenRing;
    double unevenness = assumed ? 0 : unevenness(points, circle);
    boolean against = even.isPresent() && speaksAgainst(even.get());
    Spacing spacing =
        assumed
            ? Spacing.ASSUMED
            : unevenness <= practice.even() || (even.isPresent() && !against)
                ? Spacing.EVEN
                : Spacing.UNEVEN;
    Optional<Bounded> evenPcd = even.filter(e -> !against).map(this::evenBounds);
    Optional<Double> size = commonSize(holes);
    return Optional.of(
        new Pattern(
            points.size(),
            pcd,
            pcd - half,
            pcd + half,
            scatter.factor() * error,
            circle.centre(),
            centreHalf(points, circle, 0),
            centreHalf(points, circle, 1),
            points.get(0).minus(circle.centre()).angle(),
            startHalf(points, circle),
            size,
            size.isPresent() ? holes.get(0).sizeError() : 0,
            spacing,
            unevenness,
            evenPcd,
            readsAs(pcd - half, pcd + half)));
  }

  /** The chance test of two nested adjustments: what the even ring costs more. */
  private boolean speaksAgainst(Adjustment even) {
    int more = even.freedom() - adjustment.freedom();
    if (more <= 0) {
      return false;
    }
    double cost = Math.max(0, even.cost() - adjustment.cost()) / Math.pow(scatter.factor(), 2);
    return 1 - new ChiSquaredDistribution(more).cumulativeProbability(cost) < RARE;
  }

  private Bounded evenBounds(Adjustment even) {
    double[] z = even.z();
    double pcd = 2 * Math.hypot(z[0], z[1]);
    double[] row = new double[z.length];
    row[0] = 4 * z[0] / pcd;
    row[1] = 4 * z[1] / pcd;
    double half = VarianceFactor.of(even).half(even.standardError(row));
    return new Bounded(pcd, pcd - half, pcd + half);
  }

  /**
   * How centre (0: x, 1: y) or diameter (2) of the circle moves with each hole: parts of x and y.
   */
  private static double[][] moves(List<Point> points, Circle circle, int which) {
    int n = points.size();
    double[] wx = new double[n];
    double[] wy = new double[n];
    if (n == 2) {
      Point along = points.get(1).minus(points.get(0)).unit();
      for (int i = 0; i < 2; i++) {
        double sign = i == 0 ? -1 : 1;
        wx[i] = which == 2 ? sign * along.x() : which == 0 ? 0.5 : 0;
        wy[i] = which == 2 ? sign * along.y() : which == 1 ? 0.5 : 0;
      }
      return new double[][] {wx, wy};
    }
    double[][] normal = new double[3][3];
    double[][] rows = new double[n][];
    for (int i = 0; i < n; i++) {
      Point out = points.get(i).minus(circle.centre()).unit();
      rows[i] = new double[] {out.x(), out.y(), 1};
      for (int a = 0; a < 3; a++) {
        for (int b = 0; b < 3; b++) {
          normal[a][b] += rows[i][a] * rows[i][b];
        }
      }
    }
    RealMatrix inverse =
        new LUDecomposition(MatrixUtils.createRealMatrix(normal)).getSolver().getInverse();
    for (int i = 0; i < n; i++) {
      double part = 0;
      for (int a = 0; a < 3; a++) {
        part += inverse.getEntry(which, a) * rows[i][a];
      }
      double times = which == 2 ? 2 : 1;
      wx[i] = times * part * rows[i][0];
      wy[i] = times * part * rows[i][1];
    }
    return new double[][] {wx, wy};
  }

  private double[] diameterRow(List<Point> points, Circle circle) {
    double[][] moves = moves(points, circle, 2);
    return frame.row(moves[0], moves[1], 0, 0);
  }

  private boolean edged() {
    return !adjustment.equations().unknowns().edges().isEmpty();
  }

  private double centreHalf(List<Point> points, Circle circle, int axis) {
    if (!edged()) {
      return 0;
    }
    double[][] moves = moves(points, circle, axis);
    double[] row = frame.row(moves[0], moves[1], 1 - axis, axis);
    return scatter.half(adjustment.standardError(row));
  }

  /** The bounds of the direction of the first hole from the centre, radians. */
  private double startHalf(List<Point> points, Circle circle) {
    if (!edged()) {
      return 0;
    }
    Point from = points.get(0).minus(circle.centre());
    double across = -from.y() / from.dot(from);
    double up = from.x() / from.dot(from);
    double[][] x = moves(points, circle, 0);
    double[][] y = moves(points, circle, 1);
    double[] wx = new double[points.size()];
    double[] wy = new double[points.size()];
    for (int i = 0; i < points.size(); i++) {
      double first = i == 0 ? 1 : 0;
      wx[i] = across * (first - x[0][i]) - up * y[0][i];
      wy[i] = up * (first - y[1][i]) - across * x[1][i];
    }
    return scatter.half(adjustment.standardError(frame.row(wx, wy, 0, 0)));
  }

  /** How far a hole is from the even ring on the same circle that is turned to suit all best. */
  private static double unevenness(List<Point> points, Circle circle) {
    List<Point> round =
        points.stream()
            .map(p -> p.minus(circle.centre()))
            .sorted(Comparator.comparingDouble(Point::angle))
            .toList();
    double step = 2 * Math.PI / round.size();
    double first = round.get(0).angle();
    double turn = 0;
    for (int i = 0; i < round.size(); i++) {
      turn += (round.get(i).angle() - first - i * step) / round.size();
    }
    double most = 0;
    for (int i = 0; i < round.size(); i++) {
      Point even = Point.polar(circle.radius(), first + turn + i * step);
      most = Math.max(most, even.distance(round.get(i)));
    }
    return most;
  }

  /** The size when all holes have the same. */
  private static Optional<Double> commonSize(List<FoundHole> holes) {
    Optional<Double> first = holes.get(0).size();
    return holes.stream().allMatch(h -> h.size().equals(first)) ? first : meanSize(holes);
  }

  /** Sizes of their own that differ by no more than their errors allow are one size. */
  private static Optional<Double> meanSize(List<FoundHole> holes) {
    if (holes.stream().anyMatch(h -> h.size().isEmpty())) {
      return Optional.empty();
    }
    double mean = holes.stream().mapToDouble(h -> h.size().get()).average().orElseThrow();
    boolean alike =
        holes.stream()
            .allMatch(
                h -> Math.abs(h.size().get() - mean) <= OutlierDetection.CRITICAL * h.sizeError());
    return alike ? Optional.of(mean) : Optional.empty();
  }

  private static List<String> readsAs(double low, double high) {
    List<String> names = new ArrayList<>();
    for (double mm = Math.ceil(low * 2) / 2; mm <= high && names.size() < 4; mm += 0.5) {
      names.add(Numbers.brief(mm, 1) + " mm");
    }
    int metric = names.size();
    for (double n = Math.ceil(low / INCH * 16); n * INCH / 16 <= high; n++) {
      if (names.size() >= metric + 4) {
        break;
      }
      names.add(inches((int) n) + " in (" + Numbers.brief(n * INCH / 16, 2) + " mm)");
    }
    return names;
  }

  /** Sixteenths as makers write them, such as {@code 2 3/4}. */
  private static String inches(int sixteenths) {
    int whole = sixteenths / 16;
    int part = sixteenths % 16;
    int under = 16;
    while (part > 0 && part % 2 == 0) {
      part /= 2;
      under /= 2;
    }
    String fraction = part == 0 ? "" : part + "/" + under;
    return whole == 0 ? fraction : (whole + " " + fraction).strip();
  }
}
