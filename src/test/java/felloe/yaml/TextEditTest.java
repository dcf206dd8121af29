package felloe.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import felloe.yaml.TextEdit.Span;
import felloe.yaml.YamlValue.Scalar;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Each rule of an edit, with the exact text before and after. */
class TextEditTest {

  private static void set(String before, String path, String value, String after) {
    assertEquals(after, TextEdit.of("h.yaml", before).set(path, value).text());
  }

  private static void insert(String before, String path, String value, String after) {
    TextEdit edit = TextEdit.of("h.yaml", before).insert(path, value);
    assertEquals(after, edit.text());
    assertEquals(before, edit.remove(path).text());
  }

  private static void remove(String before, String path, String after) {
    assertEquals(after, TextEdit.of("h.yaml", before).remove(path).text());
  }

  private static void marked(String text, String path, String part) {
    Span span = TextEdit.of("h.yaml", text).span(path).orElseThrow();
    assertEquals(part, text.substring(span.from(), span.to()));
  }

  @Test
  void onlyTheCharactersOfASingleValueAreReplaced() {
    set("a:  1\nb: 2\n", "a", "60 mm", "a:  60 mm\nb: 2\n");
    set("a: 'x'\nb: \"y\"\n", "a", "z", "a: z\nb: \"y\"\n");
    set("a: \"x\\n\n  y\"  # c\nb: 2\n", "a", "'z'", "a: 'z'  # c\nb: 2\n");
    set("a: one\n  two\nb: 2\n", "a", "3", "a: 3\nb: 2\n");
    set("a:\n  x # c\n", "a", "y", "a:\n  y # c\n");
    set("- 1\n- 2\n", "[1]", "x", "- 1\n- x\n");
    set("a: [12, 40]\n", "a[0]", "13.5", "a: [13.5, 40]\n");
    set("a: {b: 1, c: 2}\n", "a.c", "[3, 4]", "a: {b: 1, c: [3, 4]}\n");
    set("a: {\"b\":1}\n", "a.b", "2", "a: {\"b\":2}\n");
    set("? a\n: 1\n", "a", "2", "? a\n: 2\n");
  }

  @Test
  void aTextBlockIsReplacedWithAllItsLines() {
    set(
        "path: >- # drawn\n  M 0,0\n  Z\n\n# next\nb: 2\n",
        "path",
        "'M 1,1 Z'",
        "path: 'M 1,1 Z' # drawn\n\n# next\nb: 2\n");
    set("a:\n  - |+\n    x\n\n  - 2\n", "a[0]", "1", "a:\n  - 1\n  - 2\n");
    set("a: |\n  x", "a", "1", "a: 1");
  }

  @Test
  void whatIsThereAlreadyStaysAsItIsWritten() {
    for (String[] same :
        new String[][] {
          {"a: 'x'\n", "a", "\"x\""},
          {"a: >-\n  x\n  y\n", "a", "\"x y\""},
          {"a: |\n  x\n", "a", "\"x\\n\""},
          {"a: [1,2 ]\n", "a", "[1, 2]"},
          {"a:\n  b: 1 # c\n", "a", "{b: 1}"},
          {"a:\n", "a", "~"},
          {"a-b: 1\n", "a_b", "1"},
        }) {
      TextEdit edit = TextEdit.of("h.yaml", same[0]);
      assertSame(edit, edit.set(same[1], same[2]), same[0]);
    }
    set("a: 1\n", "a", "'1'", "a: '1'\n");
    set("a: '3, 5'\n", "a", "3, 5", "a: 3, 5\n");
  }

