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

/** The plan of a lay-up through the command line. */
class LayupPlanCommandTest {

  private static final String HERON = "shapes/heron.yaml";

  @TempDir Path folder;

  private static Run call(String words) {
    return Run.of(("layup " + words).split(" "));
  }

  private static JsonNode json(String words) throws IOException {
    return new ObjectMapper().readTree(call(words + " --format json").out());
  }

  @Test
  void aPlanHasAllItsPartsAndSaysWhatIsAssumed() {
    Run run = call(HERON);
    assertEquals(0, run.code(), run.err());
    for (String part :
        List.of(
            "What to do",
            "Pots",
            "Shopping list",
            "Cloth",
            "Ways of getting the stock",
            "Assumed, from common practice or from memory: 57 of the 64 figures",
            "the program knows none",
            "More: --all, --sources.",
            "! The data sheet of the resin's maker comes first",
            "sensitise")) {
      assertTrue(run.out().contains(part), part);
    }
    assertEquals("", run.err());
    String all = call(HERON + " --all").out();
    assertTrue(all.contains("Resin, both parts") && all.contains("Stack"), all);
  }

  /** A stack that comes out thinner than the file says is told of wherever the thickness is. */
  @Test
  void whatTheStackComesToStandsBesideTheThicknessInEveryAnswer() throws IOException {
    String both = "5.6 mm, laid up 4.49 mm";
    assertTrue(thin("drill").contains("laminate, " + both));
    assertTrue(thin("cut", "--process", "router").contains(both));
    String given = thin("cut", "--process", "router", "--thickness", "4.49");
    assertTrue(given.contains("laminate, 4.49 mm, on spoil board"), given);
    thin("template");
    Path template = folder.resolve("heron/heron-template-A4.pdf");
    try (PDDocument pages = Loader.loadPDF(template.toFile())) {
      String text = new PDFTextStripper().getText(pages).replaceAll("\\s+", " ");
      assertTrue(text.contains("5.6 mm, laid up 4.49 mm"), text);
    }
    assertTrue(thin("show").contains("comes to 4.49 mm"));
  }

  private String thin(String command, String... more) {
    List<String> words = new ArrayList<>(List.of(command, HERON));
    words.addAll(List.of("--set", "stock.layup={plies: 16}", "--out", folder.toString()));
    words.addAll(List.of(more));
    return Run.of(words.toArray(String[]::new)).out().replaceAll("\\s+", " ");
  }

  @Test
  void sourcesTellOfEveryFigureWhereItComesFrom() {
    Run run = call(HERON + " --sources");
    for (String words : List.of("What the plan rests on", "published table,", "textbooks, from")) {
      assertTrue(run.out().contains(words), run.out());
    }
  }

  @Test
  void massesInJsonAddUp() throws IOException {
    JsonNode plan = json(HERON + " --scale 0.1 --temperature 24");
    JsonNode mix = plan.get("mix");
    double resin = 0;
    double hardener = 0;
    for (JsonNode pot : plan.get("pots")) {
      resin += pot.get("resin").asDouble();
      hardener += pot.get("hardener").asDouble();
    }
    assertEquals(mix.get("resin").asDouble(), resin, 1e-6);
    assertEquals(mix.get("hardener").asDouble(), hardener, 1e-6);
    assertEquals(mix.get("mix").asDouble(), resin + hardener, 1e-6);
    assertEquals(0.3, hardener / resin, 0.001);
    double losses = 0;
    for (JsonNode loss : mix.get("losses")) {
      losses += loss.get("grams").asDouble();
    }
    assertEquals(mix.get("needed").asDouble(), mix.get("in_part").asDouble() + losses, 1e-5);
    JsonNode stack = plan.get("stack");
    assertEquals(
        stack.get("thickness").asDouble(),
        stack.get("plies").size() * stack.get("ply_thickness").asDouble(),
        1e-5);
    assertTrue(plan.get("possible").asBoolean());
    assertTrue(plan.get("ways").get(0).get("material_cost").isNull());
  }

  @Test
  void optionsGoBeforeTheShapeFileAndBesideEachOther() throws IOException {
    String file =
        HERON
            + " --set stock.layup.plies=8 --set stock.layup.cloth=carbon-twill-400"
            + " --set stock.layup.temperature=15";
    JsonNode own = json(file);
    assertEquals(8, own.get("stack").get("plies").size());
    assertEquals("carbon-twill-400", own.get("cloth").asText());
    assertEquals(15, own.get("temperature").asDouble());
    JsonNode call = json(file + " --plies 45,0,0,45");
    assertEquals(4, call.get("stack").get("plies").size());
    assertEquals("\u00b145", call.get("stack").get("plies").get(0).get("direction").asText());
    assertEquals("carbon-twill-400", call.get("cloth").asText());
  }

  @Test
  void boughtStockIsShownBesideALayUpAndNoPagesAreMade() throws IOException {
    Run run = call("shapes/dunlin.yaml --out " + folder.resolve("none"));
    assertEquals(0, run.code());
    assertTrue(run.out().contains("The stock is aluminium 6082-T6, which is bought."), run.out());
    assertTrue(run.err().contains("No pages are made for stock that is bought."), run.err());
    assertTrue(run.err().contains("add --cloth NAME"), run.err());
    assertFalse(run.out().contains("Pots"));
    assertFalse(Files.exists(folder.resolve("none")));
    assertFalse(json("shapes/dunlin.yaml").get("laid_up").asBoolean());
    assertTrue(call("shapes/dunlin.yaml --cloth glass-twill-300").out().contains("Pots"));
  }

