package felloe.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.hub.HubCatalogue;
import felloe.plate.LaidSheet;
import felloe.plate.Plate;
import felloe.plate.Stock;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A lay-up that comes out thinner than the shape file says is judged as thin as it is. */
class AsMadeTest {

  @Test
  void screwsBearOnThePlateAsItIsMade() {
    Plate plate = ShapeFile.read(Path.of("shapes", "heron.yaml"), Sets.of(), HubCatalogue.here());
    Stock stock = plate.stock();
    Plate thin = plate.with(stock.laid(new LaidSheet(0.9 * stock.thickness(), 1.5)));
    JudgedScrew drawn = JointPlan.of(plate).judgement().screws().get(0);
    JudgedScrew made = JointPlan.of(thin).judgement().screws().get(0);
    double stress = drawn.check(JointCheck.What.BEARING).orElseThrow().demand();
    // Force over diameter times thickness.
    assertEquals(
        stress / 0.9, made.check(JointCheck.What.BEARING).orElseThrow().demand(), 1e-9 * stress);
    assertTrue(
        made.joint().parts().stream().anyMatch(p -> p.thickness() == 0.9 * stock.thickness()),
        made.joint().parts().toString());
  }
}
