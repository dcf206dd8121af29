package felloe.measure;

import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * Circles through points that do not lie on one quite. All agree for points all round; on a short
 * arc the algebraic ones are drawn to a small circle, Kåsa's most.
 *
 * <p>A circle is a (x² + y²) + b x + c y + d = 0; the algebraic fits make the sum of the squares of
 * its left side least, under a condition of their own. Points are taken about their middle.
 */
public enum CircleFit {
  /** Condition a = 1 (I. Kåsa, IEEE Trans. Instrum. Meas. 25, 1976). */
  KASA,
  /** Condition b² + c² - 4 a d = 1 (V. Pratt, Computer Graphics 21, 1987). */
  PRATT,
  /** Condition: mean square gradient 1 (G. Taubin, IEEE Trans. PAMI 13, 1991). */
  TAUBIN,
  /**
   * Condition a² + b² + c² + d² = 1 about the origin as given (Gander, Golub and Strebel, BIT 34,
   * 1994).
   */
  UNIT_NORM,
  /** Least squares of the distances from the circle: what is meant by the best circle. */
  GEOMETRIC;

  private static final int ROUNDS = 100;

  /** Share of the radius, and of the largest singular value, that is rounding. */
  private static final double STILL = 1e-12;

  /** A step is too long when the sum of squares grows by more than rounding. */
  private static final double GROWN = 1 + Tolerances.ROUNDING;

  private static final double LEAST_PART = 1e-3;

  /** Points that spread no wider are one, mm. */
  private static final double ONE_SPOT = Tolerances.ROUNDING;

  /** Points whose spread across their line is less than this share of it lie in one line. */
  private static final double FLAT = 1e-9;

  /**
   * A circle.
   *
   * @param centre its centre
   * @param radius in the points' unit
   */
  public record Circle(Point centre, double radius) {}

  /**
   * The circle for points.
   *
   * @return empty for fewer than three points, for points on one line or nearest to one, on one
   *     spot, and where the search for the geometric one does not come to rest: it has no answer
   *     then
   */
  public Optional<Circle> of(List<Point> points) {
    double size = spread(points);
    if (points.size() < 3 || size < ONE_SPOT || flat(points)) {
      return Optional.empty();
    }
    Point middle = this == UNIT_NORM ? Point.ORIGIN : middle(points);
    // The condition of this one alone depends on the unit.
    double unit = this == UNIT_NORM ? 1 : size;
    List<Point> about = points.stream().map(p -> p.minus(middle).times(1 / unit)).toList();
    Optional<Circle> circle =
        switch (this) {
          case KASA -> kasa(about);
          case PRATT -> points.size() == 3 ? taubin(about) : pratt(about);
          case TAUBIN -> taubin(about);
          case UNIT_NORM -> points.size() == 3 ? taubin(about) : smallest(about);
          case GEOMETRIC -> kasa(about).flatMap(start -> geometric(about, start));
        };
    return circle.map(c -> new Circle(c.centre().times(unit).plus(middle), c.radius() * unit));
  }

  /** How far the points lie from their middle, by the root of the mean square, mm. */
  private static double spread(List<Point> points) {
    if (points.isEmpty()) {
      return 0;
    }
    Point middle = middle(points);
    return Math.sqrt(points.stream().mapToDouble(p -> square(p.minus(middle))).average().orElse(0));
  }

  private static Point middle(List<Point> points) {
    Point sum = Point.ORIGIN;
    for (Point p : points) {
      sum = sum.plus(p);
    }
    return sum.times(1.0 / points.size());
  }

  private static boolean flat(List<Point> points) {
    Point middle = middle(points);
    double sxx = 0;
    double sxy = 0;
    double syy = 0;
    for (Point p : points) {
      Point d = p.minus(middle);
      sxx += d.x() * d.x();
      sxy += d.x() * d.y();
      syy += d.y() * d.y();
    }
    return sxx * syy - sxy * sxy <= FLAT * (sxx + syy) * (sxx + syy);
  }

  private static double square(Point p) {
    return p.dot(p);
  }

  private static Optional<Circle> kasa(List<Point> points) {
    double[][] sum = new double[3][3];
    double[] right = new double[3];
    for (Point p : points) {
      double[] row = {p.x(), p.y(), 1};
      for (int i = 0; i < 3; i++) {
        right[i] += row[i] * square(p);
        for (int j = 0; j < 3; j++) {
          sum[i][j] += row[i] * row[j];
        }
      }
    }
    double[] s =
        new LUDecomposition(MatrixUtils.createRealMatrix(sum))
            .getSolver()
            .solve(MatrixUtils.createRealVector(right))
            .toArray();
    return of(-1, s[0], s[1], s[2]);
  }

  /** Empty where a is 0: the points lie nearest to a straight line. */
  private static Optional<Circle> of(double a, double b, double c, double d) {
    if (a == 0) {
      return Optional.empty();
    }
    double radius = Math.sqrt(b * b + c * c - 4 * a * d) / (2 * Math.abs(a));
    Point centre = new Point(-b / (2 * a), -c / (2 * a));
    return Optional.of(new Circle(centre, radius));
  }

