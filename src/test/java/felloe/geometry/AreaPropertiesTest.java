package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Areas, centroids and second moments. Handbook formulas are those found in any table of section
 * properties (such as Roark's Formulas for Stress and Strain, 7th ed., Table A.1, or Machinery's
 * Handbook, moments of inertia); quoted from memory and each re-derived from its integral.
 */
class AreaPropertiesTest {

  private static final double PI = Math.PI;

  private static void near(double expected, double actual, double relative, String what) {
    assertEquals(expected, actual, relative * Math.abs(expected), what);
  }

  private static Contour rectangle(double b, double h) {
    return Contour.polygon(
        List.of(new Point(0, 0), new Point(b, 0), new Point(b, h), new Point(0, h)));
  }

  @Test
  void aCircleHasPiRToTheFourthOverFour() {
    AreaProperties disc = Contour.circle(Point.ORIGIN, 17).properties();
    near(PI * 17 * 17, disc.area(), 1e-15, "area");
    near(PI * Math.pow(17, 4) / 4, disc.ixx(), 1e-14, "ixx");
    near(PI * Math.pow(17, 4) / 4, disc.iyy(), 1e-14, "iyy");
    near(PI * Math.pow(17, 4) / 2, disc.polar(), 1e-14, "polar");
    assertEquals(0, disc.ixy(), 1e-8);
    AreaProperties away = Contour.circle(new Point(300, -200), 2.5).properties();
    near(PI * Math.pow(2.5, 4) / 4, away.central().ixx(), 1e-10, "own ixx far from the origin");
    assertEquals(0, away.centroid().distance(new Point(300, -200)), 1e-11);
  }

  @Test
  void aRectangleHasBHCubedOverTwelveAndOverThreeAboutItsBase() {
    AreaProperties r = rectangle(30, 20).properties();
    near(30 * 8000 / 3.0, r.ixx(), 1e-14, "about the base");
    near(20 * 27000 / 3.0, r.iyy(), 1e-14, "about the left side");
    near(900 * 400 / 4.0, r.ixy(), 1e-14, "product");
    near(30 * 8000 / 12.0, r.central().ixx(), 1e-14, "own");
    assertEquals(0, r.central().ixy(), 1e-9);
  }

  @Test
  void aTriangleHasBHCubedOverThirtySix() {
    AreaProperties t =
        Contour.polygon(List.of(new Point(0, 0), new Point(12, 0), new Point(4, 9))).properties();
    near(12 * 729 / 36.0, t.central().ixx(), 1e-14, "own");
    assertEquals(new Point(16 / 3.0, 3).distance(t.centroid()), 0, 1e-14);
  }

  @Test
  void aSemicirclesCentroidLiesFourROverThreePiUp() {
    Arc half = Arc.of(Point.ORIGIN, 9, 0, PI);
    AreaProperties p = Contour.of(half, new Line(half.to(), half.from())).properties();
    near(4 * 9 / (3 * PI), p.centroid().y(), 1e-14, "centroid");
    near(PI * Math.pow(9, 4) / 8, p.ixx(), 1e-14, "about the diameter");
    near((PI / 8 - 8 / (9 * PI)) * Math.pow(9, 4), p.central().ixx(), 1e-13, "own");
    near(PI * Math.pow(9, 4) / 8, p.iyy(), 1e-14, "about the axis");
  }

  @Test
  void aQuarterCircleHasItsHandbookFigures() {
    Arc q = Arc.of(Point.ORIGIN, 10, 0, PI / 2);
    AreaProperties p =
        Contour.of(q, new Line(q.to(), Point.ORIGIN), new Line(Point.ORIGIN, q.from()))
            .properties();
    near(40 / (3 * PI), p.centroid().x(), 1e-14, "centroid");
    near(PI * 1e4 / 16, p.ixx(), 1e-14, "ixx");
    near(1e4 / 8, p.ixy(), 1e-14, "ixy");
  }

