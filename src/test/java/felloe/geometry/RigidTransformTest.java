package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class RigidTransformTest {

  @Test
  void quarterTurnsAreExact() {
    Point p = new Point(3.1, -7.7);
    assertEquals(new Point(7.7, 3.1), RigidTransform.turn(Math.PI / 2).of(p));
    assertEquals(new Point(-3.1, 7.7), RigidTransform.turn(Math.PI).of(p));
    assertEquals(new Point(-7.7, -3.1), RigidTransform.turn(-Math.PI / 2).of(p));
    assertEquals(p, RigidTransform.turn(2 * Math.PI).of(p));
    assertEquals(new Point(-3.1, -7.7), RigidTransform.MIRROR.of(p));
  }

  @Test
  void oneMotionThenAnotherIsTheirProduct() {
    for (int seed = 1; seed <= 500; seed++) {
      Random random = new Random(seed);
      RigidTransform a = random(random);
      RigidTransform b = random(random);
      Point p = random(random).shift();
      assertEquals(0, a.then(b).of(p).distance(b.of(a.of(p))), 1e-11, "seed " + seed);
      double before = p.distance(Point.ORIGIN);
      assertEquals(before, a.of(p).distance(a.of(Point.ORIGIN)), 1e-11, "seed " + seed);
    }
  }

  private static RigidTransform random(Random random) {
    return new RigidTransform(
        random.nextBoolean(),
        random.nextInt(3) == 0 ? Math.PI / 2 * random.nextInt(9) : 20 * random.nextDouble() - 10,
        new Point(200 * random.nextDouble() - 100, 200 * random.nextDouble() - 100));
  }

  @Test
  void aTurnAboutAPointLeavesItWhereItIs() {
    Point pivot = new Point(12, 34);
    assertEquals(0, RigidTransform.turnAbout(pivot, 1.3).of(pivot).distance(pivot), 1e-14);
  }
}
