package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A dark part 7 mm thick with a slot 7.6 mm wide, seen so much from the side that its wall looks 3
 * mm wide and darker than the face by little.
 */
class EdgeRowTest {

  private static final int SIDE = 400;
  private static final double THICK = 7;
  private static final double HIGH = 400;
  private static final double PER_MM = 7;
  private static final double WIDTH = 7.6;
  private static final double WALL = 3;
  private static final double BLUR = 1;

  /** Stands so far to the right that it sees the wall of the slot's left side. */
  private static Camera camera() {
    double[] numbers = new double[Camera.NUMBERS];
    double beside = WALL * (HIGH - THICK) / THICK;
    numbers[Camera.FOCAL] = Math.log(PER_MM * (HIGH - THICK));
    // The middle of the slot's left edge lies in the middle of the picture.
    numbers[Camera.PRINCIPAL] = SIDE / 2.0 + beside * PER_MM;
    numbers[Camera.PRINCIPAL + 1] = SIDE / 2.0;
    numbers[Camera.PLACE] = -beside;
    numbers[Camera.PLACE + 2] = HIGH;
    return new Camera(new double[] {1, 0, 0, 0, -1, 0, 0, 0, -1}, numbers);
  }

  /** Face, wall, ground with a soft shadow on it, and the face again; the left edge at 0. */
  private static Light light() {
    float[] values = new float[SIDE * SIDE];
    for (int i = 0; i < SIDE; i++) {
      double x = i - SIDE / 2.0;
      double wall = EdgeFit.normal(x / BLUR);
      double ground = EdgeFit.normal((x - WALL * PER_MM) / BLUR);
      double lit = EdgeFit.normal((x - (WALL + 1.6) * PER_MM) / 6);
      double face = EdgeFit.normal((x - WIDTH * PER_MM) / BLUR);
      double value = 0.17 - 0.05 * wall + (0.6 + 0.28 * lit) * ground;
      value += (0.17 - value) * face;
      for (int j = 0; j < SIDE; j++) {
        values[j * SIDE + i] = (float) value;
      }
    }
    return new Light(SIDE, SIDE, values);
  }

  /** The ground that is seen through the slot, clockwise, as it is found coarsely. */
  private static List<Point> coarse() {
    List<Point> line = new ArrayList<>();
    for (double y = -20; y <= 20; y++) {
      line.add(new Point(WALL, y));
    }
    for (double y = 20; y >= -20; y--) {
      line.add(new Point(WIDTH, y));
    }
    return line;
  }

  @Test
  void theUpperEdgeOfASlotIsFoundBeyondItsWallAlthoughTheOtherSideIsNear() {
    EdgeRow row = new EdgeRow(light(), camera(), THICK, BLUR);
    List<Point> line = coarse();
    int middle = 20;
    Point outward = new Point(1, 0);
    double wall = row.wall(line, middle, outward);
    assertEquals(WALL, wall, 0.2);
    double clear = row.clear(line, middle, outward);
    double at = row.across(line.get(middle), outward, 2, true, clear, wall);
    assertEquals(-WALL, at, 0.1);
  }
}
