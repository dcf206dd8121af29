package felloe.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

class IsobandsTest {

  /** A square of side 10 in equal squares, each cut in two by a diagonal. */
  private static NodalField square(int n, DoubleBinaryOperator value) {
    return square(n, value, new Random(0), 0);
  }

  private static NodalField square(int n, DoubleBinaryOperator value, Random random, double stray) {
    int nodes = (n + 1) * (n + 1);
    double[] x = new double[nodes];
    double[] y = new double[nodes];
    double[] values = new double[nodes];
    for (int i = 0; i < nodes; i++) {
      int column = i % (n + 1);
      int row = i / (n + 1);
      boolean inner = column > 0 && row > 0 && column < n && row < n;
      x[i] = 10.0 * column / n + (inner ? stray * (random.nextDouble() - 0.5) : 0);
      y[i] = 10.0 * row / n + (inner ? stray * (random.nextDouble() - 0.5) : 0);
      values[i] = value.applyAsDouble(x[i], y[i]);
    }
    int[] corners = new int[6 * n * n];
    for (int i = 0; i < n * n; i++) {
      int a = i % n + i / n * (n + 1);
      int[] two = {a, a + 1, a + n + 2, a, a + n + 2, a + n + 1};
      System.arraycopy(two, 0, corners, 6 * i, 6);
    }
    return new NodalField(x, y, corners, values);
  }

  @Test
  void aFieldThatRisesToTheRightIsCutIntoUprightStrips() {
    NodalField field = square(7, (x, y) -> x);
    Isobands cut = new Isobands(field);
    for (double limit : new double[] {0.5, 1, 2.718281828, 5, 9.999}) {
      Isobands.Area area = cut.above(limit);
      assertEquals(10 * (10 - limit), area.size(), 1e-9);
      assertEquals(1, area.rings().size());
      assertEquals(1, area.lines().size());
      for (Point p : area.lines().get(0).points()) {
        assertEquals(limit, p.x(), 1e-12);
      }
    }
  }

  /** x + y at or above s, above the diagonal: the small triangle (20 - s)^2 / 2. */
  @Test
  void aLeaningPlaneIsCutIntoTriangles() {
    Isobands cut = new Isobands(square(8, (x, y) -> x + y));
    for (double limit : new double[] {10, 11.1, 12.5, 17, 19.9}) {
      assertEquals((20 - limit) * (20 - limit) / 2, cut.above(limit).size(), 1e-9);
    }
  }

  @Test
  void limitsJustAtNodesLoseAndDoubleNothing() {
    NodalField field = square(10, (x, y) -> Math.rint(x));
    Isobands cut = new Isobands(field);
    for (int limit = 1; limit <= 10; limit++) {
      Isobands.Area area = cut.above(limit);
      // At 10 only the edge itself is there, which has no area.
      assertEquals(10 * (10 - limit), area.size(), 1e-9, "at " + limit);
      assertEquals(limit == 10 ? 0 : 1, area.rings().size(), "at " + limit);
      assertEquals(limit == 10 ? 0 : 1, area.lines().size(), "at " + limit);
    }
  }

  @Test
  void allIsAboveTheLeastValueAndNothingAboveMoreThanTheMost() {
    NodalField field = square(5, (x, y) -> Math.sin(x) * Math.cos(y));
    Isobands cut = new Isobands(field);
    assertEquals(100, cut.above(field.least()).size(), 1e-9);
    assertTrue(cut.above(field.least()).lines().isEmpty());
    assertEquals(1, cut.above(field.least()).rings().size());
    assertTrue(cut.above(Math.nextUp(field.most())).rings().isEmpty());
  }

  @Test
  void aFieldThatIsTheSameAllOverIsOneAreaWithoutLines() {
    Isobands cut = new Isobands(square(4, (x, y) -> 3));
    assertEquals(100, cut.above(3).size(), 1e-12);
    assertTrue(cut.above(3).lines().isEmpty());
    assertTrue(RoundLimits.of(3, 3, 12).limits().isEmpty());
  }

  /** A cone's lines are circles; those of the flat triangles come near from inside. */
  @Test
  void anIslandHasOneClosedLine() {
    Isobands cut = new Isobands(square(60, (x, y) -> 5 - Math.hypot(x - 5, y - 5)));
    Isobands.Area area = cut.above(2);
    assertEquals(Math.PI * 9, area.size(), 0.01 * Math.PI * 9);
    assertEquals(1, area.lines().size());
    assertTrue(area.lines().get(0).closed());
    Isobands.Area lake = new Isobands(square(60, (x, y) -> Math.hypot(x - 5, y - 5))).above(3);
    assertEquals(100 - Math.PI * 9, lake.size(), 0.001 * 100);
    assertEquals(2, lake.rings().size());
  }