  @Test
  void anAnnulusIsTheDifferenceOfTwoDiscs() {
    Region ring =
        new Region(Contour.circle(Point.ORIGIN, 150), List.of(Contour.circle(Point.ORIGIN, 120)));
    AreaProperties p = ring.properties();
    near(PI * (150 * 150 - 120 * 120), p.area(), 1e-14, "area");
    near(PI / 4 * (Math.pow(150, 4) - Math.pow(120, 4)), p.ixx(), 1e-14, "ixx");
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-5, 1e-4, 1e-3, 0.0099, 0.0101, 0.3, 0.99, 1.01, 2, 3, 3.14})
  void aCircularSegmentHasTheFiguresOfItsIntegrals(double half) {
    double r = 50 / Math.sin(Math.min(half, PI / 2));
    Arc arc = Arc.of(new Point(0, -r * Math.cos(half)), r, PI / 2 - half, 2 * half);
    AreaProperties p = Contour.of(arc, new Line(arc.to(), arc.from())).properties();
    double[] q = cap(r, half);
    // What the places of the ends say of the rise of a flat arc sets the limit.
    double limit = 1e-11 + 4e-16 / (half * half);
    near(q[0], p.area(), limit, "area");
    near(q[1] / q[0], p.centroid().y(), limit, "centroid");
    near(q[2], p.ixx(), limit, "ixx about the chord");
    near(q[3], p.iyy(), limit, "iyy");
  }

  /** Area, ∬y, ∬y², ∬x² over the chord, by quadrature of forms that lose no digits. */
  private static double[] cap(double r, double h) {
    double[] q = new double[4];
    int parts = 8;
    for (int k = 0; k < parts; k++) {
      double a = -h + 2 * h * k / parts;
      double b = a + 2 * h / parts;
      for (int i = 0; i < GAUSS.length; i++) {
        double t = (a + b) / 2 + (b - a) / 2 * GAUSS[i][0];
        double w = (b - a) / 2 * GAUSS[i][1];
        // height over the chord: cos t - cos h
        double y = r * 2 * Math.sin((h + t) / 2) * Math.sin((h - t) / 2);
        double dx = r * Math.cos(t) * w;
        q[0] += y * dx;
        q[1] += y * y / 2 * dx;
        q[2] += y * y * y / 3 * dx;
        q[3] += r * r * Math.sin(t) * Math.sin(t) * y * dx;
      }
    }
    return q;
  }

  /** Nodes and weights of Gauss and Legendre's rule of 12 points, by Newton's method. */
  private static final double[][] GAUSS = gauss(12);

  private static double[][] gauss(int n) {
    double[][] rule = new double[n][];
    for (int i = 0; i < n; i++) {
      double x = Math.cos(PI * (i + 0.75) / (n + 0.5));
      double slope = 0;
      for (int round = 0; round < 50; round++) {
        double p = 1;
        double before = 0;
        for (int k = 1; k <= n; k++) {
          double next = ((2 * k - 1) * x * p - (k - 1) * before) / k;
          before = p;
          p = next;
        }
        slope = n * (x * p - before) / (x * x - 1);
        x -= p / slope;
      }
      rule[i] = new double[] {x, 2 / ((1 - x * x) * slope * slope)};
    }
    return rule;
  }

  @Test
  void seededRegionsAgreeWithQuadratureOfGreensIntegrals() {
    for (long seed = 1; seed <= 1000; seed++) {
      Contour contour = MoreShapes.region(seed).outer();
      AreaProperties p = contour.properties();
      double[] q = new double[6];
      for (Segment s : contour.segments()) {
        int parts = s instanceof Arc arc ? 1 + (int) Math.ceil(Math.abs(arc.sweep())) : 1;
        for (int k = 0; k < parts; k++) {
          for (double[] node : GAUSS) {
            double f = (k + (1 + node[0]) / 2) / parts;
            double ds = s.length() / parts / 2 * node[1];
            Point at = s.at(f);
            Point way = s.tangent(f);
            double x = at.x();
            double y = at.y();
            double dx = way.x() * ds;
            double dy = way.y() * ds;
            q[0] += (x * dy - y * dx) / 2;
            q[1] += x * x / 2 * dy;
            q[2] += -y * y / 2 * dx;
            q[3] += -y * y * y / 3 * dx;
            q[4] += x * x * x / 3 * dy;
            q[5] += x * x * y / 2 * dy;
          }
        }
      }
      String what = "seed " + seed;
      double polar = q[3] + q[4];
      near(q[0], p.area(), 1e-9, what);
      assertEquals(q[1], p.centroid().x() * p.area(), 1e-8 * q[0] * 100, what);
      assertEquals(q[2], p.centroid().y() * p.area(), 1e-8 * q[0] * 100, what);
      assertEquals(q[3], p.ixx(), 1e-9 * polar, what);
      assertEquals(q[4], p.iyy(), 1e-9 * polar, what);
      assertEquals(q[5], p.ixy(), 1e-9 * polar, what);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e3, 1e5, 1e7})
  void edgesAsGoodAsStraightGiveTheFiguresOfStraightOnes(double radius) {
    // A 300 x 200 rectangle with all edges crowned outward by a circle of the radius.
    double b = 300;
    double h = 200;
    Contour crowned = crowned(b, h, radius);
    double[] wide = cap(radius, Math.asin(b / 2 / radius));
    double[] high = cap(radius, Math.asin(h / 2 / radius));
    near(b * h + 2 * wide[0] + 2 * high[0], crowned.area(), 1e-13, "area");
    // each cap about the x axis: those at top and bottom shifted by h/2, those at the sides not
    double top = wide[2] + h * wide[1] + h * h / 4 * wide[0];
    near(b * h * h * h / 12 + 2 * top + 2 * high[3], crowned.properties().ixx(), 1e-12, "ixx");
    double side = high[2] + b * high[1] + b * b / 4 * high[0];
    near(h * b * b * b / 12 + 2 * side + 2 * wide[3], crowned.properties().iyy(), 1e-12, "iyy");
  }

  private static Contour crowned(double b, double h, double r) {
    Point[] c = {
      new Point(-b / 2, -h / 2), new Point(b / 2, -h / 2),
      new Point(b / 2, h / 2), new Point(-b / 2, h / 2)
    };
    List<Segment> edges = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double half = c[i].distance(c[(i + 1) % 4]) / 2;
      double turn = Math.asin(half / r);
      // sagitta without cancellation: r (1 - cos) = 2 r sin²(half angle / 2)
      double s = Math.sin(turn / 2);
      edges.add(Arc.withRise(c[i], c[(i + 1) % 4], 2 * r * s * s));
    }
    return new Contour(edges);
  }

  @Test
  void aRoundedRectangleHasTheAreaAndLengthOfItsParts() {
    // 260 x 200, radius 40: W H - (4 - pi) r², and 2 (W + H) - (8 - 2 pi) r
    Contour c = RandomShapes.roundedRectangle(260, 200, 40);
    assertEquals(50626.5482, c.area(), 5e-5);
    assertEquals(851.3274, c.length(), 5e-5);
  }

  @Test
  void theParallelAxisTheoremHoldsWhereverTheFigureLies() {
    AreaProperties home = RandomShapes.contour(5, 200).properties();
    for (int k = 1; k <= 20; k++) {
      Point shift = Point.polar(30 * k, k);
      AreaProperties moved =
          RandomShapes.contour(5, 200)
              .moved(RigidTransform.shift(shift.x(), shift.y()))
              .properties();
      near(home.central().ixx(), moved.central().ixx(), 1e-10, "ixx");
      near(home.central().ixy(), moved.central().ixy(), 1e-9, "ixy");
      AreaProperties back = moved.about(shift);
      near(home.ixx(), back.ixx(), 1e-10, "about the old origin");
      assertEquals(0, home.centroid().distance(back.centroid()), 1e-10);
    }
  }

  @Test
  void turningKeepsTheInvariantsAndMirroringTurnsTheProductsSign() {
    for (long seed = 1; seed <= 200; seed++) {
      Contour contour = MoreShapes.region(seed).outer();
      AreaProperties a = contour.properties();
      AreaProperties b = contour.moved(RigidTransform.turn(seed)).properties();
      near(a.area(), b.area(), 1e-12, "area, seed " + seed);
      near(a.polar(), b.polar(), 1e-12, "polar, seed " + seed);
      near(
          a.ixx() * a.iyy() - a.ixy() * a.ixy(),
          b.ixx() * b.iyy() - b.ixy() * b.ixy(),
          1e-10,
          "determinant, seed " + seed);
      AreaProperties m = contour.moved(RigidTransform.MIRROR).properties();
      near(a.area(), m.area(), 1e-13, "mirrored area");
      assertEquals(-a.ixy(), m.ixy(), 1e-12 * a.polar());
      assertEquals(-a.centroid().x(), m.centroid().x(), 1e-10);
    }
  }

  @Test
  void theAreaOfChordsConvergesToTheClosedForm() {
    for (long seed = 1; seed <= 200; seed++) {
      Contour contour = MoreShapes.region(seed).outer();
      double coarse = contour.area() - chords(contour, 1e-2);
      double fine = contour.area() - chords(contour, 1e-4);
      double length = contour.length();
      if (Math.abs(coarse) > 1e-2 * length) {
        throw new AssertionError("seed " + seed + " coarse " + coarse);
      }
      assertEquals(0, fine, 1e-4 * length, "seed " + seed);
    }
  }

  private static double chords(Contour contour, double tolerance) {
    List<Point> ring = new Flattener(tolerance).add(contour, 0);
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    return twice / 2;
  }
}
