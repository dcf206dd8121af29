package felloe.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.measure.CircleFit.Circle;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CircleFitTest {

  /** Gander, Golub and Strebel, BIT 34 (1994) 558. */
  private static final List<Point> PUBLISHED =
      List.of(
          new Point(1, 7),
          new Point(2, 6),
          new Point(5, 8),
          new Point(7, 7),
          new Point(9, 5),
          new Point(3, 7));

  private static void circle(
      CircleFit fit, List<Point> points, double x, double y, double r, double within) {
    Circle circle = fit.of(points).orElseThrow();
    assertEquals(x, circle.centre().x(), within, fit + " " + circle);
    assertEquals(y, circle.centre().y(), within, fit + " " + circle);
    assertEquals(r, circle.radius(), within, fit + " " + circle);
  }

  @Test
  void thePublishedPointsHaveTheirPublishedAlgebraicCircle() {
    circle(CircleFit.UNIT_NORM, PUBLISHED, 5.3794, 7.2532, 3.0370, 5e-5);
    circle(CircleFit.UNIT_NORM, PUBLISHED, 5.379413, 7.253198, 3.037041, 5e-7);
  }

  @Test
  void thePublishedPointsHaveTheirPublishedGeometricCircle() {
    circle(CircleFit.GEOMETRIC, PUBLISHED, 4.7398, 2.9835, 4.7142, 5e-5);
    circle(CircleFit.GEOMETRIC, PUBLISHED, 4.739782, 2.983533, 4.714226, 5e-7);
  }

  @Test
  void kasaPrattAndTaubinOnThePublishedPoints() {
    circle(CircleFit.KASA, PUBLISHED, 4.742331, 3.835123, 4.108762, 5e-7);
    circle(CircleFit.PRATT, PUBLISHED, 4.615482, 2.807354, 4.911302, 5e-7);
    circle(CircleFit.TAUBIN, PUBLISHED, 4.613933, 2.795209, 4.879213, 5e-7);
  }

  @Test
  void kasaIsDrawnToASmallCircleOnAShortArc() {
    List<Point> arc = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      arc.add(Point.polar(50 + (i % 2 == 0 ? 0.2 : -0.2), Math.toRadians(15 * i)));
    }
    circle(CircleFit.KASA, arc, -0.37384, -0.37384, 50.48863, 5e-6);
    circle(CircleFit.GEOMETRIC, arc, -0.41149, -0.41149, 50.53465, 5e-6);
    assertEquals(50.53172, CircleFit.TAUBIN.of(arc).orElseThrow().radius(), 5e-6);
    assertEquals(-0.40883, CircleFit.TAUBIN.of(arc).orElseThrow().centre().x(), 5e-6);
  }

  @Test
  void allAgreeOnHolesAllRound() {
    List<Point> holes =
        List.of(
            new Point(35.1, 0),
            new Point(17.5, 30.4109),
            new Point(-17.55, 30.3609),
            new Point(-35, -0.1),
            new Point(-17.45, -30.2609),
            new Point(17.5, -30.3109));
    for (CircleFit fit : CircleFit.values()) {
      circle(fit, holes, 0.04767, 0.06441, 35.031225, fit == CircleFit.UNIT_NORM ? 3e-5 : 1e-5);
    }
  }

  /** Solve t x1 + y x2 + x3 = t² + y²; centre (x1/2, x2/2), r² = c1² + c2² + x3. */
  @Test
  void kasaIsTheLinearLeastSquaresOfTheTextbook() {
    Circle circle = CircleFit.KASA.of(PUBLISHED).orElseThrow();
    double x3 = circle.radius() * circle.radius() - circle.centre().dot(circle.centre());
    double[] normal = new double[3];
    for (Point p : PUBLISHED) {
      double rest = 2 * p.dot(circle.centre()) + x3 - p.dot(p);
      normal[0] += rest * p.x();
      normal[1] += rest * p.y();
      normal[2] += rest;
    }
    for (double n : normal) {
      assertEquals(0, n, 1e-9);
    }
  }

  @Test
  void pointsOnOneLineHaveNone() {
    List<Point> line = List.of(new Point(0, 0), new Point(1, 1), new Point(3, 3), new Point(7, 7));
    for (CircleFit fit : CircleFit.values()) {
      assertTrue(fit.of(line).isEmpty());
      assertTrue(fit.of(line.subList(0, 2)).isEmpty());
    }
  }

  /**
   * No circle is best for these: it grows without end. The search must say so, not give a last one.
   */
  @Test
  void aSearchThatFindsNoRestGivesNoCircle() {
    List<Point> wave =
        List.of(new Point(-30, 1), new Point(-10, -1), new Point(10, 1), new Point(30, -1));
    CircleFit.GEOMETRIC
        .of(wave)
        .ifPresent(
            circle -> {
              double cost = cost(wave, circle);
              for (double step : new double[] {-1e-4, 1e-4}) {
                Point x = circle.centre().plus(new Point(step * circle.radius(), 0));
                assertTrue(cost(wave, new Circle(x, circle.radius())) >= cost, circle.toString());
              }
            });
    List<Point> spot = List.of(new Point(3, 3), new Point(3, 3), new Point(3, 3));
    assertTrue(CircleFit.GEOMETRIC.of(spot).isEmpty());
    assertTrue(CircleFit.KASA.of(spot).isEmpty());
  }

  private static double cost(List<Point> points, Circle circle) {
    return points.stream()
        .mapToDouble(p -> Math.pow(p.distance(circle.centre()) - circle.radius(), 2))
        .sum();
  }
}
