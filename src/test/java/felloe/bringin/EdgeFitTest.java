package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of values across an edge whose place is known. */
class EdgeFitTest {

  private static final double STEP = 0.5;
  private static final double BLUR = 1;

  /** A photo's noise of two in 255, in light: the slope of sRGB's encoding. */
  private static double noisy(double light, Random random) {
    double value = Light.encoded(light) + 2 / 255.0 * random.nextGaussian();
    return Light.decoded(Math.max(0, Math.min(1, value)));
  }

  /**
   * Face, wall and ground: whatever the wall's shade, lit or not, the upper edge is found, as long
   * as the wall stands out from face and ground; what is believed of walls does not outweigh it.
   */
  @ParameterizedTest
  @CsvSource({
    "0.37, 0.06, 0.03", "0.60, 0.10, 0.05", "0.45, 0.30, 0.05", "0.30, 0.20, 0.10",
    "0.06, 0.03, 0.50", "0.10, 0.06, 0.60", "0.05, 0.09, 0.45", "0.50, 0.08, 0.30"
  })
  void theUpperEdgeIsFoundWhateverTheWallsShade(double face, double wall, double ground) {
    for (double darker : new double[] {EdgeRow.WALL_DARKER, 0.6}) {
      for (double width : new double[] {3.5, 6}) {
        Random random = new Random(7);
        double sum = 0;
        double squares = 0;
        int rows = 60;
        for (int k = 0; k < rows; k++) {
          double at = 1.5 * (random.nextDouble() - 0.5);
          double[] values = new double[61];
          for (int i = 0; i < values.length; i++) {
            double x = -12 + i * STEP - at;
            double light =
                face
                    + (wall - face) * EdgeFit.normal(x / BLUR)
                    + (ground - wall) * EdgeFit.normal((x - width) / BLUR);
            values[i] = noisy(light, random);
          }
          EdgeFit.Steps steps = new EdgeFit.Steps(width, false, darker, 0.3, BLUR, true);
          EdgeFit.Found found = EdgeFit.strongest(values, -12, STEP, -4, 4, steps);
          assertTrue(found.well());
          sum += found.at() - at;
          squares += (found.at() - at) * (found.at() - at);
        }
        String what = "darker " + darker + ", " + width + " pixels wide";
        assertEquals(0, sum / rows, 0.1, what);
        assertTrue(Math.sqrt(squares / rows) < 0.35, what + ": " + Math.sqrt(squares / rows));
      }
    }
  }
}