  @Test
  void aCommentStaysAndItsColumnToo() {
    set("a: 1 # c\n", "a", "12345", "a: 12345 # c\n");
    set("a: 1    # c\n", "a", "123", "a: 123  # c\n");
    set("a: 123  # c\n", "a", "1", "a: 1    # c\n");
    set("a: 1  # c\n", "a", "123456", "a: 123456 # c\n");
    set("a: größe  # c\n", "a", "😀", "a: 😀      # c\n");
    set("a: 123 # c\n       # d\n", "a", "1", "a: 1   # c\n       # d\n");
    set("a: 1   # c\nb: 123 # d\n", "b", "1", "a: 1   # c\nb: 1   # d\n");
    set("a: 1   # c\nb:\nc: 123 # d\n", "c", "1", "a: 1   # c\nb:\nc: 1   # d\n");
    set("a: 1   # c\n\n\n\nb: 123 # d\n", "b", "1", "a: 1   # c\n\n\n\nb: 1 # d\n");
    set("a: {b: 1, c: 2}   # c\n", "a.b", "10", "a: {b: 10, c: 2}  # c\n");
    set("a: {b: 1}       # c\n", "a.c", "2", "a: {b: 1, c: 2} # c\n");
    set("a: 1\t# c\n", "a", "123", "a: 123\t# c\n");
    set("a:   # c\nb: 1\n", "a", "2", "a: 2 # c\nb: 1\n");
    remove("a: [1, 2]  # c\n", "a[0]", "a: [2]     # c\n");
  }

  @Test
  void noValueGetsOne() {
    set("a:\nb: 1\n", "a", "2", "a: 2\nb: 1\n");
    set("a: # c\n", "a", "2", "a: 2 # c\n");
    set("a:\n  -\n  - 1\n", "a[0]", "{b: 1}", "a:\n  - {b: 1}\n  - 1\n");
    set("a: {b: , c}\n", "a.b", "1", "a: {b: 1 , c}\n");
    set("a: {b, c}\n", "a.b", "1", "a: {b: 1, c}\n");
    set("a: ~\n", "a", "1", "a: 1\n");
    set("? a\n? b\n", "a", "1", "? a\n: 1\n? b\n");
    set("a: 1 # c\nb: [1, 2]\n", "a", "", "a: # c\nb: [1, 2]\n");
    set("a: {b: 1}\n", "a.b", "", "a: {b:}\n");
    set("a: [1, 2]\n", "a[0]", "", "a: [null, 2]\n");
  }

  @Test
  void noValueBecomesAGroupOrAList() {
    set("a: # c\nb: 1\n", "a.x.y", "2", "a: # c\n  x:\n    y: 2\nb: 1\n");
    set("a:\nb: 1\n", "a[0].y", "2", "a:\n  - y: 2\nb: 1\n");
    set("- 1\n-\n", "[1].x", "2", "- 1\n- x: 2\n");
    set("- # c\n", "[0].x", "2", "- {x: 2} # c\n");
    set("a: {b: }\n", "a.b.c", "1", "a: {b: {c: 1} }\n");
    set("a: ~\n", "a.b", "1", "a: {b: 1}\n");
  }

  @Test
  void aNewKeyOfAGroupComesBehindItsLastLine() {
    set("a:\n   b: 1\nc: 2\n", "a.d", "3", "a:\n   b: 1\n   d: 3\nc: 2\n");
    set(
        "a:\n  b: 1 # one\n       # more\n  # of a\n\n# of c\nc: 2\n",
        "a.d",
        "3",
        "a:\n  b: 1 # one\n       # more\n  # of a\n  d: 3\n\n# of c\nc: 2\n");
    set(
        "l:\n  - b:\n      c: 1\n  # next\n  - 2\n",
        "l[0].d",
        "3",
        "l:\n  - b:\n      c: 1\n    d: 3\n  # next\n  - 2\n");
    set("a:\n  b: |+\n    x\n\nc: 1\n", "a.d", "3", "a:\n  b: |+\n    x\n\n  d: 3\nc: 1\n");
    set("a:\n  b: |\n    x", "a.d", "3", "a:\n  b: |-\n    x\n  d: 3");
    set(
        "a:\n    b:\n        c: 1\n",
        "a.d.e",
        "3",
        "a:\n    b:\n        c: 1\n    d:\n        e: 3\n");
  }

