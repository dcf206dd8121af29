package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class CombineTest {

  private static Region disc(double x, double y, double r) {
    return Region.of(Contour.circle(new Point(x, y), r));
  }

  @Test
  void twoDiscsUniteIntoTwoArcs() {
    Region both = Combine.union(List.of(disc(0, 0, 10), disc(12, 0, 10))).get(0);
    assertEquals(2, both.outer().segments().size());
    // lens of two equal circles: 2 r² acos(d/2r) - d/2 sqrt(4r² - d²)
    double lens = 200 * Math.acos(0.6) - 6 * Math.sqrt(400 - 144);
    assertEquals(200 * Math.PI - lens, both.outer().area(), 1e-9);
    Region common = Combine.intersection(List.of(disc(0, 0, 10)), List.of(disc(12, 0, 10))).get(0);
    assertEquals(lens, common.outer().area(), 1e-9);
    Region moon = Combine.difference(List.of(disc(0, 0, 10)), List.of(disc(12, 0, 10))).get(0);
    assertEquals(100 * Math.PI - lens, moon.outer().area(), 1e-9);
  }

  @Test
  void aDiscInsideBecomesAHole() {
    Region ring = Combine.difference(List.of(disc(0, 0, 10)), List.of(disc(1, 0, 4))).get(0);
    assertEquals(1, ring.holes().size());
    assertEquals(4, ring.holes().get(0).asCircle().orElseThrow().radius());
  }

  @Test
  void rectanglesThatShareAnEdgeUniteIntoOneRectangle() {
    Region left = Region.of(rectangle(0, 0, 10, 10));
    Region right = Region.of(rectangle(10, 0, 25, 10));
    Region both = Combine.union(List.of(left, right)).get(0);
    assertEquals(4, both.outer().segments().size());
    assertEquals(250, both.outer().area(), 1e-9);
  }

  @Test
  void seededRandomShapesAddUp() {
    for (long seed = 1; seed <= 1000; seed++) {
      Region a = Region.of(RandomShapes.contour(seed, 200));
      Region b =
          Region.of(
              RandomShapes.contour(seed + 5000, 150)
                  .moved(RigidTransform.shift(seed % 90, (seed * 7) % 60)));
      try {
        double union = area(Combine.union(List.of(a, b)));
        double common = area(Combine.intersection(List.of(a), List.of(b)));
        double onlyA = area(Combine.difference(List.of(a), List.of(b)));
        assertEquals(
            a.properties().area() + b.properties().area(), union + common, 1e-3, "seed " + seed);
        assertEquals(a.properties().area(), onlyA + common, 1e-3, "seed " + seed);
      } catch (GeometryException e) {
        throw new AssertionError("seed " + seed + ": " + e.getMessage() + e.where(), e);
      }
    }
  }

  private static double area(List<Region> regions) {
    return regions.stream().mapToDouble(r -> r.properties().area()).sum();
  }

  private static Contour rectangle(double x0, double y0, double x1, double y1) {
    return Contour.polygon(
        List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
  }

  @Test
  void theSourcesAreUntouchedWhereNothingMeets() {
    List<Region> apart = Combine.union(List.of(disc(0, 0, 5), disc(20, 0, 5)));
    assertEquals(2, apart.size());
    assertTrue(apart.stream().allMatch(r -> r.outer().asCircle().isPresent()));
  }
}
