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
import felloe.cutting.SweepCheck;
import felloe.hub.HubCatalogue;
import felloe.plate.DemoPlates;
import felloe.plate.Plate;
import felloe.shape.ShapeFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** From plate to program: what the planner made is what the machine of the tests sweeps. */
class CutPlanProgramTest {

  private static final FeedTable FEEDS = FeedTable.standard();

  private static GcodeJob job(CutPlan plan) {
    return new GcodeJob(
        CutDrawings.ABOUT,
        "hub axis, upper face of the stock",
        List.of(),
        plan.height(),
        false,
        plan.operations());
  }

  private static ProgramProof.Wanted wanted(CutPlan plan) {
    Set<CutterTool> tools = new LinkedHashSet<>();
    plan.operations().forEach(operation -> tools.add(operation.tool()));
    return new ProgramProof.Wanted(
        plan.plate(),
        plan.setup().depths().stock(),
        plan.height(),
        List.copyOf(tools),
        plan.compensation().leftOvers().stream().map(LeftOver::region).toList(),
        plan.tabs().stream()
            .map(tab -> new ProgramProof.Bridge(tab.at(), tab.width(), tab.top()))
            .toList());
  }

  private static List<Plate> plates() {
    List<Plate> plates = new ArrayList<>(DemoPlates.all());
    HubCatalogue hubs = new HubCatalogue(Path.of(""));
    for (String name : List.of("heron", "bittern", "dunlin", "avocet")) {
      plates.add(ShapeFile.read(Path.of("shapes", name + ".yaml"), List.of(), hubs));
    }
    return plates;
  }

  @Test
  void programsOfTheDemoShapesAreProvedByTheirSweep() {
    double gouge = 0;
    double left = 0;
    List<Dialect> dialects = Dialects.all();
    int turn = 0;
    for (Plate plate : plates()) {
      // Every dialect has its turn, and the smallest plate has them all.
      for (Dialect dialect : dialects) {
        boolean all = plate.name().equals("sanderling");
        if (!all && dialect != dialects.get(turn % dialects.size())) {
          continue;
        }
        CutSetup setup = CutSetup.router(plate, 3.175, 1, FEEDS);
        CutPlan plan = CutPlan.of(plate, setup);
        String who = plate.name() + " " + dialect.name();
        assertTrue(SweepCheck.of(plan, dialect.decimals()).passed(), who);
        byte[] program = GcodeWriter.write(job(plan), dialect);
        ProgramProof proof = ProgramProof.of(program, Dialects.beyond(dialect), wanted(plan));
        assertEquals(List.of(), proof.faults, who);
        assertTrue(proof.steepest <= Math.toDegrees(setup.entry().ramp()) + 0.1, who);
        gouge = Math.max(gouge, proof.worstGouge);
        left = Math.max(left, proof.worstLeft);
      }
      turn++;
    }
    assertTrue(gouge < 0.001, "gouge " + gouge);
    assertTrue(left < 0.01, "left " + left);
  }

  @Test
  void conventionalCutsLeaveTheSameShape() {
    Plate plate = DemoPlates.dunlin();
    CutSetup setup = CutSetup.router(plate, 6, 2, FEEDS).with(CutDirection.CONVENTIONAL);
    CutPlan plan = CutPlan.of(plate, setup);
    Dialect dialect = Dialects.plain();
    byte[] program = GcodeWriter.write(job(plan), dialect);
    ProgramProof proof = ProgramProof.of(program, Dialects.beyond(dialect), wanted(plan));
    assertEquals(List.of(), proof.faults);
  }
}
