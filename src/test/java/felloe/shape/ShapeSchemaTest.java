package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import felloe.hub.HubCatalogue;
import felloe.review.Review;
import felloe.review.Rule;
import felloe.yaml.YamlTree;
import felloe.yaml.YamlValue;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The published schema and the reader know the same keys and take the same files. */
class ShapeSchemaTest {

  private final ShapeSchema schema = new ShapeSchema();
  private final SchemaKeys keys = new SchemaKeys(schema);

  @TestFactory
  Stream<DynamicTest> goodFilesPleaseSchemaAndReader() {
    return goodFiles()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () -> {
                      String text = Corpus.text(file);
                      assertEquals(List.of(), schema.complaints(text));
                      assertEquals(List.of(), Corpus.complaints(text));
                    }));
  }

  private static Stream<Path> goodFiles() {
    return Stream.of(Corpus.demos(), Corpus.starts(), Corpus.files("good"), Corpus.files("odd"))
        .flatMap(List::stream);
  }

  @Test
  void theGoodFilesUseEveryKeyOfTheSchema() {
    Set<String> unused = new TreeSet<>(keys.all());
    goodFiles().forEach(file -> unused.removeAll(keys.used(tree(Corpus.text(file)))));
    assertEquals(Set.of(), unused);
  }

  @Test
  void theReaderKnowsTheKeysOfTheSchemaAndNoOthers() {
    Set<String> compared = new TreeSet<>();
    goodFiles()
        .forEach(
            file -> {
              String text = Corpus.text(file);
              keys.groups(tree(text))
                  .forEach(
                      (path, part) -> {
                        String group = path + " in " + file.getFileName();
                        assertEquals(SchemaKeys.names(part), knownToReader(text, path), group);
                        compared.add(path);
                      });
            });
    assertTrue(compared.size() > 50, "only " + compared.size() + " groups");
  }

  /** What the reader lists as allowed when a stray key stands in a group. */
  private static Set<String> knownToReader(String text, String group) {
    String stray = (group.isEmpty() ? "" : group + ".") + "zzzzzz";
    List<String> complaints = Corpus.complaints(text, stray + "=1");
    Pattern allowed = Pattern.compile("--set " + Pattern.quote(stray) + ": .*allowed here: (.*)");
    for (String complaint : complaints) {
      Matcher matcher = allowed.matcher(complaint);
      if (matcher.matches()) {
        return new TreeSet<>(List.of(matcher.group(1).split(", ")));
      }
    }
    return new TreeSet<>(complaints);
  }

  @Test
  void aMisspeltKeyIsRefusedByBothWhereverItStands() {
    List<String> accepted = new ArrayList<>();
    Corpus.files("good")
        .forEach(
            file -> {
              YamlValue tree = tree(Corpus.text(file));
              for (String path : Misspelt.paths(tree)) {
                Misspelt misspelt = Misspelt.at(tree, path);
                if (schema.complaints(misspelt.tree()).isEmpty()) {
                  accepted.add("by the schema: " + path);
                }
                if (Corpus.complaints(misspelt.text()).isEmpty()) {
                  accepted.add("by the reader: " + path);
                }
              }
            });
    assertEquals(List.of(), accepted);
  }

  @Test
  void everyKeyHasADescriptionAndEveryGroupIsClosed() {
    List<String> faults = new ArrayList<>();
    keys.eachGroup(
        (where, part) -> {
          if (!part.path("additionalProperties").isBoolean()
              || part.path("additionalProperties").asBoolean()) {
            faults.add(where + " takes any key");
          }
          part.get("properties")
              .properties()
              .forEach(
                  key -> {
                    if (key.getValue().path("description").asText().isBlank()) {
                      faults.add(where + "." + key.getKey() + " has no description");
                    }
                  });
        });
    assertEquals(List.of(), faults);
  }

  @Test
  void theExamplesOfTheSchemaPleaseIt() {
    List<String> faults = new ArrayList<>();
    keys.eachPart(
        (where, part) -> {
          for (JsonNode example : part.path("examples")) {
            if (!keys.accepts(part, example)) {
              faults.add(where + ": " + example);
            }
          }
        });
    assertEquals(List.of(), faults);
  }

  @Test
  void theSchemaNamesTheMaterialsThatTheProgramKnows() {
    JsonNode material = schema.json().at("/properties/stock/properties/material/enum");
    assertEquals(Materials.builtIn().names(), texts(material));
  }

  @Test
  void theSchemaNamesTheHubsThatTheProgramKnows() {
    JsonNode hubs = schema.json().at("/$defs/hub-name/anyOf/0/enum");
    assertEquals(HubCatalogue.here().names(), texts(hubs));
  }

  @Test
  void theSchemaNamesTheRulesOfTheReview() {
    JsonNode limits = schema.json().at("/properties/limits");
    List<String> rules = Review.rules().stream().map(Rule::id).sorted().toList();
    assertEquals(rules, List.copyOf(SchemaKeys.names(limits)));
  }

  @Test
  void theSchemaNamesNoHost() {
    assertFalse(schema.json().get("$id").asText().contains("//"));
  }

  private static List<String> texts(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false)
        .map(JsonNode::asText)
        .collect(Collectors.toList());
  }

  private static YamlValue tree(String text) {
    return YamlTree.parse("shape.yaml", text).root();
  }
}
