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
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cut files from call to answer. */
class CutCommandTest {

  private static final String HERON = "shapes/heron.yaml";
  private static final String AVOCET = "shapes/avocet.yaml";
  private static final String FAILING = "windows[0].derived.hub-disc=76";

  @TempDir Path folder;

  private Run cut(Path out, String... args) {
    List<String> all = new ArrayList<>(List.of("cut", "--out", out.toString()));
    all.addAll(List.of(args));
    return Run.of(all.toArray(String[]::new));
  }

  private Run cut(String... args) {
    return cut(folder, args);
  }

  private JsonNode job(String... args) throws IOException {
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--format", "json"));
    Run run = cut(all.toArray(String[]::new));
    assertEquals(0, run.code(), run.err());
    return new ObjectMapper().readTree(run.out()).get("jobs").get(0);
  }

  private static Set<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> !Run.isList(file))
          .map(file -> file.getFileName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "heron,router",
    "bittern,router",
    "avocet,router",
    "dunlin,router",
    "heron,laser",
    "bittern,laser",
    "avocet,laser",
    "dunlin,laser",
    "heron,waterjet",
    "bittern,waterjet",
    "avocet,waterjet",
    "dunlin,waterjet"
  })
  void theDemoShapesAreCutByEveryMachineAndProved(String shape, String process) throws IOException {
    List<String> args = new ArrayList<>(List.of("shapes/" + shape + ".yaml", "--process", process));
    if (process.equals("laser")) {
      args.add("--owner-consents");
    }
    JsonNode job = job(args.toArray(String[]::new));
    Set<String> files = new TreeSet<>();
    for (String ending : List.of("dxf", "svg", "png")) {
      files.add(shape + "-" + process + "." + ending);
    }
    if (process.equals("router")) {
      files.add(shape + "-router.nc");
    }
    assertEquals(files, names(folder.resolve(shape)));
    assertTrue(job.at("/proof/worst_gouge").asDouble() <= 0.01, job.toString());
    assertTrue(job.at("/proof/worst_remaining").asDouble() <= 0.01, job.toString());
    assertTrue(job.at("/proof/worst_arc").asDouble() <= 0.002, job.toString());
    // The shapes' inside corners are made for the cutters that they name.
    assertEquals(0, job.get("left_overs").size());
    assertFalse(job.get("cautions").isEmpty());
    assertEquals(process.equals("router"), job.at("/total/minutes").isNumber());
    double sum = 0;
    for (JsonNode step : job.get("steps")) {
      sum += step.get("cut").asDouble();
    }
    assertEquals(job.at("/total/cut").asDouble(), sum, 1e-3);
  }

  @ParameterizedTest
  @CsvSource({"heron", "bittern", "avocet", "dunlin"})
  void theDemoShapesAreSawnAlongARoughLine(String shape) throws IOException {
    JsonNode job = job("shapes/" + shape + ".yaml", "--process", "jigsaw");
    assertEquals(
        Set.of(shape + "-jigsaw.dxf", shape + "-jigsaw.svg", shape + "-jigsaw.png"),
        names(folder.resolve(shape)));
    assertTrue(job.get("proof").isNull());
    // Every window and the bore are started from somewhere.
    assertFalse(job.get("waste_holes").isEmpty());
  }

  @Test
  void theProgramHasNoLessThanFourDecimalsAndSaysWhatItIsFor() throws IOException {
    assertEquals(0, cut(HERON, "--process", "router").code());
    String program = Files.readString(folder.resolve("heron/heron-router.nc"));
    assertTrue(program.contains("Work zero: hub axis, upper face of the stock"), program);
    assertTrue(program.contains("Dry-run"), program);
    assertTrue(program.contains("respirator"), program);
    assertTrue(program.contains("G21") && program.contains("G90"), program);
    String numbered = Files.readString(folder.resolve("heron/heron-router.nc"));
    assertEquals(0, cut(HERON, "--process", "router", "--dialect", "numbered-lines").code());
    assertFalse(numbered.equals(Files.readString(folder.resolve("heron/heron-router.nc"))));
  }

  @Test
  void withoutCompensationTheFilesHoldTheFinishLine() throws IOException {
    Run run = cut(AVOCET, "--process", "laser", "--no-compensation");
    assertEquals(0, run.code(), run.err());
    assertEquals(
        Set.of("avocet-laser-finish-line.dxf", "avocet-laser-finish-line.svg"),
        names(folder.resolve("avocet")));
    assertTrue(run.out().replaceAll("\\s+", " ").contains("nothing was checked"), run.out());
  }

  @Test
  void whatAWideCutterLeavesIsListedAndDrawn() throws IOException {
    JsonNode job =
        job("shapes/bittern.yaml", "--process", "router", "--cutter", "8", "--drills", "5.5,4.3");
    // The display window has corners of 3 mm; a cutter of 4 mm radius leaves (4 - 3)(sqrt 2 - 1).
    assertEquals(4, job.get("left_overs").size());
    for (JsonNode left : job.get("left_overs")) {
      assertEquals("D", left.get("label").asText());
      assertEquals(Math.sqrt(2) - 1, left.get("reach").asDouble(), 1e-3);
    }
    Run run = cut("shapes/bittern.yaml", "--process", "router", "--cutter", "8");
    assertTrue(run.out().contains("but for 4 places left for the file"), run.out());
  }

  @Test
  void aPlateThatFailsItsReviewIsNotCut() throws IOException {
    Path out = folder.resolve("out");
    Run run = cut(out, HERON, "--process", "router", "--set", FAILING);
    assertEquals(1, run.code());
    assertTrue(run.out().contains("FAILS: nothing is written before heron passes"), run.out());
    assertTrue(run.out().contains("FAIL  edge-distance"), run.out());
    assertFalse(Files.exists(out));
    Run json = cut(out, HERON, "--process", "router", "--set", FAILING, "--format", "json");
    JsonNode answer = new ObjectMapper().readTree(json.out());
    assertTrue(answer.get("held_back").asBoolean());
    assertFalse(answer.at("/plates/0/fails").isEmpty());
    assertFalse(Files.exists(out));
  }

  @Test
  void aFailingKitHasPaperButNoFileForAMachine() throws IOException {
    Run run = Run.of("make", HERON, "--set", FAILING, "--out", folder.toString());
    assertEquals(1, run.code());
    Set<String> files = names(folder.resolve("heron"));
    assertFalse(files.contains("heron.dxf"));
    assertFalse(files.contains("heron.nc"));
    assertTrue(files.contains("heron-plot.pdf"));
    assertTrue(run.out().contains("held back while the plate fails"), run.out());
    JsonNode report =
        new ObjectMapper().readTree(Files.readString(folder.resolve("heron/heron-report.json")));
    assertTrue(report.get("lacks").asText().contains("held back"));
  }

  @Test
  void aKitWhoseUsualCutterDoesNotFitSaysWhyItHasNoProgram() throws IOException {
    Run run =
        Run.of(
            "make",
            AVOCET,
            "--set",
            "making.cutter=50",
            "--set",
            "bolt-circles[0].diameter=9",
            "--out",
            folder.toString());
    Set<String> files = names(folder.resolve("avocet"));
    assertFalse(files.contains("avocet.nc"), run.out());
    assertEquals(run.code() == 0, files.contains("avocet.dxf"));
    assertTrue(run.out().contains("No router program") || run.code() == 1, run.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--cutter|60|--cutter: '60 mm' must be at most 20 mm; if it was written with a digit too"
            + " many",
        "--cutter|0|--cutter: '0 mm' must be at least 0.8 mm",
        "--cutter|0.125|if it was written in inches, write 3.175 (mm)",
        "--speed|0.4|--speed: '0.4 1/min' must be at least 500 1/min",
        "--speed|12.000|with a point between the thousands, write 12000 (1/min)",
        "--speed|30000|must be at most 24000 1/min here (the spindle's highest speed)",
        "--drill-feed|10|--drill-feed: '10 mm a turn' must be at most 0.5 mm a turn",
        "--step-down|20|--step-down: '20 mm' must be at most 12 mm here (2 times the cutter)",
        "--step-down|0.00001|--step-down: '0.00001 mm' must be at least 0.06 mm here",
        "--tab-height|0.001|if it was written in metres, write 1 (mm)",
        "--thickness|50|--thickness: '50 mm' must be at most 18 mm here",
        "--feed|0.001|--feed: '0.001 mm/min' must be at least 1 mm/min",
        "--ramp-feed|0.0001|--ramp-feed: '0.0001 mm/min' must be at least",
        "--ramp|0.001|--ramp: '0.001 deg' must be at least 0.5 deg",
        "--travel|0.001|--travel: '0.001 mm/min' must be at least 50 mm/min",
        "--drill-surface-speed|0.0001|must be at least 2 m/min",
        "--highest-speed|8|in thousands, or with a point between the thousands, write 8000",
        "--flute-length|8|--flute-length: '8 mm' must be at least 9.3 mm here",
        "--cutter|NaN|--cutter: 'NaN' must be a length such as 10, 10 mm or 0.4 in",
        "--cutter|1e1|--cutter: '1e1' must be a length such as 10, 10 mm or 0.4 in",
        "--feed|0|--feed: '0 mm/min' must be at least 1 mm/min",
        "--feed|Infinity|--feed: 'Infinity' must be a number; from 0 to 1000000 mm/min",
        "--step-down|0|--step-down: '0 mm' must be at least 0.06 mm here",
        "--breakthrough|5|--breakthrough: '5 mm' must be at most 3 mm here",
        "--bed|0.1|--bed: '0.1 mm' must be at least",
        "--tab-width|900|--tab-width: '900 mm' must be at most 40 mm",
        "--ramp|90|--ramp: '90 deg' must be at most 45 deg",
        "--clearance|1|--clearance: '1 mm' must be more than the approach height",
        "--flutes|0|--flutes: '0' must be a whole number from 1 to 12",
        "--flutes|2.5|--flutes: '2.5' must be a whole number from 1 to 12",
        "--drills|5;4|--drills: '5;4' must be diameters in mm with commas between, or none",
        "--direction|clim|--direction: 'clim' must be climb or conventional",
        "--dialect|plain-rs27|did you mean 'plain-rs274'?",
        "--kerf|0.2|--kerf: only counts for --process laser or waterjet",
        "--blade|5|--blade: only counts for --process jigsaw",
        "--sheet|400x400|--sheet: only counts with --nest",
      })
  void whatCannotBeCutIsAnsweredAndNothingIsWritten(String option, String value, String words) {
    Path out = folder.resolve("out");
    Run run = cut(out, AVOCET, "--process", "router", option, value);
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().contains(words), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
    assertEquals("", run.out());
    assertFalse(Files.exists(out));
  }

  @Test
  void allThatIsWrongIsToldInOneRun() {
    Run run = cut(HERON, "--process", "router", "--feed", "0", "--step-down", "0", "--ramp", "0");
    assertEquals(2, run.code());
    assertEquals(3, run.err().lines().count(), run.err());
    Run words =
        cut(HERON, "missing.yaml", "--process", "ruoter", "--cutter", "x", "--dialect", "zzz");
    assertEquals(4, words.err().lines().count(), words.err());
  }

  @Test
  void aLaminateIsNotCutByLaserWithoutTheOwnersSay() {
    Run run = cut(HERON, "--process", "laser");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("shapes/heron.yaml:46"), run.err());
    assertTrue(run.err().contains("--owner-consents"), run.err());
  }

  @Test
  void theProcessMustBeGiven() {
    Run run = cut(HERON);
    assertEquals(2, run.code());
    assertTrue(run.err().startsWith("--process: must be given"), run.err());
  }

  @Test
  void platesAndStripsShareASheetAndAreProvedThere() throws IOException {
    JsonNode job =
        job(
            HERON,
            "shapes/bittern.yaml",
            "--process",
            "router",
            "--nest",
            "--sheet",
            "700x400",
            "--set",
            "stock.thickness=5",
            "--strips",
            "6x15x80",
            "--keep-out",
            "0,180,30,40");
    assertEquals(
        Set.of("sheet-router.dxf", "sheet-router.svg", "sheet-router.png", "sheet-router.nc"),
        names(folder));
    assertEquals(8, job.at("/layout/parts").size());
    for (JsonNode part : job.at("/layout/parts")) {
      assertTrue(Set.of(0, 180).contains(part.get("turn").asInt()), part.toString());
    }
    assertTrue(job.at("/layout/yield").asDouble() >= job.at("/layout/boxes_yield").asDouble());
    assertTrue(job.at("/proof/worst_gouge").asDouble() <= 0.01);
    String program = Files.readString(folder.resolve("sheet-router.nc"));
    assertTrue(program.contains("lower left corner of the sheet"), program);
    // A tool is taken up once: two drills for heron, one of them bittern's too, then the cutter.
    long pauses = program.lines().filter(line -> line.equals("M0")).count();
    assertEquals(3, pauses);
  }

  @Test
  void aSheetThatIsTooSmallOrMixedIsRefused() {
    Path out = folder.resolve("out");
    Run small = cut(out, HERON, "--process", "router", "--nest", "--sheet", "290x290");
    assertEquals(2, small.code());
    assertTrue(small.err().contains("'290 x 290 mm' has no room for heron"), small.err());
    Run mixed = cut(out, HERON, AVOCET, "--process", "router", "--nest", "--sheet", "900x900");
    assertEquals(2, mixed.code());
    assertTrue(mixed.err().contains("cannot share a sheet with heron"), mixed.err());
    Run clamp = cut(out, HERON, "--process", "router", "--nest", "--keep-out", "900,0,10,10");
    assertTrue(clamp.err().contains("must touch the sheet"), clamp.err());
    Run strips = cut(out, HERON, "--process", "router", "--nest", "--strips", "0x15x80");
    assertTrue(strips.err().contains("must be how many (1 to 99)"), strips.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void theSameCallGivesTheSameBytes() throws IOException {
    Path one = folder.resolve("one");
    Path two = folder.resolve("two");
    String shape = "dunlin";
    String[] args = {
      "shapes/dunlin.yaml",
      "--process",
      "router",
      "--nest",
      "--sheet",
      "310x320",
      "--strips",
      "2x15x60"
    };
    assertEquals(0, cut(one, args).code());
    assertEquals(0, cut(two, args).code());
    // One shape on a sheet of its own keeps to its folder.
    Set<String> names = names(one.resolve(shape));
    assertTrue(names.contains("dunlin-sheet-router.nc"), names.toString());
    assertEquals(names, names(two.resolve(shape)));
    for (String name : names) {
      assertArrayEquals(
          Files.readAllBytes(one.resolve(shape).resolve(name)),
          Files.readAllBytes(two.resolve(shape).resolve(name)),
          name);
    }
  }

  @Test
  void aKitAndItsCutFilesLieInOneFolderAndTheirProgramsAreTheSame() throws IOException {
    assertEquals(0, Run.of("make", AVOCET, "--out", folder.toString()).code());
    assertEquals(0, cut(AVOCET, "--process", "router").code());
    assertEquals(0, cut(AVOCET, "--process", "jigsaw").code());
    Path shape = folder.resolve("avocet");
    assertTrue(names(shape).contains("avocet-jigsaw.dxf"), names(shape).toString());
    assertArrayEquals(
        Files.readAllBytes(shape.resolve("avocet.nc")),
        Files.readAllBytes(shape.resolve("avocet-router.nc")));
  }

  @Test
  void allThatCountsForNothingIsToldAndWithItWhatIsWrongWithTheShape() {
    Run run =
        cut("missing.yaml", "--process", "jigsaw", "--kerf", "1", "--tabs", "2", "--copies", "2");
    assertEquals(2, run.code());
    assertEquals(4, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("--copies: only counts with --nest"), run.err());
    assertEquals(1, cut().err().lines().filter(l -> l.startsWith("--process")).count());
  }

  @Test
  void aSawLeavesToSawsAndBitsWhatTheDrillingSheetMakesWithThem() throws IOException {
    // Forstner bits of usual sets end at 50 mm, hole saws at 76; 4 mm more are trimmed off.
    Path shape = folder.resolve("ruff.yaml");
    for (String material : List.of("birch-plywood", "acrylic")) {
      double largest = material.equals("acrylic") ? 80 : 54;
      for (double diameter : new double[] {largest, largest + 0.1}) {
        Files.writeString(
            shape,
            String.join(
                "\n",
                "felloe: 1",
                "title: Ruff",
                "outline: {round: {diameter: 300}}",
                "windows:",
                "  - {label: W, circle: {diameter: " + diameter + "}, at: [70, 0]}",
                "stock: {material: " + material + ", thickness: 9}",
                ""));
        JsonNode holes = job(shape.toString(), "--process", "jigsaw").get("waste_holes");
        String use = diameter > largest ? "start" : "hole-saw";
        assertEquals(use, holes.get(0).get("use").asText(), material);
        JsonNode drill =
            new ObjectMapper()
                .readTree(Run.of("drill", shape.toString(), "--format", "json").out());
        boolean sheet = drill.get("order").toString().contains("W");
        assertEquals(diameter <= largest, sheet, material + " " + diameter);
      }
    }
  }

  @Test
  void aVToolOfAStatedAngleCutsLinesAndEdgesOfTheFace() throws IOException {
    String[] face = {
      AVOCET,
      "--process",
      "router",
      "--set",
      "making.edge_break=0.4",
      "--set",
      "engravings=[{text: AVOCET, at: [0, -46], height: 4}]"
    };
    JsonNode without = job(face);
    assertTrue(without.get("notes").toString().contains("tell the angle of a V tool"));
    JsonNode with =
        job(Stream.concat(Stream.of(face), Stream.of("--v-angle", "60")).toArray(String[]::new));
    assertEquals("engrave E1", with.at("/steps/0/title").asText());
    assertEquals("60 deg V tool", with.at("/steps/0/tool").asText());
    assertTrue(with.at("/proof/worst_gouge").asDouble() <= 0.01);
    String program = Files.readString(folder.resolve("avocet/avocet-router.nc"));
    assertTrue(program.contains("(Tool: 60 deg V tool, tip 0.2, at least"), program);
    // On a sheet the V tool is taken up once, and test strips keep their edges.
    List<String> sheet = new ArrayList<>(List.of(face));
    sheet.addAll(List.of("--v-angle", "60", "--nest", "--sheet", "700x700", "--copies", "2"));
    sheet.addAll(List.of("--strips", "2x15x80"));
    JsonNode nested = job(sheet.toArray(String[]::new));
    List<String> tools = new ArrayList<>();
    for (JsonNode step : nested.get("steps")) {
      String tool = step.get("tool").asText();
      if (tools.isEmpty() || !tools.get(tools.size() - 1).equals(tool)) {
        tools.add(tool);
      }
      String title = step.get("title").asText();
      assertFalse(title.contains("strip") && title.contains("edge"), title);
      int named = title.split("avocet-", -1).length - 1;
      assertEquals(title.contains("strip") ? 0 : 1, named, title);
    }
    assertEquals(1, tools.stream().filter("60 deg V tool"::equals).count(), tools.toString());
    Run idle = cut("shapes/bittern.yaml", "--process", "router", "--v-angle", "60");
    assertEquals(2, idle.code());
    assertTrue(idle.err().contains("--v-angle: '60 deg' has nothing to cut"), idle.err());
  }

  private static final String SAWN = "making={blade: 5, blade_turn: 10}";

  @Test
  void theShapeFilesBladeIsTheUsualOneAndItsHolesAreOnTheTemplate() throws IOException {
    String[] sawn = {AVOCET, "--process", "jigsaw"};
    JsonNode usual = job(sawn);
    JsonNode own = job(AVOCET, "--process", "jigsaw", "--set", SAWN);
    JsonNode asked = job(AVOCET, "--process", "jigsaw", "--turn", "10");
    assertEquals(asked.get("waste_holes"), own.get("waste_holes"));
    assertFalse(usual.get("waste_holes").equals(own.get("waste_holes")));
    Path templates = folder.resolve("templates");
    String out = templates.toString();
    Run run = Run.of("template", AVOCET, "--set", SAWN, "--out", out);
    assertEquals(0, run.code(), run.err());
    String drawing;
    try (Stream<Path> files = Files.walk(templates)) {
      drawing =
          Files.readString(files.filter(f -> f.endsWith("avocet.svg")).findFirst().orElseThrow());
    }
    for (JsonNode hole : own.get("waste_holes")) {
      assertTrue(drawing.contains("waste  \u00d8" + hole.get("diameter").asInt()), drawing);
    }
    assertTrue(drawing.contains("waste-holes"));
  }

  @Test
  void aPlateIsReviewedAgainstTheHubThatIsAskedFor() {
    Run run = cut(HERON, "--process", "router", "--hub", "6x74-m5");
    assertEquals(1, run.code());
    assertTrue(run.out().contains("hub-fit"), run.out());
    assertFalse(Files.exists(folder.resolve("heron")));
  }

  @Test
  void theAnswerStandsInTheFirstLinesAndOnAWebPageWithItsPicture() {
    Run run = cut(AVOCET, "--process", "router");
    assertTrue(run.out().lines().limit(3).anyMatch(l -> l.contains("checked as written")));
    assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    String page = cut(AVOCET, "--process", "jigsaw", "--format", "html").out();
    assertTrue(page.contains("<svg") && page.contains("turning the blade"), page);
  }
}
