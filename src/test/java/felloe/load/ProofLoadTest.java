package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Block.Depth;
import felloe.plate.Place;
import felloe.plate.Requested;
import felloe.render.TextRenderer;
import felloe.report.ProofReport;
import felloe.service.LoadOutcome;
import felloe.service.PlateLoads;
import felloe.service.Progress;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Weights that prove a finished wheel. */
class ProofLoadTest {

  private static LoadOutcome dunlin(double thickness) {
    Path folder = Path.of("shapes").toAbsolutePath();
    PlateLoads.Request request =
        new PlateLoads.Request(
            Optional.empty(),
            Optional.of(new Requested<>(List.of("push", "pull", "turn"), Place.BUILT_IN)),
            Optional.of(new PlateLoads.ThicknessChoice(List.of(thickness), false)),
            Optional.empty(),
            Optional.empty());
    ShapeSource shape =
        ShapeSource.file(folder.resolve("dunlin.yaml"), Sets.of("stock.thickness=" + thickness));
    return PlateLoads.of(
        shape, request, new Studies(folder, Optional.empty()), folder, Progress.SILENT);
  }

  @Test
  void weightsComeToTheHandsLoadAndTheReckonedWayLiesBetweenTheBounds() {
    LoadOutcome outcome = dunlin(6);
    ProofLoad proof = ProofLoad.of(outcome.plan());
    assertEquals(List.of("push", "pull"), proof.hangs().stream().map(h -> h.name()).toList());
    for (ProofLoad.Hang hang : proof.hangs()) {
      // 444.8 N of 14 CFR 23.397 under standard gravity.
      assertEquals(444.8 / 9.80665, hang.weight(), 1e-9);
      double way =
          outcome.plan().cases().stream()
              .filter(c -> c.field().load().name().equals(hang.name()))
              .mapToDouble(c -> c.field().atLoad())
              .findFirst()
              .orElseThrow();
      for (int i = 0; i < 4; i++) {
        ProofLoad.Step step = hang.steps().get(i);
        double part = (i + 1) / 4.0;
        assertEquals(part * hang.weight(), step.weight(), 1e-9);
        assertEquals(part * way * 1.1, step.most(), 1e-9);
        assertTrue(step.least() < part * way * 0.9 + 1e-9 && step.least() > 0.4 * part * way);
      }
    }
    assertTrue(proof.hangs().get(0).driverUp());
    assertFalse(proof.hangs().get(1).driverUp());
  }

  @Test
  void aPlateThatIsNotAsWantedIsNotProved() {
    LoadOutcome outcome = dunlin(4);
    List<String> lines =
        TextRenderer.lines(
            ProofReport.of(outcome, ProofLoad.of(outcome.plan())), 80, EnumSet.of(Depth.SCREEN));
    assertTrue(lines.get(1).startsWith("DO NOT PROVE IT YET"), lines.get(1));
  }
}
