package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LargestCircleTest {

  private static Contour polygon(double... xy) {
    Point[] corners = new Point[xy.length / 2];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = new Point(xy[2 * i], xy[2 * i + 1]);
    }
    return Contour.polygon(List.of(corners));
  }

  @Test
  void theLargestCircleOfACircleIsItself() {
    LargestCircle found = LargestCircle.inside(Contour.circle(new Point(7, -3), 42));
    assertEquals(42, found.radius(), 1e-9);
    assertTrue(found.centre().near(new Point(7, -3), 1e-9));
  }

  @Test
  void aRectangleHoldsHalfItsShortSide() {
    assertEquals(24, LargestCircle.inside(polygon(0, 0, 130, 0, 130, 48, 0, 48)).radius(), 1e-9);
    Contour turned = RandomShapes.roundedRectangle(48, 130, 10).moved(RigidTransform.turn(0.4));
    assertEquals(24, LargestCircle.inside(turned).radius(), 1e-9);
  }

  @Test
  void aTriangleHoldsItsInscribedCircle() {
    // handbook: r = 2 A / P
    for (long seed = 1; seed <= 50; seed++) {
      Random random = new Random(seed);
      double[] xy = new double[6];
      for (int i = 0; i < 6; i++) {
        xy[i] = 100 * random.nextDouble();
      }
      Contour triangle = polygon(xy);
      double expected = 2 * triangle.area() / triangle.length();
      assertEquals(expected, LargestCircle.inside(triangle).radius(), 1e-6, "seed " + seed);
    }
  }

  @Test
  void anLHoldsTheCircleInItsBend() {
    // Arms 20 wide: the circle touches both outer sides and the inner corner, r = 20 (2 - sqrt 2).
    Contour bend = polygon(0, 0, 100, 0, 100, 20, 20, 20, 20, 100, 0, 100);
    assertEquals(20 * (2 - Math.sqrt(2)), LargestCircle.inside(bend).radius(), 1e-6);
  }

  @Test
  void randomShapesHoldNoLargerCircleAndJtsAgrees() {
    for (long seed = 1; seed <= 200; seed++) {
      Contour shape = RandomShapes.contour(seed, 120);
      LargestCircle found = LargestCircle.inside(shape);
      assertTrue(shape.contains(found.centre()), "seed " + seed);
      assertEquals(found.radius(), shape.distance(found.centre()), 1e-12);
      // Worn away by a little more than the radius, nothing is left; by less, something is.
      assertTrue(Offset.of(shape, -found.radius() - 0.01).isEmpty(), "seed " + seed);
      assertFalse(Offset.of(shape, -found.radius() + 0.05).isEmpty(), "seed " + seed);
    }
  }
}
