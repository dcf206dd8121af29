package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Combine;
import felloe.geometry.Contour;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.geometry.SegmentIndex;
import felloe.plate.DemoPlates;
import felloe.plate.Plate;
import java.util.List;
import org.junit.jupiter.api.Test;

class CompensationTest {

  private static List<CutLine> outline(Compensation compensation) {
    return compensation.lines().stream()
        .filter(line -> line.feature().kind() == CutFeature.Kind.OUTLINE)
        .toList();
  }

  @Test
  void aCircleIsCutRoundACircleOfHalfTheWidthMore() {
    // Cutter radius outside an outside edge: values table O6, geometry.
    Plate plate = CutPlates.of(Contour.circle(new Point(3, -2), 50));
    for (double width : new double[] {0.15, 1, 3.175, 6}) {
      Compensation cut = Compensation.of(plate, width, true);
      assertEquals(1, cut.lines().size());
      assertEquals(
          50 + width / 2, cut.lines().get(0).path().asCircle().orElseThrow().radius(), 1e-12);
      assertTrue(cut.leftOvers().isEmpty());
    }
  }

  @Test
  void aRoundedRectangleAndItsWindowKeepFourLinesAndFourArcs() {
    Contour outer = RandomShapes.roundedRectangle(260, 200, 40);
    Contour window = RandomShapes.roundedRectangle(100, 60, 10);
    Compensation cut = Compensation.of(CutPlates.of(outer, window), 6, true);
    // Areas and lengths of O5: offset of a rounded rectangle by 3 mm, Steiner's formula.
    CutLine outside = outline(cut).get(0);
    assertEquals(8, outside.path().segments().size());
    assertEquals(53208.8048, outside.path().area(), 5e-5);
    assertEquals(870.1770, outside.path().length(), 5e-5);
    CutLine inside = cut.lines().get(0);
    assertEquals(8, inside.path().segments().size());
    assertEquals(94 * 54 - (4 - Math.PI) * 49, inside.path().area(), 1e-9);
    assertTrue(inside.inside());
    assertTrue(!outside.inside());
    assertTrue(cut.leftOvers().isEmpty());
  }

  @Test
  void aSharpWindowKeepsTheKnownAreaInEachCorner() {
    Contour square =
        Contour.polygon(
            List.of(
                new Point(-20, -15), new Point(20, -15), new Point(20, 15), new Point(-20, 15)));
    Compensation cut =
        Compensation.of(CutPlates.of(Contour.circle(Point.ORIGIN, 80), square), 6, true);
    assertEquals(4, cut.leftOvers().size());
    for (LeftOver left : cut.leftOvers()) {
      assertEquals((1 - Math.PI / 4) * 9, left.region().properties().area(), 1e-9);
      // On the bisector the cutter's edge is r(1 - 1/sqrt 2) from both sides.
      assertEquals(3 * (1 - Math.sqrt(0.5)), left.reach(), 1e-6);
      assertTrue(left.region().contains(left.at()));
    }
  }

  @Test
  void aCornerRoundedTighterThanTheCutterKeepsTheDifferenceOfTwoCorners() {
    Contour window = RandomShapes.roundedRectangle(50, 40, 2);
    Compensation cut =
        Compensation.of(CutPlates.of(Contour.circle(Point.ORIGIN, 80), window), 8, true);
    assertEquals(4, cut.leftOvers().size());
    for (LeftOver left : cut.leftOvers()) {
      assertEquals((1 - Math.PI / 4) * (16 - 4), left.region().properties().area(), 1e-9);
    }
  }

  @Test
  void aSharpHollowOfTheOutlineKeepsTheSameCorner() {
    Contour ell =
        Contour.polygon(
            List.of(
                new Point(0, 0),
                new Point(100, 0),
                new Point(100, 40),
                new Point(40, 40),
                new Point(40, 100),
                new Point(0, 100)));
    Compensation cut = Compensation.of(CutPlates.of(ell), 6, true);
    assertEquals(1, cut.leftOvers().size());
    LeftOver left = cut.leftOvers().get(0);
    assertEquals((1 - Math.PI / 4) * 9, left.region().properties().area(), 1e-9);
    assertTrue(left.at().near(new Point(40.4, 40.4), 1));
  }

  @Test
  void aWindowNarrowerThanTheCutterIsNotEnteredAndLeftWhole() {
    Contour slot = RandomShapes.roundedRectangle(40, 5, 2.4);
    Compensation cut =
        Compensation.of(CutPlates.of(Contour.circle(Point.ORIGIN, 80), slot), 6, true);
    assertEquals(1, cut.closed().size());
    assertEquals("W1", cut.closed().get(0).label());
    assertEquals(1, cut.lines().size());
    assertEquals(slot.area(), cut.leftOvers().get(0).region().properties().area(), 1e-9);
    assertEquals(2.5, cut.leftOvers().get(0).reach(), 1e-6);
  }