  @Test
  void aNewKeyOfTheFileComesAtItsEnd() {
    set("a: 1\n\n# end\n", "b", "2", "a: 1\n\n# end\nb: 2\n");
    set("a: 1", "b", "2", "a: 1\nb: 2");
    set("", "b", "2", "b: 2\n");
    set("# empty\n", "b.c", "2", "# empty\nb:\n  c: 2\n");
    set("---\na: 1\n...\n# over\n", "b", "2", "---\na: 1\nb: 2\n...\n# over\n");
    set("a: |\n  x", "b", "2", "a: |-\n  x\nb: 2");
    set("a:\n- 1\n", "b.c[0].d", "[2]", "a:\n- 1\nb:\n  c:\n  - d: [2]\n");
    set("a: 1\n", "\"odd: key\".true", "2", "a: 1\n\"odd: key\":\n  \"true\": 2\n");
  }

  @Test
  void aNewKeyInBracesStaysInThem() {
    set("a: {b: 1}\n", "a.c", "2", "a: {b: 1, c: 2}\n");
    set("a: { b: 1 } # c\n", "a.c.d[0]", "2", "a: { b: 1, c: {d: [2]} } # c\n");
    set("a: {b: 1, }\n", "a.c", "2", "a: {b: 1, c: 2, }\n");
    set("a: {}\n", "a.c", "2", "a: {c: 2}\n");
    set("a: {b}\n", "a.c", "2", "a: {b, c: 2}\n");
    set("a: [b: 1]\n", "a[0].c", "2", "a: [{b: 1, c: 2}]\n");
    set("a: {\n  b: 1 # one\n}\n", "a.c", "2", "a: {\n  b: 1, # one\n  c: 2\n}\n");
    set("a: {\n  b: 1,\n}\n", "a.c", "2", "a: {\n  b: 1,\n  c: 2,\n}\n");
  }

  @Test
  void anItemIsAddedInTheListsOwnStyle() {
    set("a: [1, 2]\n", "a[2]", "3", "a: [1, 2, 3]\n");
    set("a: []\n", "a[0]", "3", "a: [3]\n");
    set("a:\n-   1 # one\n\nb: 2\n", "a[1]", "3", "a:\n-   1 # one\n-   3\n\nb: 2\n");
    set("a:\n- 1\n# of b\nb: 2\n", "a[1].c.d", "3", "a:\n- 1\n- c:\n    d: 3\n# of b\nb: 2\n");
    set("- - 1\n  - 2\n", "[0][2]", "3", "- - 1\n  - 2\n  - 3\n");
    set("a:\n  - 1", "a[1]", "2", "a:\n  - 1\n  - 2");
    set("a:\n  - 1\n", "a[1]", "", "a:\n  - 1\n  -\n");
    set("a:\n  - 1\n", "b[0]", "", "a:\n  - 1\nb:\n  -\n");
  }

  @Test
  void anItemIsPutBeforeAnotherAndTakenOutAgain() {
    insert("a: [1, 2]\n", "a[0]", "0", "a: [0, 1, 2]\n");
    insert("a: [1, 2]\n", "a[1]", "{b: 0}", "a: [1, {b: 0}, 2]\n");
    insert("a: [\n  1,\n  2\n]\n", "a[1]", "0", "a: [\n  1,\n  0,\n  2\n]\n");
    insert("a:\n  # one\n  - 1\n", "a[0]", "0", "a:\n  - 0\n  # one\n  - 1\n");
    insert("a:\n    # deeper\n  - 1\n", "a[0]", "0", "a:\n    # deeper\n  - 0\n  - 1\n");
    insert(
        "- 1 # one\n    # more\n\n# two\n- 2\n",
        "[1]",
        "x",
        "- 1 # one\n    # more\n- x\n\n# two\n- 2\n");
    insert("- - 1\n  - 2\n", "[0][0]", "0", "- - 0\n  - 1\n  - 2\n");
    insert("- b: 1\n  c: 2\n- 3\n", "[0]", "[]", "- []\n- b: 1\n  c: 2\n- 3\n");
    insert("a:\n  - 1", "a[1]", "2", "a:\n  - 1\n  - 2");
    insert("a: 1\n", "b[0]", "2", "a: 1\nb:\n  - 2\n");
    insert("a: [1]\r\n", "a[1]", "2", "a: [1, 2]\r\n");
  }

