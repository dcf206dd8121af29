package felloe.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import felloe.plate.BadInput;
import org.junit.jupiter.api.function.Executable;

/** Says what a test expects of bad input. */
final class Bad {

  private Bad() {}

  /** The text is refused with exactly these lines. */
  static void text(String text, String... lines) {
    of(() -> YamlTree.parse("h.yaml", text), lines);
  }

  /** The act is refused with exactly these lines. */
  static void of(Executable act, String... lines) {
    BadInput bad = assertThrows(BadInput.class, act);
    assertEquals(String.join("\n", lines), bad.getMessage());
  }

  /** These are the problems found so far. */
  static void found(Problems problems, String... lines) {
    assertEquals(
        String.join("\n", lines), problems.none() ? "" : problems.asBadInput().getMessage());
  }
}
