package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ArcTest {

  private static final double TURN = 2 * Math.PI;

  @ParameterizedTest
  @ValueSource(doubles = {1e-4, 0.01, 1, 150, 1e4, 1e6, 1e7})
  void anArcKeepsToItsCircleAtEveryRadius(double radius) {
    double sweep = Math.min(3, 200 / radius);
    for (int k = 0; k < 16; k++) {
      Arc arc = Arc.of(Point.polar(radius, k + Math.PI), radius, k, k % 2 == 0 ? sweep : -sweep);
      assertEquals(radius * sweep, arc.length(), 1e-12 * radius);
      for (double f = 0; f <= 1; f += 0.125) {
        Point p = arc.at(f);
        assertEquals(radius, p.distance(arc.centre()), 1e-6);
        assertEquals(0, arc.nearest(p).distance(p), 1e-6);
        assertEquals(0, arc.distance(p), 1e-6);
        assertTrue(arc.box().grown(1e-6).contains(p));
        Point beside = p.plus(arc.tangent(f).left(), radius / 3);
        assertEquals(radius / 3, arc.distance(beside), 2e-6 + 1e-12 * radius);
      }
    }
  }

  @Test
  void anArcThatFailsToLeadFromEndToEndIsRefused() {
    Point c = Point.ORIGIN;
    Point a = new Point(10, 0);
    Point b = new Point(0, 10);
    assertThrows(GeometryException.class, () -> new Arc(a, b, c, 10, Math.PI));
    assertThrows(GeometryException.class, () -> new Arc(a, b, c, 10.1, Math.PI / 2));
    assertThrows(GeometryException.class, () -> new Arc(a, b, c, 10, 0));
    assertThrows(GeometryException.class, () -> new Arc(a, a, c, 10, 1e-9));
    assertThrows(GeometryException.class, () -> new Arc(a, a, c, 10, 7));
    assertThrows(GeometryException.class, () -> new Arc(a, b, c, -10, Math.PI / 2));
    assertThrows(GeometryException.class, () -> Arc.of(c, 1e-7, 0, 1));
    assertEquals(
        "sweep must be a finite number, not NaN",
        assertThrows(IllegalArgumentException.class, () -> new Arc(a, b, c, 10, Double.NaN))
            .getMessage());
    assertEquals(
        "radius must be a finite number, not Infinity",
        assertThrows(
                IllegalArgumentException.class, () -> new Arc(a, b, c, Double.POSITIVE_INFINITY, 1))
            .getMessage());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-300, 1e-12, -1e-9})
  void aRiseTooSmallToTellFromAStraightLineIsRefused(double rise) {
    GeometryException refusal =
        assertThrows(
            GeometryException.class, () -> Arc.withRise(new Point(0, 0), new Point(100, 0), rise));
    assertEquals("a rise so small makes no arc: it is a straight line", refusal.getMessage());
  }

  @Test
  void theRiseOfAnArcIsItsSagitta() {
    Arc arc = Arc.withRise(new Point(0, 0), new Point(100, 0), 10);
    // r = c²/8h + h/2, any handbook's table of circular segments
    assertEquals(130, arc.radius(), 1e-12);
    assertEquals(0, arc.at(0.5).distance(new Point(50, -10)), 1e-12);
    Arc flat = Arc.withRise(new Point(0, 0), new Point(100, 0), -1e-4);
    assertEquals(0, flat.at(0.5).distance(new Point(50, 1e-4)), 1e-8);
    Arc deep = Arc.withRise(new Point(0, 0), new Point(2, 0), 50);
    assertTrue(deep.sweep() > Math.PI);
    assertEquals(0, deep.at(0.5).distance(new Point(1, -50)), 1e-12);
  }

  @Test
  void aNearlyFullSweepIsStillAnArcAndAFullOneACircle() {
    Arc nearly = Arc.of(Point.ORIGIN, 100, 1, TURN - 1e-6);
    assertFalse(nearly.isCircle());
    assertTrue(nearly.passes(Point.polar(1, 1 + Math.PI)));
    assertEquals(1e-4, nearly.from().distance(nearly.to()), 1e-9);
    assertTrue(Arc.of(Point.ORIGIN, 100, 1, -TURN).isCircle());
    assertEquals(new Box(-100, -100, 100, 100), Arc.circle(Point.ORIGIN, 100).box());
  }

  @Test
  void boxesHoldTheTipsThatAnArcPassesAndNoMore() {
    for (int seed = 1; seed <= 2000; seed++) {
      Random random = new Random(seed);
      double quarter = Math.PI / 2;
      // now and then from and to the very tips
      double start = seed % 3 == 0 ? quarter * random.nextInt(4) : TURN * random.nextDouble();
      double sweep =
          seed % 3 == 1 ? quarter * (1 + random.nextInt(3)) : TURN * random.nextDouble() + 1e-3;
      sweep = Math.min(sweep, TURN - 1e-9) * (random.nextBoolean() ? 1 : -1);
      Arc arc = Arc.of(new Point(3, -7), 20, start, sweep);
      double top = Double.NEGATIVE_INFINITY;
      double left = Double.POSITIVE_INFINITY;
      for (int k = 0; k <= 4000; k++) {
        Point p = arc.at(k / 4000.0);
        top = Math.max(top, p.y());
        left = Math.min(left, p.x());
      }
      assertEquals(top, arc.box().maxY(), 3e-5, "seed " + seed);
      assertEquals(left, arc.box().minX(), 3e-5, "seed " + seed);
    }
  }

  @Test
  void motionsAndReversalsKeepTheSamePoints() {
    for (int seed = 1; seed <= 500; seed++) {
      Random random = new Random(seed);
      Arc arc =
          Arc.of(
              Point.polar(90, seed),
              1 + 100 * random.nextDouble(),
              7 * random.nextDouble(),
              (random.nextDouble() - 0.5) * 2 * TURN);
      RigidTransform motion =
          new RigidTransform(
              random.nextBoolean(), 7 * random.nextDouble(), new Point(random.nextDouble(), 5));
      for (double f = 0; f <= 1; f += 0.25) {
        assertEquals(0, arc.moved(motion).at(f).distance(motion.of(arc.at(f))), 1e-10);
        assertEquals(0, arc.reversed().at(f).distance(arc.at(1 - f)), 1e-10);
      }
    }
  }
}