  @Test
  void aWaistedWindowIsCutInTwoPartsAndTheWaistIsOneLeftOver() {
    Contour waisted =
        Contour.polygon(
            List.of(
                new Point(-30, -10),
                new Point(-5, -10),
                new Point(-5, -2),
                new Point(5, -2),
                new Point(5, -10),
                new Point(30, -10),
                new Point(30, 10),
                new Point(5, 10),
                new Point(5, 2),
                new Point(-5, 2),
                new Point(-5, 10),
                new Point(-30, 10)));
    Compensation cut =
        Compensation.of(CutPlates.of(Contour.circle(Point.ORIGIN, 80), waisted), 6, true);
    assertEquals(3, cut.lines().size());
    // Eight sharp corners and the waist.
    assertEquals(9, cut.leftOvers().size());
    LeftOver waist = cut.worst().orElseThrow();
    assertEquals(2, waist.reach(), 1e-6);
    // The cutter's round bulges into the mouth of the waist by 3 - sqrt(5).
    double segment = 9 * Math.asin(2 / 3.0) - 2 * Math.sqrt(5);
    assertEquals(40 - 2 * segment, waist.region().properties().area(), 1e-9);
  }

  /** A disc with a round hollow that opens to its edge through a slot of 4 mm. */
  static Plate narrowMouth() {
    List<Region> ring =
        Combine.difference(
            List.of(Region.of(Contour.circle(Point.ORIGIN, 50))),
            List.of(
                Region.of(Contour.circle(new Point(20, 0), 15)),
                Region.of(
                    RandomShapes.roundedRectangle(60, 4, 1).moved(RigidTransform.shift(50, 0)))));
    return CutPlates.of(ring.get(0).outer());
  }

  @Test
  void aHollowWithANarrowMouthIsCutFromWithin() {
    Compensation cut = Compensation.of(narrowMouth(), 6, true);
    assertEquals(2, cut.lines().size());
    assertTrue(cut.lines().get(0).inside());
    assertTrue(!cut.lines().get(1).inside());
    assertEquals(1, cut.leftOvers().size());
    assertEquals(2, cut.leftOvers().get(0).reach(), 0.05);
  }

  @Test
  void withoutCompensationThePathsAreTheFinishLines() {
    for (Plate plate : DemoPlates.all()) {
      Compensation cut = Compensation.of(plate, 6, false);
      assertTrue(cut.leftOvers().isEmpty());
      for (CutLine line : cut.lines()) {
        assertEquals(line.finish(), line.path());
        assertEquals(line.feature().kind() != CutFeature.Kind.OUTLINE, line.inside());
      }
      assertEquals(plate.holes().size() + plate.windows().size() + 1, cut.lines().size());
    }
  }

  @Test
  void aWidthThatIsNotAboveZeroIsRefused() {
    for (double width : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(
          IllegalArgumentException.class, () -> Compensation.of(DemoPlates.heron(), width, true));
    }
  }

  @Test
  void seededRandomWindowsAndOutlinesLeaveWhatOpeningAndClosingLeave() {
    int pieces = 0;
    for (long seed = 1; seed <= 400; seed++) {
      double width = 0.5 + (seed % 23) * 0.7;
      Contour shape = RandomShapes.contour(seed, 120);
      Plate inside = CutPlates.of(Contour.circle(Point.ORIGIN, 200), shape);
      Compensation cut = Compensation.of(inside, width, true);
      double left = CutPlates.area(cut.leftOvers());
      double swept = CutPlates.areaOf(Offset.opened(Region.of(shape), width / 2));
      String who = "seed " + seed + " width " + width;
      // Left-overs that are not stated are each below 0.005 mm high.
      assertEquals(shape.area() - swept, left, 0.02, who);
      Compensation round = Compensation.of(CutPlates.of(shape), width, true);
      double closed = 0;
      for (Region grown : Offset.of(shape, width / 2)) {
        closed += CutPlates.areaOf(Offset.of(grown, -width / 2));
      }
      assertEquals(closed - shape.area(), CutPlates.area(round.leftOvers()), 0.02, who);
      SegmentIndex edge = new SegmentIndex(shape.segments());
      for (Compensation each : List.of(cut, round)) {
        for (LeftOver over : each.leftOvers()) {
          pieces++;
          assertTrue(over.region().contains(over.at()), who);
          assertTrue(over.reach() <= width / 2 + 1e-6, who);
          assertTrue(edge.distance(over.at()) <= over.reach() + 1e-6, who);
        }
      }
    }
    assertTrue(pieces > 1500, "pieces " + pieces);
  }
}
