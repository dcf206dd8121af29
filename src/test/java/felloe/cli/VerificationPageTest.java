package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;

/** What the page on verification claims is there. */
class VerificationPageTest {

  private static final Pattern TEST = Pattern.compile("`([a-z]+\\.[A-Za-z0-9]+)#([A-Za-z0-9]+)`");
  private static final Pattern NUMBER = Pattern.compile("(\\d+) checks have a source outside");
  private static final List<String> BASES =
      List.of("verified", "computed", "from memory", "common practice", "measured");

  private final DocsPage page = DocsPage.of("docs/verification.md");

  @Test
  void everyTestThatIsNamedExistsAndIsRun() throws ClassNotFoundException {
    Set<String> seen = new HashSet<>();
    for (String line : page.lines()) {
      Matcher test = TEST.matcher(line);
      while (test.find()) {
        Class<?> type = Class.forName("felloe." + test.group(1));
        assertTrue(
            Arrays.stream(type.getDeclaredMethods())
                .anyMatch(method -> method.getName().equals(test.group(2)) && isRun(method)),
            test.group());
        assertTrue(seen.add(test.group()), "told twice: " + test.group());
      }
    }
  }

  @Test
  void theNumberOfChecksWithAnOutsideSourceIsTheNumberOfRows() {
    Matcher number = NUMBER.matcher(String.join("\n", page.lines()));
    assertTrue(number.find());
    assertEquals(rows().size(), Integer.parseInt(number.group(1)));
  }

  @Test
  void everyRowNamesOneTestAndOneOfTheBases() {
    for (String[] row : rows()) {
      assertTrue(TEST.matcher(row[3].strip()).matches(), String.join("|", row));
      assertTrue(BASES.stream().anyMatch(row[4].strip()::startsWith), String.join("|", row));
    }
  }

  /** Rows of the tables with a basis. */
  private List<String[]> rows() {
    List<String[]> rows = new ArrayList<>();
    for (String line : page.lines()) {
      String[] cells = line.split("\\|");
      if (line.startsWith("| ") && cells.length == 5 && !cells[4].strip().matches("basis|-+")) {
        rows.add(cells);
      }
    }
    return rows;
  }

  private static boolean isRun(Method method) {
    return method.isAnnotationPresent(Test.class)
        || method.isAnnotationPresent(ParameterizedTest.class)
        || method.isAnnotationPresent(TestFactory.class);
  }
}
