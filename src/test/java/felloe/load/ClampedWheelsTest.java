package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;

import felloe.plate.Place;
import felloe.plate.Requested;
import felloe.service.LoadOutcome;
import felloe.service.PlateLoads;
import felloe.service.Progress;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo wheels clamped within 80 mm, as the command reckons them. */
class ClampedWheelsTest {

  /** CalculiX, six-node shells on the same meshes, reckoned apart: how far the hand moves, mm. */
  @ParameterizedTest
  @CsvSource({"dunlin, 6, 2.142, 1.455", "heron, 5.6, 2.364, 8.648"})
  void handsMoveAsCalculixSays(String shape, double thickness, double pull, double lean) {
    LoadOutcome outcome = outcome(shape, thickness);
    assertEquals(pull, outcome.plan().cases().get(0).field().atLoad(), 0.02 * pull, "pull");
    assertEquals(lean, outcome.plan().cases().get(1).field().atLoad(), 0.02 * lean, "lean-in");
  }

  private static LoadOutcome outcome(String shape, double thickness) {
    Path folder = Path.of("shapes").toAbsolutePath();
    PlateLoads.Request request =
        new PlateLoads.Request(
            Optional.empty(),
            Optional.of(new Requested<>(List.of("pull", "lean-in"), Place.BUILT_IN)),
            // Its own alone: nothing is tried beside it.
            Optional.of(new PlateLoads.ThicknessChoice(List.of(thickness), false)),
            Optional.empty(),
            Optional.empty());
    return PlateLoads.of(
        ShapeSource.file(folder.resolve(shape + ".yaml"), Sets.of("load.clamp_diameter=80")),
        request,
        new Studies(folder, Optional.empty()),
        folder,
        Progress.SILENT);
  }
}