  @Test
  void aGroupOrListInLinesBecomesOneLine() {
    set(
        "a: # c\n  b: 1\n  # d\n  c: 2 # e\n\n# of d\nd: 3\n",
        "a",
        "[1]",
        "a: [1] # c\n\n# of d\nd: 3\n");
    set("a:\n- 1\n- 2\n# of b\nb: 1\n", "a", "{c: 1}", "a: {c: 1}\n# of b\nb: 1\n");
    set("- b: 1 # x\n  c: 2 # y\n- 3\n", "[0]", "4", "- 4\n- 3\n");
    set("a:\n  b: 1", "a", "2", "a: 2");
    set("a: {b: 1,\n  c: 2}\nd: 3\n", "a", "2", "a: 2\nd: 3\n");
  }

  @Test
  void aKeyIsTakenOutWithItsLinesAndComment() {
    remove("a: 1\nb: 2 # two\n     # more\n# of c\nc: 3\n", "b", "a: 1\n# of c\nc: 3\n");
    remove("a:\n  b:\n    c: 1\n    # d: 2\n  e: 3\n", "a.b", "a:\n  e: 3\n");
    remove("a: 1\nb: |\n  x\n\nc: 3\n", "b", "a: 1\n\nc: 3\n");
    remove("a: |+\n  x\nb: 1\n\n# c\nc: 1\n", "b", "a: |+\n  x\n# c\nc: 1\n");
    remove("a: 1\nb: 2", "b", "a: 1");
    remove("- a: 1 # one\n  b: 2\n", "[0].a", "- b: 2\n");
    remove("- a: 1\n  # of b\n  b: 2\n", "[0].a", "-\n  # of b\n  b: 2\n");
    remove("- - 1\n  - 2\n", "[0][0]", "- - 2\n");
    remove("a:\n  - 1\n  - 2\n  - 3\n", "a[1]", "a:\n  - 1\n  - 3\n");
    remove("?\n  a\n: 1\nb ?: 2\nc: a ?\nd: 1\n", "a", "b ?: 2\nc: a ?\nd: 1\n");
    remove("b: 2\nc: a ?\nd: 1\n", "d", "b: 2\nc: a ?\n");
    remove("? # c\n  a\n: 1\nb: 2\n", "a", "b: 2\n");
    remove("rim-width: 1\nb: 2\n", "rim_width", "b: 2\n");
  }

  @Test
  void anItemInBracketsIsTakenOutWithItsComma() {
    remove("a: [1, 2, 3]\n", "a[0]", "a: [2, 3]\n");
    remove("a: [1, 2, 3]\n", "a[1]", "a: [1, 3]\n");
    remove("a: [1, 2, 3]\n", "a[2]", "a: [1, 2]\n");
    remove("a: {b: 1, c: 2, }\n", "a.c", "a: {b: 1, }\n");
    remove(
        "a: [\n  1, # one\n  2, # two\n  3 # three\n]\n",
        "a[1]",
        "a: [\n  1, # one\n  3 # three\n]\n");
    remove("a: [\n  1, # one\n  2 # two\n]\n", "a[1]", "a: [\n  1 # one\n]\n");
    remove("a: [1, # one\n  2]\n", "a[1]", "a: [1 # one\n]\n");
  }

  @Test
  void whatWouldBeLeftEmptyGoesToo() {
    remove("a:\n  b:\n    - c: 1\nd: 2\n", "a.b[0].c", "d: 2\n");
    remove("a: {b: [1], c: 2}\n", "a.b[0]", "a: {c: 2}\n");
    remove("# top\na:\n  b: 1\n", "a.b", "# top\n");
    remove("a: 1", "a", "");
    remove("{a: 1}\n", "a", "{}\n");
    remove("[\n  1\n]\n", "[0]", "[]\n");
    remove("[ # c\n  1 # one\n]\n", "[0]", "[ # c\n]\n");
    remove("a: 1\n...\n", "a", "{}\n...\n");
    remove("- 1\n...\n", "[0]", "[]\n...\n");
  }

