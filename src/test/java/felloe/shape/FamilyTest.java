package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.shape.FourSided.Rise;
import felloe.shape.Points.Corner;
import felloe.shape.Round.Flat;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FamilyTest {

  private static Corner at(double x, double y) {
    return new Corner(new Point(x, y), 0, 0);
  }

  private static Corner at(double x, double y, double radius) {
    return new Corner(new Point(x, y), radius, 0);
  }

  private static Corner bulged(double x, double y, double rise) {
    return new Corner(new Point(x, y), 0, rise);
  }

  private static List<ShapeFault> faults(Family family) {
    return assertThrows(ShapeException.class, family::contour).faults();
  }

  private static void assertSmooth(Contour contour) {
    List<Segment> all = contour.segments();
    for (int i = 0; i < all.size(); i++) {
      Segment a = all.get(i);
      Segment b = all.get((i + 1) % all.size());
      assertEquals(0, a.tangent(1).cross(b.tangent(0)), 1e-9, "at " + a.to());
      assertTrue(a.tangent(1).dot(b.tangent(0)) > 0, "at " + a.to());
    }
  }

  private static void assertMirrored(Contour contour) {
    for (Segment segment : contour.segments()) {
      Point p = segment.at(0.3);
      assertEquals(0, contour.distance(new Point(-p.x(), p.y())), 1e-9);
    }
    assertEquals(0, contour.properties().centroid().x(), 1e-9);
  }

  // A circle with flats.

  @Test
  void roundWithoutFlatsIsOneCircle() {
    Contour c = Round.circle(300).contour();
    assertEquals(1, c.segments().size());
    assertEquals(Math.PI * 150 * 150, c.area(), 1e-9);
  }

  @Test
  void sharpFlatIsTheChordAtItsDistance() {
    Contour c = new Round(300, Optional.empty(), Optional.of(new Flat(120, 0))).contour();
    Line flat = (Line) c.segments().stream().filter(s -> s instanceof Line).findFirst().get();
    assertEquals(2 * Math.sqrt(150 * 150 - 120 * 120), flat.length(), 1e-12);
    assertEquals(-120, flat.from().y(), 0);
    // Circular segment, handbook formula: R² acos(d/R) - d sqrt(R² - d²).
    double cut = 150 * 150 * Math.acos(120 / 150.0) - 120 * 90;
    assertEquals(Math.PI * 150 * 150 - cut, c.area(), 1e-8);
  }

  @Test
  void flatsAtTopAndBottomWithRoundedCornersAreSmoothAllRound() {
    Contour c =
        new Round(300, Optional.of(new Flat(135, 10)), Optional.of(new Flat(110, 30))).contour();
    assertEquals(8, c.segments().size());
    assertSmooth(c);
    assertMirrored(c);
    assertEquals(135, c.box().maxY(), 1e-12);
    assertEquals(-110, c.box().minY(), 1e-12);
    assertEquals(300, c.box().width(), 1e-9);
  }

  @Test
  void flatBeyondTheCircleIsRefused() {
    List<ShapeFault> faults =
        faults(new Round(300, Optional.of(new Flat(150, 5)), Optional.of(new Flat(-3, -1))));
    assertEquals(
        List.of("top.distance", "bottom.distance", "bottom.radius"),
        faults.stream().map(ShapeFault::parameter).toList());
    assertEquals(
        "top.distance: 150 mm must be above 0 and below 150 mm (half the diameter); leave the flat"
            + " out for a whole circle",
        faults.get(0).sentence());
  }

  @Test
  void flatsCornerHasALargestRadius() {
    List<ShapeFault> faults =
        faults(new Round(300, Optional.empty(), Optional.of(new Flat(100, 126))));
    assertEquals(1, faults.size());
    assertEquals("bottom.radius", faults.get(0).parameter());
    // The circle between the flat and the far side: (R + d) / 2 = 125.
    assertTrue(faults.get(0).wanted().startsWith("must be at most 125 mm here"), faults.toString());
    new Round(300, Optional.empty(), Optional.of(new Flat(100, 125))).contour();
  }

  // Four sides.

  @Test
  void roundedRectangleHasTheAreaOfTheHandbookFormula() {
    // WH - (4 - pi) r² = 50626.5482 for 260 x 200, r 40.
    Contour c = FourSided.rectangle(260, 200, 40).contour();
    assertEquals(50626.5482, c.area(), 1e-4);
    assertEquals(851.3274, c.length(), 1e-4);
    assertEquals(8, c.segments().size());
    assertSmooth(c);
  }

  @Test
  void crownedEdgesAddTheirCircularSegments() {
    Contour c = new FourSided(200, 120, 0, 0, new Rise(20, -10, 0, 5), new Point(3, 7)).contour();
    assertEquals(200 * 120 + cap(200, 20) - cap(200, 10) + cap(120, 5), c.area(), 1e-8);
    assertEquals(7 + 60 + 20, c.box().maxY(), 1e-9);
    assertEquals(3 + 100 + 5, c.box().maxX(), 1e-9);
    assertEquals(3 - 100, c.box().minX(), 1e-9);
  }

  /** Area of a circular segment over a chord, handbook formula: R² (a - sin a) / 2. */
  private static double cap(double chord, double rise) {
    double r = (chord * chord / 4 + rise * rise) / (2 * rise);
    double angle = 2 * Math.asin(chord / 2 / r);
    return r * r * (angle - Math.sin(angle)) / 2;
  }

  @Test
  void crownedEdgesAndRoundCornersAreSmoothAllRound() {
    Contour c = new FourSided(280, 180, 45, 60, new Rise(12, 8, -6, -6), Point.ORIGIN).contour();
    assertEquals(8, c.segments().size());
    assertSmooth(c);
    assertMirrored(c);
  }

  @Test
  void cornersTooRoundForTheRectangleTellTheLargest() {
    List<ShapeFault> alike = faults(FourSided.rectangle(100, 60, 40));
    assertEquals(1, alike.size());
    assertEquals("radius", alike.get(0).parameter());
    assertTrue(alike.get(0).wanted().startsWith("must be at most 30 mm here: "), alike.toString());
    List<ShapeFault> one = faults(new FourSided(100, 60, 40, 25, Rise.NONE, Point.ORIGIN));
    assertEquals("radius.top", one.get(0).parameter());
    assertTrue(one.get(0).wanted().startsWith("must be at most 35 mm here"), one.toString());
    assertEquals(1, one.size());
  }

  @Test
  void hollowEdgesMustNotMeet() {
    List<ShapeFault> faults =
        faults(new FourSided(50, 120, 0, 0, new Rise(0, 0, -25, -26), Point.ORIGIN));
    assertEquals("rise.right", faults.get(0).parameter());
    assertTrue(faults.get(0).wanted().contains("less than 50 mm deep"));
  }

  @Test
  void everyBadParameterOfFourSidesIsToldAtOnce() {
    List<ShapeFault> faults =
        faults(new FourSided(-1, 20_000, -2, 99_999, new Rise(0, 0, 20_001, 0), new Point(1e6, 0)));
    assertEquals(
        List.of(
            "width",
            "height",
            "radius.top",
            "radius.bottom",
            "centre",
            "rise.top",
            "rise.bottom",
            "rise.left"),
        faults.stream().map(ShapeFault::parameter).toList());
  }

  // Points.

  @Test
  void cornersMakeAPolygonEitherWayRound() {
    List<Corner> corners = List.of(at(0, 0), at(40, 0), at(40, 30));
    assertEquals(600, Points.whole(corners).contour().area(), 1e-9);
    List<Corner> back = List.of(at(40, 30), at(40, 0), at(0, 0));
    assertEquals(600, Points.whole(back).contour().area(), 1e-9);
  }

  @Test
  void bulgeIsOutwardEitherWayRound() {
    List<Corner> corners = List.of(at(0, 0), bulged(40, 0, 5), at(40, 30));
    assertEquals(600 + cap(30, 5), Points.whole(corners).contour().area(), 1e-9);
    List<Corner> back = List.of(bulged(40, 30, 5), at(40, 0), at(0, 0));
    assertEquals(600 + cap(30, 5), Points.whole(back).contour().area(), 1e-9);
  }

  @Test
  void twoCornersWithBulgesMakeALens() {
    Contour c = Points.whole(List.of(bulged(-20, 0, 6), bulged(20, 0, 6))).contour();
    assertEquals(2 * cap(40, 6), c.area(), 1e-9);
  }

  @Test
  void halfBesideTheAxisIsJoinedByEdgesAcrossIt() {
    Points half =
        new Points(
            List.of(at(30, -50, 10), at(60, 0, 20), new Corner(new Point(40, 60), 10, 7)),
            true,
            -4);
    Contour c = half.contour();
    assertSmooth(c);
    assertMirrored(c);
    assertEquals(12, c.segments().size());
    assertEquals(67, c.box().maxY(), 1e-9);
  }

  @Test
  void halfThatEndsOnTheAxisHasACornerThere() {
    Contour c = Points.half(List.of(at(0, -50), at(60, 0), at(0, 70, 5))).contour();
    assertEquals(5, c.segments().size());
    assertMirrored(c);
    double sharp = 120 * 120 / 2.0;
    double turn = 2 * Math.atan2(70, 60);
    double lost = 5 * 5 * (Math.tan(turn / 2) - turn / 2);
    assertEquals(sharp - lost, c.area(), 1e-9);
  }

  @Test
  void halfMayBeTheLeftOneAndMayRunDown() {
    Contour right = Points.half(List.of(at(0, -50), bulged(60, 0, 9), at(0, 70, 5))).contour();
    Contour left = Points.half(List.of(at(0, -50), bulged(-60, 0, 9), at(0, 70, 5))).contour();
    Contour down =
        Points.half(List.of(new Corner(new Point(0, 70), 5, 9), at(60, 0), at(0, -50))).contour();
    assertEquals(right.area(), left.area(), 1e-9);
    assertEquals(right.area(), down.area(), 1e-9);
    assertMirrored(left);
  }

  @Test
  void edgeIntoTheAxisKeepsItsBulgeOnBothSides() {
    Contour c = Points.half(List.of(at(0, -50), bulged(60, 0, 9))).contour();
    // The last corner's edge crosses to its image, so it carries the bulge.
    assertEquals(120 * 50 / 2.0 + cap(120, 9), c.area(), 1e-9);
  }

  @Test
  void halvesThatCannotBeSayWhichCorner() {
    assertEquals(
        "corners[1].at",
        faults(Points.half(List.of(at(10, 0), at(0, 5), at(10, 20)))).get(0).parameter());
    assertEquals(
        "corners[2].at",
        faults(Points.half(List.of(at(10, 0), at(30, 5), at(-10, 20)))).get(0).parameter());
    assertEquals(
        "corners[2].rise",
        faults(Points.half(List.of(at(10, 0), at(30, 5), bulged(0, 20, 3)))).get(0).parameter());
    assertEquals(
        "startRise",
        faults(new Points(List.of(at(0, 0), at(30, 5), at(0, 20)), true, 2)).get(0).parameter());
    assertEquals(
        "startRise",
        faults(new Points(List.of(at(10, 0), at(30, 5), at(0, 20)), true, 12)).get(0).parameter());
  }

  @Test
  void tooFewOrEqualCornersAreRefused() {
    assertEquals("corners", faults(Points.whole(List.of())).get(0).parameter());
    assertEquals("corners", faults(Points.half(List.of())).get(0).parameter());
    assertEquals("corners", faults(Points.whole(List.of(at(1, 1)))).get(0).parameter());
    assertEquals("corners", faults(Points.half(List.of(at(0, 1)))).get(0).parameter());
    assertEquals("corners", faults(Points.whole(List.of(at(1, 1), at(2, 2)))).get(0).parameter());
    assertEquals(
        "corners[2].at",
        faults(Points.whole(List.of(at(0, 0), at(9, 0), at(9, 0), at(0, 9)))).get(0).parameter());
    assertEquals(
        "corners[0].at",
        faults(Points.whole(List.of(at(0, 0), at(9, 0), at(9, 9), at(0, 0)))).get(0).parameter());
  }

  @Test
  void crossingEdgesSayWhichAndWhere() {
    List<ShapeFault> faults =
        faults(Points.whole(List.of(at(0, 0), at(40, 40), at(40, 0), at(0, 30))));
    assertTrue(faults.get(0).wanted().contains("edges 1 and 3 cross or touch"), faults.toString());
    assertTrue(faults.get(0).wanted().contains("(17.143, 17.143)"), faults.toString());
  }

  @Test
  void crowdedCornersOfAHalfAreToldOnceEachWithTheirCommonLimit() {
    // The edge across the axis is 40 mm; the corner and its image share it.
    List<ShapeFault> faults = faults(Points.half(List.of(at(0, -80), at(20, -50), at(20, 50, 25))));
    assertEquals(1, faults.size());
    assertEquals("corners[2].radius", faults.get(0).parameter());
    assertTrue(faults.get(0).wanted().startsWith("must be at most 20 mm here"), faults.toString());
  }

  // Slots and placing.

  @Test
  void slotIsTwoLinesAndTwoHalfCircles() {
    Contour c = new Slot(80, 30, 0).contour();
    assertEquals(4, c.segments().size());
    assertSmooth(c);
    assertEquals(50 * 30 + Math.PI * 225, c.area(), 1e-9);
    assertEquals(80, c.box().width(), 1e-9);
    Contour turned = new Slot(80, 30, Math.PI / 2).contour();
    assertEquals(80, turned.box().height(), 1e-9);
    assertTrue(new Slot(30, 30, 1).contour().asCircle().isPresent());
    assertEquals("width", faults(new Slot(30, 31, 0)).get(0).parameter());
    assertEquals(2, faults(new Slot(0, -1, 0)).size());
  }

  @Test
  void placingTurnsThenShifts() {
    Placing placing = Placing.degrees(new Point(100, 20), 90);
    assertEquals(new Point(100, 30), placing.of(new Point(10, 0)));
    Contour c = placing.of(FourSided.rectangle(60, 40, 3).contour());
    assertEquals(120, c.box().maxX(), 1e-12);
    assertEquals(-80, Placing.mirrored(c).box().maxX(), 1e-12);
    assertTrue(Placing.mirrored(c).segments().stream().filter(s -> s instanceof Arc).count() == 4);
    assertEquals(new Point(-3, 4), Placing.mirrored(new Point(3, 4)));
  }

  @Test
  void figuresThatAreNotNumbersAreRefusedByName() {
    assertThrows(IllegalArgumentException.class, () -> new Slot(Double.NaN, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> Round.circle(Double.POSITIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> FourSided.rectangle(1, Double.NaN, 0));
    assertThrows(IllegalArgumentException.class, () -> at(0, 0, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Flat(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Placing.degrees(Point.ORIGIN, Double.NaN));
  }

  @Test
  void randomHalvesAreMirroredWholesOrRefusedWithAReason() {
    int made = 0;
    for (long seed = 0; seed < 1500; seed++) {
      Random random = new Random(seed);
      int n = 3 + random.nextInt(5);
      Corner[] corners = new Corner[n];
      for (int i = 0; i < n; i++) {
        double angle = -Math.PI / 2 + Math.PI * (i + (n > 4 ? 0.5 : 0)) / (n - (n > 4 ? 0 : 1));
        double far = 60 + 80 * random.nextDouble();
        double x = n <= 4 && (i == 0 || i == n - 1) ? 0 : far * Math.cos(angle);
        double rise = i == n - 1 && x == 0 ? 0 : 8 * (random.nextDouble() - 0.5);
        corners[i] =
            new Corner(new Point(x, far * Math.sin(angle)), 12 * random.nextDouble(), rise);
      }
      try {
        Contour c = Points.half(List.of(corners)).contour();
        assertMirrored(c);
        made++;
      } catch (ShapeException e) {
        assertTrue(!e.faults().isEmpty(), "seed " + seed);
      }
    }
    assertTrue(made > 700, "made " + made);
  }
}
