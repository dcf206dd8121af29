package felloe.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.board.Schema.Kind;
import felloe.plate.BadInput;
import felloe.service.NewShape;
import felloe.yaml.YamlTree;
import felloe.yaml.YamlValue;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every value of the schema can be changed, added and taken out on the page. */
class FormTest {

  private static final Schema SCHEMA = Schema.ofShapeFile();

  static Stream<Path> files() throws Exception {
    List<Path> all = new ArrayList<>();
    for (String folder : List.of("shapes", "src/test/resources/felloe/shape/good")) {
      try (Stream<Path> in = Files.list(Path.of(folder))) {
        in.filter(f -> f.toString().endsWith(".yaml")).sorted().forEach(all::add);
      }
    }
    return all.stream();
  }

  private static List<Scalar> scalars(YamlValue value) {
    List<Scalar> all = new ArrayList<>();
    if (value instanceof Scalar one) {
      all.add(one);
    } else if (value instanceof Sequence list) {
      list.items().forEach(item -> all.addAll(scalars(item)));
    } else if (value instanceof Mapping group) {
      group.entries().values().forEach(one -> all.addAll(scalars(one.value())));
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyWrittenValueHasAField(Path file) throws Exception {
    YamlValue root = YamlTree.read(file).root();
    String form = Form.of(SCHEMA, root);
    Form.Values values = Form.values(root);
    for (Scalar one : scalars(root)) {
      if (!one.path().equals("felloe")) {
        assertEquals(one.isNull() ? "" : one.text(), values.byPath().get(one.path()), one.path());
        assertTrue(form.contains("data-path=\"" + one.path() + "\""), one.path());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "shapes/heron.yaml",
        "shapes/avocet.yaml",
        "src/test/resources/felloe/shape/good/full.yaml"
      })
  void everyKeyThatIsNotThereCanBeAdded(Path file) throws Exception {
    String text = Files.readString(file);
    Set<String> tried = new TreeSet<>();
    added(text, "", YamlTree.parse("a", text).root(), SCHEMA, tried);
    assertFalse(tried.isEmpty());
  }

  private static void added(
      String text, String path, YamlValue value, Schema place, Set<String> tried) {
    Schema schema = place.as(value);
    if (value instanceof Mapping group && schema.kind() == Kind.GROUP) {
      for (String key : schema.keys()) {
        if (!group.entries().containsKey(key)) {
          String way = Steps.key(path, key);
          tried.add(way);
          String more = new Editing(SCHEMA, "a", text).added(path, key);
          YamlValue root = YamlTree.parse("a", more).root();
          assertTrue(Editing.find(root, way).isPresent(), way + "\n" + more);
          assertTrue(Form.of(SCHEMA, root).contains("data-path=\"" + way), way + " has no field");
        }
      }
      group
          .entries()
          .forEach(
              (key, one) ->
                  schema
                      .key(key)
                      .ifPresent(s -> added(text, Steps.key(path, key), one.value(), s, tried)));
    } else if (value instanceof Sequence list && schema.kind() == Kind.LIST) {
      for (int i = 0; i < list.items().size(); i++) {
        added(text, path + "[" + i + "]", list.items().get(i), schema.item().orElseThrow(), tried);
      }
    }
  }

  /** What is added at the top of a plain wheel is read as it stands, but for what needs more. */
  @Test
  void whatIsAddedToAWheelCanBeRead() {
    String text = NewShape.text("round");
    YamlValue root = YamlTree.parse("a", text).root();
    List<String> wrong = new ArrayList<>();
    for (String key : SCHEMA.keys()) {
      if (((Mapping) root).entries().containsKey(key)) {
        continue;
      }
      String more = new Editing(SCHEMA, "a.yaml", text).added("", key);
      Seen seen = Seen.of("a.yaml", more, Path.of("shapes"));
      seen.problems().forEach(p -> wrong.add(key + ": " + p.line()));
    }
    // The file to start from has flat scales, which grips take the place of; it says so.
    wrong.removeIf(line -> line.contains("cannot stand beside making.grip_scale"));
    assertEquals("", String.join("\n", wrong));
  }

  @Test
  void everyPlaceOfTheSchemaHasAKindAndHelp() {
    List<String> dumb = new ArrayList<>();
    places(SCHEMA, "", 0, dumb);
    assertEquals(List.of(), dumb);
  }

  private static void places(Schema schema, String path, int depth, List<String> dumb) {
    for (String key : schema.keys()) {
      Schema one = schema.key(key).orElseThrow();
      String way = Steps.key(path, key);
      if (one.help().isEmpty()) {
        dumb.add(way);
      }
      if (depth < 6) {
        places(one.as(Kind.GROUP), way, depth + 1, dumb);
        Schema list = one.as(Kind.LIST);
        list.item().ifPresent(i -> places(i.as(Kind.GROUP), way + "[0]", depth + 1, dumb));
      }
    }
  }

  @Test
  void whatIsTypedIsWrittenSoThatItIsReadBackAsItWasMeant() {
    String text = NewShape.text("round");
    for (String typed :
        List.of(
            "Wren: second try",
            "# one",
            "- x",
            "[a",
            "{",
            "'",
            "\"",
            "yes, it is",
            "a\tb",
            "290")) {
      String changed = new Editing(SCHEMA, "a.yaml", text).written("title", typed);
      YamlValue root = YamlTree.parse("a.yaml", changed).root();
      assertEquals(typed, ((Scalar) Editing.find(root, "title").orElseThrow()).text());
    }
    for (String typed : List.of("60 mm", "2 3/4 in", "12.5", "-3", "{top: 4, bottom: 8}")) {
      String changed = new Editing(SCHEMA, "a.yaml", text).written("bore", typed);
      assertTrue(changed.contains("bore: " + typed), changed);
    }
    String broken = new Editing(SCHEMA, "a.yaml", text).written("bore", "3]: {");
    assertTrue(YamlTree.parse("a.yaml", broken).root() instanceof Mapping);
  }

  @Test
  void theFormIsSentAnewWhereItsFieldsAreOthersAndOnlyThere() {
    String text = NewShape.text("round");
    Editing editing = new Editing(SCHEMA, "a.yaml", text);
    int key = key(text);
    assertEquals(key, key(editing.written("stock.thickness", "7.5")));
    assertEquals(key, key(text.replace("felloe: 1", "felloe: 1 # with a comment")));
    assertNotEquals(key, key(editing.added("", "engravings")));
    assertNotEquals(key, key(editing.removed("stock.sheet")));
    assertNotEquals(key, key(text + "unknown: []\n"));
  }

  private static int key(String text) {
    return Form.values(YamlTree.parse("a", text).root()).key();
  }

  @Test
  void noHtmlOfTheFileReachesThePage() {
    String text =
        "felloe: 1\n"
            + "title: \"<b onclick='x'>&\\\"\"\n"
            + "\"<i>\": 1\n"
            + "outline: {round: {diameter: \"<u>\"}}\n";
    String made = Form.of(SCHEMA, YamlTree.parse("a", text).root());
    for (String tag : List.of("<b ", "<i>", "<u>")) {
      assertFalse(made.contains(tag), made);
    }
  }

  @Test
  void placesThatAreNoneAreRefusedInWords() {
    Editing editing = new Editing(SCHEMA, "a.yaml", NewShape.text("round"));
    for (Runnable wrong :
        List.<Runnable>of(
            () -> editing.added("nothing", "x"),
            () -> editing.added("outline", "x"),
            () -> editing.stepped("title", 1, false),
            () -> editing.stepped("windows[7].at[0]", 1, false),
            () -> editing.removed("windows[99]"))) {
      boolean refused = false;
      try {
        wrong.run();
      } catch (BadInput told) {
        refused = !told.problems().get(0).wanted().isEmpty();
      }
      assertTrue(refused);
    }
  }
}
