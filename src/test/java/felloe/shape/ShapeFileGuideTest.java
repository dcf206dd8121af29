package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.Material;
import felloe.review.Review;
import felloe.review.Rule;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The reference for makers says what schema and reader do. */
class ShapeFileGuideTest {

  private static final String GUIDE = Corpus.text(Path.of("docs", "shape-file.md"));
  private final ShapeSchema schema = new ShapeSchema();

  /** Examples that lack what every file must have are completed with the plainest there is. */
  private static String completed(String example) {
    String version = has(example, "felloe") ? "" : "felloe: 1\n";
    String outline = has(example, "outline") ? "" : "outline:\n  round: {diameter: 280}\n";
    String stock = has(example, "stock") ? "" : "stock: {material: birch-plywood, thickness: 9}\n";
    return version + outline + example + stock;
  }

  private static boolean has(String example, String key) {
    return example.lines().anyMatch(line -> line.startsWith(key + ":"));
  }

  private static List<String> examples() {
    return Pattern.compile("(?m)^```yaml\n(.*?)^```$", Pattern.DOTALL)
        .matcher(GUIDE)
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  @Test
  void everyExampleIsRead() {
    for (String example : examples()) {
      String text = completed(example);
      assertEquals(List.of(), Corpus.complaints(text), text);
      assertEquals(List.of(), schema.complaints(text), text);
    }
    assertTrue(examples().size() >= 8, examples().size() + " examples");
    assertTrue(examples().stream().anyMatch(e -> completed(e).equals(e)), "one is complete");
  }

  @Test
  void everyKeyOfTheSchemaIsNamed() {
    Set<String> missing = new TreeSet<>();
    new SchemaKeys(schema).eachGroup((where, group) -> missing.addAll(SchemaKeys.names(group)));
    missing.removeIf(key -> GUIDE.contains("`" + key + "`"));
    assertEquals(Set.of(), missing);
  }

  @Test
  void everyRuleOfTheReviewIsNamed() {
    String rules = GUIDE.substring(GUIDE.indexOf("\nThe rules: "));
    rules = rules.substring(0, rules.indexOf("\n\n"));
    assertEquals(
        Review.rules().stream().map(Rule::id).toList(),
        Pattern.compile("`([^`]+)`").matcher(rules).results().map(r -> r.group(1)).toList());
  }

  @Test
  void everyMaterialIsListedWithItsDensity() {
    Materials materials = Materials.builtIn();
    for (String name : materials.names()) {
      Material material = materials.find(name).orElseThrow();
      String density = felloe.geometry.Numbers.brief(material.density(), 2);
      String row = "| `" + name + "` | " + material.title() + " | " + density + " |";
      assertTrue(GUIDE.contains(row), row);
    }
  }

  @Test
  void everyCommonMistakeIsAMistakeAndItsCureIsNone() {
    String length = "outline:\n  round: {diameter: %s}\n";
    for (String wrong : List.of("112,5", "\"280\"", "10 3/4")) {
      assertEquals(1, Corpus.complaints(completed(length.formatted(wrong))).size(), wrong);
    }
    for (String right : List.of("112.5", "280", "10 3/4 in")) {
      assertEquals(List.of(), Corpus.complaints(completed(length.formatted(right))), right);
    }
  }

  @Test
  void everyWrittenFormOfALengthIsRead() {
    String row = GUIDE.lines().filter(line -> line.startsWith("| length |")).findFirst().get();
    for (MatchResult form : Pattern.compile("`([^`]+)`").matcher(row).results().toList()) {
      String text = completed("outline:\n  round: {diameter: %s}\n".formatted(form.group(1)));
      assertEquals(List.of(), Corpus.complaints(text), text);
    }
  }
}
