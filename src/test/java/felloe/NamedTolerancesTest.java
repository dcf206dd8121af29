package felloe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Small figures by which things are told apart stand in {@code Tolerances}, or are constants with a
 * name and a reason where they belong; none stands bare in an expression.
 */
class NamedTolerancesTest {

  private static final Path SOURCES = Path.of("src/main/java/felloe");

  /** Rooms whose figures have no names yet. */
  private static final Set<String> LATER = Set.of("cutting", "load", "mesh");

  /** A ten-thousandth or less. */
  private static final Pattern SMALL =
      Pattern.compile("(?<![\\w.])\\d[\\d.]*e-(?:[4-9]|[1-9]\\d+)");

  private static final Pattern NAMED = Pattern.compile("\\bdouble(?:\\[\\])? [A-Z][A-Z_0-9]* =");

  private static final Pattern NO_CODE =
      Pattern.compile("/\\*.*?\\*/|//[^\\n]*|\"(?:\\\\.|[^\"\\\\\\n])*\"", Pattern.DOTALL);

  private static Set<String> bare(String code) {
    String plain = NO_CODE.matcher(code).replaceAll(" ");
    Set<String> found = new TreeSet<>();
    Matcher small = SMALL.matcher(plain);
    while (small.find()) {
      int from = 0;
      for (char end : new char[] {';', '{', '}'}) {
        from = Math.max(from, plain.lastIndexOf(end, small.start()) + 1);
      }
      String before = plain.substring(from, small.start());
      if (!NAMED.matcher(before).find()) {
        found.add((before + small.group()).strip().replaceAll("\\s+", " "));
      }
    }
    return found;
  }

  @Test
  void noSmallFigureStandsBareInAnExpression() throws IOException {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        String name = SOURCES.relativize(file).toString();
        if (!LATER.contains(SOURCES.relativize(file).getName(0).toString())) {
          bare(Files.readString(file)).forEach(bare -> found.add(name + ": " + bare));
        }
      }
    }
    assertEquals("", String.join("\n", found));
  }

  @Test
  void aBareFigureIsSeenAndANamedOneIsNot() {
    assertEquals(Set.of("if (a < 1e-9"), bare("{ if (a < 1e-9) { b(); } }"));
    assertEquals(Set.of("return x + 2.5e-12"), bare("y(); return x + 2.5e-12;"));
    for (String well :
        List.of(
            "private static final double SAME = 1e-9;",
            "{ double STILL = 1e-12;",
            "/** About 1e-9. */ a();",
            "// 1e-6\n a();",
            "say(\"1e-6\");",
            "a(1e-3);",
            "a(1e9);")) {
      assertEquals(Set.of(), bare(well), well);
    }
  }
}
