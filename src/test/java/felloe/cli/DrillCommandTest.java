package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The drilling sheet, from call to files. */
class DrillCommandTest {

  private static final String HERON = "shapes/heron.yaml";

  @TempDir Path folder;

  private Run drill(String... more) {
    List<String> args = new ArrayList<>(List.of("drill", "--out", folder.toString()));
    args.addAll(List.of(more));
    return Run.of(args.toArray(String[]::new));
  }

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(p -> Files.isRegularFile(p) && !Run.isList(p))
          .map(p -> p.getFileName().toString())
          .sorted()
          .toList();
    }
  }

  /** A file in the folder of its shape, after which it is named. */
  private Path in(String file) {
    return folder.resolve(file.substring(0, file.indexOf('-'))).resolve(file);
  }

  private String text(String pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(in(pdf).toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  private int pages(String pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(in(pdf).toFile())) {
      return document.getNumberOfPages();
    }
  }

  private Path shape(String holes, String stock) throws IOException {
    String text =
        "felloe: 1\noutline:\n  four-sided: {width: 420, height: 420, radius: 20}\nholes:\n"
            + holes
            + "stock: {material: "
            + stock
            + ", thickness: 5}\n";
    return Files.writeString(folder.resolve("snipe.yaml"), text);
  }

  @Test
  void nothingIsWrittenUnlessAFolderIsNamed() {
    Run run = Run.of("drill", HERON);
    assertEquals(0, run.code(), run.err());
    assertEquals("", run.err());
    assertTrue(run.out().contains("Drills and speeds for carbon and epoxy"), run.out());
    assertFalse(run.out().contains("DO NOT DRILL"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron", "bittern", "dunlin", "avocet"})
  void demoShapesHaveASheetTheStepsAndAForm(String name) throws IOException {
    Run run = drill("shapes/" + name + ".yaml");
    assertEquals(0, run.code(), run.err());
    assertEquals(
        List.of(name + "-drill-A4.pdf", name + "-drill.csv", name + "-measured.yaml"), files());
    assertEquals(3, run.err().lines().filter(line -> line.startsWith("Written: ")).count());
    assertTrue(pages(name + "-drill-A4.pdf") <= 11);
  }

  /** A machine finds its own centres: no page tells to mark or file them by hand. */
  @Test
  void noPageOfWhatAMachineDrillsTellsToMarkByIt() throws IOException {
    Run run = drill(HERON, "--set", "making.position=machine");
    assertEquals(0, run.code(), run.err());
    String sheet = text("heron-drill-A4.pdf");
    assertTrue(sheet.contains("neither mark nor drill by it"), sheet);
    assertFalse(sheet.contains("prick"), sheet);
    assertFalse(sheet.contains("over with a round file"), sheet);
  }

  @Test
  void aSlotIsToldAsOneOnScreenAndSheet() throws IOException {
    Path file =
        shape(
            "  - {places: [[0, 90], [0, -90]], diameter: 3.2, slot: {length: 7, turn: 0}}\n"
                + "  - {at: [60, 0], diameter: 3.2}\n",
            "glass-epoxy-sheet");
    Run run = drill(file.toString());
    assertEquals(0, run.code(), run.err());
    String screen = run.out().replaceAll("\\s+", " ");
    assertTrue(screen.contains("2 holes (slot 3.2 \u00d7 7 mm) and 1 hole of 3.2 mm."), screen);
    assertTrue(screen.contains("1. Holes D1, D2, slot 3.2 \u00d7 7 Good from"), screen);
    assertTrue(screen.contains("2. Hole D3, \u00d83.2 Good from"), screen);
    assertEquals(
        List.of("slot 3.2 \u00d7 7", "slot 3.2 \u00d7 7", "\u00d83.2"),
        run.out()
            .lines()
            .filter(line -> line.matches("D\\d +hole .*"))
            .map(line -> line.replaceAll(".*0 +(?=[^ 0-9])", "").strip())
            .toList());
    String sheet = text("snipe-drill-A4.pdf");
    assertTrue(sheet.contains("1. Holes D1, D2, slot 3.2 \u00d7 7"), sheet);
    assertFalse(sheet.contains("D1  \u00d8"), sheet);
    String steps = Files.readString(in("snipe-drill.csv"));
    assertTrue(steps.startsWith("group,holes,role,hole_mm,length_mm,"), steps);
    assertTrue(steps.contains("1,D1 D2,hole,3.200,7.000,"), steps);
    assertTrue(steps.contains("2,D3,hole,3.200,3.200,"), steps);
  }

  @Test
  void theSheetSaysWhatTheScreenSays() throws IOException {
    JsonNode order =
        new ObjectMapper().readTree(drill(HERON, "--format", "json").out()).get("order");
    String sheet = text("heron-drill-A4.pdf");
    List<String> csv = Files.readAllLines(in("heron-drill.csv"));
    assertEquals("1. Hub bolt holes H1, H4, H2, H3, H5, H6, \u00d85", found(sheet, "1. Hub"));
    int rows = 0;
    for (JsonNode group : order.get("groups")) {
      for (JsonNode step : group.get("steps")) {
        String row = csv.get(++rows);
        assertTrue(row.contains("," + step.get("stage").asText() + ","), row);
        assertTrue(sheet.contains(step.get("words").asText()), step.toString());
        String setting = step.at("/turning/setting").asText();
        assertTrue(row.contains("," + setting + ","), row);
      }
    }
    assertEquals(rows + 1, csv.size());
    for (JsonNode reading : order.get("readings")) {
      String row =
          String.join(
              " ",
              reading.get("number").asText(),
              reading.get("from").asText(),
              reading.get("to").asText(),
              "outside");
      assertTrue(sheet.contains(row), row);
    }
    assertTrue(sheet.contains("THROUGH THE HUB"));
    assertTrue(sheet.contains("P100 or FFP3"));
    assertTrue(sheet.contains("a qualified person have the last word"));
  }

  private static String found(String text, String start) {
    int at = text.indexOf(start);
    return text.substring(at, text.indexOf(" Good from", at));
  }

  /** Rows of the form stand in the order of the sheet's page of readings. */
  @Test
  void rowsOfTheFormStandInTheOrderOfTheSheet() throws IOException {
    drill(HERON);
    String sheet = text("heron-drill-A4.pdf");
    int at = sheet.indexOf("Readings of the finished hub pattern");
    int rows = 0;
    for (String line : Files.readAllLines(in("heron-measured.yaml"))) {
      if (line.matches(".*# [0-9]+: .*")) {
        String number = line.replaceAll(".*# ([0-9]+): .*", "$1");
        String pair =
            line.contains("from")
                ? line.replaceAll(".*from: (\\w+), to: (\\w+),.*", "$1 $2 outside")
                : line.replaceAll(" *(\\w+):.*", "$1 diameter");
        int next = sheet.indexOf(" " + number + " " + pair, at);
        assertTrue(next >= at, number + " " + pair);
        at = next;
        rows++;
      }
    }
    assertEquals(21, rows);
  }

  @Test
  void aFormWithReadingsInItIsNeverWrittenOver() throws IOException {
    drill(HERON);
    Path form = in("heron-measured.yaml");
    Run again = drill(HERON);
    assertEquals(3, again.err().lines().filter(line -> line.startsWith("Written: ")).count());
    String typed = Files.readString(form).replaceFirst("H1:  ", "H1: 5.02");
    Files.writeString(form, typed);
    Run kept = drill(HERON);
    assertEquals(0, kept.code());
    assertEquals(typed, Files.readString(form));
    assertTrue(kept.err().contains("is there already and was left as it is"), kept.err());
    assertEquals(2, kept.err().lines().filter(line -> line.startsWith("Written: ")).count());
  }

  @Test
  void theSameShapeGivesTheSameBytes() throws IOException {
    drill(HERON);
    byte[] pdf = Files.readAllBytes(in("heron-drill-A4.pdf"));
    byte[] csv = Files.readAllBytes(in("heron-drill.csv"));
    drill(HERON);
    assertArrayEquals(pdf, Files.readAllBytes(in("heron-drill-A4.pdf")));
    assertArrayEquals(csv, Files.readAllBytes(in("heron-drill.csv")));
  }

  @Test
  void paperAndFaceAreAsAskedFor() throws IOException {
    Run run = drill(HERON, "--paper", "A3", "--face", "back", "--bars", "99.6x100.2");
    assertEquals(0, run.code(), run.err());
    String sheet = text("heron-drill-A3-back.pdf");
    assertTrue(sheet.contains("BACK face, hub side: MIRRORED"));
    assertTrue(sheet.contains("corrected for bars 99.6x100.2"));
  }

  @Test
  void aPlateThatFailsItsReviewHasASheetThatSaysSoAndExitCodeOne() throws IOException {
    Run run = drill(HERON, "--set", "windows[0].derived.hub-disc=76");
    assertEquals(1, run.code(), run.err());
    assertTrue(text("heron-drill-A4.pdf").contains("DO NOT DRILL YET: the plate FAILS"));
    assertEquals(
        "DO NOT DRILL YET: the plate FAILS 14 checks of its review.",
        run.out().lines().skip(1).findFirst().orElseThrow());
    String words = run.out().replaceAll("\\s+", " ");
    assertTrue(words.contains("hub holes stay where the hub has them"), words);
  }

  @Test
  void aPlateThatDoesNotMeetItsHubSaysSoAtTheHead() throws IOException {
    Run run = drill("shapes/bittern.yaml", "--set", "bolt-circles[0].diameter=4.5");
    assertEquals(1, run.code(), run.err());
    assertTrue(run.out().contains("DO NOT DRILL YET: as drawn, not all screws"), run.out());
  }

  @Test
  void aThousandHolesAreSetOnFewPages() throws IOException {
    StringBuilder holes = new StringBuilder();
    for (int i = 0; i < 25; i++) {
      int y = -190 + 15 * i;
      holes.append("  - {line: {from: [-195, " + y + "], to: [195, " + y + "], count: 40},");
      holes.append(" diameter: 3, role: grip}\n");
    }
    Run run = drill(shape(holes.toString(), "carbon-laminate").toString());
    assertTrue(run.code() <= 1, run.err());
    assertEquals(List.of("snipe-drill-A4.pdf", "snipe-drill.csv", "snipe.yaml"), files());
    assertTrue(pages("snipe-drill-A4.pdf") <= 30, pages("snipe-drill-A4.pdf") + " pages");
    assertTrue(text("snipe-drill-A4.pdf").contains("G1, G2, G3 to G1000 (1000 holes)"));
  }

  @Test
  void manySizesAreCutShortAndTheSheetSaysSo() throws IOException {
    StringBuilder holes = new StringBuilder();
    for (int i = 0; i < 60; i++) {
      int x = -190 + 40 * (i % 10);
      int y = -180 + 60 * (i / 10);
      holes.append("  - {at: [" + x + ", " + y + "], diameter: " + (3 + i / 10.0) + "}\n");
    }
    Run run = drill(shape(holes.toString(), "birch-plywood").toString());
    assertTrue(run.code() <= 1, run.err());
    String told = "36 more holes are of further sizes";
    assertTrue(run.out().replaceAll("\\s+", " ").contains(told));
    assertTrue(text("snipe-drill-A4.pdf").contains(told));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "carbon-laminate",
        "glass-laminate",
        "aluminium-6061-t6",
        "birch-plywood",
        "acrylic"
      })
  void everyMaterialHasASheetWithItsOwnCautions(String stock) throws IOException {
    String holes =
        "  - {arc: {centre: [0, 0], radius: 35, from: 0, to: 300, count: 6}, diameter: 5.35,"
            + " role: bolt}\n  - {at: [0, 120], diameter: 80}\n  - {at: [100, 0], diameter: 25}\n";
    Run run = drill(shape(holes, stock).toString());
    assertTrue(run.code() <= 1, run.err());
    String sheet = text("snipe-drill-A4.pdf");
    assertTrue(sheet.contains("No standard drill makes 5.35 mm."));
    assertTrue(sheet.contains("Where the figures come from"));
    assertTrue(sheet.contains("Clamp the work"));
  }

  @Test
  void wrongOptionsAreToldAndNothingIsWritten() throws IOException {
    Run run = drill(HERON, "--paper", "A9", "--overlap", "3");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("--paper") && run.err().contains("--overlap"), run.err());
    assertEquals(List.of(), files());
    assertEquals(2, drill(HERON, "--method", "traced").code());
    assertEquals(2, Run.of("drill", HERON, "--format", "yaml").code());
  }

  @Test
  void aFolderInTheWayIsExitCodeThree() throws IOException {
    Files.createDirectories(in("heron-drill.csv"));
    Run run = drill(HERON);
    assertEquals(3, run.code());
    assertEquals(List.of(), files());
  }

  /**
   * ISO 10642, M5: sharp diameter of the head 11.2 mm, 90 degrees; so the cone meets a hole of 5.5
   * mm at (11.2 - 5.5) / 2 = 2.85 mm.
   */
  @Test
  void countersunkHeadsHaveTheirStepAfterTheEdges() {
    String[] plate = {
      HERON,
      "--set",
      "bolt-circles[0].diameter=5.5",
      "--set",
      "joints=[{holes: [H1, H3], screw: {head:"
          + " countersunk}, into: {tapped: aluminium, depth: 14}}]"
    };
    String out = drill(plate).out().replaceAll("\\s+", " ");
    String seat =
        "countersink 11.2 355 90\u00b0 countersink. H1, H3 alone: For the countersunk heads, on"
            + " the driver's face alone: 11.2 mm across, 2.85 mm deep down to the hole, no deeper.";
    assertTrue(out.contains(seat), out);
    assertTrue(out.indexOf("only to break the edge") < out.indexOf(seat), out);
    assertEquals(1, out.split("For the countersunk heads", -1).length - 1, out);
  }

  @Test
  void aCountersinkInAGripScaleIsNoStepOfThePlate() {
    String out =
        drill(
                HERON,
                "--set",
                "joints=[{holes: grip, screw: {head: countersunk}, into: {nut: plain}}]")
            .out();
    assertTrue(out.contains("countersink the grip scale 90 degrees"), out);
    assertFalse(out.contains("For the countersunk heads"), out);
  }
}
