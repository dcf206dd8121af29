package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class GapTest {

  private static Segment random(Random random) {
    Point a = new Point(100 * random.nextDouble(), 100 * random.nextDouble());
    Point b = new Point(100 * random.nextDouble(), 100 * random.nextDouble());
    return switch (random.nextInt(3)) {
      case 0 -> new Line(a, b);
      case 1 ->
          Arc.of(
              a,
              1 + 50 * random.nextDouble(),
              7 * random.nextDouble(),
              12 * random.nextDouble() - 6);
      default -> Arc.withRise(a, b, 20 * random.nextDouble() - 10);
    };
  }

  @Test
  void theShortestWayAgreesWithDenseSamples() {
    for (int seed = 1; seed <= 3000; seed++) {
      Random random = new Random(seed);
      Segment a = random(random);
      Segment b = random(random);
      Gap gap = Gap.between(a, b);
      double best = Double.POSITIVE_INFINITY;
      int steps = 300;
      for (int k = 0; k <= steps; k++) {
        best = Math.min(best, b.distance(a.at((double) k / steps)));
      }
      String what = "seed " + seed;
      assertTrue(gap.distance() <= best + 1e-6, what);
      // the distance changes by no more than one goes along, so half a step bounds the miss
      assertTrue(best - gap.distance() <= a.length() / steps / 2 + 1e-6, what);
      assertEquals(0, a.distance(gap.from()), 2e-6, what);
      assertEquals(0, b.distance(gap.to()), 2e-6, what);
      assertEquals(gap.distance(), Gap.between(b, a).distance(), 1e-6, what);
    }
  }

  @Test
  void concentricArcsLieTheDifferenceOfTheirRadiiApart() {
    Arc inner = Arc.of(Point.ORIGIN, 30, 0, 1);
    Arc outer = Arc.of(Point.ORIGIN, 42, 0.9, 2);
    assertEquals(12, Gap.between(inner, outer).distance(), 1e-12);
    assertEquals(12, Gap.between(Arc.circle(Point.ORIGIN, 30), outer).distance(), 1e-12);
    Arc away = Arc.of(Point.ORIGIN, 42, 1.5, 1);
    assertEquals(inner.to().distance(away.from()), Gap.between(inner, away).distance(), 1e-12);
  }

  @Test
  void tangentCirclesTouchFromOutsideAndInside() {
    Arc a = Arc.circle(Point.ORIGIN, 30);
    assertEquals(0, Gap.between(a, Arc.circle(new Point(50, 0), 20)).distance(), 1e-9);
    assertEquals(0, Gap.between(a, Arc.circle(new Point(10, 0), 20)).distance(), 1e-9);
    assertEquals(1e-3, Gap.between(a, Arc.circle(new Point(50.001, 0), 20)).distance(), 1e-9);
    assertEquals(1e-3, Gap.between(a, Arc.circle(new Point(9.999, 0), 20)).distance(), 1e-9);
    Line top = new Line(new Point(-50, 30), new Point(50, 30));
    assertEquals(0, Gap.between(a, top).distance(), 1e-9);
    assertEquals(0, Gap.between(a, top).from().distance(new Point(0, 30)), 1e-2);
  }

  @Test
  void stretchesOfOneCurveTouchWhereTheyOverlap() {
    Line a = new Line(new Point(0, 0), new Point(10, 0));
    assertEquals(0, Gap.between(a, new Line(new Point(4, 0), new Point(6, 0))).distance());
    assertEquals(2, Gap.between(a, new Line(new Point(12, 0), new Point(20, 0))).distance());
    Arc c = Arc.of(Point.ORIGIN, 10, 0, 1);
    assertEquals(0, Gap.between(c, Arc.of(Point.ORIGIN, 10, 0.5, 0.2)).distance());
  }
}
