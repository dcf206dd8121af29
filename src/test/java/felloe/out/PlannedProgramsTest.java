package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.cutting.CutDirection;
import felloe.cutting.CutPlan;
import felloe.cutting.CutSetup;
import felloe.cutting.CutterTool;
import felloe.cutting.Dialect;
import felloe.cutting.FeedTable;
import felloe.cutting.LeftOver;
import felloe.cutting.Operation;
import felloe.hub.HubCatalogue;
import felloe.plate.DemoPlates;
import felloe.plate.Plate;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The planner's jobs, written in every dialect, run by the interpreter, held against the plate. */
class PlannedProgramsTest {

  private static final FeedTable FEEDS = FeedTable.standard();

  /** The job of a plan. */
  static GcodeJob job(CutPlan plan) {
    return new GcodeJob(
        new About(plan.plate().title(), plan.plate().revision(), String.join(" ", plan.cautions())),
        "hub axis, upper face of the stock",
        List.of(),
        plan.height(),
        false,
        plan.operations());
  }

  /** What a program of a plan is to make. */
  static ProgramProof.Wanted wanted(CutPlan plan) {
    List<CutterTool> tools =
        new ArrayList<>(
            new LinkedHashSet<>(plan.operations().stream().map(Operation::tool).toList()));
    return new ProgramProof.Wanted(
        plan.plate(),
        plan.setup().depths().stock(),
        plan.height(),
        plan.setup().depths().stepDown(),
        tools,
        plan.compensation().leftOvers().stream().map(LeftOver::region).toList(),
        plan.tabs().stream()
            .map(
                tab ->
                    new ProgramProof.Bridge(
                        tab.at(),
                        tab.width(),
                        tab.top(),
                        Math.max(tab.before(), tab.after()) + plan.setup().cutter()))
            .toList());
  }

  private static List<Plate> shapes() {
    return Stream.of("avocet", "bittern", "dunlin", "heron")
        .map(
            name ->
                ShapeFile.read(Path.of("shapes", name + ".yaml"), Sets.of(), HubCatalogue.here()))
        .toList();
  }

  @Test
  void theDemoShapesPassInEveryDialect() {
    for (Plate plate : shapes()) {
      CutPlan plan = CutPlan.of(plate, CutSetup.router(plate, 4, 2, FEEDS));
      for (Dialect dialect : Dialects.all()) {
        prove(plan, dialect, plate.name() + " " + dialect.name());
      }
    }
  }

  @Test
  void otherCuttersAndTheOtherDirectionPassToo() {
    for (Plate plate : DemoPlates.all()) {
      for (double cutter : new double[] {3.175, 6}) {
        CutSetup setup = CutSetup.router(plate, cutter, 1, FEEDS).with(CutDirection.CONVENTIONAL);
        prove(CutPlan.of(plate, setup), Dialects.plain(), plate.name() + " " + cutter);
      }
    }
  }

  private static void prove(CutPlan plan, Dialect dialect, String who) {
    byte[] program = GcodeWriter.write(job(plan), dialect);
    ProgramProof proof = ProgramProof.of(program, Dialects.beyond(dialect), wanted(plan));
    assertEquals(List.of(), proof.faults, who);
    assertTrue(proof.worstGouge < 0.001, who + " gouge " + proof.worstGouge);
    assertTrue(
        proof.steepest <= Math.toDegrees(plan.setup().entry().ramp()) + 0.1,
        who + " steepest " + proof.steepest);
  }
}
