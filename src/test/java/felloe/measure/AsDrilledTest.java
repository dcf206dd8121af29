package felloe.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.hub.Cure;
import felloe.hub.HubCatalogue;
import felloe.hub.HubSpec;
import felloe.hub.Mismatch;
import felloe.hub.RingUse;
import felloe.plate.BadInput;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AsDrilledTest {

  private static final HubCatalogue HUBS = HubCatalogue.here();
  private static final HubSpec HUB = HUBS.spec("6x70-m5", Place.BUILT_IN);
  private static final Plate PLATE = plate("heron", "bolt-circles[0].diameter=5.5");

  private static Plate plate(String name, String... sets) {
    return ShapeFile.read(Path.of("shapes/" + name + ".yaml"), Sets.of(sets), HUBS);
  }

  private static List<Point> meant() {
    return PLATE.holes(HoleRole.BOLT).stream().map(Hole::centre).toList();
  }

  /** The plate's hub holes, one of them moved, seen turned and shifted. */
  private static List<Point> drilled(int moved, Point by) {
    RigidTransform seen = new RigidTransform(false, 0.7, new Point(3, -8));
    List<Point> holes = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      holes.add(seen.of(i == moved ? meant().get(i).plus(by) : meant().get(i)));
    }
    return holes;
  }

  private static AsDrilledResult of(List<Point> holes, double size, boolean bonus) {
    Calliper calliper = new Calliper(holes, size, 0.05, null).diameter(0).allPairs();
    return AsDrilled.of(PLATE, HUB, calliper.measured(), bonus);
  }

  @Test
  void aTruePlateWithMediumHolesPasses() {
    AsDrilledResult result = of(drilled(-1, Point.ORIGIN), 5.5, false);
    assertEquals(Verdict.PASS, result.verdict(), result.toString());
    assertEquals(0.25, result.fit().clearance().orElseThrow(), 1e-6);
    for (DrilledHole hole : result.holes()) {
      assertEquals(0, hole.position(), 1e-6);
      assertEquals(5.5, hole.diameter(), 1e-6);
      assertTrue(hole.at().near(hole.meant().centre(), 1e-6));
    }
    assertTrue(result.openings().isEmpty());
  }

  /** A hub with M6 on a first ring and M5 on a second one: the plate goes on the second. */
  @Test
  void eachHoleIsJudgedByTheScrewOfItsOwnRing() {
    HubSpec wide = HUBS.spec("6x101-m6", Place.BUILT_IN);
    HubSpec both =
        new HubSpec(
            "two-rings",
            "M6 on a wide ring, M5 on a narrow one",
            wide.ring(),
            Optional.of(HUB.ring()),
            RingUse.EITHER,
            Optional.empty(),
            Optional.empty(),
            HUB.positionTolerance(),
            HUB.bases(),
            Place.BUILT_IN);
    Calliper calliper =
        new Calliper(drilled(-1, Point.ORIGIN), 5.5, 0.05, null).diameter(0).allPairs();
    AsDrilledResult one = AsDrilled.of(PLATE, HUB, calliper.measured(), false);
    AsDrilledResult two = AsDrilled.of(PLATE, both, calliper.measured(), false);
    assertEquals(one.fixed(), two.fixed(), 1e-12);
    assertEquals(
        one.holes().get(0).tolerance().orElseThrow(),
        two.holes().get(0).tolerance().orElseThrow(),
        1e-12);
    assertEquals(Verdict.PASS, two.verdict());
  }

  @Test
  void howUnsureTheReadingsAreIsCountedInTheWorstCase() {
    AsDrilledResult result = of(drilled(-1, Point.ORIGIN), 5.5, false);
    double within = result.holes().stream().mapToDouble(DrilledHole::unsure).max().orElseThrow();
    double size = result.survey().holes().get(0).sizeError();
    double worst = 0.25 - HUB.positionTolerance() / 2 - within - size;
    assertEquals(worst, result.fit().worst().orElseThrow(), 1e-6);
  }

  /**
   * A hole moved out by 0.6 mm: the smallest largest deviation of the pattern. Moved along x alone,
   * half of what can be shared is; the least is found by a search over shifts and turns.
   */
  @Test
  void thePatternIsLaidSoThatTheWorstHoleIsOffLeast() {
    List<Point> seen = drilled(2, new Point(-0.5, 0.3));
    double most = 2 * Alignment.of(seen, meant(), false).worst();
    List<Point> holes = new ArrayList<>(meant());
    holes.set(2, holes.get(2).plus(new Point(-0.5, 0.3)));
    Random random = new Random(7);
    double best = Double.POSITIVE_INFINITY;
    double x = 0;
    double y = 0;
    double turn = 0;
    for (int round = 0; round < 20_000; round++) {
      double step = 0.2 * Math.pow(0.9995, round);
      double tx = x + step * random.nextGaussian();
      double ty = y + step * random.nextGaussian();
      double ta = turn + step * random.nextGaussian() / 35;
      RigidTransform motion = new RigidTransform(false, ta, new Point(tx, ty));
      double worst = 0;
      for (int i = 0; i < 6; i++) {
        worst = Math.max(worst, motion.of(holes.get(i)).distance(meant().get(i)));
      }
      if (worst < best) {
        best = worst;
        x = tx;
        y = ty;
        turn = ta;
      }
    }
    assertEquals(2 * best, most, 1e-3);
  }

  @Test
  void oneHoleOffFailsAndIsOpenedAlone() {
    AsDrilledResult result = of(drilled(2, new Point(-0.25, 0.21)), 5.3, false);
    assertEquals(Verdict.FAIL, result.verdict());
    assertFalse(result.fit().enters());
    HoleEnlargement least = result.openings().get(0);
    assertEquals(1, least.all().size(), least.toString());
    assertEquals("H3", least.all().get(0).hole());
    assertTrue(least.clearance() >= HUB.positionTolerance() / 2, least.toString());
    double to = least.all().get(0).to();
    assertEquals(Math.rint(to * 10) / 10, to, 1e-9, "a drill in tenths");
    assertTrue(to > 5.3 && to <= 5.8);
    assertEquals(List.of(), result.cures());
  }

  /** Opened to the coarse series it would let its screw in, with 0.02 mm to spare: that is none. */
  @Test
  void aHoleThatADrillLeavesNoRealRoomIsSlotted() {
    AsDrilledResult result = of(drilled(2, new Point(-0.4, 0.35)), 5.3, false);
    assertEquals(List.of(), result.openings());
    Cure.Slots slots = slots(result);
    assertEquals("H3", slots.slots().get(0).hole());
    assertEquals(0.15, slots.clearance(), 1e-6, "as much as the other holes have");
  }

  private static Cure.Slots slots(AsDrilledResult result) {
    assertEquals(1, result.cures().size(), result.cures().toString());
    Cure.Slots slots = assertInstanceOf(Cure.Slots.class, result.cures().get(0));
    assertEquals(1, slots.slots().size(), slots.toString());
    return slots;
  }

  @Test
  void aHoleTooFarForAnyDrillIsSlottedTowardItsScrew() {
    Point by = new Point(-1.5, 0);
    AsDrilledResult result = of(drilled(1, by), 5.3, false);
    assertEquals(Verdict.FAIL, result.verdict());
    assertTrue(result.openings().isEmpty(), result.openings().toString());
    Cure.Slots slots = slots(result);
    assertEquals("H2", slots.slots().get(0).hole());
    assertEquals(1.5, slots.slots().get(0).travel(), 0.4);
  }

  /** Its screw enters by a hair; five holes would have to be opened to be sure of it. */
  @Test
  void anOddHoleIsCuredAloneEvenWhereOpeningOthersWouldDoToo() {
    AsDrilledResult result = of(drilled(3, new Point(0.45, 0.1)), 5.5, false);
    assertEquals(Verdict.CAUTION, result.verdict());
    assertEquals(List.of("H4"), result.odd().stream().map(OddHole::label).toList());
    HoleEnlargement drill = result.openings().get(0);
    assertEquals(List.of("H4"), drill.all().stream().map(HoleEnlargement.Opening::hole).toList());
    assertTrue(drill.clearance() >= HUB.positionTolerance() / 2, drill.toString());
    assertEquals(1, result.openings().size());
    assertEquals(List.of(), result.cures());

    // A little further, and that drill leaves too little: then it is a slot, of that hole alone.
    result = of(drilled(3, new Point(0.47, 0.1)), 5.5, false);
    assertEquals(List.of(), result.openings());
    Cure.Slots slots = slots(result);
    assertEquals("H4", slots.slots().get(0).hole());
    assertEquals(Math.hypot(0.47, 0.1), slots.slots().get(0).travel(), 1e-4);
    assertTrue(slots.worst() > 0, slots.toString());
  }

  /** How far the odd hole is off, and its cure, are told once and alike wherever they stand. */
  @Test
  void aHoleOffIsToldWithOneFigureAndOneCure() {
    AsDrilledResult result = of(drilled(0, new Point(0, 0.6)), 5.5, false);
    assertEquals(0.6, result.odd().get(0).off(), 1e-6);
    Mismatch off = result.fit().mismatches().get(0);
    assertEquals(1, result.fit().mismatches().size(), result.fit().mismatches().toString());
    assertEquals("H1", off.subject());
    assertEquals(result.odd().get(0).off(), off.plate(), 1e-12);
    assertEquals(
        List.of("H1 is 0.60 mm off its place."),
        result.fit().findings().stream()
            .filter(f -> f.rule().equals("hub-fit"))
            .map(Finding::advice)
            .toList());
    assertEquals(List.of(), result.openings());
    assertEquals(0.25, slots(result).clearance(), 1e-6);
  }

  /** Larger by a hair, a screw would scrape in; the cure is the drill of the drawing. */
  @Test
  void aHoleSmallerThanItsScrewIsOpenedAsItWasDrawn() {
    List<Hole> holes = new ArrayList<>(PLATE.holes(HoleRole.BOLT));
    holes.set(2, holes.get(2).withDiameter(4.9));
    AsDrilledResult result = AsDrilled.of(PLATE, HUB, sized(holes), false);
    assertEquals(Verdict.FAIL, result.verdict());
    assertEquals(1, result.openings().size());
    HoleEnlargement.Opening open = result.openings().get(0).all().get(0);
    assertEquals(new HoleEnlargement.Opening("H3", 4.9, 5.5, "medium series"), open);
    assertEquals(List.of(), result.cures());
    assertEquals(
        List.of(new Mismatch(Mismatch.Kind.HOLE_SIZE, "H3", 4.9, 5, "mm")),
        result.fit().mismatches());
  }

  @Test
  void aPatternOfAnotherCircleIsScrap() {
    List<Point> other = Calliper.ring(6, 76);
    AsDrilledResult result = of(other, 5.3, false);
    assertEquals(Verdict.FAIL, result.verdict());
    assertTrue(result.openings().isEmpty());
  }

  /** T = H - F - T1 for fixed fasteners, T = H - F for floating ones; here H as drawn. */
  @Test
  void theFormulasTellWhatDrillingMayHave() {
    AsDrilledResult result = of(drilled(-1, Point.ORIGIN), 5.5, false);
    double drawn = PLATE.holes(HoleRole.BOLT).get(0).diameter();
    assertEquals(drawn - 5 - HUB.positionTolerance(), result.fixed(), 1e-9);
    assertEquals(drawn - 5, result.floating(), 1e-9);
  }

  /** Bonus = actual size - smallest size (ISO 2692). */
  @Test
  void theBonusIsWhatAHoleIsLargerThanDrawn() {
    double drawn = PLATE.holes(HoleRole.BOLT).get(0).diameter();
    AsDrilledResult without = of(drilled(-1, Point.ORIGIN), 5.6, false);
    AsDrilledResult with = of(drilled(-1, Point.ORIGIN), 5.6, true);
    for (int i = 0; i < 6; i++) {
      assertEquals(without.fixed(), without.holes().get(i).tolerance().orElseThrow(), 1e-6);
      assertEquals(5.6 - drawn, with.holes().get(i).bonus(), 1e-6);
      assertEquals(with.fixed() + 5.6 - drawn, with.holes().get(i).tolerance().orElseThrow(), 1e-6);
    }
  }

  /**
   * With bonus the zones differ; the pattern keeps them when one placement keeps all at once, as a
   * gauge with fixed pins of the virtual size tells (ISO 2692). Virtual size: smallest hole less
   * zone. The gauge is tried by a search over shifts and turns.
   */
  @Test
  void withBonusThePatternIsLaidSoThatAllZonesAreKeptIfTheyCanBe() {
    double drawn = 5.5;
    long seed = 20_240_611;
    Random random = new Random(seed);
    int otherwise = 0;
    for (int run = 0; run < 40; run++) {
      List<Hole> holes = new ArrayList<>();
      for (Hole hole : PLATE.holes(HoleRole.BOLT)) {
        Point by = new Point(0.1 * random.nextGaussian(), 0.1 * random.nextGaussian());
        double size = drawn + 0.2 * random.nextDouble();
        holes.add(new Hole(hole.label(), hole.role(), hole.centre().plus(by), size, hole.place()));
      }
      AsDrilledResult with = AsDrilled.of(PLATE, HUB, sized(holes), true);
      double gauge = gauge(holes, drawn - with.fixed());
      if (!with.odd().isEmpty()) {
        // Told apart only where no placement keeps all zones.
        assertTrue(gauge < 0, "seed " + seed + ", run " + run);
        continue;
      }
      double most = Double.NEGATIVE_INFINITY;
      for (DrilledHole hole : with.holes()) {
        most = Math.max(most, (hole.position() - hole.tolerance().orElseThrow()) / 2);
      }
      assertEquals(gauge, -most, 2e-3, "seed " + seed + ", run " + run);
      AsDrilledResult without = AsDrilled.of(PLATE, HUB, sized(holes), false);
      otherwise += Math.abs(worst(with) - worst(without)) > 0.01 ? 1 : 0;
    }
    assertTrue(otherwise > 0, "no run tells the two ways of laying apart");
  }

  private static double worst(AsDrilledResult result) {
    return result.holes().stream().mapToDouble(DrilledHole::position).max().orElseThrow();
  }

  /** Exact readings: every pair and every size. */
  private static Measured sized(List<Hole> holes) {
    List<Reading> readings = new ArrayList<>();
    List<String> labels = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      Hole one = holes.get(i);
      labels.add("" + (i + 1));
      Place place = Place.of("plate.yaml", i + 4, 5);
      readings.add(
          new Reading(i, i, Optional.empty(), ReadingKind.DIAMETER, one.diameter(), 0.05, place));
      for (int j = i + 1; j < holes.size(); j++) {
        double between = one.centre().distance(holes.get(j).centre());
        readings.add(
            new Reading(i, j, Optional.empty(), ReadingKind.CENTRES, between, 0.05, place));
      }
    }
    return new Measured(
        "plate.yaml",
        labels,
        ContactFeature.HOLES,
        Optional.empty(),
        readings,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Place.of("plate.yaml", 1, 1));
  }

  /**
   * The most room, all round, that a gauge's tightest pin has in the holes: by a pattern search.
   */
  private static double gauge(List<Hole> holes, double pin) {
    double[] at = {0, 0, 0};
    double best = room(holes, pin, at);
    for (double step = 0.2; step > 1e-5; step *= 0.7) {
      double[] from = at.clone();
      for (int i = -3; i <= 3; i++) {
        for (int j = -3; j <= 3; j++) {
          for (int k = -3; k <= 3; k++) {
            double[] to = {
              from[0] + i * step / 2, from[1] + j * step / 2, from[2] + k * step / 2 / 35
            };
            double room = room(holes, pin, to);
            if (room > best) {
              best = room;
              at = to;
            }
          }
        }
      }
    }
    return best;
  }

  private static double room(List<Hole> holes, double pin, double[] at) {
    RigidTransform motion = new RigidTransform(false, at[2], new Point(at[0], at[1]));
    double least = Double.MAX_VALUE;
    for (int i = 0; i < holes.size(); i++) {
      double off = motion.of(meant().get(i)).distance(holes.get(i).centre());
      least = Math.min(least, (holes.get(i).diameter() - pin) / 2 - off);
    }
    return least;
  }

  /** dx = dy = 0.177 is a zone of 0.50 (ISO 1101). */
  @Test
  void positionIsTwiceTheDistance() {
    Hole hole = PLATE.holes(HoleRole.BOLT).get(0);
    Point off = hole.centre().plus(new Point(0.177, 0.177));
    assertEquals(0.50, 2 * off.distance(hole.centre()), 0.001);
    DrilledHole moved =
        new DrilledHole(hole, off, 5.5, Optional.of(0.1), 0.5, 0, Optional.of(0.5), 0);
    assertTrue(moved.keeps());
  }

  @Test
  void aSlipIsACautionAtLeast() {
    Calliper calliper =
        new Calliper(drilled(-1, Point.ORIGIN), 5.5, 0.05, null).diameter(0).allPairs().slip(4, 1);
    AsDrilledResult result = AsDrilled.of(PLATE, HUB, calliper.measured(), false);
    assertEquals(Verdict.CAUTION, result.verdict());
    assertEquals(1, result.survey().suspects().get(0).off(), 1e-6);
  }

  /** The others would find the holes without it, but it is a word that is wrong: ask for it. */
  @Test
  void oneWrongWordAmongManyReadingsIsRefusedAtItsLine() {
    List<Hole> holes = PLATE.holes(HoleRole.BOLT);
    Measured right = sized(holes);
    List<Reading> readings = new ArrayList<>(right.readings());
    int one = 1;
    while (!readings.get(one).isPair()) {
      one++;
    }
    Reading wrong = readings.get(one);
    double outside = wrong.reads() + holes.get(0).diameter();
    readings.set(
        one,
        new Reading(
            wrong.from(),
            wrong.to(),
            Optional.empty(),
            ReadingKind.INSIDE,
            outside,
            0.05,
            Place.of("plate.yaml", 77, 5)));
    Measured slip =
        new Measured(
            right.file(),
            right.labels(),
            right.on(),
            right.size(),
            readings,
            right.waiting(),
            right.plate(),
            right.revision(),
            right.place());
    BadInput bad = assertThrows(BadInput.class, () -> AsDrilled.of(PLATE, HUB, slip, false));
    assertEquals(1, bad.problems().size(), bad.getMessage());
    assertTrue(bad.getMessage().contains("plate.yaml:77:5"), bad.getMessage());
    assertTrue(bad.getMessage().contains("reads like over outside"), bad.getMessage());
  }

  private static Measured renamed(Measured m, List<String> labels) {
    return new Measured(
        m.file(),
        labels,
        m.on(),
        m.size(),
        m.readings(),
        m.waiting(),
        Optional.of("bittern"),
        Optional.of("00000000"),
        m.place());
  }

  @Test
  void labelsAndPlainNumbersMeanTheSameHoles() {
    Measured numbers =
        new Calliper(drilled(-1, Point.ORIGIN), 5.5, 0.05, null).diameter(0).allPairs().measured();
    Measured labels = renamed(numbers, List.of("H1", "H2", "H3", "H4", "H5", "H6"));
    AsDrilledResult result = AsDrilled.of(PLATE, HUB, labels, false);
    // Of another plate and another revision, they pass nothing.
    assertEquals(Verdict.CAUTION, result.verdict());
    assertEquals(Verdict.PASS, AsDrilled.of(PLATE, HUB, numbers, false).verdict());
    assertTrue(result.notes().get(0).contains("bittern"), result.notes().toString());
    assertTrue(result.notes().get(1).contains("00000000"), result.notes().toString());
    BadInput bad =
        assertThrows(
            BadInput.class,
            () ->
                AsDrilled.of(
                    PLATE,
                    HUB,
                    renamed(numbers, List.of("H1", "H2", "H3", "4", "H5", "H9")),
                    false));
    assertTrue(bad.getMessage().contains("'H9' is no hole of the plate"), bad.getMessage());
  }

  @Test
  void holesNumberedInAnotherOrderAreToldSo() {
    List<Point> holes = new ArrayList<>(drilled(-1, Point.ORIGIN));
    Point one = holes.get(1);
    holes.set(1, holes.get(2));
    holes.set(2, one);
    BadInput bad = assertThrows(BadInput.class, () -> of(holes, 5.5, false));
    assertTrue(bad.getMessage().contains("H2 is H3, H3 is H2"), bad.getMessage());
  }

  @Test
  void aHubHoleThatWasNotMeasuredIsAskedFor() {
    Measured five =
        new Calliper(drilled(-1, Point.ORIGIN).subList(0, 5), 5.5, 0.05, null)
            .diameter(0)
            .allPairs()
            .measured();
    BadInput bad = assertThrows(BadInput.class, () -> AsDrilled.of(PLATE, HUB, five, false));
    assertTrue(bad.getMessage().contains("H6 was not measured"), bad.getMessage());
  }

  @Test
  void tooFewReadingsSayWhichPairIsWanted() {
    Calliper few = new Calliper(drilled(-1, Point.ORIGIN), 5.5, 0.05, null).diameter(0);
    for (int i = 0; i < 6; i++) {
      few.over(ReadingKind.OUTSIDE, i, (i + 1) % 6);
    }
    BadInput bad =
        assertThrows(BadInput.class, () -> AsDrilled.of(PLATE, HUB, few.measured(), false));
    assertTrue(bad.getMessage().contains("too few to find the 6 holes"), bad.getMessage());
    assertTrue(bad.getMessage().contains("measure "), bad.getMessage());
  }

  /**
   * Drilled with errors, measured with errors: a plate that is said to go on at the worst does go
   * on, and one that is said not to go on as measured is not far from that.
   */
  @Test
  void seededPlatesThatPassDoGoOn() {
    int passed = 0;
    int failed = 0;
    for (int i = 0; i < 30; i++) {
      Random random = new Random(4711 + i);
      List<Point> holes = new ArrayList<>();
      for (Point p : meant()) {
        double off = 0.4 * Math.sqrt(random.nextDouble());
        holes.add(p.plus(Point.polar(off, 2 * Math.PI * random.nextDouble())));
      }
      Calliper calliper = new Calliper(holes, 5.7, 0.05, random).diameter(0).formPairs();
      AsDrilledResult result = AsDrilled.of(PLATE, HUB, calliper.measured(), false);
      double truth = trueRoom(holes, 5.7);
      if (result.fit().worst().orElseThrow() >= 0) {
        passed++;
        assertTrue(truth >= 0, "seed " + (4711 + i));
      }
      if (!result.fit().enters()) {
        failed++;
        assertTrue(truth < 0.1, "seed " + (4711 + i));
      }
    }
    assertTrue(passed > 1 && failed > 1, passed + " " + failed);
  }

  private static double trueRoom(List<Point> holes, double size) {
    List<felloe.hub.RigidFit.Round> screws = new ArrayList<>();
    List<felloe.hub.RigidFit.Round> rounds = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      screws.add(new felloe.hub.RigidFit.Round(HUB.ring().centres().get(i), 5));
      rounds.add(new felloe.hub.RigidFit.Round(holes.get(i), size));
    }
    return felloe.hub.RigidFit.of(screws, rounds).clearance();
  }

  @Test
  void holesThatRunIntoEachOtherFailThePlate() {
    List<Point> holes = drilled(-1, Point.ORIGIN);
    AsDrilledResult result = of(holes, 36, false);
    assertEquals(Verdict.FAIL, result.verdict());
    assertTrue(
        result.notes().stream().anyMatch(note -> note.contains("broken out")),
        result.notes().toString());
  }
}
