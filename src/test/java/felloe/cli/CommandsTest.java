package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command from call to answer, as a maker or a script meets it. */
class CommandsTest {

  private static final String HERON = "shapes/heron.yaml";
  private static final String BITTERN = "shapes/bittern.yaml";

  /** Takes so much off the hub disc that its screws stand at the windows' edge. */
  private static final String FAILING = "windows[0].derived.hub-disc=76";

  @TempDir Path folder;

  private static JsonNode json(String text) throws IOException {
    return new ObjectMapper().readTree(text);
  }

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .filter(file -> !Run.isList(file))
          .map(p -> folder.relativize(p).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  private Run make(String... more) {
    List<String> args = new ArrayList<>(List.of("make", "--out", folder.toString()));
    args.addAll(List.of(more));
    return Run.of(args.toArray(String[]::new));
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "make", "template", "cut", "drill"})
  void everyCommandThatTellsWhatFailsNamesAFigureThatWasTried(String command) {
    List<String> args = new ArrayList<>(List.of(command, BITTERN, "--set", "bore=60"));
    if (command.equals("cut")) {
      args.addAll(List.of("--process", "router"));
    }
    if (!command.equals("check")) {
      args.addAll(List.of("--out", folder.toString()));
    }
    Run run = Run.of(args.toArray(String[]::new));
    assertTrue(run.out().replaceAll("\\s+", " ").contains("bore: 40.5 (now 60)"), run.out());
  }

  /** Two papers of one revision stand side by side; an older revision is never left unnamed. */
  @Test
  void aTemplateOfAnOlderRevisionBesideANewOneIsNamed() throws IOException {
    make(HERON);
    String[] other = {"template", HERON, "--paper", "A3", "--out", folder.toString()};
    Run same = Run.of(other);
    assertEquals(0, same.code(), same.err());
    assertTrue(Files.exists(folder.resolve("heron/heron-template-A4.pdf")));
    assertFalse(same.err().contains("OLDER"), same.err());
    String[] changed = Arrays.copyOf(other, other.length + 2);
    changed[other.length] = "--set";
    changed[other.length + 1] = "bore=37";
    Run run = Run.of(changed);
    assertTrue(run.err().contains("OLDER, made before the shape was changed: "), run.err());
    assertTrue(run.err().contains("heron-template-A4.pdf"), run.err());
    assertFalse(run.err().contains("heron-template-A3.pdf. Make"), run.err());
  }

  // make

  @Test
  void makeWritesTheWholeKitAndTellsWhatIsInIt() throws IOException {
    Run run = make(HERON, BITTERN);
    assertEquals(0, run.code(), run.err());
    assertEquals(
        List.of(
            "bittern/bittern-bill.csv",
            "bittern/bittern-card-A4.pdf",
            "bittern/bittern-grip-gr1-back.stl",
            "bittern/bittern-grip-gr1-front.stl",
            "bittern/bittern-grip-gr2-back.stl",
            "bittern/bittern-grip-gr2-front.stl",
            "bittern/bittern-grips.3mf",
            "bittern/bittern-holes.csv",
            "bittern/bittern-plot.pdf",
            "bittern/bittern-report.json",
            "bittern/bittern-template-A4.pdf",
            "bittern/bittern.dxf",
            "bittern/bittern.nc",
            "bittern/bittern.png",
            "bittern/bittern.svg",
            "heron/heron-bill.csv",
            "heron/heron-card-A4.pdf",
            "heron/heron-grip-gr1-template-A4.pdf",
            "heron/heron-grip-gr1.dxf",
            "heron/heron-grip-gr1.nc",
            "heron/heron-holes.csv",
            "heron/heron-plot.pdf",
            "heron/heron-report.json",
            "heron/heron-template-A4.pdf",
            "heron/heron.dxf",
            "heron/heron.nc",
            "heron/heron.png",
            "heron/heron.svg"),
        files());
    for (String file : files()) {
      assertTrue(run.err().contains("Written: " + folder.resolve(file)), file);
    }
    assertTrue(run.out().contains("Measure both check bars, 100 mm each."), run.out());
    assertTrue(run.out().contains("Not for public roads"), run.out());
  }