  private static Optional<Circle> taubin(List<Point> points) {
    double mean = points.stream().mapToDouble(CircleFit::square).average().orElseThrow();
    double scale = 2 * Math.sqrt(mean);
    double[][] rows = new double[points.size()][];
    for (int i = 0; i < rows.length; i++) {
      Point p = points.get(i);
      rows[i] = new double[] {(square(p) - mean) / scale, p.x(), p.y()};
    }
    RealMatrix v = new SingularValueDecomposition(MatrixUtils.createRealMatrix(rows)).getV();
    double a = v.getEntry(0, 2) / scale;
    return of(a, v.getEntry(1, 2), v.getEntry(2, 2), -mean * a);
  }

  private static RealMatrix rows(List<Point> points) {
    double[][] rows = new double[points.size()][];
    for (int i = 0; i < rows.length; i++) {
      Point p = points.get(i);
      rows[i] = new double[] {square(p), p.x(), p.y(), 1};
    }
    return MatrixUtils.createRealMatrix(rows);
  }

  private static Optional<Circle> smallest(List<Point> points) {
    RealMatrix v = new SingularValueDecomposition(rows(points)).getV();
    return of(v.getEntry(0, 3), v.getEntry(1, 3), v.getEntry(2, 3), v.getEntry(3, 3));
  }

  private static Optional<Circle> pratt(List<Point> points) {
    SingularValueDecomposition parts = new SingularValueDecomposition(rows(points));
    double[] s = parts.getSingularValues();
    RealMatrix v = parts.getV();
    if (s[3] < STILL * s[0]) {
      return smallest(points);
    }
    // With the sum of squares made a unit sphere, the condition is a symmetric form; the least sum
    // per condition belongs to the least positive eigenvalue of its inverse.
    RealMatrix w = v.multiply(MatrixUtils.createRealDiagonalMatrix(s));
    RealMatrix inverse =
        MatrixUtils.createRealMatrix(
            new double[][] {{0, 0, 0, -0.5}, {0, 1, 0, 0}, {0, 0, 1, 0}, {-0.5, 0, 0, 0}});
    RealMatrix form = w.transposeMultiply(inverse).multiply(w);
    RealMatrix even = form.add(form.transpose()).scalarMultiply(0.5);
    EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(even);
    double[] values = eigen.getEigenvalues();
    int best = -1;
    for (int i = 0; i < values.length; i++) {
      if (values[i] > 0 && (best < 0 || values[i] < values[best])) {
        best = i;
      }
    }
    double[] u = eigen.getEigenvector(best).toArray();
    for (int i = 0; i < u.length; i++) {
      u[i] /= s[i];
    }
    double[] f = v.operate(u);
    return of(f[0], f[1], f[2], f[3]);
  }

  /** By Gauss and Newton; a step that makes the sum larger is halved until it does not. */
  private static Optional<Circle> geometric(List<Point> points, Circle start) {
    Circle circle = start;
    for (int round = 0; round < ROUNDS; round++) {
      double[] step = step(points, circle);
      if (step.length == 0) {
        return Optional.empty();
      }
      double before = squares(points, circle);
      Circle next = moved(circle, step, 1);
      double part = 1;
      while (squares(points, next) > before * GROWN && part > LEAST_PART) {
        part /= 2;
        next = moved(circle, step, part);
      }
      double length = Math.abs(step[0]) + Math.abs(step[1]) + Math.abs(step[2]);
      if (length < STILL * circle.radius()) {
        return Optional.of(next);
      }
      circle = next;
    }
    return Optional.empty();
  }

  private static Circle moved(Circle circle, double[] step, double part) {
    Point centre = circle.centre().plus(new Point(step[0], step[1]), part);
    return new Circle(centre, circle.radius() + part * step[2]);
  }

  private static double squares(List<Point> points, Circle circle) {
    double sum = 0;
    for (Point p : points) {
      sum += Math.pow(p.distance(circle.centre()) - circle.radius(), 2);
    }
    return sum;
  }

  /** The step that would be the last one if all were linear; none when it is not told. */
  private static double[] step(List<Point> points, Circle circle) {
    double[][] sum = new double[3][3];
    double[] right = new double[3];
    for (Point p : points) {
      double distance = p.distance(circle.centre());
      double[] row = {
        distance == 0 ? 0 : (p.x() - circle.centre().x()) / distance,
        distance == 0 ? 0 : (p.y() - circle.centre().y()) / distance,
        1
      };
      for (int i = 0; i < 3; i++) {
        right[i] += row[i] * (distance - circle.radius());
        for (int j = 0; j < 3; j++) {
          sum[i][j] += row[i] * row[j];
        }
      }
    }
    LUDecomposition parts = new LUDecomposition(MatrixUtils.createRealMatrix(sum));
    return parts.getSolver().isNonSingular()
        ? parts.getSolver().solve(MatrixUtils.createRealVector(right)).toArray()
        : new double[0];
  }
}
