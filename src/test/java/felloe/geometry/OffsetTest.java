package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OffsetTest {

  private static Region only(List<Region> regions) {
    assertEquals(1, regions.size());
    return regions.get(0);
  }

  private static long arcs(Contour contour) {
    return contour.segments().stream().filter(s -> s instanceof Arc).count();
  }

  @Test
  void theOffsetOfACircleIsOneCircle() {
    Contour grown = only(Offset.of(Contour.circle(new Point(3, 4), 150), 1.5)).outer();
    assertEquals(new Point(3, 4), grown.asCircle().orElseThrow().centre());
    assertEquals(151.5, grown.asCircle().orElseThrow().radius(), 1e-12);
    // values: Steiner's formula, circle R150 offset 1.5
    assertEquals(72106.6200, grown.area(), 5e-5);
    assertEquals(951.9026, grown.length(), 5e-5);
  }

  @ParameterizedTest
  @CsvSource({"3, 53208.8048, 870.1770", "-3, 48100.8403, 832.4779"})
  void theOffsetOfARoundedRectangleIsFourLinesAndFourArcs(double d, double area, double length) {
    // Steiner's formula on 260 x 200 with radius 40
    Contour source = RandomShapes.roundedRectangle(260, 200, 40);
    assertEquals(50626.5482, source.area(), 5e-5);
    Contour moved = only(Offset.of(source, d)).outer();
    assertEquals(8, moved.segments().size());
    assertEquals(4, arcs(moved));
    assertEquals(area, moved.area(), 5e-5);
    assertEquals(length, moved.length(), 5e-5);
    for (Segment s : moved.segments()) {
      if (s instanceof Arc arc) {
        assertEquals(40 + d, arc.radius(), 1e-12);
      }
    }
  }

  @Test
  void theOffsetOfASquareOutwardHasFourQuarterCircles() {
    Contour square = RandomShapes.roundedRectangle(101, 101, 0.5);
    Contour grown = only(Offset.of(square, 3)).outer();
    assertEquals(8, grown.segments().size());
    Contour sharp =
        Contour.polygon(
            List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 100)));
    Contour round = only(Offset.of(sharp, 3)).outer();
    assertEquals(8, round.segments().size());
    assertEquals(11228.2743, round.area(), 5e-5);
    assertEquals(418.8496, round.length(), 5e-5);
    Contour shrunk = only(Offset.of(sharp, -3)).outer();
    assertEquals(4, shrunk.segments().size());
    assertEquals(94 * 94, shrunk.area(), 1e-9);
  }

  @Test
  void openingASquareRoundsItsCornersAndKeepsItsEdges() {
    Contour sharp =
        Contour.polygon(
            List.of(new Point(0, 0), new Point(100, 0), new Point(100, 60), new Point(0, 60)));
    Contour opened = only(Offset.opened(Region.of(sharp), 8)).outer();
    assertEquals(8, opened.segments().size());
    assertEquals(6000 - (4 - Math.PI) * 64, opened.area(), 1e-8);
  }

  /** A waist between two arcs of radius 30 about (0, 40) and (0, -40), 20 mm wide. */
  private static Contour waist() {
    return Contour.of(
        new Line(new Point(-60, -40), new Point(-30, -40)),
        Arc.about(new Point(0, -40), new Point(-30, -40), new Point(30, -40), false),
        new Line(new Point(30, -40), new Point(60, -40)),
        new Line(new Point(60, -40), new Point(60, 40)),
        new Line(new Point(60, 40), new Point(30, 40)),
        Arc.about(new Point(0, 40), new Point(30, 40), new Point(-30, 40), false),
        new Line(new Point(-30, 40), new Point(-60, 40)),
        new Line(new Point(-60, 40), new Point(-60, -40)));
  }

  @Test
  void aNeckOfTwoRadiiIsSweptLikeOnesAHairNarrowerAndWider() {
    Region waist = Region.of(waist());
    double before = Double.POSITIVE_INFINITY;
    for (double radius : new double[] {9.9, 9.999, 9.9999999, 10, 10.0000001, 10.001, 10.1}) {
      List<Region> opened = Offset.opened(waist, radius);
      double area = opened.stream().mapToDouble(one -> one.outer().area()).sum();
      // What a larger disc sweeps a smaller one sweeps as well, to a hair.
      assertTrue(area <= before + 0.1, radius + ": " + area);
      assertTrue(area < waist.outer().area(), radius + ": " + area);
      before = area;
    }
    assertEquals(1, Offset.opened(waist, 10.1).size(), "swept from both sides, the waist is one");
    Contour bar = Contour.rectangle(new Box(0, 0, 100, 20));
    assertTrue(Offset.opened(Region.of(bar), 10).isEmpty());
    assertEquals(1, Offset.opened(Region.of(bar), 9.99).size());
  }

  @Test
  void aWaistFallsApartAndAHoleGrows() {
    Region plate =
        new Region(
            RandomShapes.roundedRectangle(100, 60, 5), List.of(Contour.circle(Point.ORIGIN, 20)));
    Region shrunk = only(Offset.of(plate, -3));
    assertEquals(23, shrunk.holes().get(0).asCircle().orElseThrow().radius(), 1e-12);
    assertEquals(2, Offset.of(plate, -6).size());
    assertTrue(Offset.of(plate, -40).isEmpty());
  }

  @Test
  void seededRandomShapesKeepTheirDistanceAndComeHome() {
    int pieces = 0;
    for (long seed = 1; seed <= 1500; seed++) {
      Contour source = RandomShapes.contour(seed, 200);
      double d = 0.2 + (seed % 37) * 0.5;
      try {
        for (Region grown : Offset.of(source, d)) {
          List<Region> home = Offset.of(grown, -d);
          double back = home.stream().mapToDouble(r -> r.properties().area()).sum();
          // Closing fills hollows, never takes away: out and in again contains the source.
          assertTrue(back >= source.area() - 1e-6, "seed " + seed);
        }
        for (Region shrunk : Offset.of(source, -d)) {
          pieces++;
          double again =
              Offset.of(shrunk, d).stream().mapToDouble(r -> r.properties().area()).sum();
          assertTrue(again <= source.area() + 1e-6, "seed " + seed);
        }
      } catch (GeometryException e) {
        throw new AssertionError("seed " + seed + " d " + d + ": " + e.getMessage() + e.where(), e);
      }
    }
    assertTrue(pieces > 1000);
  }
}