  @Test
  void theReportTellsEveryOtherFileByItsDigest() throws Exception {
    assertEquals(0, make(HERON).code());
    JsonNode report = json(Files.readString(folder.resolve("heron/heron-report.json")));
    assertEquals(12, report.get("files").size());
    for (JsonNode file : report.get("files")) {
      byte[] bytes = Files.readAllBytes(folder.resolve("heron/" + file.get("name").asText()));
      assertEquals(bytes.length, file.get("bytes").asInt());
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      assertEquals(HexFormat.of().formatHex(digest), file.get("sha256").asText());
    }
    assertEquals("caution", report.get("review").get("verdict").asText());
    assertEquals("heron.yaml", report.at("/review/findings/0/place/file").asText());
    assertEquals(6, report.at("/hub_fit/screws").size());
    assertEquals(17, report.at("/shape/holes").size());
    assertEquals("A4", report.at("/template/paper").asText());
  }

  @Test
  void makeAnswersInJson() throws IOException {
    Run run = make(HERON, "--paper", "letter", "--format", "json");
    assertEquals(0, run.code(), run.err());
    JsonNode kit = json(run.out()).get("kits").get(0);
    assertEquals("heron", kit.get("name").asText());
    assertEquals("Letter", kit.at("/template/paper").asText());
    assertEquals(13, kit.get("files").size());
    assertTrue(Files.isRegularFile(folder.resolve("heron/heron-template-Letter.pdf")));
  }

  @Test
  void aPlateThatFailsGetsItsKitAndExitCode1() throws IOException {
    Run run = make(HERON, "--set", FAILING);
    assertEquals(1, run.code(), run.err());
    assertEquals(9, files().size());
    String verdict = run.out().lines().skip(1).findFirst().orElseThrow();
    assertTrue(verdict.startsWith("FAILS 14 checks of its review: its kit is there"), verdict);
    assertTrue(run.out().contains("held back while the plate fails"), run.out());
    JsonNode report = json(Files.readString(folder.resolve("heron/heron-report.json")));
    assertEquals("fail", report.get("review").get("verdict").asText());
  }

  @Test
  void makeSaysWhatIsWrongWithEveryShapeAndWritesNothing() throws IOException {
    Path bad = Files.writeString(folder.resolve("bad.yaml"), "felloe: 1\noutlin: {}\n");
    Path out = folder.resolve("out");
    Run run =
        Run.of(
            "make",
            HERON,
            bad.toString(),
            "missing.yaml",
            "--out",
            out.toString(),
            "--paper",
            "A9",
            "--margin",
            "NaN");
    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().contains("bad.yaml:2:1 outlin: is not a known key"), run.err());
    assertTrue(run.err().contains("missing.yaml: does not exist"), run.err());
    assertTrue(run.err().contains("--paper: 'A9' is not a known paper"), run.err());
    assertTrue(run.err().contains("--margin: 'NaN' must be a length"), run.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void twoShapesOfOneNameAreRefusedUpFront() throws IOException {
    Path twin = folder.resolve("Heron.yaml");
    Files.copy(Path.of(HERON), twin);
    Run run = make(HERON, twin.toString());
    assertEquals(2, run.code());
    assertTrue(run.err().contains("would have the same kit folder"), run.err());
    assertEquals(List.of("Heron.yaml"), files());
  }

  @Test
  void oneShapeNamedTwiceIsToldHowToAskForCopies() {
    Run make = make(HERON, HERON);
    assertEquals(2, make.code());
    assertTrue(make.err().contains("heron.yaml: is named twice; name it once"), make.err());
    Run cut = Run.of("cut", HERON, HERON, "--process", "router", "--nest");
    assertEquals(2, cut.code());
    String cure = "is named twice; name it once; --nest --copies 2 cuts two of it";
    assertTrue(cut.err().contains(cure), cut.err());
  }

  @Test
  void setChangesAValueAndTheRevision() throws IOException {
    JsonNode plain = json(Run.of("show", HERON, "--format", "json").out());
    JsonNode other =
        json(
            Run.of(
                    "show",
                    HERON,
                    "--format",
                    "json",
                    "--set",
                    "outline.round.diameter=280",
                    "--set=stock.thickness=6 mm")
                .out());
    assertEquals(6, other.at("/stock/thickness").asDouble());
    assertFalse(plain.get("revision").equals(other.get("revision")));
  }

  @Test
  void aWrongSetIsAnsweredLikeAWrongFile() {
    Run run = Run.of("show", HERON, "--set", "outline.round.diamter=280");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("did you mean 'diameter'"), run.err());
    assertTrue(run.err().startsWith("--set outline.round.diamter"), run.err());
  }

