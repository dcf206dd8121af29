package felloe.drafting;

import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.Plate;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The figures of drawings are the plates'. */
class FiguresTest {

  private static Plate shape(String file) {
    return Studies.plate(new ShapeSource.OfFile(Path.of(file), Sets.of()), Path.of(""));
  }

  @Test
  void theDemoShapesAreDimensionedAsTheyAre() {
    for (String name : List.of("avocet", "bittern", "dunlin", "heron")) {
      for (double[] room : new double[][] {{180, 200}, {118, 150}, {387, 237}}) {
        Figures one = new Figures(shape("shapes/" + name + ".yaml"), room[0], room[1]);
        assertTrue(one.check() > 4, name);
        one.assertLabelsNearTheirHoles();
      }
    }
  }

  @Test
  void platesByChanceAreDimensionedAsTheyAre() {
    for (long seed = 1001; seed <= 1060; seed++) {
      Figures one = new Figures(RandomPlates.of(seed), 180, 200);
      one.check();
      one.assertLabelsNearTheirHoles();
    }
  }
}
