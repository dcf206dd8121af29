package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Regions that share edges, arcs or points, where chords alone would leave slivers. */
class CombineContactsTest {

  private static Region disc(double x, double y, double r) {
    return Region.of(Contour.circle(new Point(x, y), r));
  }

  private static Region box(double x0, double y0, double x1, double y1) {
    return Region.of(
        Contour.polygon(
            List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1))));
  }

  private static double area(List<Region> regions) {
    return regions.stream().mapToDouble(r -> r.properties().area()).sum();
  }

  @Test
  void aRegionWithItselfIsItself() {
    for (long seed = 1; seed <= 200; seed++) {
      Region a = MoreShapes.region(seed);
      String what = "seed " + seed;
      double whole = a.properties().area();
      assertEquals(whole, area(Combine.union(List.of(a, a))), 1e-9 * whole, what);
      assertEquals(whole, area(Combine.intersection(List.of(a), List.of(a))), 1e-9 * whole, what);
      assertTrue(Combine.difference(List.of(a), List.of(a)).isEmpty(), what);
    }
  }

  @Test
  void coincidentArcsWithOtherEndsMakeOneArc() {
    for (int seed = 1; seed <= 300; seed++) {
      Random random = new Random(seed);
      double turn = 7 * random.nextDouble();
      double outer = 40 + 60 * random.nextDouble();
      double inner = 10 + 20 * random.nextDouble();
      Region a = Region.of(MoreShapes.sector(Point.ORIGIN, inner, outer, turn, 1.2));
      double shift = 0.1 + random.nextDouble();
      Region b = Region.of(MoreShapes.sector(Point.ORIGIN, inner, outer, turn + shift, 1.2));
      List<Region> both = Combine.union(List.of(a, b));
      String what = "seed " + seed;
      assertEquals(1, both.size(), what);
      assertEquals(4, both.get(0).outer().segments().size(), what);
      double expected = (outer * outer - inner * inner) / 2 * (1.2 + shift);
      assertEquals(expected, area(both), 1e-9 * expected, what);
      List<Region> common = Combine.intersection(List.of(a), List.of(b));
      assertEquals(4, common.get(0).outer().segments().size(), what);
      expected = (outer * outer - inner * inner) / 2 * (1.2 - shift);
      assertEquals(expected, area(common), 1e-8 * outer * outer, what);
    }
  }

  @Test
  void boxesThatShareAPartOfAnEdgeUnite() {
    for (int k = 0; k < 90; k++) {
      RigidTransform turn = RigidTransform.turn(Math.toRadians(k * 4.1));
      Region a = box(0, 0, 10, 10).moved(turn);
      Region b = box(10, 3, 25, 17).moved(turn);
      List<Region> both = Combine.union(List.of(a, b));
      assertEquals(1, both.size(), "turn " + k);
      assertEquals(8, both.get(0).outer().segments().size(), "turn " + k);
      assertEquals(310, area(both), 1e-8, "turn " + k);
      assertEquals(100, area(Combine.difference(List.of(a), List.of(b))), 1e-8, "turn " + k);
      assertTrue(Combine.intersection(List.of(a), List.of(b)).isEmpty(), "turn " + k);
    }
  }

  @Test
  void discsThatTouchFromOutsideAreTwo() {
    for (int k = 0; k < 90; k++) {
      Point at = Point.polar(50, k);
      Region a = disc(0, 0, 30);
      Region b = disc(at.x(), at.y(), 20);
      double total = area(Combine.union(List.of(a, b)));
      assertEquals(1300 * Math.PI, total, 1e-3, "turn " + k);
      assertEquals(900 * Math.PI, area(Combine.difference(List.of(a), List.of(b))), 1e-3);
      assertEquals(0, area(Combine.intersection(List.of(a), List.of(b))), 1e-3);
    }
  }

  @Test
  void aDiscThatTouchesFromInsideLeavesAMoonOrIsRefusedClearly() {
    for (int k = 0; k < 90; k++) {
      Point at = Point.polar(10, k);
      List<Region> big = List.of(disc(0, 0, 30));
      List<Region> small = List.of(disc(at.x(), at.y(), 20));
      assertEquals(900 * Math.PI, area(Combine.union(List.of(big.get(0), small.get(0)))), 1e-3);
      assertEquals(400 * Math.PI, area(Combine.intersection(big, small)), 1e-3);
      try {
        assertEquals(500 * Math.PI, area(Combine.difference(big, small)), 1e-3, "turn " + k);
      } catch (GeometryException e) {
        // A moon whose horns meet touches itself: no contour can say it.
        assertTrue(e.getMessage().contains("touch"), e.getMessage());
      }
    }
  }

  @Test
  void aWindowFlushWithAnEdgeOpensIt() {
    Region plate = box(-50, -30, 50, 30);
    Region flush = box(-10, 10, 10, 30);
    Region open = Combine.difference(List.of(plate), List.of(flush)).get(0);
    assertEquals(8, open.outer().segments().size());
    assertEquals(6000 - 400, open.outer().area(), 1e-9);
    Region rim = Region.of(MoreShapes.slot(new Point(-20, 0), new Point(20, 0), 30));
    Region cut = Combine.difference(List.of(rim), List.of(disc(20, 0, 30))).get(0);
    assertTrue(cut.properties().area() > 0);
    // a disc on the very arc of the slot's end takes it off to the last digit
    double slot = 40 * 60 + Math.PI * 900;
    assertEquals(slot - Math.PI * 900, cut.outer().area(), 1e-6);
  }
}
