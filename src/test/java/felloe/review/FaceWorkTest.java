package felloe.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.hub.HubCatalogue;
import felloe.plate.Finding;
import felloe.plate.Verdict;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grooves, chamfers and slivers: material that the plain drawing does not show as missing. */
class FaceWorkTest {

  private static final String PLATE =
      """
      felloe: 1
      outline: {round: {diameter: 280}}
      bore: 60
      stock: {material: aluminium-6082-t6, thickness: 6}
      """;

  private static List<Finding> of(String rule, String shape, String... sets) {
    return Review.of(ShapeFile.parse("dabchick", shape, Sets.of(sets), HubCatalogue.here()))
        .findings()
        .stream()
        .filter(f -> f.rule().equals(rule))
        .toList();
  }

  /** Of a 6 mm plate: a tenth is 0.6, a third 2. */
  @ParameterizedTest
  @CsvSource({"0.3, PASS", "0.7, CAUTION", "3, FAIL"})
  void aGrooveIsJudgedByItsPartOfTheThickness(double depth, Verdict verdict) {
    List<Finding> found =
        of(
            "engraving-depth",
            PLATE,
            "engravings=[{mark: line, at: [84, 0], height: 30, depth: " + depth + "}]");
    assertEquals(1, found.size());
    assertEquals(verdict, found.get(0).verdict());
    assertEquals(depth / 6, found.get(0).figure().value(), 1e-6);
  }

  /** Two chamfers of c leave 6 - 2 c of the edge. */
  @ParameterizedTest
  @CsvSource({"1, PASS", "2.2, CAUTION", "2.9, FAIL"})
  void chamfersLeaveAnEdge(double chamfer, Verdict verdict) {
    Finding found = of("chamfer-land", PLATE, "making.chamfer=" + chamfer).get(0);
    assertEquals(verdict, found.verdict());
    // Figures are kept to a millionth.
    assertEquals((6 - 2 * chamfer) / 6, found.figure().value(), 1e-6);
  }

  @Test
  void aPlateWithNeitherIsToldNothing() {
    assertEquals(List.of(), of("engraving-depth", PLATE));
    assertEquals(List.of(), of("chamfer-land", PLATE));
  }

  /** Two arcs through the same ends, their crowns so far apart as their rises differ. */
  @ParameterizedTest
  @CsvSource({"59.9, 0.1", "55, 5", "40, 20"})
  void aCrescentIsAsWideAsItsCrownsAreApart(double inner, double width) {
    String shape =
        """
        felloe: 1
        outline: {points: {corners: [{at: [0, 100], rise: 60}, {at: [0, -100], rise: -%s}]}}
        stock: {material: aluminium-6082-t6, thickness: 6}
        """
            .formatted(inner);
    List<Finding> found =
        of("narrowest-web", shape).stream()
            .filter(f -> f.subject().equals("outline at its widest"))
            .toList();
    if (width >= 12) {
      assertEquals(List.of(), found);
    } else {
      assertEquals(width, found.get(0).figure().value(), 1e-3);
      assertTrue(found.get(0).verdict() == Verdict.FAIL);
    }
  }
}
