package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.shape.Materials;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What cannot be cut is refused before anything is planned, with option, figure and cure. */
class SetupCheckTest {

  private static final FeedTable FEEDS = FeedTable.standard();
  private static final Plate PLATE =
      CutPlates.of(
          CutPlates.PLYWOOD,
          6,
          RandomShapes.roundedRectangle(200, 120, 20),
          List.of(hole(60, 5)),
          RandomShapes.roundedRectangle(60, 40, 8));

  private static Hole hole(double x, double diameter) {
    return new Hole("H1", HoleRole.OTHER, new Point(x, 0), diameter, Place.of("ruff.yaml", 30, 5));
  }

  private static CutSetup setup() {
    return CutSetup.router(PLATE, 4, 2, FEEDS);
  }

  private static List<String> refused(Plate plate, CutSetup setup) {
    return assertThrows(CutRefused.class, () -> CutPlan.of(plate, setup)).faults().stream()
        .map(fault -> fault.problem(figure -> Place.ofOption("--" + name(figure))).line())
        .toList();
  }

  private static String name(CutFigure figure) {
    return figure.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  private static void refusedAlone(CutSetup setup, String line) {
    assertEquals(List.of(line), refused(PLATE, setup));
  }

  private static CutSetup.Depths depths(
      double stock, double breakthrough, double bed, double step, double clear, double approach) {
    return new CutSetup.Depths(stock, breakthrough, bed, step, clear, approach);
  }

  private static CutSetup.Rates rates(double speed, double feed, double ramp) {
    return new CutSetup.Rates(speed, feed, ramp, 3000, 60, 0.1, 24000);
  }

  @Test
  void aCutterWiderThanEveryWindow() {
    Plate plate =
        CutPlates.of(
            RandomShapes.roundedRectangle(200, 120, 20), RandomShapes.roundedRectangle(60, 5, 2));
    assertEquals(
        List.of("--cutter: '6 mm' is wider than every window; take a thinner cutter"),
        refused(plate, CutSetup.router(plate, 6, 2, FEEDS)));
  }

  @Test
  void aCutterWiderThanOneWindowOfTwoIsOnlyMentioned() {
    Contour wide = RandomShapes.roundedRectangle(60, 40, 8);
    Contour slot =
        RandomShapes.roundedRectangle(30, 5, 2).moved(felloe.geometry.RigidTransform.shift(0, 40));
    Plate plate = CutPlates.of(RandomShapes.roundedRectangle(200, 120, 20), wide, slot);
    CutPlan plan = CutPlan.of(plate, CutSetup.router(plate, 6, 2, FEEDS));
    assertTrue(plan.notes().stream().anyMatch(n -> n.text().startsWith("W2 is narrower")));
    assertTrue(SweepCheck.of(plan, 4).passed());
  }

  @Test
  void zeroAndNegativeFeedsAndSpeeds() {
    refusedAlone(
        setup().with(rates(18000, 0, 100)),
        "--feed: '0 mm/min' must be at least 1 mm/min; machines of this size cut at 5 to 8000 mm a"
            + " minute");
    refusedAlone(
        setup().with(rates(18000, -5, 100)),
        "--feed: '-5 mm/min' must be at least 1 mm/min; machines of this size cut at 5 to 8000 mm a"
            + " minute");
    refusedAlone(
        setup().with(rates(0, 500, 100)),
        "--speed: '0 1/min' must be at least 500 1/min; small routers run 8000 to 24000 turns a"
            + " minute");
    refusedAlone(
        setup().with(rates(18000, 500, 0)),
        "--ramp-feed: '0 mm/min' must be at least 5 mm/min here (0.01 times the feed); half the"
            + " feed is usual");
  }

  @Test
  void noNumbersAtAll() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> CutSetup.router(PLATE, bad, 2, FEEDS));
      assertThrows(IllegalArgumentException.class, () -> rates(bad, 1, 1));
      assertThrows(IllegalArgumentException.class, () -> depths(6, bad, 3, 2, 10, 2));
      assertThrows(IllegalArgumentException.class, () -> new CutSetup.Entry(bad, 1));
      assertThrows(IllegalArgumentException.class, () -> new CutSetup.Tabs(1, bad, 1));
      assertThrows(IllegalArgumentException.class, () -> new CutSetup.Drills(List.of(bad), 1));
    }
  }

  @Test
  void aDepthBelowTheBed() {
    refusedAlone(
        setup().with(depths(6, 4, 3.5, 3, 10, 2)).with(new CutSetup.Drills(List.of(), 0)),
        "--breakthrough: '4 mm' must be at most 3.5 mm here (what may be cut below the stock);"
            + " lower it, or put a thicker spoil board under the stock and say so");
    // The point of a 5 mm drill reaches 1.502 mm farther (118 degrees).
    refusedAlone(
        setup().with(depths(6, 0.3, 1, 3, 10, 2)),
        "--bed: '1 mm' must be at least 1.802 mm here: the points of the drills go that far below"
            + " the stock; put a thicker spoil board under the stock, or bore the holes instead of"
            + " drilling them");
  }

  @Test
  void heightsOutOfOrder() {
    refusedAlone(
        setup().with(depths(6, 0.3, 3, 3, 2, 2)),
        "--clearance: '2 mm' must be more than the approach height (2 mm); travel goes at the"
            + " travel height, over the clamps");
    assertTrue(refused(PLATE, setup().with(depths(6, 0.3, 3, 3, 10, 0))).get(0).contains("--app"));
    assertTrue(refused(PLATE, setup().with(depths(0, 0.3, 3, 3, 10, 2))).get(0).contains("--thi"));
    assertTrue(refused(PLATE, setup().with(depths(6, 0.3, 3, 0, 10, 2))).get(0).contains("--step"));
  }

  @Test
  void aRampThatIsNone() {
    for (double degrees : new double[] {0, -3, 60, 90}) {
      CutSetup.Entry entry = new CutSetup.Entry(Math.toRadians(degrees), 2);
      assertTrue(
          refused(PLATE, setup().with(entry))
              .get(0)
              .endsWith("an end mill must not go straight down; 3 to 10 degrees are usual"));
    }
  }

  @Test
  void tabsLongerThanTheContour() {
    Plate knob = CutPlates.of(RandomShapes.roundedRectangle(40, 24, 8));
    CutSetup setup = CutSetup.router(knob, 4, 2, FEEDS).with(new CutSetup.Tabs(6, 20, 1));
    List<String> lines = refused(knob, setup);
    assertEquals(1, lines.size());
    assertTrue(lines.get(0).startsWith("--tabs: '6' have no room on the outline: with their"));
    assertTrue(
        lines
            .get(0)
            .endsWith(
                "ask for fewer, narrower or lower tabs, a steeper ramp, or more room round the"
                    + " part"));
  }

  @Test
  void tabsThatAreNone() {
    assertTrue(refused(PLATE, setup().with(new CutSetup.Tabs(-1, 5, 1))).get(0).contains("--tabs"));
    assertEquals(2, refused(PLATE, setup().with(new CutSetup.Tabs(4, 0, 0))).size());
    refusedAlone(
        setup().with(new CutSetup.Tabs(4, 5, 6)),
        "--tab-height: '6 mm' must be less than the stock (6 mm); a third of the stock, and 1 mm"
            + " at most, is usual");
  }

  @Test
  void aHoleThatNoToolMakes() {
    Plate plate =
        CutPlates.of(CutPlates.PLYWOOD, 6, Contour.circle(Point.ORIGIN, 60), List.of(hole(30, 5)));
    CutSetup few =
        CutSetup.router(plate, 6, 2, FEEDS).with(new CutSetup.Drills(List.of(4.2, 4.0), 8));
    assertEquals(
        List.of(
            "ruff.yaml:30:5 H1: '5 mm' can be neither drilled nor bored: drills go up to 8 mm, at"
                + " hand are 4.2, 4, and a 6 mm cutter bores from 7.2 mm up; take a thinner cutter"
                + " or a drill of this size"),
        refused(plate, few));
  }

  @Test
  void aSlotThatTheCutterIsTooWideFor() {
    Hole slot =
        new Hole(
            "D1",
            HoleRole.OTHER,
            new Point(30, 0),
            3.2,
            Optional.of(new Hole.Slot(3.8, 0)),
            Place.of("ruff.yaml", 30, 5));
    Plate plate =
        CutPlates.of(CutPlates.PLYWOOD, 6, Contour.circle(Point.ORIGIN, 60), List.of(slot));
    assertEquals(
        List.of(
            "ruff.yaml:30:5 D1: '3.2 mm' is the width of a slot, which no drill makes, and a 4 mm"
                + " cutter cuts slots from 4.8 mm up; take a cutter of at most 2.66 mm"),
        refused(plate, CutSetup.router(plate, 4, 2, FEEDS)));
    assertDoesNotThrow(() -> CutPlan.of(plate, CutSetup.router(plate, 2.66, 2, FEEDS)));
  }

  @Test
  void aLeadWithNoRoomForABeam() {
    Plate plate =
        CutPlates.of(
            CutPlates.PLYWOOD, 6, Contour.circle(Point.ORIGIN, 60), List.of(hole(30, 1.1)));
    List<String> lines = refused(plate, CutSetup.beam(CutProcess.WATERJET, plate, 1, 400));
    assertEquals(
        List.of(
            "--lead: '2 mm' has no room at H1, and a beam must not pierce on the finish line; the"
                + " lead is made smaller down to 0.1 mm; drill what is narrower"),
        lines);
  }

  @Test
  void aKerfWiderThanAHole() {
    Plate plate =
        CutPlates.of(
            CutPlates.PLYWOOD, 6, Contour.circle(Point.ORIGIN, 60), List.of(hole(30, 0.8)));
    assertEquals(
        List.of(
            "ruff.yaml:30:5 H1: is not wider than the 1 mm that is cut; take a thinner cutter or"
                + " beam, or drill it"),
        refused(plate, CutSetup.beam(CutProcess.WATERJET, plate, 1, 400)));
  }

  @Test
  void aLaserOnLaminateWantsTheOwnersSayAndNeverCutsPvc() {
    Contour outline = Contour.circle(Point.ORIGIN, 60);
    Plate carbon = CutPlates.of(CutPlates.CARBON, 3, outline, List.of());
    CutSetup laser = CutSetup.beam(CutProcess.LASER, carbon, 0.2, 400);
    List<String> lines = refused(carbon, laser);
    assertTrue(lines.get(0).startsWith("ruff.yaml:2:1 stock.material: 'carbon-laminate' must not"));
    assertTrue(lines.get(0).endsWith("if the owner agrees say so (--owner-consents)"));
    assertTrue(lines.get(0).contains("carbon dust shorts out the machine"), lines.get(0));
    Material epoxyGlass = Materials.builtIn().find("glass-laminate").orElseThrow();
    Plate glass = CutPlates.of(epoxyGlass, 3, outline, List.of());
    String onGlass = refused(glass, CutSetup.beam(CutProcess.LASER, glass, 0.2, 400)).get(0);
    assertTrue(onGlass.contains("fumes are poisonous, and glass melts"), onGlass);
    assertFalse(onGlass.contains("carbon"), onGlass);
    assertDoesNotThrow(() -> CutPlan.of(carbon, laser.withConsent(true)));
    Plate pvc =
        CutPlates.of(CutPlates.material("pvc-foam", MaterialKind.PLASTIC), 3, outline, List.of());
    CutSetup onPvc = CutSetup.beam(CutProcess.LASER, pvc, 0.2, 400).withConsent(true);
    assertTrue(refused(pvc, onPvc).get(0).contains("must never be cut by laser"));
    assertDoesNotThrow(
        () -> CutPlan.of(carbon, CutSetup.beam(CutProcess.WATERJET, carbon, 1, 400)));
  }

  @Test
  void everythingWrongComesOutInOneRun() {
    CutSetup bad =
        setup()
            .with(rates(0, 0, 0))
            .with(depths(-1, -1, -2, 0, 1, 2))
            .with(new CutSetup.Entry(0, -1));
    List<String> lines = refused(PLATE, bad);
    for (String option :
        List.of(
            "--speed",
            "--feed",
            "--thickness",
            "--breakthrough",
            "--bed",
            "--step-down",
            "--clearance",
            "--ramp:",
            "--lead")) {
      assertEquals(
          1, lines.stream().filter(line -> line.startsWith(option)).count() > 0 ? 1 : 0, option);
    }
  }

  @Test
  void aJigsawHasNoMachineFile() {
    CutSetup saw = CutSetup.beam(CutProcess.JIGSAW, PLATE, 1.2, 100);
    assertTrue(refused(PLATE, saw).get(0).startsWith("--process: 'jigsaw' is a saw by hand"));
  }
}
