package felloe.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MeasuredFileTest {

  private static Measured yaml(String text) {
    return MeasuredFile.parse("hub.yaml", text);
  }

  private static List<String> wrong(String name, String text) {
    return assertThrows(BadInput.class, () -> MeasuredFile.parse(name, text)).lines();
  }

  private static void one(String text, String... parts) {
    List<String> lines = wrong("hub.yaml", text);
    assertEquals(1, lines.size(), lines.toString());
    for (String part : parts) {
      assertTrue(lines.get(0).contains(part), lines.get(0));
    }
  }

  private static String readings(String... rows) {
    StringBuilder text = new StringBuilder("holes: 6\nhole_diameter: 5.5\nreadings:\n");
    for (String row : rows) {
      text.append("  - {").append(row).append("}\n");
    }
    return text.toString();
  }

  @Test
  void theExampleIsRead() {
    Measured measured =
        yaml(
            readings(
                "from: 1, to: 2, over: outside, reads: 40.52, plus_minus: 0.05",
                "from: 1, to: 4, over: centres, reads: 70.0",
                "from: 2, to: 5, over: inside,  reads: 64.48"));
    assertEquals(6, measured.count());
    assertEquals(5.5, measured.size().orElseThrow().reads());
    assertEquals(3, measured.readings().size());
    assertEquals(0.05, measured.readings().get(0).plusMinus());
    assertEquals(0.1, measured.readings().get(1).plusMinus());
    assertEquals(ReadingKind.INSIDE, measured.readings().get(2).over());
    assertEquals(4, measured.readings().get(2).to());
    assertEquals(ContactFeature.HOLES, measured.on());
  }

  @Test
  void sizesMayBeOneForAllAListOrByHole() {
    assertEquals(6, yaml("holes: 6\nhole_diameter: [5, 5, 5, 5, 5, 5.1]").readings().size());
    assertEquals(2, yaml("holes: 6\nhole_diameter: {H1: 5, H3: 5.2}").readings().size());
    Measured one = yaml(readings("hole: 3, over: diameter, reads: 5.52"));
    assertEquals(ReadingKind.DIAMETER, one.readings().get(0).over());
    Measured screws = yaml("holes: 4\nscrew_diameter: 4.9");
    assertEquals(ContactFeature.SCREWS, screws.on());
  }

  @Test
  void blankReadingsAreCountedAndNoError() {
    Measured form =
        yaml(
            "holes: [H1, H2, H3]\nhole_diameter:\n  H1: \n  H2: 5.5\nreadings:\n"
                + "  - {from: H1, to: H2, over: outside, reads: }\n");
    assertEquals(2, form.waiting().size());
    assertEquals(1, form.readings().size());
  }

  @Test
  void inchesAreReadWhereAllAreInches() {
    Measured measured =
        yaml(
            "holes: 3\nhole_diameter: 0.25 in\nplus_minus: 0.004 in\nreadings:\n"
                + "  - {from: 1, to: 2, over: centres, reads: 1 3/4 in}\n");
    assertEquals(44.45, measured.readings().get(0).reads(), 1e-9);
    assertEquals(0.1016, measured.readings().get(0).plusMinus(), 1e-9);
  }

  @Test
  void twoUnitsInOneFileAreAnErrorAtTheOddOne() {
    one(
        readings(
            "from: 1, to: 2, over: outside, reads: 40.52",
            "from: 1, to: 4, over: centres, reads: 2.75 in"),
        "hub.yaml:5:44",
        "'2.75 in' has the unit in",
        "other lengths in this file have the unit mm");
  }

  @Test
  void aNegativeReadingIsAnError() {
    one(readings("from: 1, to: 2, over: outside, reads: -40.52"), "hub.yaml:4", "more than 0 mm");
    one(readings("from: 1, to: 2, over: outside, reads: 0"), "more than 0 mm");
  }

  @Test
  void insideAndOutsideMixedUpIsAnErrorWithBothLines() {
    one(
        readings(
            "from: 1, to: 2, over: outside, reads: 29.5",
            "from: 2, to: 1, over: inside, reads: 40.5"),
        "hub.yaml:5",
        "over inside it reads 40.5 mm, over outside 29.5 mm (line 4)",
        "swap the two");
    one(
        readings("from: 1, to: 2, over: outside, reads: 9"),
        "hub.yaml:4",
        "would make holes of 5.5 mm overlap",
        "was it taken over inside?");
  }

  @Test
  void theSameReadingTwiceWithAnotherValueIsAnError() {
    one(
        readings(
            "from: 1, to: 2, over: outside, reads: 40.5",
            "from: 2, to: 1, over: outside, reads: 41.5"),
        "hub.yaml:5",
        "contradicts 40.5 mm for the same on line 4");
    // Twice the same within plus and minus is a check, not an error.
    yaml(
        readings(
            "from: 1, to: 2, over: outside, reads: 40.5",
            "from: 2, to: 1, over: outside, reads: 40.6"));
  }

  @Test
  void anImpossibleTriangleIsAnErrorWithItsLines() {
    one(
        readings(
            "from: 1, to: 2, over: centres, reads: 35",
            "from: 2, to: 3, over: centres, reads: 35",
            "from: 1, to: 3, over: outside, reads: 95.5"),
        "hub.yaml:6",
        "makes no triangle with 2 to 3 (line 5) and 1 to 2 (line 4): it is 20 mm longer");
  }

  @Test
  void aHoleNamedTwiceIsAnError() {
    one("holes: [H1, H2, H1]", "hub.yaml:1:17", "is there twice");
    one(readings("from: 2, to: 2, over: outside, reads: 40"), "is the same hole as from");
    one("holes: 3\nhole_diameter: {H1: 5, H1: 5.2}", "H1");
  }

  @Test
  void everyWrongLineIsToldAtOnce() {
    List<String> lines =
        wrong(
            "hub.yaml",
            readings(
                "from: 1, to: 9, over: outside, reads: 40",
                "from: 1, to: 2, over: insde, reads: 40",
                "from: 1, to: 2, over: outside, reeds: 40",
                "from: 1, to: left edge, over: outside, reads: 40",
                "from: 1, over: outside, reads: 40",
                "from: 1, to: 3, over: outside, reads: forty",
                "hole: 1, to: 3, over: diameter, reads: 5"));
    String all = String.join("\n", lines);
    for (String part :
        new String[] {
          "hub.yaml:4:19 readings[0].to: '9' is not one of the holes 1 to 6",
          "did you mean 'inside'?",
          "reeds: is not a known key",
          "must be one of centres, near side, far side",
          "name the other hole, or an edge",
          "'forty' must be a length",
          "cannot stand beside from and to"
        }) {
      assertTrue(all.contains(part), part + " in\n" + all);
    }
  }

  @Test
  void hostileSizesAreBounded() {
    one("holes: 100000", "at most 48");
    one("holes: -3", "at least 2");
    one("holes: 1e400", "whole number");
    one(readings("from: 1, to: 2, over: outside, reads: 1e9"), "within 10 m");
    one(readings("from: 1, to: 2, over: outside, reads: 40, plus_minus: 0"), "at least 0.001");
    one(readings("from: 1, to: 2, over: outside, reads: 40, plus_minus: 80"), "at most 5");
    StringBuilder many = new StringBuilder("holes: 6\nreadings:\n");
    for (int i = 0; i < 3000; i++) {
      many.append(" - {from: 1, to: 2, over: outside, reads: 40}\n");
    }
    one(many.toString(), "at most 2000 items");
  }

  @Test
  void aTableMayLeaveThePlusAndMinusOut() {
    Measured measured =
        MeasuredFile.parse("hub.csv", "from,to,over,reads\n1,2,outside,48.6\n2,3,outside,48.5\n");
    assertEquals(2, measured.readings().size());
    assertEquals(3, measured.count());
    String row = wrong("a.csv", "from,to,over,reads\n1,2,outside,48.6,0.05\n").get(0);
    assertTrue(row.contains("must have 4 columns, but has 5"), row);
  }

  @Test
  void aTableIsReadLikeTheFile() {
    String table =
        "from,to,over,reads,plus_minus\r\n"
            + ",,holes,6,\r\n"
            + "1,,diameter,5.5,\r\n"
            + "# a remark\r\n"
            + "1,4,outside,75.5,0.05\r\n"
            + "2,left edge,near side,20,\r\n"
            + "3,6,inside,,\r\n";
    Measured measured = MeasuredFile.parse("hub.csv", table);
    assertEquals(6, measured.count());
    assertEquals(3, measured.readings().size());
    assertEquals(0.05, measured.readings().get(1).plusMinus());
    assertEquals(ReferenceEdge.LEFT, measured.readings().get(2).edge().orElseThrow());
    assertEquals(1, measured.waiting().size());
  }

  @Test
  void whatIsWrongWithATableIsToldAtItsLineAndColumn() {
    String head = "from,to,over,reads,plus_minus\n";
    assertTrue(wrong("a.csv", head + "1,4,outside,75,5,\n").get(0).startsWith("a.csv:2:1: "));
    String row = wrong("a.csv", head + "1,4,outside,75.5,\n2,5,outsde,75,\n").get(0);
    assertTrue(row.startsWith("a.csv:3:5 readings[1].over: 'outsde' must be one of"), row);
    assertTrue(wrong("a.csv", "from;to\n").get(0).contains("must be the line of columns"));
    assertTrue(wrong("a.csv", head).get(0).contains("has no readings"));
    assertTrue(wrong("a.csv", "").get(0).contains("has no table"));
    assertTrue(wrong("a.csv", head + "1,{a: b},outside,75,\n").get(0).startsWith("a.csv:2:3: "));
    // RFC 4180: quoted values, a comma or a line's end in one, and the quotation mark doubled.
    String quoted = "\"1\",\"4\",\"outside\",\"75.5\",\n";
    assertEquals(
        MeasuredFile.parse("a.csv", head + "1,4,outside,75.5,\n").readings().get(0).reads(),
        MeasuredFile.parse("a.csv", head + quoted).readings().get(0).reads());
    String comma = wrong("a.csv", head + "1,4,outside,\"75,5\",\n").get(0);
    assertTrue(comma.startsWith("a.csv:2:13: "), comma);
    assertTrue(comma.contains("a decimal comma must be a point"), comma);
    String open = wrong("a.csv", head + "1,4,\"outside,75.5,\n2,5,outside,75.5,\n").get(0);
    assertTrue(open.startsWith("a.csv:2:1: "), open);
    String doubled = wrong("a.csv", head + "1,4,\"out\"\"side\",75.5,\n").get(0);
    assertTrue(doubled.startsWith("a.csv:2:5: "), doubled);
    assertTrue(wrong("a.csv", head + ",,holes,100000,\n").get(0).contains("from 2 to 48"));
  }

  @Test
  void whatIsNoFileIsToldInWords(@TempDir Path folder) throws Exception {
    Path csv = folder.resolve("a.csv");
    for (Path path : List.of(csv, folder.resolve("a.yaml"))) {
      BadInput bad = assertThrows(BadInput.class, () -> MeasuredFile.read(path));
      assertTrue(bad.getMessage().contains("does not exist"), bad.getMessage());
    }
    Files.write(csv, new byte[] {'f', (byte) 0xff});
    BadInput bad = assertThrows(BadInput.class, () -> MeasuredFile.read(csv));
    assertTrue(bad.getMessage().contains("UTF-8"), bad.getMessage());
  }
}