  @Test
  void theMakersHandStays() {
    set(
        "\uFEFFa: 1\r\nb:\r\n\tc: 2".replace("\t", "  "),
        "b.d",
        "3",
        "\uFEFFa: 1\r\nb:\r\n  c: 2\r\n  d: 3");
    set("a: 1 # 😀\r\n", "b.c", "3", "a: 1 # 😀\r\nb:\r\n  c: 3\r\n");
    set("a: 1\rb: 2\r", "c", "3", "a: 1\rb: 2\rc: 3\r");
    set("rim-width: 1\n", "rim_width", "2", "rim-width: 2\n");
    set("a_b:\n  c: 1\n", "a-b.d-e", "2", "a_b:\n  c: 1\n  d-e: 2\n");
    set("größe: {\"a.b\": 1}\n", "größe.\"a.b\"", "2", "größe: {\"a.b\": 2}\n");
  }

  @Test
  void aValueIsWrittenAsItWasGivenWhereItMayStandSo() {
    set("a: 1\n", "a", "  2 # said\n", "a: 2\n");
    set("a: 1\n", "a", "[1,\n 2]", "a: [1, 2]\n");
    set("a: 1\n", "a", "|\n  x\n  y\n", "a: \"x\\ny\\n\"\n");
    set("a: 1\n", "a", "one\n two", "a: one two\n");
    set("a: 1\n", "a", "x, y", "a: x, y\n");
    set("a: [1]\n", "a[0]", "x, y", "a: [\"x, y\"]\n");
    set("a: 1\n", "a", "{ b: 'c' }", "a: { b: 'c' }\n");
  }

  @Test
  void anyTextCanBeQuoted() {
    assertEquals("\"a: b\"", TextEdit.quoted("a: b"));
    for (String text :
        new String[] {
          "",
          " x ",
          "a: b # c",
          "- 'x' \"y\" \\z",
          "one\r\ntwo\tthree\u0085\u2028\u2029",
          "\0\u0007\u001b\u007f",
          "\uFEFFx\uD800y",
          "😀 größe \uDBFF\uDFFF",
          "null",
          "%x"
        }) {
      TextEdit edit = TextEdit.of("h.yaml", "a: {b: 1} # c\n").set("a.b", TextEdit.quoted(text));
      YamlValue read =
          TreeChange.find(
                  YamlTree.parse("h.yaml", edit.text()).root(),
                  PathReader.whole("a.b").orElseThrow())
              .orElseThrow();
      assertEquals(text, ((Scalar) read).text());
      assertEquals(2, edit.text().lines().count() + 1);
    }
  }

  @Test
  void aPartIsMarkedWithAllThatIsInIt() {
    String text =
        "\uFEFF# 😀\na: 1 # c\nl:\n  - b: 'x'\n    c: |\n      y\n\n  -  [1, {d: 2}]\nn:\n";
    marked(text, "a", "a: 1");
    marked(text, "l", "l:\n  - b: 'x'\n    c: |\n      y\n\n  -  [1, {d: 2}]");
    marked(text, "l[0]", "- b: 'x'\n    c: |\n      y");
    marked(text, "l[0].c", "c: |\n      y");
    marked(text, "l[1]", "-  [1, {d: 2}]");
    marked(text, "l[1][0]", "1");
    marked(text, "l[1][1]", "{d: 2}");
    marked(text, "l[1][1].d", "d: 2");
    marked(text, "n", "n:");
    assertEquals(Optional.empty(), TextEdit.of("h.yaml", text).span("l[2]"));
    assertEquals(Optional.empty(), TextEdit.of("h.yaml", text).span("a.b"));
    assertEquals(Optional.empty(), TextEdit.of("h.yaml", "").span("a"));
  }
}