  @Test
  void progressIsShownOnATerminalOnly() {
    String out = folder.toString();
    Run pipe = make(HERON, BITTERN);
    assertFalse(pipe.err().contains("\r"), pipe.err());
    Run terminal = Run.of(Path.of(""), true, "make", HERON, BITTERN, "--out", out);
    assertTrue(terminal.err().contains("\r\u001b[Kheron, 1 of 2"), terminal.err());
    assertTrue(terminal.err().contains("bittern, 2 of 2\r\u001b[K"), terminal.err());
    assertEquals(pipe.out(), terminal.out());
  }

  // check

  @Test
  void checkListsFindingsWithTheirPlaces() throws IOException {
    Run run = Run.of("check", HERON);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("hub-hole-series"), run.out());
    assertTrue(run.out().contains("heron.yaml:"), run.out());
    assertTrue(run.out().contains("Hub 6x70-m5"), run.out());
    assertTrue(run.out().contains("not for public roads"), run.out());
    assertEquals("", run.err());
    String passed =
        json(Run.of("check", HERON, "--format", "json").out()).at("/counts/pass").asText();
    assertTrue(run.out().contains(" " + passed + " passed."), run.out());
    long lines = run.out().lines().filter(line -> line.startsWith("pass")).count();
    Run all = Run.of("check", HERON, "--all", "--sources");
    assertTrue(all.out().lines().filter(line -> line.startsWith("pass")).count() > lines);
    assertTrue(all.out().contains("Where limits come from"), all.out());
  }

  @Test
  void checkAgainstAHubThatDoesNotFitFails() throws IOException {
    Run run = Run.of("check", HERON, "--hub", "6x74-m5");
    assertEquals(1, run.code());
    assertTrue(run.out().lines().anyMatch(line -> line.matches("FAIL +hub-fit .*")), run.out());
    assertTrue(run.out().contains("pitch circle diameter of plate is 70 mm"), run.out());
    JsonNode json = json(Run.of("check", HERON, "--hub", "6x74-m5", "--format", "json").out());
    assertEquals("fail", json.get("verdict").asText());
    assertFalse(json.at("/hub_fit/enters").asBoolean());
    // Screws on 74 mm stand 2 mm off holes on 70 mm; 5 mm holes give M5 no room.
    assertEquals(-2, json.at("/hub_fit/clearance").asDouble(), 1e-6);
  }

  @Test
  void checkNamesTheNearestHub() {
    Run run = Run.of("check", HERON, "--hub", "6x70m5");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("did you mean '6x70-m5'?"), run.err());
  }

  @Test
  void aHubFileIsFoundBesideTheShapeFileThatNamesIt() throws IOException {
    Path shapes = Files.createDirectory(folder.resolve("shapes"));
    Files.writeString(
        shapes.resolve("my-hub.yaml"),
        "felloe-hub: 1\nname: 6x70-m5\ntitle: Mine\ncount: 6\npcd: 70\nthread: M5\n"
            + "position-tolerance: 0.1\nbasis: measured\n");
    String text = Files.readString(Path.of(HERON)).replace("hub: 6x70-m5", "hub: my-hub.yaml");
    Path shape = Files.writeString(shapes.resolve("heron.yaml"), text);
    Run run = Run.of("check", shape.toString());
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("Hub 6x70-m5: Mine"), run.out());
  }

  @Test
  void colourStressesWordsThatSayTheSameWithoutIt() {
    Run plain = Run.of("check", HERON);
    Run colour = Run.of(Path.of(""), true, "check", HERON);
    assertFalse(plain.out().contains("\u001b"));
    assertTrue(colour.out().contains("\u001b[33mcaution"), colour.out());
    assertEquals(plain.out(), colour.out().replaceAll("\u001b\\[[0-9;]*m", ""));
  }

  // show, drill, template

  @Test
  void showTellsKeyFigures() {
    Run run = Run.of("show", HERON);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*width over all +290\\.00 mm\n.*"), run.out());
    assertEquals("", run.err());
  }

  @Test
  void showWritesAPictureWhereAsked() throws IOException {
    Run run = Run.of("show", HERON, "--out", folder.toString());
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of("heron/heron.png"), files());
    assertEquals("Written: " + folder.resolve("heron/heron.png") + "\n", run.err());
  }

  @Test
  void showMarksWhatClashesOfAPlateThatCannotBeOne() throws IOException {
    Run told = Run.of("show", HERON, "--set", "bore=66");
    assertEquals(2, told.code());
    assertTrue(told.err().startsWith("To see what clashes, add --out DIR.\n"), told.err());
    assertTrue(told.err().contains("reaches 0.5 mm into hub bolt H1"), told.err());
    Run shown = Run.of("show", HERON, "--set", "bore=66", "--out", folder.toString());
    assertEquals(2, shown.code());
    assertEquals(List.of("heron/heron.png"), files());
    assertTrue(shown.err().contains("reaches 0.5 mm into hub bolt H1"), shown.err());
    Run other = Run.of("show", HERON, "--set", "stock.thickness=-1");
    assertFalse(other.err().contains("To see"), other.err());
  }

  @Test
  void drillTellsTheSameHolesInEveryFormat() throws IOException {
    Run text = Run.of("drill", HERON);
    Run csv = Run.of("drill", HERON, "--format", "csv");
    JsonNode json = json(Run.of("drill", HERON, "--format", "json").out());
    assertEquals(0, text.code());
    List<String> rows = csv.out().lines().skip(1).toList();
    assertEquals(rows.size(), json.get("holes").size());
    for (int i = 0; i < rows.size(); i++) {
      String[] row = rows.get(i).split(",");
      JsonNode hole = json.get("holes").get(i);
      assertEquals(row[0], hole.get("label").asText());
      assertEquals(Double.parseDouble(row[2]), hole.get("at").get(0).asDouble(), 1e-4);
      assertEquals(Double.parseDouble(row[5]), hole.get("angle").asDouble(), 1e-4);
      assertTrue(text.out().contains(row[0] + " "), row[0]);
    }
    assertTrue(csv.out().endsWith("\r\n"));
    String unwrapped = text.out().replaceAll("\\s+", " ");
    assertTrue(unwrapped.contains("eye protection"), text.out());
  }

  @Test
  void templateWritesIntoTheShapesFolderAndTellsItsPages() throws IOException {
    Run run = Run.of("template", HERON, "--out", folder.toString(), "--paper", "A3");
    assertEquals(0, run.code(), run.err());
    assertEquals(
        List.of("heron/heron-plot.pdf", "heron/heron-template-A3.pdf", "heron/heron.svg"), files());
    assertTrue(run.out().contains("Template: 2 pages A3, and one page at full size."), run.out());
    assertFalse(run.out().contains("Fewer pages"), run.out());
  }

  /** Each file of a kit is as its report says. */
  private void assertKitIsAsItsReportSays(String name) throws Exception {
    JsonNode report = json(Files.readString(folder.resolve(name + "/" + name + "-report.json")));
    assertFalse(report.get("files").isEmpty());
    for (JsonNode file : report.get("files")) {
      byte[] bytes = Files.readAllBytes(folder.resolve(name + "/" + file.get("name").asText()));
      byte[] digest = java.security.MessageDigest.getInstance("SHA-256").digest(bytes);
      assertEquals(
          file.get("sha256").asText(), java.util.HexFormat.of().formatHex(digest), file.toString());
    }
  }

  @Test
  void sheetsForTheOtherFaceStandBesideTheKitAndReplaceNoneOfIt() throws Exception {
    String out = folder.toString();
    assertEquals(0, make(HERON).code());
    List<String> kit = files();
    assertEquals(0, Run.of("template", HERON, "--out", out, "--face", "back").code());
    List<String> more = new ArrayList<>(kit);
    more.addAll(
        List.of(
            "heron/heron-back.svg",
            "heron/heron-plot-back.pdf",
            "heron/heron-template-A4-back.pdf"));
    assertEquals(more.stream().sorted().toList(), files());
    assertKitIsAsItsReportSays("heron");
    // The face that the shape file says is the kit's own, named or not.
    assertEquals(0, Run.of("template", HERON, "--out", out, "--face", "front").code());
    assertEquals(more.stream().sorted().toList(), files());
    assertKitIsAsItsReportSays("heron");
    // Sheets of one face that are made anew take none of the other's with them.
    for (String face : List.of("front", "back")) {
      Run run = Run.of("template", HERON, "--out", out, "--face", face, "--paper", "A3");
      assertEquals(0, run.code(), run.err());
    }
    assertTrue(files().contains("heron/heron-template-A3-back.pdf"), files().toString());
    assertTrue(files().contains("heron/heron-template-A3.pdf"), files().toString());
    assertTrue(files().contains("heron/heron-plot.pdf"), files().toString());
  }

  @Test
  void drillingSheetsOfBothFacesStandSideBySide() throws Exception {
    String out = folder.toString();
    assertEquals(0, make(HERON).code());
    assertEquals(0, Run.of("drill", HERON, "--out", out).code());
    byte[] front = Files.readAllBytes(folder.resolve("heron/heron-drill-A4.pdf"));
    assertEquals(0, Run.of("drill", HERON, "--out", out, "--face", "back").code());
    assertArrayEquals(front, Files.readAllBytes(folder.resolve("heron/heron-drill-A4.pdf")));
    assertTrue(files().contains("heron/heron-drill-A4-back.pdf"), files().toString());
    assertKitIsAsItsReportSays("heron");
  }

  @Test
  void aShapeForTheBackHasFrontSheetsUnderANameOfTheirOwn() throws Exception {
    String[] back = {HERON, "--set", "stock.template_face=back", "--out", folder.toString()};
    assertEquals(0, make("--set", "stock.template_face=back", HERON).code());
    List<String> args = new ArrayList<>(List.of("template"));
    args.addAll(List.of(back));
    args.addAll(List.of("--face", "front"));
    assertEquals(0, Run.of(args.toArray(String[]::new)).code());
    assertTrue(files().contains("heron/heron-plot-front.pdf"), files().toString());
    assertKitIsAsItsReportSays("heron");
  }

  @Test
  void thePrintCheckSheetNeedsNoShape() throws IOException {
    Run run = Run.of("template", "--print-check", "--out", folder.toString());
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of("print-check-A4.pdf"), files());
    Run none = Run.of("template", "--out", folder.toString());
    assertEquals(2, none.code());
    assertTrue(none.err().contains("at least one shape file"), none.err());
  }

  @Test
  void barsCorrectTheTiledPagesAndNotThePlot() throws IOException {
    assertEquals(0, make(HERON).code());
    byte[] tiled = Files.readAllBytes(folder.resolve("heron/heron-template-A4.pdf"));
    byte[] plot = Files.readAllBytes(folder.resolve("heron/heron-plot.pdf"));
    assertEquals(0, make(HERON, "--bars", "99.6x100.2").code());
    assertFalse(
        java.util.Arrays.equals(
            tiled, Files.readAllBytes(folder.resolve("heron/heron-template-A4.pdf"))));
    assertTrue(
        java.util.Arrays.equals(plot, Files.readAllBytes(folder.resolve("heron/heron-plot.pdf"))));
  }

  @Test
  void theDrawingKeepsTheFinishLineWhenThePageIsTraced() throws IOException {
    assertEquals(0, make(HERON).code());
    byte[] svg = Files.readAllBytes(folder.resolve("heron/heron.svg"));
    byte[] tiled = Files.readAllBytes(folder.resolve("heron/heron-template-A4.pdf"));
    assertEquals(0, make(HERON, "--method", "traced", "--pen", "0.7 mm").code());
    assertTrue(java.util.Arrays.equals(svg, Files.readAllBytes(folder.resolve("heron/heron.svg"))));
    assertFalse(
        java.util.Arrays.equals(
            tiled, Files.readAllBytes(folder.resolve("heron/heron-template-A4.pdf"))));
  }

  // hub, new, completion, help

  @Test
  void hubsAreListedAndShownWithTheirBasis() throws IOException {
    Run list = Run.of("hub", "list");
    assertEquals(0, list.code(), list.err());
    JsonNode json = json(Run.of("hub", "list", "--format", "json").out());
    assertEquals(9, json.get("hubs").size());
    for (JsonNode hub : json.get("hubs")) {
      assertTrue(list.out().contains("\n" + hub.get("name").asText() + " "), list.out());
      Run show = Run.of("hub", "show", hub.get("name").asText());
      assertEquals(0, show.code(), show.err());
      assertTrue(show.out().contains("pitch circle"), show.out());
      for (JsonNode figure : hub.get("figures")) {
        // A column may break the sentence, but loses no word of it.
        for (String word : figure.get("basis").asText().split(" ")) {
          assertTrue(show.out().contains(word), word + "\n" + show.out());
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("felloe.service.NewShape#families")
  void aNewShapeMakesAGoodWheelAsItStands(String family) throws IOException {
    Path file = folder.resolve("curlew.yaml");
    Run start = Run.of("new", family, file.toString());
    assertEquals(0, start.code(), start.err());
    assertEquals(file + "\n", start.out());
    JsonNode check = json(Run.of("check", file.toString(), "--format", "json").out());
    // Nobody can know how deep the hub's threads are, and screws through wood or plastic hold their
    // clamp badly: these alone ask for a look.
    assertEquals(0, check.at("/counts/fail").asInt(), check.toPrettyString());
    for (JsonNode finding : check.get("findings")) {
      boolean screws =
          List.of("thread-strip", "clamp-force", "slip").contains(finding.get("rule").asText());
      assertTrue(screws || finding.get("verdict").asText().equals("pass"), finding.toString());
    }
    assertTrue(Files.readString(file).startsWith("#"), "it is explained");
  }

  @Test
  void newNeverReplacesAFileUnlessToldTo() throws IOException {
    Path file = Files.writeString(folder.resolve("curlew.yaml"), "mine");
    Run refused = Run.of("new", "round", file.toString());
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("is there already"), refused.err());
    assertEquals("mine", Files.readString(file));
    assertEquals(0, Run.of("new", "round", file.toString(), "--force").code());
    assertTrue(Files.readString(file).contains("felloe: 1"));
    Run unknown = Run.of("new", "pionts", folder.resolve("x.yaml").toString());
    assertEquals(2, unknown.code());
    assertTrue(unknown.err().contains("did you mean 'points'?"), unknown.err());
    Run nowhere = Run.of("new", "round", folder.resolve("no/such/folder.yaml").toString());
    assertEquals(3, nowhere.code());
    assertEquals(List.of("curlew.yaml"), files());
  }

  @Test
  void completionKnowsCommandsAndOptions() {
    Run run = Run.of("completion");
    assertEquals(0, run.code());
    assertTrue(run.out().contains("complete -F"), "a script for bash");
    assertTrue(run.out().contains("--paper") && run.out().contains("template"));
  }

  @Test
  void helpShowsCommandsInGroupsAndEveryCommandHasExamples() {
    Run top = Run.of("help");
    assertEquals(0, top.code());
    assertEquals(top, Run.of("--help"));
    for (Commands.Group group : Commands.GROUPS) {
      assertTrue(top.out().contains("\n" + group.heading() + "\n"), group.heading());
      for (Commands.Entry entry : group.entries()) {
        assertTrue(top.out().contains("\n  " + entry.name() + " "), entry.name());
        Run help = Run.of("help", entry.name());
        assertEquals(0, help.code(), help.err());
        assertEquals(help, Run.of(entry.name(), "--help"));
        if (!entry.name().equals("help")) {
          assertTrue(help.out().contains("\nExamples\n  felloe "), help.out());
        }
        help.out().lines().forEach(line -> assertTrue(line.length() <= 100, line));
      }
    }
    assertTrue(Run.of("help", "make").out().contains("\nMarking out\n"));
    assertEquals(Run.of("help", "hub", "show"), Run.of("hub", "show", "--help"));
    assertEquals(2, Run.of("help", "mak").code());
  }

  @Test
  void theVersionIsTold() {
    assertEquals(Run.of("--version"), Run.of("-V"));
    assertTrue(Run.of("--version").out().startsWith("felloe "));
  }

  @Test
  void whatIsNoTerminalGetsDataInUtf8() throws IOException {
    String text =
        Files.readString(Path.of(HERON))
            .replaceFirst("title: .*", "title: \"Reiher \u00e4\u6c34\"");
    Path shape = Files.writeString(folder.resolve("heron.yaml"), text, StandardCharsets.UTF_8);
    JsonNode json = json(Run.of("show", shape.toString(), "--format", "json").out());
    assertEquals("Reiher \u00e4\u6c34", json.get("title").asText());
  }
}
