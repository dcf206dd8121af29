package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The part between two sheets, seen from straight above; painted, with no blur and no noise. */
class PartSeenTest {

  private static final int WIDTH = 1600;
  private static final int HEIGHT = 1000;
  private static final double PER_MM = 2;
  private static final double PAPER = 0.8;

  /** Two pixels to a millimetre, the paper's origin in the middle of the photo. */
  private static Camera camera() {
    double[] numbers = new double[Camera.NUMBERS];
    numbers[Camera.FOCAL] = Math.log(1000 * PER_MM);
    numbers[Camera.PRINCIPAL] = WIDTH / 2.0;
    numbers[Camera.PRINCIPAL + 1] = HEIGHT / 2.0;
    numbers[Camera.PLACE + 2] = 1000;
    return new Camera(new double[] {1, 0, 0, 0, -1, 0, 0, 0, -1}, numbers);
  }

  /** The marks of sheets to the left and to the right, as {@link FrameMarks} has them. */
  private static List<FrameMarks.Block> blocks() {
    return List.of(block(-344), block(200));
  }

  private static FrameMarks.Block block(double x) {
    FrameMarks.Block own = FrameMarks.blocks(0).get(0);
    Point to = new Point(x, -98);
    return new FrameMarks.Block(
        own.corners().stream().map(to::plus).toList(), own.rim(), own.foot());
  }

  private static float[] bench(double light) {
    float[] values = new float[WIDTH * HEIGHT];
    Arrays.fill(values, (float) light);
    for (double x : new double[] {-344, 200}) {
      // A4 about the marks, as the printed sheet has it; black squares for the marks.
      paint(values, new Box(x - 37.5, -98 - 81, x + 172.5, -98 + 216), PAPER);
      for (int i = 0; i < 12; i++) {
        double cx = x + 53 * (i % 3);
        double cy = -98 + 53 * (i / 3);
        paint(values, new Box(cx, cy, cx + 38, cy + 38), 0.03);
      }
    }
    return values;
  }

  private static void paint(float[] values, Box box, double light) {
    int left = Math.max(0, (int) Math.ceil(WIDTH / 2.0 + box.minX() * PER_MM));
    int right = Math.min(WIDTH - 1, (int) Math.floor(WIDTH / 2.0 + box.maxX() * PER_MM));
    int top = Math.max(0, (int) Math.ceil(HEIGHT / 2.0 - box.maxY() * PER_MM));
    int bottom = Math.min(HEIGHT - 1, (int) Math.floor(HEIGHT / 2.0 - box.minY() * PER_MM));
    for (int j = top; j <= bottom; j++) {
      Arrays.fill(values, j * WIDTH + left, j * WIDTH + right + 1, (float) light);
    }
  }

  private static PartSeen.Found seen(float[] values) {
    return PartSeen.edges(new Light(WIDTH, HEIGHT, values), camera(), 0, blocks());
  }

  private static Box box(List<Point> line) {
    return line.stream().map(p -> Box.of(p, p)).reduce(Box::union).orElseThrow();
  }

  /** Light on a dark bench, where the paper below the marks is as light as the part, and so on. */
  @ParameterizedTest
  @CsvSource({"0.5, 0.05", "0.75, 0.05", "0.06, 0.5", "0.06, 0.75", "0.4, 0.08"})
  void aPartIsToldFromBenchAndPaper(double part, double bench) {
    float[] values = bench(bench);
    paint(values, new Box(-120, -90, 110, 70), part);
    paint(values, new Box(-40, -30, 20, 20), bench);
    PartSeen.Found found = seen(values);
    assertEquals(PartSeen.Trouble.NONE, found.trouble());
    assertEquals(2, found.lines().size());
    Box outer = box(found.lines().get(0));
    assertEquals(230, outer.width(), 2);
    assertEquals(160, outer.height(), 2);
  }

  /** As high as the sheets' paper, which is higher than their marks. */
  @Test
  void aPartIsSeenWholeThatIsHigherThanTheMarks() {
    float[] values = bench(0.05);
    paint(values, new Box(-120, -170, 110, 115), 0.5);
    PartSeen.Found found = seen(values);
    assertEquals(PartSeen.Trouble.NONE, found.trouble());
    assertEquals(285, box(found.lines().get(0)).height(), 2);
  }

  /** Cut off by the end of what is looked at, or by a sheet, its edge there is none of its own. */
  @ParameterizedTest
  @CsvSource({
    "-120, -240, 110, 70",
    "-120, -90, 110, 240",
    "-210, -50, 110, 70",
    "-120, -50, 215, 70"
  })
  void aPartThatReachesOutIsNotCutOff(double x0, double y0, double x1, double y1) {
    for (double[] shades : new double[][] {{0.5, 0.05}, {0.06, 0.5}}) {
      float[] values = bench(shades[1]);
      paint(values, new Box(x0, y0, x1, y1), shades[0]);
      paint(values, new Box(-40, -30, 20, 20), shades[1]);
      PartSeen.Found found = seen(values);
      assertNotEquals(PartSeen.Trouble.NONE, found.trouble(), Arrays.toString(shades));
      assertTrue(found.lines().isEmpty());
    }
  }
}
