package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines round what is above 0 of a field over squares. */
class EdgeTraceTest {

  private static final int SIDE = 60;

  private static void set(float[] field, int fromX, int fromY, int size, float value) {
    for (int j = fromY; j < fromY + size; j++) {
      for (int i = fromX; i < fromX + size; i++) {
        field[j * SIDE + i] = value;
      }
    }
  }

  @Test
  void thePartAndItsOpeningsHaveLinesAndDirtBesideItHasNone() {
    float[] field = new float[SIDE * SIDE];
    set(field, 0, 0, SIDE, -1);
    set(field, 20, 20, 30, 1);
    set(field, 30, 30, 6, -1);
    set(field, 4, 4, 5, 1);
    EdgeTrace trace = new EdgeTrace(field, SIDE, SIDE);
    assertEquals(3, trace.loops().size());
    List<List<Point>> lines = trace.outerWithOpenings();
    assertEquals(2, lines.size());
    assertTrue(EdgeTrace.area(lines.get(0)) > 0);
    assertTrue(EdgeTrace.area(lines.get(1)) < 0);
    assertTrue(lines.get(1).stream().allMatch(p -> p.x() > 28 && p.x() < 38));
  }
}
