package felloe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * An option of the command line is named in {@code cli} and nowhere else: the other rooms are given
 * a place, whose text it is.
 */
class OptionNamesTest {

  private static final Path SOURCES = Path.of("src/main/java/felloe");
  private static final Path RESOURCES = Path.of("src/main/resources");

  /** It knows how options begin, and none of them. */
  private static final Path PLACE = Path.of("plate", "Place.java");

  /** Comments are taken as well, so that a quote in one begins no text. */
  private static final Pattern TEXTS =
      Pattern.compile(
          "//[^\\n]*|/\\*.*?\\*/|'(?:\\\\.|[^'\\\\\\n])+'"
              + "|\"\"\"(?:\\\\.|[^\\\\])*?\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*\"",
          Pattern.DOTALL);

  /** Or the beginning of one whose name is put behind it; not a property of a style sheet. */
  private static final Pattern OPTION =
      Pattern.compile("(?<![-\\w;{]|var\\()--(?:[a-z][-a-z]*|(?=\"))");

  /** The options that the texts of a program name. */
  private static List<String> named(String code) {
    return TEXTS
        .matcher(code)
        .results()
        .map(text -> text.group())
        .filter(text -> text.startsWith("\""))
        .flatMap(text -> OPTION.matcher(text).results().map(option -> option.group()))
        .toList();
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().matches(".*\\.(" + ending + ")")).toList();
    }
  }

  @Test
  void noOtherRoomNamesAnOption() throws IOException {
    TreeSet<String> found = new TreeSet<>();
    for (Path file : files(SOURCES, "java")) {
      Path name = SOURCES.relativize(file);
      if (!name.startsWith("cli") && !name.equals(PLACE)) {
        named(Files.readString(file)).forEach(option -> found.add(name + ": " + option));
      }
    }
    for (Path file : files(RESOURCES, "yaml|txt")) {
      Matcher option = OPTION.matcher(Files.readString(file));
      while (option.find()) {
        found.add(file + ": " + option.group());
      }
    }
    assertEquals("", String.join("\n", found));
  }

  @Test
  void anOptionIsSeenWhereverItStandsInAText() throws IOException {
    for (String text :
        List.of(
            "\"--bars\"",
            "\"give it as --bars ACROSSxUP\"",
            "\"a \\\" b (--bars)\"",
            "'\"'; \"x\" + \"as '--bars'\"",
            "/* a \" b */ \"`--bars`\"",
            "\"\"\"\n  write \"x\", then\n  --bars\n\"\"\"")) {
      assertEquals(List.of("--bars"), named(text), text);
    }
    assertEquals(List.of("--"), named("\"with --\" + name"));
    assertEquals(List.of("--least-mass"), named("\"--least-mass\""));
    for (String text :
        List.of(
            "i = --size[a];",
            "// as \"--bars\"",
            "/** {@code --bars} */",
            "\"('---')\"",
            "\":root{--ink:#000;--paper:#fff} a{color:var(--ink)}\"")) {
      assertEquals(List.of(), named(text), text);
    }
    String printing = Files.readString(SOURCES.resolve("cli/Printing.java"));
    assertTrue(named(printing).contains("--bars"), "seen where it is named");
  }
}
