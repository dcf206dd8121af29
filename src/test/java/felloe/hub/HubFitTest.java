package felloe.hub;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.plate.Basis;
import felloe.plate.BoltCircle;
import felloe.plate.Face;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Making;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Stock;
import felloe.plate.Verdict;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class HubFitTest {

  private static final long SEED = 55_310L;
  private static final Place PLACE = Place.of("heron.yaml", 12, 3);
  private static final double UP = Math.PI / 2;

  private static HubSpec hub(String name) {
    return HubCatalogue.here().spec(name, Place.BUILT_IN);
  }

  private static HubSpec withPilot(HubSpec hub, double pilot) {
    Map<String, Basis> bases = new TreeMap<>(hub.bases());
    bases.put("pilot", Basis.of("measured").orElseThrow());
    return new HubSpec(
        hub.name(),
        hub.title(),
        hub.ring(),
        hub.second(),
        hub.use(),
        Optional.of(pilot),
        Optional.empty(),
        hub.positionTolerance(),
        bases,
        hub.place());
  }

  private static List<Hole> ring(int count, double pcd, double hole, double first) {
    List<Point> centres =
        new BoltCircle("bolts", count, pcd, hole, first, Optional.empty(), PLACE).centres();
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      holes.add(new Hole("H" + (i + 1), HoleRole.BOLT, centres.get(i), hole, PLACE));
    }
    return holes;
  }

  private static Hole bore(double diameter, Point centre) {
    return new Hole("B1", HoleRole.BORE, centre, diameter, PLACE);
  }

  private static Finding finding(HubFitResult result, String rule) {
    return result.findings().stream().filter(f -> f.rule().equals(rule)).findFirst().orElseThrow();
  }

  @Test
  void fiveMillimetreHolesOnSeventyLetSixM5InWithNoRoomAtAll() {
    HubFitResult result = HubFit.of(ring(6, 70, 5, UP), hub("6x70-m5"));
    assertTrue(result.enters());
    assertEquals(Verdict.CAUTION, result.verdict());
    assertEquals(0, result.clearance().orElseThrow(), 1e-8);
    assertEquals(-0.35, result.worst().orElseThrow(), 1e-8);
    assertEquals(0, result.plateTurn().orElseThrow(), 1e-8);
    assertEquals(Math.PI / 3, result.step(), 1e-12);
    assertTrue(result.mismatches().isEmpty());
    assertEquals(
        List.of("H1", "H2", "H3", "H4", "H5", "H6"),
        result.screws().stream().map(s -> s.hole().label()).toList());
    Finding series = finding(result, "hub-hole-series");
    assertEquals(Verdict.CAUTION, series.verdict());
    assertEquals(
        "5 mm on M5 is below the fine series (5.3 mm). It is done in practice; it leaves no room"
            + " for error.",
        series.advice());
    assertEquals(Verdict.PASS, finding(result, "hub-fit").verdict());
    assertEquals(0, finding(result, "hub-fit").figure().value());
    assertEquals(Verdict.CAUTION, finding(result, "hub-fit-worst").verdict());
  }

  /** What to do about the worst case hangs on how the holes are made, or that they are made. */
  @Test
  void theAdviceForTheWorstCaseSuitsTheWayOfDrilling() {
    assertTrue(worst("template").startsWith("Drill through the hub or a bush plate"));
    assertTrue(worst("through-hub").startsWith("Holes drilled through a hub fit that very hub."));
    assertEquals(
        "Try the plate on the very hub, each screw by hand; force none.", worst("measured"));
  }

  private static String worst(String way) {
    HubPractice practice = HubPractice.standard();
    DrillingMethod usual = practice.drilling().get(0);
    HubFit fit =
        new HubFit(practice, new DrillingMethod(way, usual.title(), usual.zone(), usual.basis()));
    HubFitResult result = fit.fit(ring(6, 70, 5.3, UP), hub("6x70-m5"));
    return finding(result, "hub-fit-worst").advice();
  }

  @Test
  void holesOpenedToTheFixedFastenerFormulaPassEvenAtTheWorst() {
    double hole = FastenerFormula.fixedHole(5, 0.2, 0.5);
    HubFitResult result = HubFit.of(ring(6, 70, hole, UP), hub("6x70-m5"));
    assertEquals(Verdict.PASS, result.verdict());
    assertEquals(0, result.worst().orElseThrow(), 1e-8);
    assertTrue(result.cures().isEmpty());
  }

  @Test
  void noErrorsWithinTheTolerancesTakeMoreRoomThanTheWorstCaseSays() {
    Random random = new Random(SEED);
    HubSpec hub = hub("6x70-m5");
    HubFit fit = HubFit.standard();
    double zone = fit.drilling().zone() + hub.positionTolerance();
    double least = Double.POSITIVE_INFINITY;
    List<Hole> holes = ring(6, 70, 5.5, UP);
    double worst = fit.fit(holes, hub).worst().orElseThrow();
    for (int run = 0; run < 80; run++) {
      List<Hole> off = new ArrayList<>();
      boolean outward = run == 0;
      for (Hole hole : holes) {
        double way = outward ? hole.centre().angle() : 2 * Math.PI * random.nextDouble();
        off.add(
            new Hole(
                hole.label(),
                hole.role(),
                hole.centre().plus(Point.polar(zone / 2, way)),
                hole.diameter(),
                PLACE));
      }
      double clearance = fit.fit(off, hub).clearance().orElseThrow();
      least = Math.min(least, clearance);
      assertTrue(clearance >= worst - 1e-8, "seed " + SEED + ", run " + run);
    }
    // All holes outward is the worst there is: the bound is reached.
    assertEquals(worst, least, 1e-8);
  }

  @Test
  void seededPlacementsOfAMatchingPatternAllFitWithTheSameRoom() {
    Random random = new Random(SEED);
    HubSpec hub = hub("6x74-m5");
    for (int run = 0; run < 60; run++) {
      RigidTransform motion =
          new RigidTransform(false, 7 * random.nextDouble(), new Point(random.nextGaussian(), 1));
      List<Hole> holes = new ArrayList<>();
      for (Hole h : ring(6, 74, 5.5, UP)) {
        holes.add(new Hole(h.label(), h.role(), motion.of(h.centre()), h.diameter(), h.place()));
      }
      Collections.shuffle(holes, random);
      HubFitResult result = HubFit.of(holes, hub);
      assertEquals(0.25, result.clearance().orElseThrow(), 2e-9, "seed " + SEED + " run " + run);
      assertEquals(motion.shift().norm(), result.offCentre().orElseThrow(), 1e-6, "run " + run);
    }
  }

  @Test
  void twoAndThreeQuarterInchesOnSeventyMillimetresIsANearMissThatTheFineSeriesMends() {
    HubFitResult result = HubFit.of(ring(6, 69.85, 5, UP), hub("6x70-m5"));
    assertFalse(result.enters());
    assertEquals(-0.075, result.clearance().orElseThrow(), 1e-8);
    assertEquals(1, result.mismatches().size());
    Mismatch off = result.mismatches().get(0);
    assertEquals(Mismatch.Kind.PITCH_DIAMETER, off.kind());
    assertEquals(-0.15, off.by(), 1e-6);
    Cure.OpenHoles open = assertInstanceOf(Cure.OpenHoles.class, result.cures().get(0));
    assertEquals(ClearanceSeries.FINE, open.series());
    assertEquals(0.075, open.clearance(), 1e-8);
    assertEquals(6, open.openings().size());
    assertEquals(Verdict.FAIL, result.verdict());
    assertTrue(
        finding(result, "hub-fit")
            .advice()
            .startsWith(
                "The holes stand on a circle of 69.85 mm, the screws on one of 70 mm. Open H1, H2,"
                    + " H3, H4, H5, H6 to 5.3 mm (fine series)"));
  }

  @Test
  void seventyFourOnSeventyIsMendedBySlots() {
    HubFitResult result = HubFit.of(ring(6, 74, 5, UP), hub("6x70-m5"));
    assertEquals(-2, result.clearance().orElseThrow(), 1e-8);
    assertEquals(4, result.mismatches().get(0).by(), 1e-6);
    assertEquals(1, result.cures().size());
    Cure.Slots slots = assertInstanceOf(Cure.Slots.class, result.cures().get(0));
    assertEquals(6, slots.slots().size());
    assertTrue(slots.words().contains("slots of bolt_circles[]"), slots.words());
    SlottedHole first = slots.slots().get(0);
    assertEquals(2, first.travel(), 1e-6);
    assertEquals(7, first.length(), 1e-6);
    assertEquals(-90, Math.toDegrees(first.direction()), 1e-4);
  }

  @Test
  void aHubFarFromTheCircleGetsASecondRingWhereThereIsRoom() {
    HubFitResult result = HubFit.of(ring(6, 101, 6.4, UP), hub("6x70-m5"));
    Cure.DrillHoles drill = assertInstanceOf(Cure.DrillHoles.class, result.cures().get(0));
    assertTrue(drill.works());
    assertEquals(0, drill.turn());
    // Beside each other on one ray: half of 101 - 70, less both radii.
    assertEquals(15.5 - 3.2 - 2.5, drill.web().orElseThrow(), 1e-9);
    assertEquals(31, result.mismatches().get(0).by(), 1e-6);
  }

  @Test
  void aSecondRingThatWouldCutIntoTheFirstIsTurned() {
    HubFitResult result = HubFit.of(ring(6, 80, 5, UP), hub("6x70-m5"));
    Cure.DrillHoles drill = assertInstanceOf(Cure.DrillHoles.class, result.cures().get(0));
    assertTrue(drill.works());
    assertEquals(30, Math.toDegrees(drill.turn()), 1e-6);
    // Law of cosines between radii 35 and 40 at 30 degrees.
    double apart = Math.sqrt(35 * 35 + 40 * 40 - 2 * 35 * 40 * Math.cos(Math.PI / 6));
    assertEquals(apart - 5, drill.web().orElseThrow(), 1e-9);
  }

  @Test
  void nothingMendsAPlateWithoutRoomForNewHoles() {
    List<Hole> holes = new ArrayList<>(ring(12, 80, 9, UP));
    for (Hole h : ring(18, 58, 6, UP)) {
      holes.add(new Hole("W" + h.label(), HoleRole.OTHER, h.centre(), 6, PLACE));
    }
    HubFitResult result = HubFit.of(holes, hub("6x70-m5"));
    List<Cure> cures = result.cures();
    assertTrue(cures.stream().noneMatch(Cure::works));
    assertTrue(cures.get(0).words().startsWith("No room to drill 6 new holes"));
    assertTrue(cures.get(1).words().startsWith("Nothing will mend it"));
  }

  @Test
  void oneHoleOffItsPlaceIsNamedAndSlotted() {
    List<Hole> holes = new ArrayList<>(ring(6, 70, 5.5, UP));
    Hole third = holes.get(2);
    holes.set(2, new Hole("H3", HoleRole.BOLT, third.centre().plus(new Point(0, 1.5)), 5.5, PLACE));
    HubFitResult result = HubFit.of(holes, hub("6x70-m5"));
    assertFalse(result.enters());
    Mismatch spacing =
        result.mismatches().stream()
            .filter(m -> m.kind() == Mismatch.Kind.SPACING)
            .findFirst()
            .orElseThrow();
    assertEquals("H3", spacing.subject());
    Cure.Slots slots =
        result.cures().stream()
            .filter(Cure.Slots.class::isInstance)
            .map(Cure.Slots.class::cast)
            .findFirst()
            .orElseThrow();
    assertEquals(List.of("H3"), slots.slots().stream().map(SlottedHole::hole).toList());
    assertEquals(1.5, slots.slots().get(0).travel(), 1e-6);
    assertEquals(-90, Math.toDegrees(slots.slots().get(0).direction()), 1e-3);
  }

  @Test
  void aHoleSmallerThanItsScrewIsNamedAndOpened() {
    List<Hole> holes = new ArrayList<>(ring(6, 70, 5.3, UP));
    holes.set(4, new Hole("H5", HoleRole.BOLT, holes.get(4).centre(), 4.2, PLACE));
    HubFitResult result = HubFit.of(holes, hub("6x70-m5"));
    assertEquals(-0.4, result.clearance().orElseThrow(), 1e-8);
    assertEquals(
        List.of(new Mismatch(Mismatch.Kind.HOLE_SIZE, "H5", 4.2, 5, "mm")), result.mismatches());
    Cure.OpenHoles open = assertInstanceOf(Cure.OpenHoles.class, result.cures().get(0));
    assertEquals(List.of(new Cure.Opening("H5", 4.2, 5.3)), open.openings());
  }

  @Test
  void threeOfSixHolesAreCountedAndTheOthersDrilled() {
    HubFitResult result = HubFit.of(ring(3, 70, 5.3, UP), hub("6x70-m5"));
    assertEquals(Verdict.FAIL, result.verdict());
    assertEquals(Optional.empty(), result.clearance());
    assertEquals(
        List.of(new Mismatch(Mismatch.Kind.COUNT, "plate", 3, 6, "")), result.mismatches());
    Cure.DrillHoles drill = assertInstanceOf(Cure.DrillHoles.class, result.cures().get(0));
    assertEquals(3, drill.centres().size());
    for (Point centre : drill.centres()) {
      assertEquals(35, centre.norm(), 1e-6);
    }
    assertEquals(35 - 2.65 - 2.5, drill.web().orElseThrow(), 1e-6);
    List<Hole> mended = new ArrayList<>(ring(3, 70, 5.3, UP));
    drill.centres().forEach(c -> mended.add(new Hole("N", HoleRole.BOLT, c, 5, PLACE)));
    HubFitResult after = HubFit.of(mended, hub("6x70-m5"));
    assertTrue(after.enters());
    assertEquals(after.clearance().orElseThrow(), drill.clearance(), 1e-9);
    assertTrue(drill.words().endsWith(": the tightest screw then has 0.00 mm all round as drawn."));
  }

  @Test
  void newHolesThatAreSmallerThanTheScrewsAreNotOffered() {
    HubSpec good = hub("6x70-m5");
    HubRing ring = good.ring();
    HubSpec tight =
        new HubSpec(
            good.name(),
            good.title(),
            new HubRing(ring.count(), ring.pitchDiameter(), ring.thread(), ring.firstAngle(), 4.6),
            good.second(),
            good.use(),
            Optional.empty(),
            Optional.empty(),
            good.positionTolerance(),
            good.bases(),
            good.place());
    HubFitResult result = HubFit.of(List.of(bore(30, Point.ORIGIN)), tight);
    assertTrue(result.cures().stream().noneMatch(Cure::works));
    assertEquals(
        "Drilling 6 new holes of 4.6 mm does not let all screws enter: the tightest lacks 0.20 mm"
            + " all round.",
        result.cures().get(0).words());
  }

  @Test
  void aPlateWithoutHubHolesGetsTheHubsOwnPattern() {
    HubFitResult result = HubFit.of(List.of(bore(30, Point.ORIGIN)), hub("6x70-m5"));
    Cure.DrillHoles drill = assertInstanceOf(Cure.DrillHoles.class, result.cures().get(0));
    assertEquals(6, drill.centres().size());
    assertEquals(35 - 15 - 2.5, drill.web().orElseThrow(), 1e-9);
    assertEquals(Optional.empty(), result.pattern());
  }

  @Test
  void aPlateTurnedOnTheHubIsACautionThatSaysWhichWay() {
    HubFitResult result = HubFit.of(ring(6, 70, 5.8, UP + Math.toRadians(10)), hub("6x70-m5"));
    Finding turn = finding(result, "hub-turn");
    assertEquals(Verdict.CAUTION, turn.verdict());
    assertEquals(10, turn.figure().value(), 1e-6);
    assertEquals(-10, Math.toDegrees(result.plateTurn().orElseThrow()), 1e-6);
    assertTrue(turn.advice().startsWith("The plate sits turned 10 degrees clockwise"));
  }

  @Test
  void aHubWithTwoRingsTakesTheOneThatFits() {
    HubSpec two = hub("3x50-3x58-m6");
    HubFitResult outer = HubFit.of(ring(3, 58, 6.6, Math.PI / 6), two);
    assertTrue(outer.enters());
    assertEquals(58, outer.rings().get(0).pitchDiameter());
    assertEquals(0.3, outer.clearance().orElseThrow(), 1e-8);
    HubFitResult inner = HubFit.of(ring(3, 50, 6.6, UP), two);
    assertEquals(50, inner.rings().get(0).pitchDiameter());
  }

  @Test
  void screwsOfBothRingsMustEnterWhereBothAreUsed() {
    HubSpec either = hub("3x50-3x58-m6");
    HubSpec both =
        new HubSpec(
            either.name(),
            either.title(),
            either.ring(),
            either.second(),
            RingUse.BOTH,
            either.pilot(),
            either.bore(),
            either.positionTolerance(),
            either.bases(),
            either.place());
    assertEquals(Optional.empty(), HubFit.of(ring(3, 50, 6.6, UP), both).clearance());
    List<Hole> holes = new ArrayList<>(ring(3, 50, 6.6, UP));
    holes.addAll(ring(3, 58, 6.6, Math.PI / 6));
    HubFitResult good = HubFit.of(holes, both);
    assertTrue(good.enters());
    assertEquals(2 * Math.PI / 3, good.step(), 1e-12);
    List<Hole> wrong = new ArrayList<>(ring(3, 50, 6.6, UP));
    wrong.addAll(ring(3, 58, 6.6, Math.toRadians(40)));
    assertFalse(HubFit.of(wrong, both).enters());
  }

  @Test
  void aSpigotLargerThanTheBoreKeepsThePlateOff() {
    HubSpec hub = withPilot(hub("6x70-m5"), 32);
    List<Hole> holes = new ArrayList<>(ring(6, 70, 5.5, UP));
    holes.add(bore(30, Point.ORIGIN));
    HubFitResult result = HubFit.of(holes, hub);
    assertFalse(result.enters());
    assertEquals(Verdict.FAIL, result.verdict());
    assertEquals(-1, result.pilot().orElseThrow().clearance().orElseThrow(), 1e-8);
    assertEquals(Mismatch.Kind.PILOT, result.mismatches().get(0).kind());
    assertEquals(-2, result.mismatches().get(0).by(), 1e-8);
    assertEquals("Open B1 to at least 32.00 mm.", finding(result, "hub-bore").advice());
    holes.set(6, bore(32, Point.ORIGIN));
    assertTrue(HubFit.of(holes, hub).enters());
  }

  @Test
  void aBoreIsNotOpenedIntoTheHubsOwnHoles() {
    List<Hole> holes = new ArrayList<>(ring(6, 70, 5.5, UP));
    holes.add(bore(30, Point.ORIGIN));
    HubFitResult result = HubFit.of(holes, withPilot(hub("6x70-m5"), 60));
    // 35 less half of 5.5 and half of 60 is less than one hole's diameter.
    Cure.OpenBore open =
        result.cures().stream()
            .filter(Cure.OpenBore.class::isInstance)
            .map(Cure.OpenBore.class::cast)
            .findFirst()
            .orElseThrow();
    assertFalse(open.works());
    assertEquals(2.25, open.web().orElseThrow(), 1e-9);
    assertEquals(
        "No room to open B1 to 60.00 mm: 5.5 mm of material are wanted beside it, and that leaves"
            + " 2.3 mm to H1; choose another hub, or draw the plate anew.",
        finding(result, "hub-bore").advice());
  }

  @Test
  void aSpigotWithoutABoreKeepsThePlateOff() {
    HubFitResult result = HubFit.of(ring(6, 70, 5.5, UP), withPilot(hub("6x70-m5"), 32));
    assertEquals(Verdict.FAIL, finding(result, "hub-bore").verdict());
    assertTrue(finding(result, "hub-bore").advice().startsWith("Open a bore at the hub axis"));
  }

  @Test
  void aBoreOffCentreIsMetByMovingThePlateWithinTheRoomOfTheScrews() {
    HubSpec hub = withPilot(hub("6x70-m5"), 30);
    List<Hole> holes = new ArrayList<>(ring(6, 70, 5.5, UP));
    holes.add(bore(30.1, new Point(0.2, 0)));
    HubFitResult result = HubFit.of(holes, hub);
    assertTrue(result.enters());
    // The spigot takes 0.05 mm and the screws the other 0.15 mm, less the equal share of the rest.
    assertTrue(result.clearance().orElseThrow() >= 0);
    assertTrue(result.pilot().orElseThrow().clearance().orElseThrow() >= 0);
    holes.set(6, bore(30.1, new Point(0.4, 0)));
    assertFalse(HubFit.of(holes, hub).enters());
  }

  @Test
  void holesOfOtherRolesTakeNoHubScrew() {
    List<Hole> holes = new ArrayList<>(ring(6, 70, 5.5, UP));
    holes.add(new Hole("G1", HoleRole.GRIP, new Point(140, 0), 4, PLACE));
    HubFitResult result = HubFit.of(holes, hub("6x70-m5"));
    assertTrue(result.enters());
    assertTrue(result.spare().isEmpty());
  }

  @Test
  void sixHolesForFiveScrewsAreAnotherCountAndAnotherCircle() {
    HubFitResult result = HubFit.of(ring(6, 70, 5.3, UP), hub("5x69-m5"));
    assertEquals(
        List.of(Mismatch.Kind.COUNT, Mismatch.Kind.PITCH_DIAMETER),
        result.mismatches().stream().map(Mismatch::kind).toList());
    assertEquals(
        "The plate has 6 bolt holes, the hub 5 screws.", result.mismatches().get(0).words());
    assertFalse(result.enters());
  }

  @Test
  void newHolesKeepClearOfOutlineAndWindowsWhenThePlateIsKnown() {
    Contour outline = Contour.circle(Point.ORIGIN, 60);
    Window window = new Window("W1", WindowUse.OPEN, Contour.circle(new Point(0, 47), 4), PLACE);
    HubSpec hub = hub("6x101-m6");
    HubFitResult narrow = HubFit.of(plate(outline, List.of()), hub);
    Cure.DrillHoles drill = assertInstanceOf(Cure.DrillHoles.class, narrow.cures().get(0));
    // 60 less half of 101 and half of 6.4 is less than one hole's diameter.
    assertEquals(60 - 50.5 - 3.2, drill.web().orElseThrow(), 1e-9);
    assertFalse(drill.works());
    assertTrue(drill.words().endsWith("that leaves 6.3 mm of material to the outline."));
    HubFitResult beside = HubFit.of(plate(Contour.circle(Point.ORIGIN, 100), List.of(window)), hub);
    Cure.DrillHoles turned = assertInstanceOf(Cure.DrillHoles.class, beside.cures().get(0));
    assertTrue(turned.works());
    assertEquals(30, Math.toDegrees(turned.turn()), 1e-9);
  }

  private static Plate plate(Contour outline, List<Window> windows) {
    Material material = new Material("ply", "plywood", MaterialKind.WOOD, 0.68, "common practice");
    return new Plate(
        "heron",
        "Heron",
        "00000000",
        outline,
        windows,
        List.of(),
        List.of(),
        Optional.empty(),
        new Stock(material, 6, Optional.empty(), Face.FRONT, PLACE),
        new Making(6, 2, 0),
        List.of(),
        List.of());
  }

  // Source: Kåsa's method on the points of Gander, Golub and Strebel, BIT 34 (1994) 558.
  @Test
  void theCircleOfLeastSquaresOnAPublishedSetOfPoints() {
    PatternFigures fit =
        PatternFigures.of(
                List.of(
                    new Point(1, 7),
                    new Point(2, 6),
                    new Point(5, 8),
                    new Point(7, 7),
                    new Point(9, 5),
                    new Point(3, 7)))
            .orElseThrow();
    assertEquals(4.742331, fit.centre().x(), 5e-7);
    assertEquals(3.835123, fit.centre().y(), 5e-7);
    assertEquals(4.108762, fit.pitchDiameter() / 2, 5e-7);
  }
}
