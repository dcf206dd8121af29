package felloe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Block;
import felloe.document.Block.Depth;
import felloe.document.Block.Fill;
import felloe.document.Block.Folded;
import felloe.document.Block.Tone;
import felloe.document.Report;
import felloe.joints.JointCheck;
import felloe.service.DrillOutcome;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The drilling report and what it tells of screws. */
class DrillReportTest {

  private static Study study(String shape, String... sets) {
    Path file = Path.of("shapes/" + shape + ".yaml");
    return new Studies(Path.of(""), Optional.empty()).one(ShapeSource.file(file, Sets.of(sets)));
  }

  private static Report report(String shape, String... sets) {
    return DrillReport.of(DrillOutcome.of(study(shape, sets)));
  }

  /** Blocks of a kind, folds opened but those of a depth. */
  private static <B extends Block> List<B> all(List<Block> blocks, Class<B> kind, Depth without) {
    List<B> found = new ArrayList<>();
    for (Block block : blocks) {
      if (kind.isInstance(block)) {
        found.add(kind.cast(block));
      }
      if (block instanceof Folded fold && fold.depth() != without) {
        found.addAll(all(fold.blocks(), kind, without));
      }
    }
    return found;
  }

  @ParameterizedTest
  @ValueSource(strings = {"avocet", "bittern", "dunlin", "heron"})
  void theVerdictStandsFirstAndEachStepHasABoxToTick(String shape) {
    Report report = report(shape);
    Block.Callout first = (Block.Callout) report.blocks().get(0);
    assertEquals(Tone.WELL, first.tone());
    assertTrue(first.texts().get(0).startsWith("Ready to drill, in this order: "));
    assertTrue(all(report.blocks(), Block.Steps.class, null).get(0).ticked());
    List<Block.Table> tables = all(report.blocks(), Block.Table.class, null);
    long ticked = tables.stream().filter(t -> t.columns().get(0).fill() == Fill.TICK).count();
    assertEquals(DrillOutcome.of(study(shape)).plan().groups().size(), ticked);
    assertTrue(
        tables.stream().anyMatch(t -> t.columns().stream().anyMatch(c -> c.fill() == Fill.BLANK)));
  }

  /** Pages with centre marks have the hole table; what screws stand is settled before. */
  @Test
  void paperHasNoSecondHoleScheduleAndNoJudgement() {
    List<String> paper =
        all(report("heron").blocks(), Block.Heading.class, Depth.SCREEN).stream()
            .map(Block.Heading::text)
            .toList();
    assertFalse(paper.contains("Hole schedule"), paper.toString());
    assertTrue(paper.contains("Readings of the finished hub pattern"), paper.toString());
    assertTrue(paper.contains("Screws, with torques to start from"), paper.toString());
  }

  @Test
  void whatFailsIsToldWithItsCure() {
    Report report = report("heron", "joints[1]={holes: hub, loads: {torque: 80}}");
    List<String> told =
        all(report.blocks(), Block.Callout.class, null).stream()
            .filter(c -> c.tone() == Tone.FAIL)
            .flatMap(c -> c.texts().stream())
            .toList();
    assertEquals("DO NOT DRILL YET: the plate FAILS 1 check of its review.", told.get(0));
    assertTrue(told.get(1).startsWith("Screw H1 does not hold: plate slips ("), told.get(1));
    assertEquals(
        "Any one of these in the shape file mends it: joints[1].washer: large instead of plain;"
            + " bolt_circles[0].count: 7 instead of 6, with a hub that has as many;"
            + " bolt_circles[0].pcd: 77 instead of 70, with a hub that has the same.",
        told.get(2));
  }

  @Test
  void aPlateWithoutHolesHasNothingToDrill() {
    String disc =
        "felloe: 1\noutline: {round: {diameter: 280}}\n"
            + "stock: {material: birch-plywood, thickness: 9}\n";
    ShapeSource source = new ShapeSource.OfText("disc.yaml", disc, Sets.of());
    Report report =
        DrillReport.of(DrillOutcome.of(new Studies(Path.of(""), Optional.empty()).one(source)));
    Block.Callout first = (Block.Callout) report.blocks().get(0);
    assertEquals("Nothing to drill: the plate has no holes.", first.texts().get(0));
  }

  /** Screws that are told alike stand in one row; no way to give way is told by letters. */
  @Test
  void screwsThatAreAlikeStandInOneRow() {
    Block.Table table =
        all(
                JointReport.judged(study("bittern").joints().judgement()).blocks(),
                Block.Table.class,
                null)
            .get(0);
    assertEquals(
        List.of("H1 to H6", "G1"), table.rows().stream().map(row -> row.get(0).text("")).toList());
    assertEquals("plate slips", table.rows().get(0).get(5).text(""));
  }

  @Test
  void everyWayToGiveWayIsToldInPlainWords() {
    Block.Table ways =
        all(
                JointReport.judged(study("heron").joints().judgement()).blocks(),
                Block.Table.class,
                null)
            .get(1);
    assertEquals(JointCheck.What.values().length, ways.rows().size());
    ways.rows().forEach(row -> assertFalse(row.get(0).text("").contains("over")));
  }
}
