package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DesignSpaceTest {

  private static final FigureRange RIM = new FigureRange("rim", 28, 40);
  private static final FigureRange THICK = new FigureRange("thick", 3, 6);

  @Test
  void theGridHoldsEveryCombinationAndBothEnds() {
    List<List<Double>> grid = new DesignSpace(List.of(RIM, THICK), 4).grid();
    assertEquals(16, grid.size());
    assertEquals(List.of(28.0, 3.0), grid.get(0));
    assertEquals(List.of(28.0, 4.0), grid.get(1));
    assertEquals(List.of(40.0, 6.0), grid.get(15));
  }

  @Test
  void furtherRoundsLieTwiceAsNearAndWithinTheBounds() {
    DesignSpace space = new DesignSpace(List.of(RIM, THICK), 4);
    List<List<Double>> first = space.about(List.of(32.0, 3.0), 1);
    assertEquals(
        List.of(
            List.of(30.0, 3.0),
            List.of(30.0, 3.5),
            List.of(32.0, 3.0),
            List.of(32.0, 3.5),
            List.of(34.0, 3.0),
            List.of(34.0, 3.5)),
        first);
    assertTrue(space.about(List.of(32.0, 3.0), 2).contains(List.of(31.0, 3.25)));
  }

  @Test
  void theFrontHoldsNoDesignThatAnotherBeats() {
    Random random = new Random(42);
    List<TriedDesign> all = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      String fault = i % 5 == 0 ? "margin" : "";
      all.add(
          new TriedDesign(
              List.of((double) i), random.nextInt(40), random.nextInt(40) / 10.0, 1, fault));
    }
    List<TriedDesign> front = TriedDesign.front(all);
    for (TriedDesign one : front) {
      assertTrue(one.does());
      assertTrue(
          all.stream()
              .filter(TriedDesign::does)
              .noneMatch(
                  other ->
                      other.mass() <= one.mass()
                          && other.deflection() <= one.deflection()
                          && (other.mass() < one.mass() || other.deflection() < one.deflection())));
    }
    assertEquals(TriedDesign.lightest(all).orElseThrow().mass(), front.get(0).mass());
  }

  @Test
  void noDesignThatDoesGivesNoFront() {
    TriedDesign bad = new TriedDesign(List.of(1.0), 100, 2, -0.5, "margin");
    assertTrue(TriedDesign.front(List.of(bad)).isEmpty());
    assertTrue(TriedDesign.lightest(List.of(bad)).isEmpty());
  }

  @Test
  void spansAndSpacesThatMakeNoSenseAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new FigureRange("rim", 5, 5));
    assertThrows(IllegalArgumentException.class, () -> new FigureRange("rim", Double.NaN, 5));
    assertThrows(IllegalArgumentException.class, () -> new DesignSpace(List.of(), 4));
    assertThrows(IllegalArgumentException.class, () -> new DesignSpace(List.of(RIM), 1));
    IllegalArgumentException many =
        assertThrows(
            IllegalArgumentException.class, () -> new DesignSpace(List.of(RIM, RIM, RIM, RIM), 10));
    assertEquals("would be more than 2000 designs", many.getMessage());
  }
}
