package felloe.layup;

import static felloe.layup.LayupPlates.disc;
import static felloe.layup.LayupPlates.plan;
import static felloe.layup.LayupPlates.plate;
import static felloe.layup.LayupPlates.wish;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.LayupWish;
import org.junit.jupiter.api.Test;

/** The blank and the test strips on it. */
class BlankPlanTest {

  static void holds(LayupPlan plan, String about) {
    BlankPlan blank = plan.blank();
    Box box = blank.box();
    Box plate = plan.plate().box();
    double margin = blank.margin() - 1e-9;
    assertTrue(
        box.minX() <= plate.minX() - margin
            && box.minY() <= plate.minY() - margin
            && box.maxX() >= plate.maxX() + margin
            && box.maxY() >= plate.maxY() + margin,
        about);
    TestStrips strips = blank.strips();
    assertEquals(strips.asked(), strips.placed().size(), about);
    for (int i = 0; i < strips.placed().size(); i++) {
      Contour strip = strips.placed().get(i).contour();
      assertEquals(strips.length() * strips.width(), strip.area(), 1e-6, about);
      Box inner = box.grown(-TestStrips.TRIM + 1e-6);
      assertTrue(
          inner.contains(new Point(strip.box().minX(), strip.box().minY()))
              && inner.contains(new Point(strip.box().maxX(), strip.box().maxY())),
          about + ": strip " + (i + 1) + " leaves the blank");
      // Exact distances, and not one inside the other.
      assertTrue(strip.gap(plan.plate().outline()).distance() > TestStrips.GAP - 1e-6, about);
      for (Contour hole : plan.plate().region().holes()) {
        assertTrue(strip.gap(hole).distance() > TestStrips.GAP - 1e-6, about);
      }
      assertTrue(!plan.plate().region().contains(strip.box().centre()), about);
      for (int j = 0; j < i; j++) {
        assertTrue(
            strip.gap(strips.placed().get(j).contour()).distance() > TestStrips.GAP - 1e-6, about);
      }
    }
  }

  @Test
  void stripsThatFitInAWideWindowNeedNoLargerBlank() {
    Contour outline = Contour.circle(Point.ORIGIN, 200);
    Contour window = Contour.circle(Point.ORIGIN, 165);
    LayupPlan plan = plan(plate(outline, 4.5, window), wish().value());
    holds(plan, "ring");
    assertEquals(430, plan.blank().box().width(), 1e-9);
    assertEquals(430, plan.blank().box().height(), 1e-9);
    for (TestStrips.Strip strip : plan.blank().strips().placed()) {
      assertTrue(window.contains(strip.contour().box().centre()), strip.label());
    }
  }

  @Test
  void stripsBesideADiscMakeTheBlankLargerAndThatIsTold() {
    LayupPlan plan = plan(disc(280, 4.5), wish().value());
    holds(plan, "disc");
    assertTrue(plan.blank().area() > 310 * 310);
    assertTrue(plan.blank().notes().get(0).contains("without strips it is 310 x 310 mm"));
  }

  @Test
  void aThickPlatesStripsAreBetterMadeOfAThinPanel() {
    LayupPlan plan = plan(disc(280, 9), wish().value());
    assertEquals(310, plan.blank().box().width(), 1e-9);
    assertEquals(0, plan.blank().strips().placed().size());
    assertTrue(
        plan.blank()
            .notes()
            .get(0)
            .startsWith("test strips for this thickness would be 450 mm long"),
        plan.blank().notes().toString());
    assertTrue(plan.blank().notes().get(0).contains("100 x 15 mm"));
  }

  @Test
  void stripsOfFibresAllOneWayLieAlongThem() {
    LayupPlan plan =
        plan(disc(240, 3), wish().named("carbon-unidirectional-300", null, null).plies(8).value());
    holds(plan, "one way");
    assertTrue(plan.blank().strips().placed().stream().noneMatch(TestStrips.Strip::upright));
  }

  @Test
  void alongTheOutlineStripsLieInWindowsOnly() {
    Contour window = Contour.circle(Point.ORIGIN, 165);
    LayupPlan plan =
        plan(
            plate(Contour.circle(Point.ORIGIN, 200), 3.4, window),
            wish().pieces(LayupWish.Pieces.OUTLINE).value());
    assertEquals(5, plan.blank().strips().placed().size());
    for (TestStrips.Strip strip : plan.blank().strips().placed()) {
      assertTrue(window.contains(strip.contour().box().centre()));
      assertTrue(strip.contour().gap(window).distance() > TestStrips.GAP - 1e-6);
    }
  }

  @Test
  void theMouldPlateReachesBeyondTheBlankAndTheWeightsGiveThePressure() {
    LayupPlan plan = plan(disc(290, 5.5), wish().shop(null, null, null, 0, null).value());
    assertEquals(420, plan.mould().width(), 1e-9);
    assertEquals(2, plan.mould().plates());
    // 4 kPa on 0.32 m x 0.32 m is 409.6 N.
    assertEquals(409.6 / 9.80665, plan.mould().weight().orElseThrow(), 1e-9);
    assertEquals(42, plan.mould().kilograms().orElseThrow());
    assertEquals(2 * 0.42 * 0.42, plan.mould().area() / 1e6, 1e-9);
    assertEquals(0.42 * 0.42, plan.mould().cover() / 1e6, 1e-9);
    assertEquals(1700, plan.mould().sealantTape(), 1e-9);
  }
}
