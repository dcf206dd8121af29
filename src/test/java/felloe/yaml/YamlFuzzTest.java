package felloe.yaml;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import felloe.plate.BadInput;
import felloe.plate.Problem;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whatever stands in a file or an override, it gives a tree or a helpful refusal. */
class YamlFuzzTest {

  private static final long SEED = 20_260_101L;
  private static final int ROUNDS = 6000;

  static final String VALID =
      """
      # A wheel for the hill-climb cart
      felloe: 1
      name: "Heron \\u00e9"
      outline:
        family: rounded
        width: 280
        height: 2 3/4 in
        corners: [40, 35 mm, '3 cm', 12.5]
      windows:
        - at: [60, -5]
          radius: 12
          angle: 30°
          side: front-face
        - {at: [-60, 0], radius: 10, clock: 10:30, mirror: true}
      notes: |
        one: two
          three
      folded: >-
        some text
        goes on
      path: 'M 0 0 L 10 10'
      empty:
      """;

  private static final String[] TOKENS = {
    "\t",
    "\n",
    "\r",
    "\r\n",
    " ",
    "  ",
    ": ",
    ":",
    "- ",
    "-",
    "? ",
    "[",
    "]",
    "{",
    "}",
    ",",
    "#",
    " #",
    "&a ",
    "*a ",
    "!",
    "!!int ",
    "!<x> ",
    "|",
    ">",
    "|+2",
    "'",
    "\"",
    "\\",
    "\\x",
    "\\u12",
    "\\UFFFFFFFF",
    "%",
    "%YAML 1.9\n",
    "%TAG ! x\n",
    "---\n",
    "...\n",
    "@",
    "`",
    "<<: ",
    "~",
    "null",
    ".inf",
    ".nan",
    "1e999",
    "0x1f",
    "1_0",
    "3,5",
    "\uFEFF",
    "\u0085",
    "\u2028",
    "😀",
    "\0",
    "\u0007",
    "=",
    "..",
    "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[",
    "true",
    "windows:"
  };

  @Test
  void anyFileGivesATreeOrAHelpfulRefusal() {
    assertTimeoutPreemptively(
        Duration.ofSeconds(60),
        () -> {
          int trees = 0;
          for (int round = 0; round < ROUNDS; round++) {
            SplittableRandom random = new SplittableRandom(SEED + round);
            byte[] mutant = mutate(VALID.getBytes(StandardCharsets.UTF_8), random);
            try {
              YamlTree tree = YamlTree.read("h.yaml", new ByteArrayInputStream(mutant));
              Problems problems = new Problems();
              readAll(tree.fields(problems));
              problems.throwIfAny();
              trees++;
            } catch (BadInput bad) {
              check(bad, mutant, round);
            } catch (Throwable other) {
              fail("seed " + (SEED + round) + ": " + other, other);
            }
          }
          assertTrue(trees > ROUNDS / 20, "some mutants must still be good: " + trees);
        });
  }

  @Test
  void anyOverrideGivesATreeOrAHelpfulRefusal() {
    YamlTree tree = YamlTree.parse("h.yaml", VALID);
    String[] good = {
      "outline.width=280",
      "windows[1].radius=12 mm",
      "windows[2]={at: [1, 2], radius: 3}",
      "\"odd key\".x='a b'",
      "outline.corners[0]=7"
    };
    assertTimeoutPreemptively(
        Duration.ofSeconds(60),
        () -> {
          for (int round = 0; round < ROUNDS; round++) {
            SplittableRandom random = new SplittableRandom(SEED + round);
            String set = good[random.nextInt(good.length)];
            byte[] mutant = mutate(set.getBytes(StandardCharsets.UTF_8), random);
            String text = new String(mutant, StandardCharsets.UTF_8);
            try {
              Problems problems = new Problems();
              readAll(tree.with(Sets.of(text)).fields(problems));
              problems.throwIfAny();
            } catch (BadInput bad) {
              check(bad, VALID.getBytes(StandardCharsets.UTF_8), round);
            } catch (Throwable other) {
              fail("seed " + (SEED + round) + ": " + Problem.shown(text) + ": " + other, other);
            }
          }
        });
  }

  static byte[] mutate(byte[] from, SplittableRandom random) {
    byte[] bytes = from;
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      int at = random.nextInt(bytes.length + 1);
      int length = Math.min(random.nextInt(20), bytes.length - at);
      out.write(bytes, 0, at);
      switch (random.nextInt(5)) {
        case 0 -> out.write(random.nextInt(256));
        case 1 -> at += length;
        case 2 -> out.write(bytes, at, length);
        default -> {
          byte[] token = TOKENS[random.nextInt(TOKENS.length)].getBytes(StandardCharsets.UTF_8);
          out.write(token, 0, token.length);
          at += random.nextInt(2) == 0 ? 0 : length;
        }
      }
      out.write(bytes, at, bytes.length - at);
      bytes = out.toByteArray();
    }
    return bytes;
  }

  private static void readAll(Fields f) {
    f.integer("felloe").between(1, 1).required();
    f.text("name").required();
    Fields outline = f.group("outline");
    outline.oneOf("family", "round", "rounded").required();
    outline.length("width").positive().required();
    outline.length("height").positive().required();
    outline.list("corners").lengths();
    for (Fields w : f.list("windows").mappings()) {
      w.point("at").required();
      w.length("radius").positive().required();
      w.angle("angle").optional();
      w.clock("clock").optional();
      w.oneOf("side", FieldsTest.Side.class).optional();
      w.bool("mirror").or(false);
    }
    f.longText("notes").optional();
    f.text("folded").optional();
    f.longText("path").optional();
    f.allow("empty");
    f.done();
  }

  private static void check(BadInput bad, byte[] text, int round) {
    String seed = "seed " + (SEED + round) + ": " + bad.getMessage();
    int lines = 2;
    for (byte b : text) {
      lines += b == '\n' || b == '\r' || b == (byte) 0x85 ? 1 : 0;
    }
    assertFalse(bad.problems().isEmpty(), seed);
    List<String> told = new ArrayList<>(bad.lines());
    for (Problem problem : bad.problems()) {
      assertTrue(problem.place().line() <= lines, seed);
      assertFalse(problem.wanted().isBlank(), seed);
      assertTrue(problem.line().codePoints().noneMatch(Character::isISOControl), seed);
      assertTrue(problem.value().length() <= Problem.LONGEST_VALUE, seed);
    }
    assertTrue(told.size() <= Problems.SHOWN + 1, seed);
  }
}
