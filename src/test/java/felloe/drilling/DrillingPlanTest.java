package felloe.drilling;

import static felloe.drilling.DrillPlates.demo;
import static felloe.drilling.DrillPlates.hole;
import static felloe.drilling.DrillPlates.material;
import static felloe.drilling.DrillPlates.plan;
import static felloe.drilling.DrillPlates.ring;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.hub.CalliperFigures;
import felloe.hub.CalliperReading;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Order of work, limits, and what is measured. */
class DrillingPlanTest {

  private static final long SEED = 4_114L;
  private static final Material METAL = material("aluminium-6082-t6", MaterialKind.METAL);

  @Test
  void hubPatternComesFirstThenBoreThenGripsThenTheOthers() {
    List<Hole> holes = new ArrayList<>();
    holes.add(hole("P1", HoleRole.OTHER, 200, 0, 6));
    holes.add(hole("G1", HoleRole.GRIP, 150, 20, 4.3));
    holes.add(hole("B", HoleRole.BORE, 0, 0, 25));
    holes.addAll(ring(6, 70, 5.5));
    holes.add(hole("G2", HoleRole.GRIP, 150, -20, 4.3));
    holes.add(hole("G3", HoleRole.GRIP, 170, -20, 5.3));
    List<String> order =
        plan(holes, METAL).groups().stream().map(g -> String.join(" ", g.labels())).toList();
    assertEquals(List.of("H1 H2 H3 H4 H5 H6", "B", "G1 G2", "G3", "P1"), order);
  }

  @Test
  void everyHoleOfADemoShapeIsInOneGroup() {
    Map<String, Integer> holes = Map.of("heron", 17, "bittern", 19, "dunlin", 4, "avocet", 6);
    holes.forEach(
        (name, count) -> {
          List<String> labels = new ArrayList<>();
          demo(name).groups().forEach(group -> labels.addAll(group.labels()));
          assertEquals(count, labels.size(), name);
          assertEquals(count, new TreeSet<>(labels).size(), name);
        });
  }

