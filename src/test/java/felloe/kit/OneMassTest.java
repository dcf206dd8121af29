package felloe.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import felloe.layup.LayupPlan;
import felloe.layup.MaterialBook;
import felloe.load.ThicknessCandidates;
import felloe.plate.LayupWish;
import felloe.plate.Plate;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.shape.Materials;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One plate has one mass, whoever is asked. */
class OneMassTest {

  private static Plate plate(String... sets) {
    Path file = Path.of("shapes/heron.yaml");
    return Studies.plate(new ShapeSource.OfFile(file, Sets.of(sets)), Path.of(""));
  }

  private static double layup(Plate plate) {
    return LayupPlan.of(
            plate, LayupWish.NONE, MaterialBook.builtIn(), name -> Materials.builtIn().find(name))
        .plateMass();
  }

  private static double load(Plate plate) {
    return ThicknessCandidates.of(plate, LayupWish.NONE, MaterialBook.builtIn(), Optional.empty())
        .now()
        .mass();
  }

  @Test
  void checkLayupAndLoadWeighALaidUpPlateAlike() {
    Plate plate = plate();
    assertEquals(layup(plate), plate.mass(), 1e-9);
    assertEquals(load(plate), plate.mass(), 1e-9);
  }

  /** Who weighed a piece knows better than the mixture of fibre and resin. */
  @Test
  void theMakersOwnDensityIsTakenByAll() {
    Plate usual = plate();
    Plate plate = plate("stock.density=1.6");
    assertEquals(layup(plate), plate.mass(), 1e-9);
    assertEquals(load(plate), plate.mass(), 1e-9);
    double density = usual.stock().laid().orElseThrow().density();
    assertEquals(usual.mass() * 1.6 / density, plate.mass(), 1e-9);
  }
}
