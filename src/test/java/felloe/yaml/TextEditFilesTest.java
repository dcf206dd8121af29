package felloe.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo shapes and the files to start from, each value in turn. */
class TextEditFilesTest {

  static Stream<Path> files() throws IOException {
    List<Path> files = new ArrayList<>();
    for (String folder : List.of("shapes", "src/main/resources/felloe/new")) {
      try (Stream<Path> found = Files.list(Path.of(folder))) {
        found.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(files::add);
      }
    }
    assertTrue(files.size() >= 8, files.toString());
    return files.stream();
  }

  private static void each(YamlValue value, List<YamlValue> all) {
    all.add(value);
    if (value instanceof Sequence list) {
      list.items().forEach(item -> each(item, all));
    } else if (value instanceof Mapping group) {
      group.entries().values().forEach(keyed -> each(keyed.value(), all));
    }
  }

  private static List<YamlValue> values(String text) {
    List<YamlValue> all = new ArrayList<>();
    each(YamlTree.parse("f.yaml", text).root(), all);
    return all.subList(1, all.size());
  }

  @ParameterizedTest
  @MethodSource("files")
  void aValueSetToItselfLeavesTheTextAsItIs(Path file) throws IOException {
    String text = Files.readString(file);
    TextEdit edit = TextEdit.of("f.yaml", text);
    for (YamlValue value : values(text)) {
      assertSame(edit, edit.set(value.path(), written(value)), value.path());
    }
  }

  private static String written(YamlValue value) {
    return value instanceof Scalar scalar && !scalar.quoted() ? scalar.text() : FlowText.of(value);
  }

  /** And back again, the text is what it was. */
  @ParameterizedTest
  @MethodSource("files")
  void anotherSingleValueChangesItsLineAndNoOther(Path file) throws IOException {
    String text = Files.readString(file);
    List<String> lines = text.lines().toList();
    TextEdit edit = TextEdit.of("f.yaml", text);
    for (YamlValue value : values(text)) {
      if (!(value instanceof Scalar scalar)) {
        continue;
      }
      String old = written(scalar);
      String other = scalar.text().equals("7") ? "8" : "7";
      TextEdit next = edit.set(value.path(), other);
      List<String> now = next.text().lines().toList();
      int line = value.place().line() - 1;
      boolean block = lines.get(line).endsWith(">-");
      int gone = block ? lines.size() - now.size() : 0;
      assertTrue(!block || gone >= 1, value.path());
      assertEquals(lines.subList(0, line), now.subList(0, line), value.path());
      assertEquals(
          lines.subList(line + 1 + gone, lines.size()),
          now.subList(line + 1, now.size()),
          value.path());
      int comment = lines.get(line).indexOf(" # ");
      if (other.length() <= old.length()) {
        assertEquals(comment, now.get(line).indexOf(" # "), value.path());
      }
      if (!block) {
        assertEquals(text, next.set(value.path(), old).text(), value.path());
      }
    }
  }

  /** Nothing new is written; a key that is set again makes the file say what it said. */
  @ParameterizedTest
  @MethodSource("files")
  void eachPartIsTakenOutAlone(Path file) throws IOException {
    String text = Files.readString(file);
    TextEdit edit = TextEdit.of("f.yaml", text);
    for (YamlValue value : values(text)) {
      TextEdit less = edit.remove(value.path());
      int at = 0;
      for (char one : less.text().replace(" ", "").toCharArray()) {
        at = text.indexOf(one, at) + 1;
        assertTrue(at > 0, value.path());
      }
      assertNotEquals(text.replace(" ", ""), less.text().replace(" ", ""), value.path());
      if (!value.path().endsWith("]")) {
        TextEdit again = less.set(value.path(), written(value));
        assertTrue(
            TreeChange.alike(
                YamlTree.parse("f.yaml", text).root(),
                YamlTree.parse("f.yaml", again.text()).root()),
            value.path());
      }
    }
  }

  /** The last resort of an edit, which loses comments and nothing else. */
  @ParameterizedTest
  @MethodSource("files")
  void whatIsRoundAValueCanBeWrittenOnOneLine(Path file) throws IOException {
    String text = Files.readString(file);
    TextEdit edit = TextEdit.of("f.yaml", text);
    YamlTree tree = YamlTree.parse("f.yaml", text);
    for (YamlValue value : values(text)) {
      ValuePath path = PathReader.whole(value.path()).orElseThrow();
      YamlValue wanted = tree.with(Sets.of(path + "=[7, 'x: y']")).root();
      List<List<Cut>> ways = edit.larger(path, wanted);
      assertEquals(path.steps().size(), ways.size());
      String now = Cut.apply(Layout.of(text), ways.get(ways.size() - 1));
      assertTrue(
          TreeChange.saysAll(wanted, YamlTree.parse("f.yaml", now).root()), () -> path + now);
    }
  }
}
