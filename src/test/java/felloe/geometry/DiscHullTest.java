package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import felloe.geometry.DiscHull.Disc;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A taut band round discs, against closed forms and against a fan of supporting lines. */
class DiscHullTest {

  private static Disc disc(double x, double y, double r) {
    return new Disc(new Point(x, y), r);
  }

  @Test
  void roundOneDiscItIsTheCircle() {
    assertEquals(2 * Math.PI * 7, DiscHull.girth(List.of(disc(3, 4, 7))), 1e-12);
    assertEquals(0, DiscHull.girth(List.of(disc(3, 4, 0))), 1e-12);
  }

  @Test
  void roundFourPointsItIsTheRectangleAndPointsInsideDoNotCount() {
    List<Disc> all = new ArrayList<>();
    for (double x : new double[] {0, 30, 12}) {
      for (double y : new double[] {0, 10, 5}) {
        all.add(disc(x, y, 0));
      }
    }
    assertEquals(80, DiscHull.girth(all), 1e-9);
  }

  /** A rectangle with rounded corners: 2 (b + h) - (8 - 2 pi) r. */
  @Test
  void roundFourDiscsItIsTheRoundedRectangle() {
    List<Disc> all =
        List.of(disc(5, 5, 5), disc(29, 5, 5), disc(5, 21, 5), disc(29, 21, 5), disc(17, 13, 5));
    assertEquals(2 * (34 + 26) - (8 - 2 * Math.PI) * 5, DiscHull.girth(all), 1e-9);
  }

  /** An open belt over two pulleys (machine handbooks): two tangents and two arcs. */
  @Test
  void roundTwoPulleysItIsTheOpenBelt() {
    double c = 50;
    double a = 20;
    double b = 8;
    double lean = Math.asin((a - b) / c);
    double belt = 2 * c * Math.cos(lean) + a * (Math.PI + 2 * lean) + b * (Math.PI - 2 * lean);
    assertEquals(belt, DiscHull.girth(List.of(disc(0, 0, a), disc(c, 0, b))), 1e-9);
    assertEquals(belt, DiscHull.girth(List.of(disc(c, 0, b), disc(0, 0, a))), 1e-9);
  }

  /** Cauchy: the perimeter of a convex figure is the mean of its breadth times pi. */
  @Test
  void roundAnyDiscsItIsTheIntegralOfTheSupport() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      List<Disc> all = new ArrayList<>();
      int count = 1 + random.nextInt(9);
      for (int i = 0; i < count; i++) {
        double radius = random.nextInt(3) == 0 ? 0 : 10 * random.nextDouble();
        all.add(disc(40 * random.nextDouble(), 20 * random.nextDouble(), radius));
      }
      int steps = 20_000;
      double sum = 0;
      for (int k = 0; k < steps; k++) {
        Point u = Point.polar(1, 2 * Math.PI * k / steps);
        sum += all.stream().mapToDouble(d -> d.centre().dot(u) + d.radius()).max().orElseThrow();
      }
      double integral = sum * 2 * Math.PI / steps;
      assertEquals(integral, DiscHull.girth(all), 1e-5, "seed " + seed);
    }
  }

  @Test
  void aRadiusBelowZeroIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> disc(0, 0, -1));
  }
}
