package felloe.drilling;

import static felloe.drilling.DrillPlates.hole;
import static felloe.drilling.DrillPlates.material;
import static felloe.drilling.DrillPlates.plan;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.cutting.FeedTable;
import felloe.cutting.StartingFeed;
import felloe.plate.HoleRole;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The steps in which a hole is made. */
class DrillStepsTest {

  private static final long SEED = 20_611L;

  private static final List<Material> MATERIALS =
      List.of(
          material("carbon-laminate", MaterialKind.LAMINATE),
          material("glass-laminate", MaterialKind.LAMINATE),
          material("aluminium-6082-t6", MaterialKind.METAL),
          material("birch-plywood", MaterialKind.WOOD),
          material("acrylic", MaterialKind.PLASTIC));

  private static List<DrillStep> steps(double diameter, Material material) {
    return plan(List.of(hole("D", HoleRole.OTHER, 0, 0, diameter)), material)
        .groups()
        .get(0)
        .steps();
  }

  private static List<DrillStep> steps(double diameter, int material) {
    return steps(diameter, MATERIALS.get(material));
  }

  private static String told(List<DrillStep> steps) {
    StringBuilder told = new StringBuilder();
    for (DrillStep step : steps) {
      told.append(told.isEmpty() ? "" : ", ").append(step.stage().words());
      step.diameter().ifPresent(d -> told.append(' ').append(felloe.geometry.Numbers.brief(d, 2)));
      step.turning()
          .ifPresent(t -> told.append('@').append(felloe.geometry.Numbers.brief(t.setting(), 0)));
    }
    return told.toString();
  }

  /**
   * Surface speeds 45 and 60 m/min, step of the press at or below 1000 v/(pi d); worked by hand.
   */
  @Test
  void usualHolesAreMadeInTheUsualSteps() {
    assertEquals(
        "mark, spot, pilot 2@2800, final 5.5@2000, countersink 6@710", told(steps(5.5, 0)));
    assertEquals(
        "mark, spot, pilot 2@2800, step 4.4@2800, final 6.4@2000, countersink 6.9@500",
        told(steps(6.4, 0)));
    assertEquals(
        "mark, spot, pilot 2@2800, final 6.4@2800, countersink 6.9@710", told(steps(6.4, 2)));
    assertEquals(
        "mark, spot, pilot 2.55@2800, step 5.9@2800, final 8.5@2000, countersink 9@500",
        told(steps(8.5, 2)));
    assertEquals("mark, final 5.5@2800, countersink 6@1000", told(steps(5.5, 3)));
    assertEquals(
        "mark, spot, pilot 2@2800, step 3.8@2000, final 5.5@1400, countersink 6@500",
        told(steps(5.5, 4)));
  }

  @Test
  void openingsWiderThanTheChuckAreSawnAndTrimmed() {
    assertEquals("mark, spot, pilot 6@2000, open 37@180, trim 38, deburr", told(steps(38, 0)));
    assertEquals("mark, spot, pilot 6@2800, open 24@355, trim 25, deburr", told(steps(25, 2)));
    // A Forstner bit of the size leaves nothing to trim.
    assertEquals("mark, open 32@500, deburr", told(steps(32, 3)));
    assertEquals("mark, open 26@710, trim 27, deburr", told(steps(27, 3)));
  }

  @Test
  void betweenTheLargestDrillAndTheSmallestSawTheFileMakesUp() {
    assertEquals(
        "mark, spot, pilot 3.9@2800, final 13@1000, trim 13.7, deburr", told(steps(13.7, 0)));
  }

  /** Holes of 5 mm, 0.5 mm apart and from the line: on a circle of 94 mm 53 of them, 5.57 mm. */
  @Test
  void anOpeningWiderThanAnySawIsChainDrilled() {
    List<DrillStep> steps = steps(100, 2);
    assertEquals("mark, chain 5@2800, trim 100, deburr", told(steps));
    assertTrue(steps.get(0).words().contains("circle of 94 mm and mark 53 centres on it, 5.57 mm"));
    assertTrue(steps.get(1).words().startsWith("53 holes"));
  }

  @Test
  void aSizeThatNoDrillHasTakesTheNextWithinItsLimitsAndSaysSo() {
    List<DrillStep> steps = steps(5.35, 2);
    DrillStep last = steps.get(steps.size() - 2);
    assertEquals(Stage.FINAL, last.stage());
    assertEquals(5.4, last.diameter().orElseThrow(), 0);
    assertTrue(last.words().startsWith("No standard drill makes 5.35 mm."), last.words());
    assertFalse(told(steps).contains("ream"));
  }

  /** H12 of 3 mm and less is 0.10 mm: never short of the next drill; so ream only where none is. */
  @Test
  void whereTheNextDrillIsBeyondTheLimitsTheHoleIsReamed() {
    DrillTable table = DrillTable.standard();
    StepMaker maker = new StepMaker(table, table.material(MATERIALS.get(2)), 5, true);
    List<DrillStep> steps = maker.steps(5.35, new SizeLimits(5.35, 5.37), Optional.empty());
    assertEquals(
        "mark, spot, pilot 2@2800, final 5.3@2800, ream 5.35, countersink 5.85@1000", told(steps));
    assertTrue(steps.get(4).words().contains("measures 5.35 to 5.37 mm"));
  }

