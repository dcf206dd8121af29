package felloe.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FieldsTest {

  private final Problems problems = new Problems();

  private Fields fields(String text) {
    return YamlTree.parse("h.yaml", text).fields(problems);
  }

  enum Side {
    FRONT_FACE,
    BACK_FACE
  }

  @Test
  void aLengthThatIsFarTooSmallIsToldTheUnitThatExplainsIt() {
    Fields f = fields("{metres: 0.0055, inches: 0.2, put: 0.005 mm, near: 1.7, tiny: 0.00001}");
    f.length("metres").atLeast(0.1).required();
    f.length("inches").atLeast(1.8).atMost(20).required();
    f.length("put").atLeast(0.1).required();
    f.length("near").atLeast(1.8).required();
    f.length("tiny").atLeast(0.1).required();
    assertFalse(f.done());
    assertEquals(
        List.of(
            "it looks like metres: write 5.5 or put m after it",
            "it looks like inches: put in after it, which makes 5.08 mm",
            "",
            "",
            ""),
        assertThrows(BadInput.class, problems::throwIfAny).problems().stream()
            .map(Problem::cure)
            .toList());
  }

  @Test
  void goodValuesAreReadAsWhatIsWanted() {
    Fields f =
        fields(
            """
            name: Heron
            label: 7
            quoted: "true"
            side: back-face
            word: b
            open: true
            shut: False
            at: [60, 1 in]
            notes: |
              one
              two
            lengths: [1, 2 cm]
            corners: [[0, 0], [1, 2]]
            names: [a, b]
            """);
    assertEquals("Heron", f.text("name").required());
    assertEquals("7", f.text("label").required());
    assertEquals("true", f.text("quoted").required());
    assertEquals(Side.BACK_FACE, f.oneOf("side", Side.class).required());
    assertEquals("b", f.oneOf("word", "a", "b").required());
    assertEquals(true, f.bool("open").required());
    assertEquals(false, f.bool("shut").required());
    assertEquals(new Point(60, 25.4), f.point("at").required());
    assertEquals("one\ntwo\n", f.longText("notes").required());
    assertEquals(List.of(1.0, 20.0), f.list("lengths").exactly(2).lengths());
    assertEquals(List.of(new Point(0, 0), new Point(1, 2)), f.list("corners").points());
    assertEquals(List.of("a", "b"), f.list("names").texts());
    assertTrue(f.done());
    Bad.found(problems);
  }

  @Test
  void missingValuesTakeTheirDefaultWithoutComplaint() {
    Fields f = fields("a: 1\n");
    f.allow("a");
    assertEquals(5, f.length("width").or(5));
    assertEquals(OptionalDouble.empty(), f.length("width").optional());
    assertEquals(3, f.integer("count").or(3));
    assertEquals("x", f.text("name").or("x"));
    assertEquals(true, f.bool("mirror").or(true));
    assertEquals(Optional.empty(), f.mapping("stock").optional());
    assertEquals(List.of(), f.list("windows").mappings());
    assertTrue(f.done());
    Bad.found(problems);
  }

  @Test
  void missingValuesThatAreRequiredAreReportedAtTheirGroup() {
    Fields f = fields("felloe: 1\noutline:\n  family: round\n");
    f.allow("felloe");
    Fields outline = f.group("outline");
    outline.allow("family");
    assertTrue(Double.isNaN(outline.length("diameter").required()));
    assertEquals("", f.text("name").required());
    assertEquals(0, f.integer("count").required());
    assertEquals(Side.FRONT_FACE, f.oneOf("side", Side.class).required());
    assertEquals(new Point(0, 0), f.point("at").required());
    assertEquals(List.of(), f.list("holes").atLeast(2).mappings());
    Fields stock = f.mapping("stock").required();
    assertEquals("", stock.text("material").required());
    Fields sheet = f.group("sheet");
    sheet.length("width").required();
    assertFalse(f.done());
    Bad.found(
        problems,
        "h.yaml:1:1 name: is missing; add 'name:' with a text",
        "h.yaml:1:1 count: is missing; add 'count:' with a whole number such as 6",
        "h.yaml:1:1 side: is missing; add 'side:' with one of front-face, back-face",
        "h.yaml:1:1 at: is missing; add 'at:' with a point [x, y] of two lengths",
        "h.yaml:1:1 holes: is missing; add 'holes:' with a list of at least 2 items",
        "h.yaml:1:1 stock: is missing; add 'stock:' with a group of 'key: value' lines",
        "h.yaml:1:1 sheet.width: is missing; add 'width:' with a length such as 70, 70 mm, 7 cm or"
            + " 2.75 in",
        "h.yaml:3:3 outline.diameter: is missing; add 'diameter:' with a length such as 70, 70 mm,"
            + " 7 cm or 2.75 in");
  }

  @Test
  void aKeyWithNothingBehindItIsReported() {
    Fields f = fields("width:\nname: ~\nwindows: null\nstock:\nat:\n");
    f.length("width").or(3);
    f.text("name").optional();
    f.list("windows").mappings();
    f.mapping("stock").optional();
    f.point("at").optional();
    Bad.found(
        problems,
        "h.yaml:1:7 width: has no value; write a length such as 70, 70 mm, 7 cm or 2.75 in, or take"
            + " the key out",
        "h.yaml:2:7 name: has no value; write a text, or take the key out",
        "h.yaml:3:10 windows: has no value; write a list: '- ' lines, or [a, b], or take the key"
            + " out",
        "h.yaml:4:7 stock: has no value; write a group of 'key: value' lines, indented below it, or"
            + " take the key out",
        "h.yaml:5:4 at: has no value; write a point [x, y] of two lengths, or take the key out");
  }

  @Test
  void valuesOfTheWrongKindAreReported() {
    Fields f = fields("a: [1]\nb: {c: 1}\nc: 5\nd: x\ne: [1]\nf: [1, two]\ng: true\nh: 'yes'\n");
    f.length("a").required();
    f.length("b").required();
    f.list("c").lengths();
    f.mapping("d").required();
    f.point("e").required();
    f.point("f").required();
    f.text("g").required();
    f.bool("h").required();
    Bad.found(
        problems,
        "h.yaml:1:4 a: must be a length such as 70, 70 mm, 7 cm or 2.75 in; it is a list",
        "h.yaml:2:4 b: must be a length such as 70, 70 mm, 7 cm or 2.75 in; it is a group of keys",
        "h.yaml:3:4 c: '5' must be a list: '- ' lines, or [a, b]",
        "h.yaml:4:4 d: 'x' must be a group of 'key: value' lines",
        "h.yaml:5:4 e: must be a point [x, y] of two lengths; it has 1 item",
        "h.yaml:6:8 f[1]: 'two' must be a length such as 70, 70 mm, 7 cm or 2.75 in",
        "h.yaml:7:4 g: 'true' must be a text; put it in quotes",
        "h.yaml:8:4 h: 'yes' must be true or false; write it without quotes");
  }

  @Test
  void textsAreShortAndCanBePrinted() {
    Fields f = fields("a: ' '\nb: \"x\\0\"\nc: \"\\ud800\"\nd: " + "x".repeat(201) + "\n");
    for (String key : f.keys()) {
      assertEquals("", f.text(key).required());
    }
    Bad.found(
        problems,
        "h.yaml:1:4 a: ' ' must be a text that is not empty",
        "h.yaml:2:4 b: 'x\\u0000' must be a text on one line of at most 200 characters",
        "h.yaml:3:4 c: '\\ud800' must be a text of whole characters; check the \\u escapes",
        "h.yaml:4:4 d: '"
            + "x".repeat(59)
            + "…' must be a text on one line of at most 200 characters");
  }

  @Test
  void choicesNameAllAndTheNearest() {
    Fields f = fields("a: frontface\nb: Back-Face\nc: sideways\nd: carbn\n");
    f.oneOf("a", Side.class).required();
    f.oneOf("b", Side.class).required();
    f.oneOf("c", Side.class).required();
    f.oneOf("d", "aluminium", "carbon", "plywood").required();
    Bad.found(
        problems,
        "h.yaml:1:4 a: 'frontface' must be one of front-face, back-face; did you mean"
            + " 'front-face'?",
        "h.yaml:2:4 b: 'Back-Face' must be one of front-face, back-face; did you mean 'back-face'?",
        "h.yaml:3:4 c: 'sideways' must be one of front-face, back-face",
        "h.yaml:4:4 d: 'carbn' must be one of aluminium, carbon, plywood; did you mean 'carbon'?");
  }

  @Test
  void boundsSayTheirLimitReasonAndCure() {
    Fields f = fields("a: 0\nb: -1\nc: 5\nd: 5\ne: 40 mm\nf: 7 deg\ng: 1.5\n");
    assertTrue(Double.isNaN(f.length("a").positive().required()));
    f.length("b").notNegative().required();
    f.length("c").atLeast(6, "the stock's thickness", "raise it").required();
    f.length("d").lessThan(5).required();
    f.length("e").atMost(31.6, "half the window's height", "lower it or raise height").or(1);
    f.angle("f").between(10, 20).required();
    f.number("g").moreThan(1.5, "the factor", "").required();
    Bad.found(
        problems,
        "h.yaml:1:4 a: '0' must be more than 0 mm",
        "h.yaml:2:4 b: '-1' must be at least 0 mm",
        "h.yaml:3:4 c: '5' must be at least 6 mm here (the stock's thickness); raise it",
        "h.yaml:4:4 d: '5' must be less than 5 mm",
        "h.yaml:5:4 e: '40 mm' must be at most 31.6 mm here (half the window's height); lower it or"
            + " raise height",
        "h.yaml:6:4 f: '7 deg' must be at least 10 deg",
        "h.yaml:7:4 g: '1.5' must be more than 1.5 here (the factor)");
  }

  @Test
  void aBoundAllowsWhatEqualsItUpToRounding() {
    Fields f = fields("a: 0.3\n");
    assertEquals(0.3, f.length("a").atMost(0.1 * 3 - 1e-12).required());
    Bad.found(problems);
  }

  @Test
  void oneMistakeIsReportedOnceThoughOtherLimitsHangOnIt() {
    Fields f = fields("height: tall\nradius: 40\n");
    double height = f.length("height").positive().required();
    assertEquals(40, f.length("radius").atMost(height / 2, "half the height", "").required());
    Bad.found(
        problems, "h.yaml:1:9 height: 'tall' must be a length such as 70, 70 mm, 7 cm or 2.75 in");
  }

  @Test
  void unknownKeysNameTheNearestKnownOne() {
    Fields f = fields("widht: 1\nheigth: 2\nhieght: 2\nzebra: 3\nwidth: 4\n'a b': 5\n");
    f.length("width").required();
    f.length("height").or(1);
    assertFalse(f.done());
    assertFalse(f.done());
    Bad.found(
        problems,
        "h.yaml:1:1 widht: is not a known key; did you mean 'width'? allowed here: height, width",
        "h.yaml:2:1 heigth: is not a known key; did you mean 'height'? allowed here: height, width",
        "h.yaml:3:1 hieght: is not a known key; did you mean 'height'? allowed here: height, width",
        "h.yaml:4:1 zebra: is not a known key; allowed here: height, width",
        "h.yaml:6:1 \"a b\": is not a known key; allowed here: height, width");
  }

  @Test
  void unknownKeysInGroupsInsideAreSeenThoughTheirReaderForgotToEnd() {
    Fields f = fields("stock: {thick: 5}\nwindows: [{a: 1}]\n");
    f.group("stock");
    f.list("windows").mappings();
    assertFalse(f.done());
    Bad.found(
        problems,
        "h.yaml:1:9 stock.thick: is not a known key; no key is allowed here",
        "h.yaml:2:12 windows[0].a: is not a known key; no key is allowed here");
  }

  @Test
  void aResultIsBuiltOnlyWhenAllInItIsGood() {
    Fields f = fields("windows: [{r: 1}, {r: x}, {r: 3}, 4, {r: 5, s: 6}]\n");
    List<Double> built =
        f.list("windows")
            .each(
                w -> {
                  double r = w.length("r").required();
                  return w.build(() -> r);
                });
    assertEquals(List.of(1.0, 3.0), built);
    assertEquals(Optional.empty(), f.build(() -> "all"));
    assertEquals(3, problems.count());
  }

  @Test
  void aBadItemLeavesItsSiblingsGoodAndItsParentsBad() {
    Fields f = fields("a: {b: {c: x}}\nd: {e: 1}\n");
    Fields a = f.group("a");
    Fields b = a.group("b");
    Fields d = f.group("d");
    d.allow("e");
    b.length("c").required();
    assertFalse(b.good());
    assertFalse(a.good());
    assertFalse(f.good());
    assertTrue(d.done());
  }

  @Test
  void keysThatExcludeEachOtherAreReported() {
    Fields f = fields("a: {hub: x, pcd: 70}\nb: {}\nc: {pcd: 70}\n");
    assertEquals(Optional.empty(), f.group("a").exactlyOneOf("hub", "pcd"));
    assertEquals(Optional.empty(), f.group("b").exactlyOneOf("hub", "pcd"));
    assertEquals(Optional.of("pcd"), f.group("c").exactlyOneOf("hub", "pcd"));
    Bad.found(
        problems,
        "h.yaml:1:13 a.pcd: cannot stand beside hub; keep one of hub, pcd",
        "h.yaml:2:4 b: must have one of hub, pcd; add one of them");
    assertEquals(Optional.empty(), f.group("b").atMostOneOf("hub", "pcd"));
    assertEquals(2, problems.count());
  }

  @Test
  void aValueMayBeWrittenInSeveralWays() {
    Fields f = fields("a: 5\nb: [5, 6]\nc: {top: 5}\n");
    assertEquals(Entry.Kind.SCALAR, f.entry("a").kind());
    assertEquals(Entry.Kind.LIST, f.entry("b").kind());
    assertEquals(Entry.Kind.MAPPING, f.entry("c").kind());
    assertEquals(Entry.Kind.MISSING, f.entry("d").kind());
    assertEquals("b[1]", f.list("b").entries().get(1).path());
    assertEquals(Place.of("h.yaml", 2, 8), f.list("b").entries().get(1).place());
  }

  @Test
  void theReadersOwnProblemsNameTheValue() {
    Fields f = fields("windows:\n  - radius: 12 mm\n");
    Fields w = f.list("windows").mappings().get(0);
    w.problem("radius", "does not fit its corner by 0.4 mm", "lower it");
    w.problem("lies outside the plate", "move it");
    assertFalse(w.good());
    Bad.found(
        problems,
        "h.yaml:2:5 windows[0]: lies outside the plate; move it",
        "h.yaml:2:13 windows[0].radius: '12 mm' does not fit its corner by 0.4 mm; lower it");
  }

  @Test
  void listsHaveTheirNumberOfItems() {
    Fields f = fields("a: [1]\nb: [1, 2, 3]\nc: []\n");
    assertEquals(List.of(), f.list("a").atLeast(2).lengths());
    assertEquals(List.of(), f.list("b").exactly(2).lengths());
    assertEquals(List.of(), f.list("b").atMost(1).lengths());
    assertEquals(List.of(), f.list("c").atLeast(1).atMost(4).lengths());
    assertEquals(List.of(), f.list("c").lengths());
    Bad.found(
        problems,
        "h.yaml:1:4 a: must have at least 2 items, but has 1",
        "h.yaml:2:4 b: must have 2 items, but has 3",
        "h.yaml:2:4 b: must have at most 1 item, but has 3",
        "h.yaml:3:4 c: must have 1 to 4 items, but has 0");
  }

  @Test
  void fiftyProblemsAreShownAndTheOthersCounted() {
    for (int i = 120; i > 0; i--) {
      problems.add(new Problem(Place.of("h.yaml", i, 1), "", "", "is odd", ""));
    }
    BadInput bad = problems.asBadInput();
    assertEquals(51, bad.lines().size());
    assertEquals("h.yaml:1:1: is odd", bad.lines().get(0));
    assertEquals("h.yaml:50:1: is odd", bad.lines().get(49));
    assertEquals("and 70 more problems", bad.lines().get(50));
    Problems all = new Problems();
    all.add(bad);
    assertEquals(120, all.count());
    assertThrows(IllegalStateException.class, () -> new Problems().asBadInput());
  }

  // Restricted Damerau-Levenshtein: "ca" to "abc" takes 3 steps in this form, 2 in the
  // unrestricted one; "kitten" to "sitting" takes 3 (textbook examples, from memory).
  @Test
  void theDistanceOfWordsIsThatOfTheTextbooks() {
    assertEquals(3, Nearest.distance("ca", "abc"));
    assertEquals(3, Nearest.distance("kitten", "sitting"));
    assertEquals(1, Nearest.distance("widht", "width"));
    assertEquals(0, Nearest.distance("", ""));
    assertEquals(4, Nearest.distance("", "abcd"));
    assertEquals(Optional.empty(), Nearest.to("at", List.of("pcd")));
    assertEquals(Optional.of("rise"), Nearest.to("rsie", List.of("radius", "rise")));
  }
}
