package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.SegmentIndex;
import felloe.plate.DemoPlates;
import felloe.plate.Plate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** All plates of these tests have a rough allowance of 2 mm. */
class JigsawPlanTest {

  private static final JigsawBlade BLADE = new JigsawBlade(5, 1.2, 15);

  private static JigsawPlan plan(Plate plate) {
    return JigsawPlan.of(plate, BLADE, hole -> hole.diameter() <= 10);
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
    assertTrue(plan.reliefs().isEmpty() && plan.starts().isEmpty());
    assertFalse(plan.cautions().isEmpty());
  }

  @Test
  void onlyTheTurnTowardTheWasteWantsAHole() {
    // Of the six corners of an L the saw runs past five into the waste; the sixth is the hollow.
    JigsawPlan plan = plan(CutPlates.of(ell()));
    assertEquals(1, plan.reliefs().size());
    JigsawPlan.WasteHole hole = plan.reliefs().get(0);
    // The rough line's corner is at 82, 82; a hole of 6 mm touches both its sides.
    assertTrue(hole.at().near(new Point(85, 85), 1e-9), hole.at().toString());
    assertEquals(6, hole.diameter(), 1e-12);
    assertEquals(0, hole.turn());
  }

  @Test
  void aWindowsCornersTighterThanTheBladeGetAHoleEach() {
    // The rough line of a corner of 10 turns with 8: wide enough for the hole, not for the blade.
    Contour window = RandomShapes.roundedRectangle(90, 70, 10);
    JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 100), window));
    assertEquals(4, plan.reliefs().size());
    for (JigsawPlan.WasteHole hole : plan.reliefs()) {
      assertEquals(8, hole.turn(), 1e-9);
      assertTrue(window.contains(hole.at()));
      assertEquals(2 + 3, window.distance(hole.at()), 1e-9);
    }
    assertTrue(plan.starts().isEmpty(), "a relief hole serves to start from");
  }

  @Test
  void aWindowThatTheBladeCanFollowIsStartedFromAHole() {
    Contour window = RandomShapes.roundedRectangle(90, 70, 20);
    JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 100), window));
    assertTrue(plan.reliefs().isEmpty());
    assertEquals(1, plan.starts().size());
    JigsawPlan.WasteHole start = plan.starts().get(0);
    assertTrue(window.contains(start.at()));
    assertTrue(window.distance(start.at()) >= 2 + 3 - 1e-9);
  }

  @Test
  void aWindowNarrowerThanTheBladesRoundGetsHolesAtItsTurns() {
    // 24 mm wide, so 20 between the rough lines: no round of 15 fits anywhere.
    Contour slot = RandomShapes.roundedRectangle(80, 24, 11);
    JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 100), slot));
    assertEquals(4, plan.reliefs().size());
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
      for (List<JigsawPlan.WasteHole> holes : List.of(plan.reliefs(), plan.starts())) {
        for (JigsawPlan.WasteHole hole : holes) {
          String who = plate.name() + " " + hole;
          assertFalse(plate.region().contains(hole.at()), who);
          // Clear of the finish line by the allowance.
          assertTrue(edges.distance(hole.at()) >= hole.diameter() / 2 + 2 - 1e-6, who);
        }
      }
    }
  }

  @Test
  void everyHoleOfSeededRandomWindowsLiesInTheWaste() {
    int holes = 0;
    for (long seed = 1; seed <= 200; seed++) {
      Contour window = RandomShapes.contour(seed, 140);
      JigsawPlan plan = plan(CutPlates.of(Contour.circle(Point.ORIGIN, 150), window));
      Contour outline = RandomShapes.contour(seed, 300);
      JigsawPlan round = plan(CutPlates.of(outline));
      for (JigsawPlan.WasteHole hole : plan.reliefs()) {
        holes++;
        assertTrue(window.contains(hole.at()), "seed " + seed);
        assertTrue(window.distance(hole.at()) >= 5 - 1e-6, "seed " + seed + " " + hole);
      }
      for (JigsawPlan.WasteHole hole : round.reliefs()) {
        holes++;
        assertFalse(outline.contains(hole.at()), "seed " + seed);
        assertTrue(outline.distance(hole.at()) >= 5 - 1e-6, "seed " + seed + " " + hole);
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
