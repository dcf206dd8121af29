package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.SegmentIndex;
import felloe.hub.HubCatalogue;
import felloe.plate.DemoPlates;
import felloe.plate.Note;
import felloe.plate.Plate;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** All plates of these tests have a rough allowance of 2 mm. */
class JigsawPlanTest {

  private static final JigsawBlade BLADE = new JigsawBlade(5, 1.2, 15);

  private static JigsawPlan plan(Plate plate) {
    return JigsawPlan.of(plate, BLADE, 10, 64);
  }

  private static Contour ell() {
    return Contour.polygon(
        List.of(
            new Point(0, 0),
            new Point(200, 0),
            new Point(200, 80),
            new Point(80, 80),
            new Point(80, 200),
            new Point(0, 200)));
  }

  @Test
  void theRoughLineStandsOffByTheAllowance() {
    // A saw goes 1 to 2 mm outside the line, then a file: values table O8, common practice.
    JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 100)));
    assertEquals(102, plan.lines().get(0).path().asCircle().orElseThrow().radius(), 1e-9);
    assertTrue(plan.holes().isEmpty());
    assertFalse(plan.cautions().isEmpty());
  }

  @Test
  void onlyTheTurnTowardTheWasteWantsAHole() {
    // Of the six corners of an L the saw runs past five into the waste; the sixth is the hollow.
    JigsawPlan plan = plan(CutPlates.of(ell()));
    assertEquals(1, plan.holes().size());
    JigsawPlan.WasteHole hole = plan.holes().get(0);
    // The rough line's corner is at 82, 82; a hole of 6 mm touches both its sides.
    assertTrue(hole.at().near(new Point(85, 85), 1e-9), hole.at().toString());
    assertEquals(6, hole.diameter(), 1e-12);
    assertEquals(JigsawPlan.Why.TURN, hole.why());
  }

  @Test
  void aWindowsCornersTighterThanTheBladeGetAHoleEach() {
    // The rough line of a corner of 10 turns with 8: a hole of 16 is as large as the corner.
    Contour window = RandomShapes.roundedRectangle(90, 70, 10);
    JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 100), window));
    assertEquals(4, plan.holes().size());
    for (JigsawPlan.WasteHole hole : plan.holes()) {
      assertEquals(16, hole.diameter(), 1e-9);
      assertTrue(window.contains(hole.at()));
      assertEquals(2 + 8, window.distance(hole.at()), 1e-6);
    }
    assertEquals(
        1, plan.holes().stream().filter(h -> h.why() == JigsawPlan.Why.START_AND_TURN).count());
  }

  @Test
  void aWindowThatTheBladeCanFollowIsStartedFromAHole() {
    Contour window = RandomShapes.roundedRectangle(90, 70, 20);
    JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 100), window));
    assertEquals(1, plan.holes().size());
    JigsawPlan.WasteHole start = plan.holes().get(0);
    assertEquals(JigsawPlan.Why.START, start.why());
    assertTrue(window.contains(start.at()));
    assertTrue(window.distance(start.at()) >= 2 + 3 - 1e-9);
  }

  @Test
  void aWindowNarrowerThanTheBladesRoundGetsOneHoleAtEachEnd() {
    // 24 mm wide, so 20 between the rough lines: no round of 15 fits anywhere.
    Contour slot = RandomShapes.roundedRectangle(80, 24, 11);
    JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 100), slot));
    assertEquals(2, plan.holes().size());
    assertTrue(plan.holes().stream().allMatch(hole -> hole.diameter() >= 16));
  }

  /** Two holes of 26 mm whose centres stand 20 mm apart. */
  @Test
  void anEndOfASlotThatHasNoRoomForItsHoleIsTold() {
    Contour slot = RandomShapes.roundedRectangle(50, 30, 14.9);
    JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 100), slot));
    assertEquals(1, plan.holes().size());
    assertEquals(1, plan.notes().size());
    String told = plan.notes().get(0).text();
    assertTrue(told.contains("from both sides, nibble away what is left, and file"), told);
    double side = -Math.signum(plan.holes().get(0).at().x());
    assertTrue(told.contains(side < 0 ? "(-23.0, " : "(23.0, "), told);
  }

  /** The lower windows of a round wheel to start from have five corners, two of them near. */
  @Test
  void mirroredWindowsHaveMirroredHolesAndTheWiderAngleGivesWay() {
    Path file = Path.of("src", "main", "resources", "felloe", "new", "round.yaml");
    JigsawPlan plan = plan(ShapeFile.read(file, Sets.of(), HubCatalogue.here()));
    assertEquals(12, plan.holes().size());
    for (JigsawPlan.WasteHole hole : plan.holes()) {
      Point mirrored = new Point(-hole.at().x(), hole.at().y());
      assertTrue(
          plan.holes().stream()
              .anyMatch(h -> h.at().near(mirrored, 1e-6) && h.diameter() == hole.diameter()),
          hole.toString());
    }
    // The corner of 98 degrees keeps its hole, that above it on the spoke is told.
    assertTrue(plan.holes().stream().anyMatch(h -> h.at().near(new Point(33.91, -77), 0.01)));
    List<String> told = plan.notes().stream().map(Note::text).toList();
    assertEquals(2, told.size(), told.toString());
    assertTrue(told.get(0).contains("(28.6, -50.5)"), told.get(0));
    assertTrue(told.get(1).contains("(-28.6, -50.5)"), told.get(1));
  }

  @Test
  void aRoundOpeningIsMadeByADrillOrAHoleSawAndNotSawn() {
    for (double radius : new double[] {4, 10, 15, 32, 40}) {
      Contour round = Contour.circle(Point.ORIGIN, radius);
      JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 100), round));
      assertEquals(1, plan.holes().size());
      JigsawPlan.WasteHole hole = plan.holes().get(0);
      boolean whole = radius <= 32;
      assertEquals(whole ? 2 * radius : 6, hole.diameter(), 1e-9);
      JigsawPlan.Why by = radius <= 5 ? JigsawPlan.Why.DRILL : JigsawPlan.Why.HOLE_SAW;
      assertEquals(whole ? by : JigsawPlan.Why.START, hole.why());
      assertEquals(whole ? 1 : 2, plan.lines().size());
    }
  }

  @Test
  void aDemoOfFreeCurvesGetsAPlanThatAPersonWouldFollow() {
    Plate avocet = ShapeFile.read(Path.of("shapes", "avocet.yaml"), Sets.of(), HubCatalogue.here());
    JigsawPlan plan = JigsawPlan.of(avocet, BLADE, 13, 64);
    assertTrue(plan.holes().size() <= 6, "holes " + plan.holes().size());
    noneMeet(plan, "avocet");
  }

  private static void noneMeet(JigsawPlan plan, String who) {
    for (JigsawPlan.WasteHole a : plan.holes()) {
      for (JigsawPlan.WasteHole b : plan.holes()) {
        double apart = a.at().distance(b.at()) - (a.diameter() + b.diameter()) / 2;
        assertTrue(a == b || apart >= 2 - 1e-9, who + ": " + a + " meets " + b);
      }
    }
  }

  @Test
  void aWindowTooNarrowForTheHoleIsSaid() {
    for (double height : new double[] {3, 8}) {
      Contour slot = RandomShapes.roundedRectangle(60, height, 1.4);
      JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 100), slot));
      assertEquals(1, plan.notes().size());
      assertTrue(plan.notes().get(0).text().startsWith("W1 is too narrow for the saw"));
    }
  }

  @Test
  void everyHoleOfTheDemoPlatesLiesInTheWaste() {
    for (Plate plate : DemoPlates.all()) {
      JigsawPlan plan = plan(plate);
      SegmentIndex edges = SegmentIndex.of(plate.region().contours());
      noneMeet(plan, plate.name());
      for (JigsawPlan.WasteHole hole : plan.holes()) {
        String who = plate.name() + " " + hole;
        assertFalse(plate.region().contains(hole.at()), who);
        boolean whole = hole.why() == JigsawPlan.Why.DRILL || hole.why() == JigsawPlan.Why.HOLE_SAW;
        // Clear of the finish line by the allowance; a round opening goes to it.
        double off = hole.diameter() / 2 + (whole ? 0 : 2);
        assertTrue(edges.distance(hole.at()) >= off - 1e-6, who);
      }
      for (felloe.plate.Window window : plate.windows()) {
        assertTrue(
            plan.holes().stream().anyMatch(h -> h.feature().label().equals(window.label())),
            plate.name() + " " + window.label());
      }
    }
  }

  @Test
  void everyHoleOfSeededRandomWindowsLiesInTheWaste() {
    int holes = 0;
    for (long seed = 1; seed <= 200; seed++) {
      Contour window = RandomShapes.contour(seed, 140);
      JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 150), window));
      noneMeet(plan, "seed " + seed);
      Contour outline = RandomShapes.contour(seed, 300);
      JigsawPlan round = plan(CutPlates.of(outline));
      for (JigsawPlan.WasteHole hole : plan.holes()) {
        holes++;
        assertTrue(window.contains(hole.at()), "seed " + seed);
        double off = window.distance(hole.at()) - hole.diameter() / 2;
        assertTrue(off >= 2 - 1e-6, "seed " + seed + " " + hole);
      }
      for (JigsawPlan.WasteHole hole : round.holes()) {
        holes++;
        assertFalse(outline.contains(hole.at()), "seed " + seed);
        double off = outline.distance(hole.at()) - hole.diameter() / 2;
        assertTrue(off >= 2 - 1e-6, "seed " + seed + " " + hole);
      }
    }
    assertTrue(holes > 300, "holes " + holes);
  }

  @Test
  void aBladeThatIsNoneIsRefused() {
    for (double bad : new double[] {0, -1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> new JigsawBlade(bad, 1, 15));
      assertThrows(IllegalArgumentException.class, () -> new JigsawBlade(5, bad, 15));
      assertThrows(IllegalArgumentException.class, () -> new JigsawBlade(5, 1, bad));
    }
  }
}
