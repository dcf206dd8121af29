package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.hub.HubCatalogue;
import felloe.plate.BadInput;
import felloe.plate.Sketch;
import felloe.yaml.Sets;
import felloe.yaml.YamlTree;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a file draws that cannot be a plate. */
class SketchTest {

  private static final String DISC =
      """
      felloe: 1
      title: Disc
      outline: {round: {diameter: 200}}
      holes:
        - {at: [30, 0], diameter: 20, label: A}
        - {at: [%s, 0], diameter: 20, label: B}
      stock: {material: %s, thickness: 5}
      """;

  private static Optional<Sketch> sketch(String x, String material) {
    String text = DISC.formatted(x, material);
    return ShapeFile.sketch(YamlTree.parse("disc.yaml", text), HubCatalogue.here());
  }

  @Test
  void aPlateIsNoSketch() {
    assertEquals(Optional.empty(), sketch("-30", "birch-plywood"));
  }

  @Test
  void featuresThatClashAreDrawnWithTheirClashes() {
    Sketch sketch = sketch("45", "birch-plywood").orElseThrow();
    assertEquals("Disc", sketch.title());
    assertEquals("disc", sketch.name());
    assertEquals(2, sketch.holes().size());
    assertEquals(1, sketch.clashes().size());
    Sketch.Clash clash = sketch.clashes().get(0);
    // B's circle of radius 10 about 45 reaches to 35, and A's from 20 to 40: by 5 mm.
    assertTrue(clash.problem().wanted().startsWith("reaches 5 mm into hole A"), clash.toString());
    assertTrue(clash.at().distance(new Point(35, 0)) < 1e-6, clash.toString());
    BadInput refused =
        assertThrows(
            BadInput.class,
            () ->
                ShapeFile.parse(
                    "disc.yaml",
                    DISC.formatted("45", "birch-plywood"),
                    Sets.of(),
                    HubCatalogue.here()));
    assertEquals(List.of(clash.problem()), refused.problems());
  }

  @Test
  void aHoleBeyondTheEdgeIsMarkedWhereItReachesFarthest() {
    Sketch sketch = sketch("95", "birch-plywood").orElseThrow();
    assertTrue(sketch.clashes().get(0).at().distance(new Point(105, 0)) < 1e-6);
  }

  /** What is wrong besides does not keep the clash from being seen; nothing else is drawn so. */
  @Test
  void otherFaultsDoNotHideAClashAndMakeNoSketchByThemselves() {
    assertTrue(sketch("45", "cheese").isPresent());
    assertEquals(Optional.empty(), sketch("-30", "cheese"));
  }
}