  /** Each triangle by itself: its part at or above a limit by the rule of similar triangles. */
  @Test
  void seededFieldsHaveTheAreaOfTheirTriangles() {
    for (int seed = 0; seed < 40; seed++) {
      Random random = new Random(seed);
      // Whole numbers, so that many nodes lie just at a limit.
      NodalField field = square(6, (x, y) -> random.nextInt(5), random, 0.8);
      Isobands cut = new Isobands(field);
      for (double limit : new double[] {0, 0.7, 1, 2, 2.5, 3, 4}) {
        Isobands.Area area = cut.above(limit);
        assertEquals(byTriangles(field, limit), area.size(), 1e-9, "seed " + seed + " " + limit);
        area.rings().forEach(ring -> assertTrue(ring.size() >= 3));
      }
    }
  }

  private static double byTriangles(NodalField field, double limit) {
    double sum = 0;
    for (int t = 0; t < field.corners().length; t += 3) {
      int[] c = {field.corners()[t], field.corners()[t + 1], field.corners()[t + 2]};
      double whole = 0;
      for (int i = 0; i < 3; i++) {
        int j = c[(i + 1) % 3];
        whole += (field.x()[c[i]] * field.y()[j] - field.x()[j] * field.y()[c[i]]) / 2;
      }
      double[] v = {field.values()[c[0]], field.values()[c[1]], field.values()[c[2]]};
      java.util.Arrays.sort(v);
      if (v[0] >= limit) {
        sum += whole;
      } else if (v[1] >= limit) {
        sum += whole * (1 - (limit - v[0]) * (limit - v[0]) / ((v[1] - v[0]) * (v[2] - v[0])));
      } else if (v[2] >= limit) {
        sum += whole * (v[2] - limit) * (v[2] - limit) / ((v[2] - v[0]) * (v[2] - v[1]));
      }
    }
    return sum;
  }

  @Test
  void figuresThatAreNoneAreRefused() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      IllegalArgumentException refused =
          assertThrows(
              IllegalArgumentException.class,
              () -> square(2, (x, y) -> x == 5 && y == 5 ? bad : 0));
      assertEquals("values must be a finite number, not " + bad, refused.getMessage());
    }
    double[] three = {0, 1, 2};
    assertThrows(
        IllegalArgumentException.class,
        () -> new NodalField(three, three, new int[] {0, 1, 3}, three));
    assertThrows(
        IllegalArgumentException.class, () -> new NodalField(three, three, new int[0], three));
    assertThrows(
        IllegalArgumentException.class,
        () -> new NodalField(three, new double[2], new int[] {0, 1, 2}, three));
  }

  @Test
  void veryLargeFiguresAreCutToo() {
    double big = 1.5e308;
    Isobands cut = new Isobands(square(2, (x, y) -> x < 5 ? -big : big));
    assertEquals(75, cut.above(0).size(), 1e-9);
  }

  @Test
  void limitsAreRoundAndFairInNumber() {
    Random random = new Random(5);
    for (int i = 0; i < 2000; i++) {
      double from = Math.pow(10, random.nextInt(9) - 5) * (random.nextDouble() - 0.5);
      double to = from + Math.pow(10, random.nextInt(9) - 5) * (0.01 + random.nextDouble());
      RoundLimits limits = RoundLimits.of(from, to, 12);
      String told = from + " to " + to + ": " + limits;
      int bands = limits.limits().size() + 1;
      assertTrue(bands >= 7 && bands <= 12, told);
      for (double limit : limits.limits()) {
        assertTrue(limit > from && limit < to, told);
        double text = Double.parseDouble(limits.text(limit).replace('\u2212', '-'));
        assertEquals(limit, text, 1e-3 * limits.step(), told);
      }
    }
    assertEquals(
        List.of(10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0),
        RoundLimits.of(0, 100, 12).limits());
    assertEquals("\u22120.25", RoundLimits.of(-1, 1, 9).text(-0.25));
    assertEquals(0, RoundLimits.of(1e15, 1e15 + 1, 12).limits().size());
    assertThrows(IllegalArgumentException.class, () -> RoundLimits.of(0, Double.NaN, 12));
  }

  @Test
  void aThinnedLineStaysWithinItsTolerance() {
    Isobands cut = new Isobands(square(80, (x, y) -> 5 - Math.hypot(x - 5, y - 5)));
    List<Point> ring = cut.above(2).rings().get(0);
    List<Segment> thin = new ThinnedChain(0.05).of(ring, true);
    assertTrue(thin.size() < ring.size() / 3, thin.size() + " of " + ring.size());
    for (Point p : ring) {
      double away = thin.stream().mapToDouble(s -> s.nearest(p).distance(p)).min().orElseThrow();
      assertTrue(away <= 0.05 * 1.2, "off by " + away);
    }
    for (int i = 0; i < thin.size(); i++) {
      assertEquals(thin.get(i).to(), thin.get((i + 1) % thin.size()).from());
    }
    assertTrue(
        new ThinnedChain(1).of(List.of(new Point(0, 0), new Point(0.001, 0)), false).isEmpty());
  }
}
