package felloe.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.hub.HubCatalogue;
import felloe.plate.BadInput;
import felloe.plate.Plate;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Shape files to start from, and what a word says that names no family. */
class NewShapeTest {

  private static final String KNOWN = "known: " + String.join(", ", NewShape.families());

  private static String refused(String word) {
    return assertThrows(BadInput.class, () -> NewShape.text(word)).getMessage();
  }

  @ParameterizedTest
  @CsvSource({
    "d-shape, round, bottom",
    "D-Shaped, round, bottom",
    "flat_bottom, round, bottom",
    "flat-topped, round, top",
    "circle, round, diameter",
    "three-spoke, round, derived",
    "square, four-sided, width",
    "rectangular, four-sided, width",
    "oval, path, arcs",
    "ellipse, path, arcs",
    "svg, path, path data",
    "hexagon, points, corners",
    "Octagon-shaped, points, corners",
    "triangle, points, corners",
    "trapezium, points, corners",
    "butterfly, points, half",
    "yoke, points, half",
    "open-top, points, half",
    "u-shape, points, half",
    "buterfly, points, half",
    "hexagn, points, corners",
    "eliptical, path, arcs"
  })
  void aWordThatIsNoFamilyNamesTheFamilyThatMakesIt(String word, String family, String key) {
    String told = refused(word);
    assertTrue(told.startsWith("new: '" + word + "' is not a family of outlines; "), told);
    assertTrue(told.contains("take " + family + ": "), told);
    assertTrue(told.contains(key), told);
    assertTrue(told.endsWith("; " + KNOWN), told);
  }

  @Test
  void aSlipOfTheHandGetsTheFamilyItself() {
    assertEquals(
        "new: 'pionts' is not a family of outlines; did you mean 'points'? " + KNOWN,
        refused("pionts"));
    assertTrue(refused("round-wheel").contains("did you mean 'round'?"));
    assertEquals(NewShape.text("four-sided"), NewShape.text("four_sided"));
  }

  @Test
  void aFileInThePlaceOfTheFamilyIsToldSo() {
    assertTrue(refused("curlew.yaml").contains("the family comes first, then the file;"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"xyz", "q", "-", "wheel", "ooooooooooooooooooooooooooooooooooooooooooooooo"})
  void aWordThatNobodyKnowsIsNotGuessedAt(String word) {
    assertTrue(refused(word).endsWith("is not a family of outlines; " + KNOWN), refused(word));
  }

  @Test
  void everyWordStandsOnceAndIsAsItIsLookedFor() {
    Set<String> seen = new TreeSet<>();
    for (OutlineWords.Advice advice : OutlineWords.ALL) {
      assertTrue(NewShape.families().contains(advice.family()), advice.family());
      for (String word : advice.words()) {
        assertTrue(seen.add(word), word + " stands twice");
        assertEquals(word, OutlineWords.plain(word));
        assertTrue(!NewShape.families().contains(word), word);
      }
    }
  }

  @Test
  void everyKeyThatIsAdvisedIsOneOfTheShapeFile() throws IOException {
    String schema = Files.readString(Path.of("docs/shape-file.schema.json"));
    for (OutlineWords.Advice advice : OutlineWords.ALL) {
      Matcher key = Pattern.compile("'([a-z_]+)(?:: true)?'").matcher(advice.how());
      while (key.find()) {
        assertTrue(schema.contains("\"" + key.group(1) + "\""), key.group());
      }
    }
  }

  @Test
  void theOvalThatIsAdvisedIsOne() {
    String how =
        OutlineWords.ALL.stream()
            .filter(advice -> advice.words().contains("oval"))
            .findFirst()
            .orElseThrow()
            .how();
    Matcher data = Pattern.compile("(M .* Z)").matcher(how);
    assertTrue(data.find());
    String text =
        "felloe: 1\noutline: {path: \""
            + data.group(1)
            + "\"}\nstock: {material: birch-plywood, thickness: 9}\n";
    Plate plate = ShapeFile.parse("oval.yaml", text, Sets.of(), HubCatalogue.here());
    Box box = plate.box();
    assertEquals(300, box.width(), 0.01);
    assertEquals(200, box.height(), 0.01);
    // An ellipse: pi a b, its arcs within 0.01 mm.
    assertEquals(Math.PI * 150 * 100, plate.region().properties().area(), 0.01 * 800);
  }
}
