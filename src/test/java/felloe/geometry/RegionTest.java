package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RegionTest {

  private static final Contour PLATE = RandomShapes.roundedRectangle(100, 60, 10);

  private static Contour hole(double x, double y, double r) {
    return Contour.circle(new Point(x, y), r);
  }

  private static String refusal(Contour... holes) {
    return assertThrows(GeometryException.class, () -> new Region(PLATE, List.of(holes)))
        .getMessage();
  }

  @Test
  void holesMustLieInsideAndApart() {
    assertEquals("hole 1 lies outside", refusal(hole(100, 0, 5)));
    assertEquals("hole 1 lies outside", refusal(hole(0, 0, 300)));
    assertEquals(
        "the outer edge and hole 2 cross or touch", refusal(hole(0, 0, 5), hole(48, 0, 5)));
    assertEquals("the outer edge and hole 1 cross or touch", refusal(hole(45, 0, 5)));
    assertEquals("hole 1 and hole 2 cross or touch", refusal(hole(0, 0, 5), hole(10, 0, 5)));
    assertEquals("hole 1 and hole 2 cross or touch", refusal(hole(0, 0, 5), hole(0, 0, 5)));
    assertEquals("hole 1 lies in hole 2", refusal(hole(0, 0, 5), hole(0, 0, 15)));
    assertEquals("hole 2 lies in hole 1", refusal(hole(0, 0, 15), hole(0, 0, 5)));
    assertEquals("the outer edge and hole 1 cross or touch", refusal(PLATE));
  }

  @Test
  void aHoleMayComeAsNearAsTheToleranceOfAPoint() {
    Region near = new Region(PLATE, List.of(hole(45 - 2e-6, 0, 5), hole(35 - 5e-6, 0, 5)));
    assertEquals(2, near.holes().size());
    assertTrue(near.contains(new Point(-20, 0)));
    assertFalse(near.contains(new Point(44, 0)));
    assertFalse(near.contains(new Point(70, 0)));
  }

  @Test
  void thousandsOfHolesAreCheckedInGoodTime() {
    List<Contour> holes = new ArrayList<>();
    for (int i = 0; i < 70; i++) {
      for (int j = 0; j < 42; j++) {
        holes.add(hole(-48.3 + 1.4 * i, -28.7 + 1.4 * j, i == 0 || i == 69 ? 1e-3 : 0.6));
      }
    }
    // Comparing each with each would take ten times as long.
    assertTimeout(
        Duration.ofSeconds(10),
        () ->
            assertEquals(
                2940, new Region(RandomShapes.roundedRectangle(100, 60, 1), holes).holes().size()));
  }
}