  @Test
  void aHoleSmallerThanAnyDrillSaysThatItsDrillIsSpecial() {
    List<DrillStep> steps = steps(0.7, 2);
    assertEquals(0.7, steps.get(2).diameter().orElseThrow(), 0);
    assertTrue(steps.get(2).words().contains("a special drill"));
  }

  /** 1000 x 25/(pi 76) is 104.7 1/min, below what a press offers. */
  @Test
  void aToolThatEvenTheSlowestStepTurnsTooFastSaysSo() {
    DrillStep open =
        steps(78, 0).stream().filter(s -> s.stage() == Stage.OPEN).findFirst().orElseThrow();
    assertEquals(104.7, open.turning().orElseThrow().reckoned(), 0.05);
    assertTrue(open.turning().orElseThrow().tooFast());
    assertFalse(steps(38, 0).get(3).turning().orElseThrow().tooFast());
  }

  /** Plate and point, 5 + 5.5/2 tan 31 degrees = 6.652 mm, at 0.03 mm x 2000 1/min. */
  @Test
  void secondsAreTheWayThroughAtTheFeed() {
    DrillStep last = steps(5.5, 0).get(3);
    assertEquals(6.652, 5 + 5.5 / 2 * Math.tan(Math.toRadians(31)), 0.001);
    assertEquals(60 * 6.652 / 60, last.turning().orElseThrow().seconds().orElseThrow(), 0.001);
  }

  /** By hand no faster than a machine drills it, and in the same rows of materials. */
  @Test
  void speedsAndFeedsAreThoseOfTheCutFiles() {
    DrillTable table = DrillTable.standard();
    FeedTable feeds = FeedTable.standard();
    for (Material material : MATERIALS) {
      StartingFeed feed = feeds.routing(material, 4, 1);
      assertEquals(feed.title(), table.material(material).title());
      assertEquals(feed.drillSurfaceSpeed(), table.material(material).surfaceSpeed(), 0);
      assertEquals(feed.drillFeed(), table.material(material).feed(), 0);
    }
  }

  /**
   * Common practice, tables of drill speeds: aluminium 200 to 300 ft/min, wood 300 to 400 ft/min
   * and less, plastics 100 to 300 ft/min, with high-speed steel; laminates with hard metal 2000 to
   * 4000 1/min at 5 mm.
   */
  @ParameterizedTest
  @CsvSource({"2, 59, 92", "3, 59, 122", "4, 30, 92", "0, 31.4, 62.9", "1, 31.4, 62.9"})
  void surfaceSpeedsLieWithinCommonPractice(int material, double least, double most) {
    double speed = DrillTable.standard().material(MATERIALS.get(material)).surfaceSpeed();
    assertTrue(speed >= least && speed <= most, speed + " m/min");
  }

  @Test
  void aMaterialThatTheTableDoesNotNameTakesTheFirstOfItsKind() {
    for (MaterialKind kind : MaterialKind.values()) {
      assertEquals(kind, DrillTable.standard().material(material("reed", kind)).kind());
    }
    assertEquals(
        "carbon and epoxy laminate",
        DrillTable.standard().material(material("reed", MaterialKind.LAMINATE)).title());
  }

  @Test
  void seededHolesOfAnySizeInAnyMaterialAreMadeInGrowingSteps() {
    Random random = new Random(SEED);
    DrillTable table = DrillTable.standard();
    for (int i = 0; i < 2000; i++) {
      double diameter = Math.exp(random.nextDouble() * Math.log(400 / 0.4)) * 0.4;
      Material material = MATERIALS.get(random.nextInt(MATERIALS.size()));
      List<DrillStep> steps =
          new StepMaker(table, table.material(material), 5, true)
              .steps(diameter, table.limits(diameter, 13), Optional.empty());
      String told = SEED + ": " + diameter + " in " + material.name() + ": " + told(steps);
      Stage before = Stage.MARK;
      double made = 0;
      for (DrillStep step : steps) {
        assertTrue(step.stage().compareTo(before) >= 0, told);
        before = step.stage();
        boolean holes = step.stage() != Stage.CHAIN && step.diameter().isPresent();
        if (holes) {
          assertTrue(step.diameter().get() > made, told);
          made = step.diameter().get();
        }
        step.turning()
            .ifPresent(t -> assertTrue(t.setting() <= t.reckoned() + 1e-6 || t.tooFast(), told));
      }
      DrillStep end = steps.get(steps.size() - 1);
      assertTrue(end.stage() == Stage.COUNTERSINK || end.stage() == Stage.DEBURR, told);
      boolean sized =
          steps.stream()
              .filter(s -> s.stage() != Stage.COUNTERSINK)
              .anyMatch(s -> s.diameter().filter(d -> Math.abs(d - diameter) < 0.3).isPresent());
      assertTrue(sized, told);
    }
  }
}
