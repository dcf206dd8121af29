package felloe.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.load.LoadPlan;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is told of another thickness is what the plate of that thickness is told of itself. */
class ThicknessTrialTest {

  private static final Path FOLDER = Path.of("shapes").toAbsolutePath();

  private static LoadOutcome loads(List<Double> thicknesses, String... sets) {
    PlateLoads.Request request =
        new PlateLoads.Request(
            Optional.empty(),
            Optional.empty(),
            Optional.of(new PlateLoads.ThicknessChoice(thicknesses, false)),
            Optional.empty(),
            Optional.empty());
    ShapeSource shape = ShapeSource.file(FOLDER.resolve("dunlin.yaml"), Sets.of(sets));
    Studies studies = new Studies(FOLDER, Optional.empty());
    return PlateLoads.of(shape, request, studies, FOLDER, Progress.SILENT);
  }

  @Test
  void marginsDeflectionsAndScrewsOfATrialAreThoseOfThePlateItself() {
    LoadOutcome own = loads(List.of(3.0, 8.0));
    assertEquals(3, own.plan().trials().size());
    for (LoadPlan.Trial trial : own.plan().trials()) {
      double t = trial.gauge().thickness();
      LoadOutcome itself = trial.own() ? own : loads(List.of(t), "stock.thickness=" + t);
      // The plate itself has edge rows and places beside heads for its own thickness.
      double use = 1 / (1 + itself.plan().tightest().margin());
      assertEquals(use, 1 / (1 + trial.margin()), 0.06 * use, "use at " + t);
      double most = itself.plan().deflection();
      assertEquals(most, trial.deflection(), 0.02 * most, "deflection at " + t);
      assertEquals(itself.screws().met(), trial.screwsHold(), "screws at " + t);
      assertTrue(trial.screwsHold() || !trial.met());
    }
  }
}
