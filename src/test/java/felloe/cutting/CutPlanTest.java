package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.plate.DemoPlates;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CutPlanTest {

  private static final FeedTable FEEDS = FeedTable.standard();

  private static CutPlan router(Plate plate, double cutter) {
    return CutPlan.of(plate, CutSetup.router(plate, cutter, 2, FEEDS));
  }

  private static Hole hole(String label, double x, double y, double diameter) {
    return new Hole(label, HoleRole.OTHER, new Point(x, y), diameter, Place.of("ruff.yaml", 30, 5));
  }

  private static void assertPasses(CutPlan plan, int decimals, String who) {
    SweepResult result = SweepCheck.of(plan, decimals);
    assertTrue(result.passed(), () -> who + ": " + result.failures());
  }

  private static List<Move.Cut> cuts(Operation operation) {
    return operation.moves().stream()
        .filter(move -> move instanceof Move.Cut)
        .map(move -> (Move.Cut) move)
        .toList();
  }

  @Test
  void plansOfTheDemoPlatesAreProved() {
    for (Plate plate : DemoPlates.all()) {
      for (double cutter : new double[] {2, 3.175, 4, 6}) {
        for (CutDirection direction : CutDirection.values()) {
          CutSetup setup = CutSetup.router(plate, cutter, 1, FEEDS).with(direction);
          CutPlan plan = CutPlan.of(plate, setup);
          SweepResult result = SweepCheck.of(plan, 4);
          String who = plate.name() + " " + cutter + " " + direction;
          assertTrue(result.passed(), () -> who + ": " + result.failures());
          // Rounding to four decimals moves a point by up to 7e-5 and a centre by as much again.
          assertTrue(result.worstGouge() < 2e-4, who + " gouge " + result.worstGouge());
          assertTrue(result.worstArc() < 3e-4, who + " arc " + result.worstArc());
        }
      }
    }
  }

  @Test
  void beamsCutTheDemoPlatesWithOnePiercingAnEdge() {
    for (Plate plate : DemoPlates.all()) {
      for (CutProcess process : List.of(CutProcess.LASER, CutProcess.WATERJET)) {
        double kerf = process == CutProcess.LASER ? 0.2 : 1;
        CutSetup setup = CutSetup.beam(process, plate, kerf, 600).withConsent(true);
        CutPlan plan = CutPlan.of(plate, setup);
        assertPasses(plan, 4, plate.name() + " " + process);
        long pierced =
            plan.operations().stream()
                .flatMap(operation -> operation.moves().stream())
                .filter(move -> move instanceof Move.Travel)
                .count();
        assertEquals(plate.holes().size() + plate.windows().size() + 1, pierced);
        for (Operation operation : plan.operations()) {
          for (Move move : operation.moves()) {
            assertTrue(
                move instanceof Move.Travel
                    || move instanceof Move.Cut c && c.fromZ() == 0 && c.toZ() == 0);
          }
        }
      }
    }
  }

  @Test
  void holesComeFirstThenWindowsAndTheOutlineLast() {
    List<String> titles =
        router(DemoPlates.heron(), 4).operations().stream().map(Operation::title).toList();
    assertEquals(
        List.of("drill 6 holes, 4.2 mm", "drill 6 holes, 5 mm", "bore 1 hole"),
        titles.subList(0, 3));
    // Which window is the nearest depends on where its edge begins.
    assertEquals(
        List.of("window W1, 3 passes", "window W2, 3 passes", "window W3, 3 passes"),
        titles.subList(3, 6).stream().sorted().toList());
    assertEquals(List.of("outline, 3 passes"), titles.subList(6, titles.size()));
  }

  @Test
  void climbRunsCounterClockwiseInsideAndClockwiseOutside() {
    // A right-hand cutter turning clockwise climbs where the finished edge is on its right.
    Plate plate = CutPlates.of(Contour.circle(Point.ORIGIN, 60), Contour.circle(Point.ORIGIN, 20));
    for (CutDirection direction : CutDirection.values()) {
      CutPlan plan = CutPlan.of(plate, CutSetup.router(plate, 4, 2, FEEDS).with(direction));
      double inside = direction == CutDirection.CLIMB ? 1 : -1;
      for (Operation operation : plan.operations()) {
        double wanted = operation.title().startsWith("window") ? inside : -inside;
        for (Move.Cut cut : cuts(operation)) {
          Arc arc = (Arc) cut.along();
          if (Math.abs(arc.radius() - 18) < 1e-9 || Math.abs(arc.radius() - 62) < 1e-9) {
            assertEquals(wanted, Math.signum(arc.sweep()), operation.title());
          }
        }
      }
    }
  }

  @Test
  void passesAreEqualAndNoDeeperThanTheStep() {
    Plate plate = CutPlates.of(RandomShapes.roundedRectangle(120, 80, 12));
    CutSetup setup = CutSetup.router(plate, 4, 2, FEEDS).with(CutSetup.Tabs.NONE);
    CutPlan plan = CutPlan.of(plate, setup);
    // 6 mm of plywood and 0.3 below it in steps of at most 3 mm: three passes of 2.1 mm.
    List<Double> levels =
        cuts(plan.operations().get(0)).stream()
            .filter(cut -> cut.fromZ() == cut.toZ())
            .map(Move.Cut::toZ)
            .distinct()
            .toList();
    assertEquals(3, levels.size());
    for (int k = 0; k < 3; k++) {
      assertEquals(-2.1 * (k + 1), levels.get(k), 1e-9);
    }
    // At each depth once round, plus the ramps, the leads and the way back to the start.
    double lap = plan.compensation().lines().get(0).path().length();
    assertTrue(plan.total().cut() > 3 * lap && plan.total().cut() < 4.5 * lap);
    assertEquals(-6.3, plan.height().bottom(), 1e-12);
  }

  @Test
  void nothingGoesDownSteeperThanTheRampOrStraightIntoTheStock() {
    CutSetup setup = CutSetup.router(DemoPlates.heron(), 4, 2, FEEDS);
    double steepest = Math.tan(setup.entry().ramp());
    for (Operation operation : CutPlan.of(DemoPlates.heron(), setup).operations()) {
      for (Move move : operation.moves()) {
        if (move instanceof Move.Sink sink) {
          assertTrue(sink.toZ() > 0);
        } else if (move instanceof Move.Cut cut) {
          assertTrue(cut.fromZ() - cut.toZ() <= steepest * cut.along().length() + 1e-5);
        }
      }
    }
  }

  @Test
  void aLargeHoleIsBoredOnAHelixAndASmallOneDrilled() {
    Plate plate =
        CutPlates.of(
            CutPlates.PLYWOOD,
            6,
            Contour.circle(Point.ORIGIN, 60),
            List.of(hole("H1", 30, 0, 5), hole("B1", 0, 0, 10)));
    CutPlan plan = router(plate, 4);
    Move.Drill drill = (Move.Drill) plan.operations().get(0).moves().get(1);
    // Through 6 mm and 0.3 below it, and the point of a 118 degree drill: 2.5 x tan 31 degrees.
    assertEquals(-6.3 - 2.5 * Math.tan(Math.toRadians(31)), drill.bottom(), 1e-12);
    assertEquals(0, drill.peck());
    assertEquals("5 mm drill", plan.operations().get(0).tool().name());
    for (Move.Cut cut : cuts(plan.operations().get(1))) {
      double far = cut.along().to().norm();
      assertTrue(far <= 3 + 1e-9);
    }
    assertPasses(plan, 4, "both");
  }

  @Test
  void aDeepHoleIsPecked() {
    Plate plate =
        CutPlates.of(
            CutPlates.ALUMINIUM,
            12,
            Contour.circle(Point.ORIGIN, 60),
            List.of(hole("H1", 30, 0, 3)));
    Move.Drill drill = (Move.Drill) router(plate, 4).operations().get(0).moves().get(1);
    assertEquals(3, drill.peck());
  }

  @Test
  void tabsStandOnTheLongSidesAndOnTheLargeSlugs() {
    Contour window = RandomShapes.roundedRectangle(90, 40, 10);
    Plate plate = CutPlates.of(RandomShapes.roundedRectangle(200, 120, 15), window);
    CutPlan plan = router(plate, 4);
    assertEquals(
        4,
        plan.tabs().stream()
            .filter(tab -> tab.feature().kind() == CutFeature.Kind.OUTLINE)
            .count());
    assertTrue(plan.tabs().size() >= 6);
    for (CutTab tab : plan.tabs()) {
      assertEquals(-5, tab.top(), 1e-12);
      boolean outline = tab.feature().kind() == CutFeature.Kind.OUTLINE;
      Contour path = plan.compensation().lines(tab.feature()).get(0).path();
      for (felloe.geometry.Segment segment : path.segments()) {
        if (segment instanceof Arc arc) {
          // The level way over a tab and a cutter's width more: no arc there.
          assertTrue(arc.distance(tab.at()) >= 4.5 + 4 - 1e-9, outline + " " + tab);
        }
      }
    }
    assertPasses(plan, 4, "tabs");
  }

  @Test
  void aSlugWithNoRoomForTabsIsMentioned() {
    Plate plate =
        CutPlates.of(
            CutPlates.ALUMINIUM,
            6,
            Contour.circle(Point.ORIGIN, 60),
            List.of(hole("B1", 0, 0, 24)));
    CutPlan plan = router(plate, 4);
    assertTrue(plan.notes().stream().anyMatch(note -> note.text().startsWith("B1: the slug")));
  }

  @Test
  void aHollowOfTheOutlineIsCutBeforeTheOutline() {
    Plate plate = CompensationTest.narrowMouth();
    CutPlan plan = CutPlan.of(plate, CutSetup.router(plate, 6, 2, FEEDS));
    assertEquals(
        List.of("outline, part 1 of 2, 2 passes", "outline, part 2 of 2, 2 passes"),
        plan.operations().stream().map(Operation::title).toList());
    assertPasses(plan, 4, "hollow");
  }

  @Test
  void leftOversAreStatedAndTheRestIsProved() {
    Contour sharp =
        Contour.polygon(
            List.of(
                new Point(-30, -20), new Point(30, -20), new Point(30, 20), new Point(-30, 20)));
    CutPlan plan = router(CutPlates.of(Contour.circle(Point.ORIGIN, 80), sharp), 6);
    assertEquals(4, plan.compensation().leftOvers().size());
    assertPasses(plan, 4, "sharp window");
  }

  private static Surroundings held(List<Contour> strips) {
    return new Surroundings(strips, List.of(), java.util.Optional.empty());
  }

  @Test
  void leadsKeepClearOfWhatMustNotBeTouched() {
    Plate plate = CutPlates.of(RandomShapes.roundedRectangle(100, 60, 10));
    // Strips along all four sides, 0.5 mm from where the cutter's edge runs.
    List<Contour> strips = new ArrayList<>();
    for (double side : new double[] {-1, 1}) {
      Contour bar = RandomShapes.roundedRectangle(140, 10, 1);
      strips.add(bar.moved(RigidTransform.shift(0, side * (30 + 4 + 0.5 + 5))));
      Contour post = RandomShapes.roundedRectangle(10, 60, 1);
      strips.add(post.moved(RigidTransform.shift(side * (50 + 4 + 0.5 + 5), 0)));
    }
    CutPlan alone = router(plate, 4);
    CutPlan held = CutPlan.of(plate, CutSetup.router(plate, 4, 2, FEEDS), held(strips));
    assertPasses(held, 4, "held");
    CutPlan unaware =
        new CutPlan(
            plate,
            alone.setup(),
            held(strips),
            alone.compensation(),
            alone.height(),
            alone.operations(),
            alone.tabs(),
            alone.figures(),
            alone.notes(),
            alone.cautions());
    assertFalse(SweepCheck.of(unaware, 4).passed());
  }

  /** A wavy disc of many chords, as an imported outline may be, with a hole for each hundred. */
  private static Plate wavy(int edges) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < edges; i++) {
      double angle = 2 * Math.PI * i / edges;
      corners.add(Point.polar(600 + 10 * Math.sin(24 * angle), angle));
    }
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < edges / 100; i++) {
      holes.add(hole("H" + i, 24 * (i % 32) - 372, 24 * (i / 32) - 372, i % 2 == 0 ? 5 : 9));
    }
    return CutPlates.of(CutPlates.PLYWOOD, 6, Contour.polygon(corners), holes);
  }

  @Test
  void anImportedOutlineOfManyChordsIsPlannedAndProvedInTimeNearItsSize() {
    plannedIn(4000);
    double small = plannedIn(8000);
    double large = plannedIn(32000);
    // Four times the size: n log n is 4.7 times the time, the square 16 times. A slow machine
    // must not fail.
    assertTrue(large < 12 * small + 500, small + " ms, then " + large + " ms");
  }

  private static double plannedIn(int edges) {
    Plate plate = wavy(edges);
    long start = System.nanoTime();
    CutPlan plan = router(plate, 4);
    assertPasses(plan, 4, edges + " edges");
    return (System.nanoTime() - start) / 1e6;
  }

  @Test
  void theEstimateAddsUp() {
    CutPlan plan = router(DemoPlates.dunlin(), 4);
    double minutes = plan.figures().stream().mapToDouble(OperationFigures::minutes).sum();
    assertEquals(minutes, plan.total().minutes(), 1e-12);
    double slowest = plan.total().cut() / plan.setup().rates().rampFeed();
    double fastest = plan.total().cut() / plan.setup().rates().feed();
    assertTrue(minutes > fastest && minutes < 2 * slowest, "minutes " + minutes);
    assertEquals(plan.operations().size(), plan.figures().size());
  }

  @Test
  void theSamePlateGivesTheSamePlan() {
    assertEquals(router(DemoPlates.heron(), 4), router(DemoPlates.heron(), 4));
  }

  @Test
  void seededRandomPlatesAreProved() {
    for (long seed = 1; seed <= 400; seed++) {
      Random random = new Random(seed);
      List<Contour> windows = new ArrayList<>();
      List<Hole> holes = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        Point at = Point.polar(70, i * Math.PI / 2);
        Contour window = RandomShapes.contour(1000 * seed + i, 40 + 40 * random.nextDouble());
        windows.add(window.moved(RigidTransform.shift(at.x(), at.y())));
        Point by = Point.polar(130, (i + random.nextDouble()) * Math.PI / 2);
        holes.add(hole("H" + (i + 1), by.x(), by.y(), 3 + 15 * random.nextDouble()));
      }
      Contour outline =
          seed % 2 == 0
              ? RandomShapes.contour(seed, 700)
              : RandomShapes.roundedRectangle(300, 300, 30 + 100 * random.nextDouble());
      Plate plate;
      try {
        plate =
            CutPlates.of(
                CutPlates.PLYWOOD,
                3 + 6 * random.nextDouble(),
                outline,
                holes,
                windows.toArray(Contour[]::new));
      } catch (felloe.geometry.GeometryException crowded) {
        plate = CutPlates.of(CutPlates.PLYWOOD, 5, outline, List.of());
      }
      double cutter = 1 + 5 * random.nextDouble();
      CutSetup setup = CutSetup.router(plate, cutter, 2, FEEDS);
      setup = setup.with(new CutSetup.Drills(List.of(), 1.2 * cutter));
      setup = setup.with(new CutSetup.Entry(Math.toRadians(3 + random.nextInt(12)), cutter));
      setup = random.nextBoolean() ? setup : setup.with(CutDirection.CONVENTIONAL);
      if (random.nextInt(3) == 0) {
        double kerf = 0.1 + random.nextDouble();
        setup = CutSetup.beam(CutProcess.WATERJET, plate, kerf, 400);
      }
      String who = "seed " + seed + " " + setup.process() + " cutter " + setup.cutter();
      try {
        assertPasses(CutPlan.of(plate, setup), 4, who);
      } catch (CutRefused refused) {
        throw new AssertionError(who + ": " + refused.getMessage(), refused);
      }
    }
  }
}
