package felloe.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class YamlSyntaxTest {

  private static final Duration SOON = Duration.ofSeconds(10);

  private static YamlValue at(YamlValue value, Object... steps) {
    YamlValue found = value;
    for (Object step : steps) {
      found =
          step instanceof String key
              ? ((Mapping) found).entries().get(key).value()
              : ((Sequence) found).items().get((Integer) step);
    }
    return found;
  }

  @Test
  void everyValueKnowsItsLineColumnAndPath() {
    YamlValue root =
        YamlTree.parse(
                "heron.yaml",
                """
                # a comment
                felloe: 1
                outline:
                    width:   280 mm   # wide
                    'odd key': "x: y"
                windows:
                - {at: [60, -5], radius: 12}
                -   at: [1, 2]
                empty:
                last: |
                  M 0 0
                  L 1 1
                """)
            .root();
    assertEquals(Place.of("heron.yaml", 2, 1), root.place());
    assertEquals(
        new Scalar(
            Place.of("heron.yaml", 4, 14),
            ((Scalar) at(root, "outline", "width")).route(),
            "280 mm",
            false),
        at(root, "outline", "width"));
    assertEquals("outline.width", at(root, "outline", "width").path());
    assertEquals("heron.yaml:4:5", at(root, "outline").place().toString());
    assertEquals("outline.\"odd key\"", at(root, "outline", "odd key").path());
    assertEquals("heron.yaml:5:16", at(root, "outline", "odd key").place().toString());
    assertEquals("windows[0].at[1]", at(root, "windows", 0, "at", 1).path());
    assertEquals("heron.yaml:7:13", at(root, "windows", 0, "at", 1).place().toString());
    assertEquals("heron.yaml:8:10", at(root, "windows", 1, "at", 0).place().toString());
    assertEquals("heron.yaml:9:7", at(root, "empty").place().toString());
    assertTrue(((Scalar) at(root, "empty")).isNull());
    assertEquals("M 0 0\nL 1 1\n", ((Scalar) at(root, "last")).text());
    assertEquals(
        "heron.yaml:8:5",
        ((Mapping) at(root, "windows", 1)).entries().get("at").keyPlace().toString());
  }

  @Test
  void columnsCountCharactersAndAByteOrderMarkIsNone() {
    YamlValue root = YamlTree.parse("h.yaml", "\uFEFFa: ['😀é', 5]\n").root();
    assertEquals("h.yaml:1:11", at(root, "a", 1).place().toString());
  }

  @Test
  void linesEndInAnyOfTheUsualWays() {
    YamlValue root = YamlTree.parse("h.yaml", "a: 1\r\nb: 2\rc: 3\nd: 4\r\n").root();
    assertEquals("h.yaml:2:4", at(root, "b").place().toString());
    assertEquals("h.yaml:3:4", at(root, "c").place().toString());
    assertEquals("h.yaml:4:4", at(root, "d").place().toString());
  }

  @Test
  void anEmptyFileHasNothingAtTheTop() {
    for (String text : new String[] {"", "\n\n", "# only a comment\n", "---\n", "---\n...\n"}) {
      Problems problems = new Problems();
      Fields top = YamlTree.parse("h.yaml", text).fields(problems);
      top.length("width").required();
      assertEquals(false, top.done());
      Bad.found(problems, "h.yaml: is empty; write 'key: value' lines");
    }
  }

  @Test
  void theTopMustBeKeys() {
    Problems problems = new Problems();
    YamlTree.parse("h.yaml", "felloe:1\n").fields(problems);
    YamlTree.parse("h.yaml", "\n- a\n").fields(problems);
    Bad.found(
        problems,
        "h.yaml:1:1: 'felloe:1' must be a group of 'key: value' lines; put a space after the"
            + " colon",
        "h.yaml:2:1: must be a group of 'key: value' lines");
  }

  @Test
  void tabsAreNamed() {
    Bad.text(
        "a: 1\n\tb: 2\n", "h.yaml:2:1: 'b: 2' has a tab before its first word; indent with spaces");
    Bad.text(
        "a:\n\t- 1\n", "h.yaml:2:1: '- 1' has a tab before its first word; indent with spaces");
    YamlTree.parse("h.yaml", "a: [\n\t1,\n\t2\n]\n");
  }

  @Test
  void badSyntaxIsSaidInPlainWords() {
    Bad.text(
        "a: 1\n  b: 2\n",
        "h.yaml:2:4: 'b: 2' has a colon where no 'key: value' can start; check the indentation; put"
            + " a text that has a colon in quotes");
    Bad.text(
        "a: [1, 2\nb: 3\n",
        "h.yaml:2:2: 'b: 3' breaks off what '[' opened on line 1 began; close it with ']', and put"
            + " commas between the values");
    Bad.text(
        "a: [1, 2\n", "h.yaml:1:4: 'a: [1, 2' has a '[' that is never closed; close it with ']'");
    Bad.text(
        "a: {b: 2\n", "h.yaml:1:4: 'a: {b: 2' has a '{' that is never closed; close it with '}'");
    Bad.text(
        "a: 'open\nb: 1\n",
        "h.yaml:1:4: 'a: 'open' has a quotation mark that is never closed; add the closing mark, or"
            + " take the opening one out");
    Bad.text(
        "a: \"x\\q\"\n",
        "h.yaml:1:7: 'a: \"x\\q\"' has a backslash that means nothing; use single quotes around the"
            + " text, or write two backslashes");
    Bad.text(
        "a: @home\n",
        "h.yaml:1:4: 'a: @home' has a value that starts with a sign that YAML keeps for itself; put"
            + " the value in quotes");
    Bad.text(
        "a: 'x' y\n",
        "h.yaml:1:8: 'a: 'x' y' has something left over from column 8 on; take it out, or put the"
            + " whole value in quotes");
    Bad.text(
        "a: 1\nplain\nb: 2\n",
        "h.yaml:2:1: 'plain' is neither 'key: value' nor part of the line above; add a colon and a"
            + " space after the key");
    Bad.text(
        "- 1\n-2\n",
        "h.yaml:2:1: '-2' is neither 'key: value' nor part of the line above; put a space after the"
            + " '-'");
    Bad.text(
        "a: - 1\n",
        "h.yaml:1:4: 'a: - 1' has a '-' where no list can start; start the list on a line of its"
            + " own below its key");
    Bad.text(
        "  a: 1\n b: 2\n",
        "h.yaml:2:2: 'b: 2' does not line up with the lines above; start all keys of a group, and"
            + " all '-' of a list, in the same column");
    Bad.text(
        "a:\n  b: 1\n c: 2\n",
        "h.yaml:3:2: 'c: 2' does not line up with the lines above; start all keys of a group, and"
            + " all '-' of a list, in the same column");
    Bad.text(": x\n", "h.yaml:1:1: ': x' has a colon without a key before it; write the key");
    Bad.text(
        "a: }\n",
        "h.yaml:1:4: 'a: }' has a '}' where a value should be; write the value; put a text that"
            + " starts with this sign in quotes");
    Bad.text(
        "a: |x\n b\n",
        "h.yaml:1:5: 'a: |x' has a text block (| or >) that is not well formed; indent its lines"
            + " evenly");
    Bad.text(
        "%FOO bar\na: 1\n",
        "h.yaml:2:1: 'a: 1' follows a line that starts with %, which is not read here; take that"
            + " line out");
    Bad.text(
        "a: \"\\UFFFFFFFF\"\n",
        "h.yaml:1:1: 'a: \"\\UFFFFFFFF\"' is not well-formed YAML from here on; check the"
            + " indentation, quotes and brackets of this line and the one above");
  }

  @Test
  void whatCouldSwellOrTurnIntoObjectsIsRefusedEachWithItsPlace() {
    Bad.text(
        "a: *x\nb: &y 3\nc: !!str 3\nd: !<tag:x> e\n<<: {z: 1}\n",
        "h.yaml:1:4 a: '*x' stands for a value written elsewhere (an alias), which is not read"
            + " here; write the value itself; put a text that starts with * in quotes",
        "h.yaml:2:4 b: '&y' marks a value for use elsewhere (an anchor), which is not read here;"
            + " take it out; put a text that starts with & in quotes",
        "h.yaml:3:4 c: '!!str' is a type tag, which is not read here; take it out; put a text that"
            + " starts with ! in quotes",
        "h.yaml:4:4 d: 'tag:x' is a type tag, which is not read here; take it out; put a text that"
            + " starts with ! in quotes",
        "h.yaml:5:1: '<<' merges another group into this one, which is not read here; write the"
            + " keys out");
  }

  @Test
  void anAliasBombIsRefusedAtOnce() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x,x,x,x,x,x,x,x,x]\n");
    for (int i = 1; i < 40; i++) {
      bomb.append("a" + i + ": &a" + i + " [" + ("*a" + (i - 1) + ",").repeat(9) + "]\n");
    }
    BadInput bad = refusedSoon(bomb::toString);
    assertEquals(50, bad.problems().size());
    assertEquals(40 + 39 * 9 - 50, bad.more());
  }

  @Test
  void aDecimalCommaInAGroupOnOneLineIsNamed() {
    Bad.text(
        "r: {over: outside, reads: 40,5}\n",
        "h.yaml:1:30 r: '5' stands alone after a number and a comma; a decimal comma must be a"
            + " point");
    Bad.text(
        "r: {reads: 40,52 mm, over: outside}\n",
        "h.yaml:1:15 r: '52 mm' stands alone after a number and a comma; a decimal comma must be"
            + " a point");
    YamlTree.parse("h.yaml", "r: {reads: 40, '5': 1}\n");
  }

  @Test
  void keysAreWordsGivenOnce() {
    Bad.text(
        "a: 1\nb: {c: 1, c: 2}\na: 3\na: 4\n",
        "h.yaml:2:11 b.c: is given a second time; the first is on line 2; keep one of them",
        "h.yaml:3:1 a: is given a second time; the first is on line 1; keep one of them",
        "h.yaml:4:1 a: is given a second time; the first is on line 1; keep one of them");
    Bad.text("? [a]\n: 1\n", "h.yaml:1:3: has a list or a group as a key; use a word as the key");
    for (String key : new String[] {"12", "1.5e3", "true", "null", "~"}) {
      Bad.text(
          "a:\n  " + key + ": 1\n",
          "h.yaml:2:3 a: '"
              + key
              + "' must be a word to be a key; put it in quotes if it is a name");
    }
    Bad.text("'': 1\n", "h.yaml:1:1: must be a word to be a key; write a key before the colon");
    YamlTree.parse("h.yaml", "'12': 1\n6x70-m5: 1\n");
  }

  @Test
  void aFileHoldsOneDocument() {
    Bad.text(
        "a: 1\n---\nb: 2\n",
        "h.yaml:2:1: a second document starts here ('---'); keep one document in a file; split it"
            + " into two files");
    YamlTree.parse("h.yaml", "%YAML 1.2\n---\na: 1\n...\n");
  }

  @Test
  void nestingIsFiftyDeepAtMost() {
    YamlTree.parse("h.yaml", "a: " + "[".repeat(49) + "]".repeat(49));
    Bad.text(
        "a: " + "[".repeat(50) + "]".repeat(50),
        "h.yaml:1:53: is nested deeper than 50 levels; check the brackets and indentation");
    for (String open : new String[] {"[", "{a: ", "- ", "[{b: ", "'a': ["}) {
      String text = open.repeat(1_000_000);
      assertTrue(
          refusedSoon(() -> text).getMessage().contains("nested deeper than 50 levels"), open);
    }
    refusedSoon(() -> "{".repeat(8_000_000));
    refusedSoon(() -> "? ".repeat(4_000_000));
  }

  @Test
  void aFileHoldsAHundredThousandValuesAtMost() {
    assertEquals(
        "h.yaml:1:200000 [99999]: is one value too many: a file may hold 100000",
        refusedSoon(() -> "[" + "1,".repeat(2_000_000) + "]").getMessage());
  }

  @Test
  void longTokensAreReadInTimeInProportion() {
    for (String text :
        new String[] {
          "a".repeat(8_000_000),
          "#".repeat(8_000_000),
          " ".repeat(8_000_000),
          "\"" + "\\n".repeat(4_000_000) + "\"",
          "'" + "\n".repeat(8_000_000) + "'",
          "a: |\n" + " x\n".repeat(2_500_000)
        }) {
      assertTimeoutPreemptively(SOON, () -> YamlTree.parse("h.yaml", text));
    }
    refusedSoon(() -> "!" + "a".repeat(8_000_000));
    refusedSoon(() -> "&" + "a".repeat(8_000_000));
    refusedSoon(() -> "%" + "a".repeat(8_000_000));
  }

  private static BadInput refusedSoon(Supplier<String> text) {
    String made = text.get();
    return assertTimeoutPreemptively(
        SOON, () -> assertThrows(BadInput.class, () -> YamlTree.parse("h.yaml", made)));
  }

  @Test
  void charactersThatNoTextMayHaveAreNamed() {
    Bad.text(
        "a: 1\nb: x\0y\n",
        "h.yaml:2:5: has a character that no text may have: NUL, U+0000; delete it, or save the"
            + " file as plain text in UTF-8");
    Bad.text(
        "a: \u001b[0m\n",
        "h.yaml:1:4: has a character that no text may have: U+001B; delete it, or save the file as"
            + " plain text in UTF-8");
    Bad.text(
        "é: \ud800\n",
        "h.yaml:1:4: has a character that no text may have: U+D800; delete it, or save the file as"
            + " plain text in UTF-8");
  }

  private static YamlTree readBytes(byte[] bytes) throws IOException {
    return YamlTree.read("h.yaml", new ByteArrayInputStream(bytes));
  }

  @Test
  void bytesThatAreNoUtf8AreNamedWithOffsetAndPlace() throws IOException {
    byte[] latin = "name: x\nnoté: 1\n".getBytes(StandardCharsets.ISO_8859_1);
    Bad.of(
        () -> readBytes(latin),
        "h.yaml:2:4: must be UTF-8 text, but the byte 0xE9 at offset 11 is not; save the file as"
            + " plain text in UTF-8");
    Bad.of(
        () -> readBytes(new byte[] {'a', (byte) 0xC3}),
        "h.yaml:1:2: must be UTF-8 text, but the byte 0xC3 at offset 1 is not; save the file as"
            + " plain text in UTF-8");
    Bad.of(
        () -> readBytes("a: 1\n".getBytes(StandardCharsets.UTF_16)),
        "h.yaml: must be UTF-8 text, but is UTF-16; save the file as plain text in UTF-8");
    byte[] marked = "\uFEFFa: ü\n".getBytes(StandardCharsets.UTF_8);
    assertEquals("ü", ((Scalar) at(readBytes(marked).root(), "a")).text());
  }

  @Test
  void aFileOverEightMebibytesIsRefusedUnread(@TempDir Path folder) throws IOException {
    Path large = folder.resolve("large.yaml");
    try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
      file.setLength(1L << 30);
    }
    String refusal =
        ": is over 8 MiB (8388608 bytes); a file of this kind has a few kilobytes; check that it is"
            + " the right file";
    assertTimeoutPreemptively(SOON, () -> Bad.of(() -> YamlTree.read(large), large + refusal));
    Bad.text("x".repeat(8 * 1024 * 1024 + 1), "h.yaml" + refusal);
    Bad.of(() -> YamlTree.read("h.yaml", new Endless()), "h.yaml" + refusal);
    YamlTree.parse("h.yaml", "x".repeat(8 * 1024 * 1024));
  }

  private static final class Endless extends InputStream {
    @Override
    public int read() {
      return 'x';
    }
  }

  @Test
  void aFileThatCannotBeReadIsTheUsersProblem(@TempDir Path folder) throws IOException {
    Path missing = folder.resolve("missing.yaml");
    Bad.of(
        () -> YamlTree.read(missing), missing + ": does not exist; check the name and the folder");
    Bad.of(() -> YamlTree.read(folder), folder + ": is a folder; name a file in it");
    Path good = Files.writeString(folder.resolve("good.yaml"), "a: 1\n");
    assertEquals(good + ":1:4", at(YamlTree.read(good).root(), "a").place().toString());
  }
}