  /** 5 mm holes for M5 leave nothing; 5.5 and 6.4 mm less than paper needs at the worst. */
  @ParameterizedTest
  @ValueSource(strings = {"heron", "bittern", "dunlin"})
  void wherePaperMayMissTheHubTheHolesAreDrilledThroughIt(String name) {
    DrillingPlan plan = demo(name);
    assertTrue(plan.throughHub());
    HoleGroup group = plan.groups().get(0);
    // Minor diameters of M5 and M6, ISO 724: 4.134 and 4.917 mm; the drill must slip through.
    boolean six = name.equals("dunlin");
    double pilot = plan.pilotDiameter().orElseThrow();
    assertEquals(six ? 4.9 : 4.1, pilot, 0);
    assertTrue(pilot < (six ? 4.917 : 4.134));
    assertTrue(group.notes().get(0).contains("through the hub"));
    assertTrue(group.steps().stream().noneMatch(step -> step.stage() == Stage.SPOT));
    assertEquals(0.1 + 0.2, group.zone(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron", "bittern", "dunlin"})
  void whatAMachineMakesIsNeitherMarkedNorDrilledThroughTheHub(String name) {
    DrillingPlan plan = demo(name, "making.position=machine");
    assertFalse(plan.throughHub());
    assertTrue(plan.before().get(0).contains("a machine makes the holes"));
    List<String> words = new ArrayList<>(plan.before());
    for (HoleGroup group : plan.groups()) {
      words.addAll(group.notes());
      words.add(group.zoneFrom());
      group.steps().forEach(step -> words.add(step.words()));
      assertTrue(group.zone() >= 0.2, group.zone() + " mm");
    }
    String all = String.join(" ", words);
    assertFalse(all.contains("through the paper") || all.contains("From the paper"), all);
    assertFalse(all.contains("through the hub") || all.contains("in the mark"), all);
    // Of the machine's zone of 0.2 mm: 5 mm holes leave M5 nothing, 5.5 and 6.4 mm leave 0.2 or
    // more.
    assertEquals(name.equals("heron"), all.contains("may miss the screws"), all);
  }

  @Test
  void aWishToDrillThroughTheHubSaysNothingOfMissingFromThePaper() {
    HoleGroup group = demo("heron", "making.position=through-hub").groups().get(0);
    assertTrue(group.notes().get(0).startsWith("The shape file says"), group.notes().get(0));
    String bare = demo("avocet", "making.position=through-hub").before().get(0);
    assertTrue(bare.contains("names no hub"), bare);
    assertFalse(demo("avocet").before().get(0).contains("names no hub"));
  }

  @Test
  void theSecondHoleThroughTheHubStandsOppositeTheFirst() {
    assertEquals(
        List.of("H1", "H4", "H2", "H3", "H5", "H6"), demo("heron").groups().get(0).labels());
  }

  /** Five holes have none opposite the first: that most nearly so stands second, and is named. */
  @Test
  void ofAnOddRingTheHoleMostNearlyOppositeIsDrilledSecond() {
    HoleGroup five = plan(ring(5, 69, 5), METAL, "5x69-m5").groups().get(0);
    assertEquals(List.of("H1", "H3", "H2", "H4", "H5"), five.labels());
    assertTrue(five.notes().get(0).contains("Then H3, the one most nearly opposite, likewise."));
    HoleGroup three = plan(ring(3, 58, 6), METAL, "3x58-m6").groups().get(0);
    assertEquals(List.of("H1", "H2", "H3"), three.labels());
    assertTrue(three.notes().get(0).contains("First hole, H1: 4.9 mm through the hub"));
  }

  /** Fixed fastener, H - F - T1 = 5.8 - 5 - 0.2 mm, more than the 0.5 mm of paper. */
  @Test
  void wideHolesAreDrilledFromThePaperWithWhatTheFixedFastenerFormulaLeaves() {
    DrillingPlan plan = plan(ring(6, 70, 5.8), METAL, "6x70-m5");
    assertFalse(plan.throughHub());
    assertEquals(0.6, plan.groups().get(0).zone(), 1e-9);
    assertEquals("H14", plan(ring(6, 70, 6.0), METAL, "6x70-m5").groups().get(0).tolerance());
    assertEquals("H14", plan.groups().get(0).tolerance());
    assertEquals("H13", plan(ring(6, 70, 5.6), METAL, "6x70-m5").groups().get(0).tolerance());
    assertEquals("H12", plan(ring(6, 70, 5.3), METAL, "6x70-m5").groups().get(0).tolerance());
    assertEquals("H13", plan(ring(6, 70, 5.3), METAL).groups().get(0).tolerance());
  }

  /** The chords of the ring, as the hub room reckons them by D sin(pi k/n). */
  @Test
  void distancesOfARingAreItsCalliperFigures() {
    for (int count = 2; count <= 12; count++) {
      CalliperFigures figures = CalliperFigures.of(count, 70, 5.5);
      Set<Long> wanted = new HashSet<>();
      figures.readings().stream()
          .map(CalliperReading::outside)
          .forEach(mm -> wanted.add(Math.round(mm * 1e6)));
      DrillingPlan plan = plan(ring(count, 70, 5.5), METAL);
      for (DistanceCheck check : plan.readings()) {
        assertTrue(
            wanted.contains(Math.round(check.limits().nominal() * 1e6)), count + ": " + check);
      }
      if (count <= MeasuredPairs.ALL) {
        assertEquals(count * (count - 1) / 2, plan.readings().size());
      }
    }
  }

  /** Enough readings for all coordinates but the three of the plate's own place: 2 n - 3. */
  @Test
  void readingsFixWhereAllHolesLie() {
    for (int count = 2; count <= 24; count++) {
      int readings = MeasuredPairs.of(count).size();
      assertTrue(readings >= 2 * count - 3, count + " holes, " + readings + " readings");
      assertEquals(readings, new HashSet<>(MeasuredPairs.of(count)).size());
      Map<Integer, Set<Integer>> next = new HashMap<>();
      for (MeasuredPairs.Pair pair : MeasuredPairs.of(count)) {
        assertTrue(pair.from() != pair.to());
        next.computeIfAbsent(pair.from(), i -> new HashSet<>()).add(pair.to());
        next.computeIfAbsent(pair.to(), i -> new HashSet<>()).add(pair.from());
      }
      // Laid one by one, each hole beyond the first two is tied to two that lie already.
      for (int i = 2; i < count; i++) {
        int hole = i;
        long ties = next.get(hole).stream().filter(other -> other < hole).count();
        assertTrue(ties >= 2, count + " holes, hole " + hole);
      }
    }
    assertTrue(MeasuredPairs.of(1).isEmpty());
    assertTrue(MeasuredPairs.quick(1).isEmpty());
    assertEquals(1, MeasuredPairs.quick(2).size());
    assertEquals(3, MeasuredPairs.quick(3).size());
    assertEquals(9, MeasuredPairs.quick(6).size());
  }

  @Test
  void rowsOfSizesAndReadingsAreNumberedThrough() {
    DrillingPlan plan = demo("heron");
    List<Integer> numbers = new ArrayList<>();
    plan.sizes().forEach(size -> numbers.add(size.number()));
    plan.readings().forEach(check -> numbers.add(check.number()));
    assertEquals(6 + 15, numbers.size());
    for (int i = 0; i < numbers.size(); i++) {
      assertEquals(i + 1, numbers.get(i));
    }
  }

  /** Holes as good as their limits allow, drilled at random: no reading leaves its limits. */
  @Test
  void seededGoodPlatesReadWithinTheLimits() {
    Random random = new Random(SEED);
    double tightest = 1;
    List<DrillingPlan> plans = new ArrayList<>();
    for (int count = 3; count < 9; count++) {
      plans.add(plan(ring(count, 60, 5.8), METAL));
    }
    for (int trial = 0; trial < 2000; trial++) {
      DrillingPlan plan = plans.get(random.nextInt(plans.size()));
      HoleGroup group = plan.groups().get(0);
      Map<String, Point> at = new HashMap<>();
      Map<String, Double> size = new HashMap<>();
      for (Hole hole : ring(group.labels().size(), 60, 5.8)) {
        double out = group.zone() / 2 * Math.sqrt(random.nextDouble());
        Point stray = Point.polar(out, 2 * Math.PI * random.nextDouble());
        at.put(hole.label(), hole.centre().plus(stray));
        double width = group.limits().most() - group.limits().least();
        size.put(hole.label(), group.limits().least() + width * random.nextDouble());
      }
      for (DistanceCheck check : plan.readings()) {
        double reads =
            at.get(check.from()).distance(at.get(check.to()))
                + (size.get(check.from()) + size.get(check.to())) / 2;
        DistanceLimits limits = check.limits();
        String told = SEED + ", trial " + trial + ": " + check + " reads " + reads;
        // Across the line a stray adds a hair of second order.
        assertTrue(reads >= limits.least() - 1e-9 && reads <= limits.most() + 0.01, told);
        tightest = Math.min(tightest, limits.most() - reads);
      }
    }
    assertTrue(tightest < 0.3, "the limits are not idle: " + tightest);
  }

  @Test
  void aThousandHolesAreAPlanOfOneGroup() {
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      holes.add(hole("P" + i, HoleRole.GRIP, -700 + 40 * (i % 36), -600 + 40 * (i / 36), 4.3));
    }
    DrillingPlan plan = plan(holes, METAL);
    assertEquals(1, plan.groups().size());
    assertEquals(1000, plan.groups().get(0).labels().size());
    assertEquals(12, plan.others().size());
    assertTrue(plan.readings().isEmpty() && plan.sizes().isEmpty());
  }

  @Test
  void aThousandHubHolesOfAThousandSizesAreBounded() {
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      holes.add(
          hole("P" + i, HoleRole.BOLT, -700 + 40 * (i % 36), -600 + 40 * (i / 36), 2 + 0.01 * i));
    }
    DrillingPlan plan = plan(holes, METAL);
    assertEquals(DrillingPlan.MOST_GROUPS, plan.groups().size());
    assertEquals(1000 - DrillingPlan.MOST_GROUPS, plan.leftOut());
    assertEquals(DrillingPlan.MOST_MEASURED, plan.sizes().size());
    assertEquals(1000 - DrillingPlan.MOST_MEASURED, plan.notMeasured());
    // To the neighbour, the next but one, and across.
    assertEquals(48 + 48 + 24, plan.readings().size());
  }

  @Test
  void aPlateWithoutHolesHasAnEmptyPlan() {
    DrillingPlan plan = plan(List.of(), METAL);
    assertTrue(plan.groups().isEmpty() && plan.readings().isEmpty() && plan.sizes().isEmpty());
    assertTrue(plan.afterPilot().isEmpty() && plan.others().isEmpty());
    assertFalse(plan.throughHub());
  }

  @Test
  void everyMaterialSaysHowToClampAndWhatHarms() {
    for (MaterialKind kind : MaterialKind.values()) {
      DrillingPlan plan = plan(ring(4, 60, 5.5), material("reed", kind));
      String before = String.join(" ", plan.before());
      assertTrue(before.contains("lamp"), before);
      assertTrue(before.contains("scrap"), before);
      assertFalse(plan.cautions().isEmpty());
      assertTrue(plan.bases().stream().allMatch(b -> b.matches(".*(standard|common practice).*")));
      assertTrue(plan.material().basis().contains("common practice"));
    }
  }
}