  @Test
  void whatCannotBeDoneIsToldWithExitCodeOne() throws IOException {
    String words = HERON + " --resin epoxy-fast --temperature 35";
    Run run = call(words);
    assertEquals(1, run.code());
    assertTrue(
        run.out().contains("CANNOT BE DONE AS PLANNED: a pot is too thick after"), run.out());
    JsonNode plan = json(words);
    assertFalse(plan.get("possible").asBoolean());
    assertEquals(2, plan.get("obstacles").size());
  }

  @Test
  void everyMistakeOfTheCallComesOutInOneRunWithItsPlace() {
    Run run =
        call(
            HERON
                + " --plies 0 --fraction 0.8 --panel 5.5 --temperature hot --roll-width 10"
                + " --pieces round --strips 31 --scale 0 --paper B4 --materials none.yaml"
                + " --set stock.layup.fraction=0.1");
    assertEquals(2, run.code());
    assertEquals("", run.out());
    for (String start :
        List.of(
            "--plies: '0' must be a whole number from 1 to 200, or directions such as 0,45,45,0",
            "--fraction: '0.8' must be from 0.2 to 0.7",
            "--panel: '5.5' must be the thickness and the plies of a panel that you made",
            "--temperature: 'hot' must be a number; from 5 to 45 degrees Celsius",
            "--roll-width: '10' must be from 50 to 5000 mm",
            "--pieces: 'round' must be rectangle or outline",
            "--strips: '31' must be a whole number from 0 to 30",
            "--scale: '0' must be from 0.01 to 10",
            "--paper: 'B4' is not a known paper",
            "none.yaml: does not exist",
            "--set stock.layup.fraction: '0.1' must be at least 0.2")) {
      assertTrue(run.err().contains(start), start + "\n" + run.err());
    }
  }

  @Test
  void aFractionOutsideOfWhatIsBelievedIsRefusedWhereItStands() throws IOException {
    Path file = folder.resolve("crake.yaml");
    Files.writeString(
        file,
        """
        felloe: 1
        outline: {round: {diameter: 280}}
        stock:
          material: carbon-laminate
          thickness: 5
          layup: {fraction: 0.75, plies: 0, panel: {thickness: 5, plies: 20}}
        """);
    Run run = call(file.toString());
    assertEquals(2, run.code());
    assertTrue(
        run.err().contains(":6:21 stock.layup.fraction: '0.75' must be at most 0.7"), run.err());
    assertTrue(run.err().contains(":6:34 stock.layup.plies: '0' must be at least 1"), run.err());
    assertTrue(run.err().contains("stock.layup.panel: cannot stand beside fraction"), run.err());
  }

  @Test
  void whatCountsForAPlanOnlyIsRefusedWithoutAShape() throws IOException {
    Path stack = folder.resolve("my-stack.yaml");
    Files.writeString(stack, DocsPage.of("docs/layup.md").yamlFile("my-stack.yaml"));
    for (String words : List.of(" --cloth carbon-twill-200", " --sources", " --out here")) {
      Run run = call("--stack " + stack + words);
      assertEquals(2, run.code());
      assertTrue(run.err().contains("only counts with a SHAPE"), run.err());
    }
    assertEquals(2, call(HERON + " --stack " + stack).code());
  }

  @Test
  void pagesAndPicturesAreWrittenAlikeEachTimeAndReadBack() throws IOException {
    Path first = folder.resolve("first");
    Path second = folder.resolve("second");
    assertEquals(0, call(HERON + " --paper Letter --out " + first).code());
    Run run = call(HERON + " --paper Letter --out " + second + " --format json");
    JsonNode files = new ObjectMapper().readTree(run.out()).get("files");
    assertEquals(4, files.size());
    try (Stream<Path> all = Files.list(first.resolve("heron"))) {
      List<String> names =
          all.filter(path -> !Run.isList(path))
              .map(path -> path.getFileName().toString())
              .sorted()
              .toList();
      assertEquals(
          List.of(
              "heron-blank.svg", "heron-cloth.svg", "heron-layup-Letter.pdf", "heron-stack.svg"),
          names);
      for (String name : names) {
        assertArrayEquals(
            Files.readAllBytes(first.resolve("heron").resolve(name)),
            Files.readAllBytes(second.resolve("heron").resolve(name)));
      }
    }
    try (PDDocument pdf = Loader.loadPDF(first.resolve("heron/heron-layup-Letter.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(pdf.getNumberOfPages() >= 6);
      for (String part :
          List.of(
              "Shopping list",
              "Plies, tick them off",
              "Stack of Heron",
              "Cloth for Heron",
              "Blank of Heron",
              "Labels",
              "What the plan rests on",
              "sensitise")) {
        assertTrue(text.contains(part), part);
      }
      assertFalse(text.contains("[ ]"));
    }
  }

  @Test
  void paperWithoutAFolderAndABadShapeComeOutTogether() {
    Run run = call(HERON + " --paper A3 --set stock.layup.fraction=0.1 --materials none.yaml");
    assertEquals(2, run.code());
    for (String start :
        List.of(
            "--paper: only counts with --out",
            "none.yaml: does not exist",
            "--set stock.layup.fraction: '0.1' must be at least 0.2")) {
      assertTrue(run.err().contains(start), start + "\n" + run.err());
    }
  }

  @Test
  void anOptionThatIsWrongIsNamedOnce() {
    Run run = Run.of("layup", "shapes/heron.yaml", "--resin", "tar");
    assertTrue(run.err().startsWith("--resin: 'tar' is no resin that is known"), run.err());
  }
}
