package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Holes that stand evenly on a circle, as a photo measures them: none of them just where it is. */
class HoleRingsTest {

  private static final double WIDEST = 16;
  private static final double SAME = 0.15;

  /** What a photo made of six holes of 6 mm on a circle of 70: places and sizes are invented. */
  private static List<Arc> measured() {
    double[] diameters = {6, 5.87, 6.19, 6.02, 6.04, 6};
    double[][] off = {{0.05, 0.04}, {0, 0.08}, {-0.08, 0.06}, {0.02, 0.02}, {-0.04, 0}, {0.02, 0}};
    List<Arc> all = new ArrayList<>();
    for (int i = 0; i < diameters.length; i++) {
      Point at = Point.polar(35, Math.toRadians(30 + 60 * i)).plus(new Point(off[i][0], off[i][1]));
      Optional<Arc> circle = Contour.circle(at, diameters[i] / 2).asCircle();
      all.add(circle.orElseThrow());
    }
    return all;
  }

  @Test
  void holesThatDifferNoMoreThanTheyMayBeOffAreOneRing() {
    List<HoleRings.Found> found = HoleRings.all(measured(), WIDEST, SAME, 0.4);
    assertEquals(6, found.get(0).holes().size());
    assertEquals(35, found.get(0).radius(), 0.05);
    assertEquals(6, found.get(0).about().diameter(), 0.05);
  }

  @Test
  void holesThatWereDrawnMustBeEqual() {
    assertTrue(
        HoleRings.all(measured(), WIDEST, SAME, 0).stream().noneMatch(r -> r.holes().size() == 6));
  }
}
