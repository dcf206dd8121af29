package felloe.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class OverridesTest {

  private static final String HERON =
      """
      outline:
        width: 280
      windows:
        - radius: 12
        - radius: 13
      empty:
      """;

  private final Problems problems = new Problems();

  private Fields set(String... sets) {
    return YamlTree.parse("h.yaml", HERON).with(Sets.of(sets)).fields(problems);
  }

  private static void refused(String set, String line) {
    Bad.of(() -> YamlTree.parse("h.yaml", HERON).with(Sets.of(set)), line);
  }

  @Test
  void aValueIsReplacedAndHasTheOverrideAsItsPlace() {
    Fields f = set("outline.width=11 in", "windows[1].radius=5");
    Fields outline = f.group("outline");
    assertEquals(279.4, outline.length("width").required(), 1e-12);
    assertEquals("--set outline.width", outline.place("width").toString());
    assertEquals("h.yaml:2:3", outline.place().toString());
    List<Fields> windows = f.list("windows").mappings();
    assertEquals(12, windows.get(0).length("radius").required());
    assertEquals(5, windows.get(1).length("radius").required());
    assertEquals("--set windows[1].radius", windows.get(1).place("radius").toString());
    Bad.found(problems);
  }

  @Test
  void theFirstTreeStaysAsItWas() {
    YamlTree tree = YamlTree.parse("h.yaml", HERON);
    YamlValue before = tree.root();
    tree.with(Sets.of("outline.width=1", "windows[0].radius=1"));
    assertEquals(before, tree.root());
  }

  @Test
  void missingGroupsAndListsAreMadeOnTheWay() {
    Fields f = set("stock.sheet.width=300", "holes[0].at=[1, 2]", "empty.name=x");
    assertEquals(300, f.group("stock").group("sheet").length("width").required());
    assertEquals(new Point(1, 2), f.list("holes").mappings().get(0).point("at").required());
    assertEquals("x", f.group("empty").text("name").required());
    Bad.found(problems);
  }

  @Test
  void anItemIsAddedJustPastTheEnd() {
    Fields f = set("windows[2]={radius: 9}", "windows[3].radius=8");
    List<Fields> windows = f.list("windows").mappings();
    assertEquals(9, windows.get(2).length("radius").required());
    assertEquals(8, windows.get(3).length("radius").required());
    assertEquals("windows[2].radius", windows.get(2).entry("radius").path());
  }

  @Test
  void aLaterOverrideSeesTheEarlierOne() {
    Fields f = set("outline={width: 1, height: 2}", "outline.width=3");
    assertEquals(3, f.group("outline").length("width").required());
    assertEquals(2, f.group("outline").length("height").required());
  }

  @Test
  void anEmptyFileCanBeFilled() {
    Fields f = YamlTree.parse("h.yaml", "").with(Sets.of("a.b=1")).fields(problems);
    assertEquals(1, f.group("a").length("b").required());
    Bad.found(problems);
  }

  @Test
  void keysWithOtherSignsAreQuoted() {
    Fields f = set("\"a.b=c\"=1", "\"q\\\"\\\\\"=2");
    assertEquals(1, f.length("a.b=c").required());
    assertEquals(2, f.length("q\"\\").required());
    assertEquals("\"a.b=c\"", f.entry("a.b=c").path());
    assertEquals("\"q\\\"\\\\\"", f.entry("q\"\\").path());
  }

  @Test
  void aValueMayHoldAnEqualsSign() {
    assertEquals("a=b", set("name=a=b").text("name").required());
  }

  @Test
  void unknownKeysAndWrongValuesShowTheOverride() {
    Fields f = set("outline.widht=3", "outline.width=wide", "outline.at=[1, x]");
    f.allow("windows", "empty");
    Fields outline = f.group("outline");
    outline.length("width").required();
    outline.point("at").required();
    f.done();
    Bad.found(
        problems,
        "--set outline.at outline.at[1]: 'x' must be a length such as 70, 70 mm, 7 cm or 2.75 in",
        "--set outline.widht: is not a known key; did you mean 'width'? allowed here: at, width",
        "--set outline.width: 'wide' must be a length such as 70, 70 mm, 7 cm or 2.75 in");
  }

  @Test
  void malformedOverridesAreRefused() {
    for (String set :
        new String[] {
          "",
          "=",
          "=5",
          "width",
          "outline.",
          "outline..width=3",
          "[x]=1",
          "a[]=1",
          "a[-1]=1",
          "a[1=2",
          "a[1]b=2",
          "a b=1",
          ".a=1",
          "\"a=1",
          "\"\"=1",
          "a[9999999]=1",
          "a\0=1"
        }) {
      String shown = set.isEmpty() ? "" : "'" + set.replace("\0", "\\u0000") + "' ";
      refused(
          set,
          "--set: "
              + shown
              + "must be path=value; write it as outline.width=280 or windows[0].radius=12");
    }
  }

  @Test
  void overridesThatFindNoPlaceSayWhy() {
    refused(
        "windows[3].radius=1",
        "--set windows[3].radius: windows has 2 items, so [3] is past the end; use [0] to [1], or"
            + " [2] to add one");
    refused(
        "holes[1]=1",
        "--set holes[1]: holes has no items, so [1] is past the end; use [0] to add one");
    refused(
        "outline.width.x=1",
        "--set outline.width.x: outline.width is a single value, so it has no keys");
    refused("windows.radius=1", "--set windows.radius: windows is a list, so it has no keys");
    refused(
        "outline[0]=1",
        "--set outline[0]: outline is a group of keys, so [..] finds nothing in it");
  }

  @Test
  void overrideValuesAreSingleValuesListsOrGroups() {
    String form =
        "must be one value, a list in [ ] or a group in { }; put a text that has ': ' or starts"
            + " with '- ' in quotes";
    refused("name=a: b", "--set name: 'a: b' " + form);
    refused("name=- a", "--set name: '- a' " + form);
    refused("at=[1, 2", "--set at: '[1, 2' has a '[' that is never closed; close it with ']'");
    refused(
        "a=*x",
        "--set a: '*x' stands for a value written elsewhere (an alias), which is not read here;"
            + " write the value itself; put a text that starts with * in quotes");
    refused(
        "a={b: 1, b: 2}",
        "--set a a.b: is given a second time; the first is in the same override; keep one of them");
    refused("a=x\0", "--set a: has a character that no text may have: NUL, U+0000; leave it out");
    refused(
        "a=" + "[".repeat(1000),
        "--set a: is nested deeper than 50 levels; check the brackets and indentation");
    assertEquals("a: b", set("name='a: b'").text("name").required());
  }

  @Test
  void anEmptyValueIsNoValue() {
    set("outline.width=").group("outline").length("width").required();
    Bad.found(
        problems,
        "--set outline.width: has no value; write a length such as 70, 70 mm, 7 cm or 2.75 in, or"
            + " take the key out");
  }

  @Test
  void overridesAreBounded() {
    refused(
        "a=" + "x".repeat(70_000),
        "--set: 'a="
            + "x".repeat(57)
            + "…' is longer than 65536 characters; change the file"
            + " instead");
    refused(
        "a" + ".a".repeat(60) + "=1",
        "--set " + "a" + ".a".repeat(60) + ": is nested deeper than 50 levels");
    Bad.of(
        () ->
            YamlTree.parse("h.yaml", HERON)
                .with(Sets.of(java.util.Collections.nCopies(1001, "a=1"))),
        "--set: is given more than 1000 times; change the file");
  }

  @Test
  void allBadOverridesAreReportedInOneRun() {
    var bad =
        org.junit.jupiter.api.Assertions.assertThrows(
            felloe.plate.BadInput.class,
            () -> YamlTree.parse("h.yaml", HERON).with(Sets.of("x", "windows[9]=1", "a=[")));
    assertEquals(3, bad.problems().size());
    assertTrue(bad.problems().stream().allMatch(p -> p.place().isOption()));
  }
}
