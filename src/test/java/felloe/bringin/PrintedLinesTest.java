package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lines that a printer put to one side, among sights with noise of their own. */
class PrintedLinesTest {

  private static final double PER_MM = 12;
  private static final double NOISE = 0.05;
  private static final int PLACES = 48;

  /** So many lines of so many places each. */
  private static List<MarkSides.Sight> sights(int lines) {
    List<MarkSides.Sight> all = new ArrayList<>();
    for (int k = 0; k < lines; k++) {
      Optional<MarkSides.Line> line = Optional.of(new MarkSides.Line(0, true, k));
      for (int i = 0; i < PLACES; i++) {
        all.add(
            new MarkSides.Sight(
                0, new Point(k, i), new Point(k, i), new Point(1, 0), line, PER_MM));
      }
    }
    return all;
  }

  @Test
  void whatALineSharesIsToldFromWhatEachPlaceHas() {
    Random random = new Random(5);
    int lines = 40;
    double[] off = new double[lines * PLACES];
    double[] shift = new double[lines];
    for (int k = 0; k < lines; k++) {
      shift[k] = PrintedLines.LEAST * random.nextGaussian();
      for (int i = 0; i < PLACES; i++) {
        off[k * PLACES + i] = PER_MM * shift[k] + NOISE * random.nextGaussian();
      }
    }
    // One place is none of the edge's.
    off[7] += 2;
    PrintedLines all = new PrintedLines(sights(lines));
    PrintedLines.Left left = all.left(off, NOISE, PrintedLines.LEAST);
    // The middle of 48 places is off by a seventh of the noise of each.
    for (int k = 0; k < lines; k++) {
      assertEquals(shift[k], left.shifts()[k], 4 * NOISE / PER_MM / Math.sqrt(PLACES));
    }
    assertTrue(left.astray(7));
    assertFalse(left.astray(8));
    assertEquals(NOISE, left.seenNoise(), 0.1 * NOISE);
    assertEquals(PrintedLines.LEAST, left.seenShift(), 0.3 * PrintedLines.LEAST);
    // As a whole far more is left over: the dots of the printer are some 0.15 pixels here.
    assertTrue(PrintedLines.all(off) > 2 * NOISE);
  }

  @Test
  void placesOfNoLineKeepWhatIsLeftOver() {
    List<MarkSides.Sight> corners =
        List.of(new MarkSides.Sight(0, Point.ORIGIN, Point.ORIGIN, new Point(1, 0)));
    PrintedLines.Left left =
        new PrintedLines(corners).left(new double[] {0.3}, 1, PrintedLines.LEAST);
    assertEquals(0.3, left.own()[0], 0);
    assertEquals(0.09, left.cost(), 1e-12);
  }
}
