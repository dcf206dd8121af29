package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import felloe.drawing.Paper;
import felloe.geometry.Numbers;
import felloe.job.Act;
import felloe.kit.CardFiles;
import felloe.report.CardLead;
import felloe.report.CardOrder;
import felloe.report.CardSheet;
import felloe.service.Jobs;
import felloe.template.UsualPrint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Job cards from the command line: their figures are those of the other commands. */
class CardCommandTest {

  /** Held in one way, so that its loads are reckoned once. */
  private static final String[] CLAMPED = {"--set", "load.clamp_diameter=80"};

  private static final Pattern SIZE = Pattern.compile("  (\\w+):   # (\\d+): (\\S+) to (\\S+)");
  private static final Pattern PAIR =
      Pattern.compile(
          "  - \\{from: (\\w+), to: (\\w+), over: outside, reads: \\}   # (\\d+): (\\S+) to"
              + " (\\S+)");

  private static final Pattern VERDICT =
      Pattern.compile("(As wanted|NOT AS WANTED): least margin .*? mm\\.");

  @TempDir Path folder;

  private Run run(String command, String shape, String... more) {
    List<String> args = new ArrayList<>(List.of(command, shape));
    args.addAll(List.of(more));
    return Run.of(args.toArray(String[]::new));
  }

  private Run card(String... more) {
    List<String> args = new ArrayList<>(List.of(CLAMPED));
    args.addAll(List.of("--out", folder.toString()));
    args.addAll(List.of(more));
    return run("card", "shapes/dunlin.yaml", args.toArray(String[]::new));
  }

  private static JsonNode json(Run run) throws IOException {
    assertTrue(run.code() <= 1, run.err());
    return new ObjectMapper().readTree(run.out());
  }

  /** All words of a file of pages, on one line. */
  private static String pages(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
      PDFTextStripper words = new PDFTextStripper();
      words.setSortByPosition(true);
      return words.getText(document).replaceAll("\\s+", " ");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron", "bittern", "dunlin", "avocet"})
  void theCardTellsTheFiguresOfTheOtherCommands(String name) throws IOException {
    String shape = "shapes/" + name + ".yaml";
    JsonNode card =
        json(
            run(
                "card",
                shape,
                CLAMPED[0],
                CLAMPED[1],
                "--out",
                folder.toString(),
                "--format",
                "json"));
    String text = pages(folder.resolve(name + "/" + name + "-card-A4.pdf"));
    String order = card.get("order").toString();

    Run load = run("load", shape, CLAMPED[0], CLAMPED[1]);
    if (load.code() <= 1) {
      String words = load.out().replaceAll("\\s+", " ");
      Matcher verdict = VERDICT.matcher(words);
      assertTrue(verdict.find(), words);
      String told = "Loads: " + verdict.group().replace(" -", " \u2212");
      assertTrue(text.contains(told), told + " in " + text);
    }

    JsonNode shown = json(run("show", shape, "--format", "json"));
    double mass = shown.get("figures").get("mass").asDouble();
    assertEquals(mass, card.get("mass").asDouble(), 1e-6);
    assertEquals(mass, card.get("bill").get("plate_mass").asDouble(), 1e-6);
    assertTrue(text.contains("Mass of the bare plate: " + Numbers.fixed(mass, 0) + " g"), text);
    assertTrue(text.contains("it should weigh " + Numbers.fixed(mass, 0) + " g"), text);

    JsonNode drill = json(run("drill", shape, "--format", "json"));
    for (JsonNode group : drill.get("order").get("groups")) {
      String good =
          "Good from "
              + Numbers.fixed(group.get("limits").get("least").asDouble(), 2)
              + " to "
              + Numbers.fixed(group.get("limits").get("most").asDouble(), 2)
              + " mm";
      assertTrue(order.contains(good), good);
      for (JsonNode step : group.get("steps")) {
        String stage = step.get("stage").asText();
        if (step.get("turning").isObject() && !stage.equals("countersink")) {
          String told =
              "\u00d8"
                  + Numbers.brief(step.get("diameter").asDouble(), 2)
                  + " at "
                  + Numbers.fixed(step.get("turning").get("setting").asDouble(), 0)
                  + " 1/min";
          assertTrue(order.contains(told), told);
        }
      }
    }
    for (JsonNode joint : drill.get("joints")) {
      if (joint.get("torque").isObject()) {
        double wanted = joint.get("torque").get("torque").asDouble();
        String torque = Numbers.fixed(wanted, wanted < 1 ? 2 : 1) + " N m";
        assertTrue(order.contains("to " + torque), torque + " in " + order);
      }
    }

    JsonNode proof =
        json(run("load", shape, "--proof", "--format", "json", CLAMPED[0], CLAMPED[1]));
    JsonNode hangs = card.get("readings").path("proof").path("hangs");
    assertTrue(name.equals("avocet") || hangs.equals(proof.get("hangs")), hangs.toString());
    for (JsonNode hang : hangs) {
      for (JsonNode step : hang.get("steps")) {
        String row =
            hang.get("name").asText()
                + " "
                + Numbers.fixed(step.get("weight").asDouble(), 1)
                + " "
                + Numbers.fixed(step.get("least").asDouble(), 1)
                + " "
                + Numbers.fixed(step.get("most").asDouble(), 1);
        assertTrue(text.contains(row), row + " in " + text);
      }
    }
    assertTrue(
        names(card.get("files"))
            .containsAll(
                List.of(name + "-card-A4.pdf", name + "-bill.csv", name + "-measured.yaml")));
  }

  private static List<String> names(JsonNode files) {
    List<String> names = new ArrayList<>();
    files.forEach(file -> names.add(Path.of(file.asText()).getFileName().toString()));
    return names;
  }

  /** The rows of the card are those of the form; filled in their order, the form is read. */
  @Test
  void whatIsWrittenOnTheCardIsTypedBack() throws IOException {
    assertEquals(0, card().code());
    String text = pages(folder.resolve("dunlin/dunlin-card-A4.pdf"));
    Path form = folder.resolve("dunlin/dunlin-measured.yaml");
    List<String> typed = new ArrayList<>();
    int rows = 0;
    for (String line : Files.readAllLines(form)) {
      Matcher size = SIZE.matcher(line);
      Matcher pair = PAIR.matcher(line);
      String row = "";
      if (size.matches()) {
        row = size.group(2) + " " + size.group(1) + " diameter " + size.group(3);
        line = "  " + size.group(1) + ": " + size.group(3);
      } else if (pair.matches()) {
        row = pair.group(3) + " " + pair.group(1) + " " + pair.group(2) + " outside";
        double middle = (Double.parseDouble(pair.group(4)) + Double.parseDouble(pair.group(5))) / 2;
        line = line.replace("reads: }", "reads: " + Numbers.fixed(middle, 2) + "}");
      }
      if (!row.isEmpty()) {
        assertTrue(text.contains(row), row + " in " + text);
        rows++;
      }
      typed.add(line);
    }
    assertEquals(6, rows);
    Files.write(form, typed);
    Run check = run("check", "shapes/dunlin.yaml", "--measured", form.toString());
    assertEquals(0, check.code(), check.out() + check.err());
    assertTrue(check.out().contains("Goes on the hub 3x58-m6"), check.out());
    assertTrue(
        text.contains("felloe check dunlin.yaml --set load.clamp_diameter=80 --measured"), text);
    // A form with readings in it is left as it is.
    assertEquals(0, card().code());
    assertEquals(typed, Files.readAllLines(form));
  }

  @Test
  void theKitHasTheCardWithItsLoadsStillOpen() throws IOException {
    Run make = run("make", "shapes/heron.yaml", "--out", folder.toString());
    assertEquals(0, make.code(), make.err());
    String text = pages(folder.resolve("heron/heron-card-A4.pdf"));
    assertTrue(text.contains("Loads: not yet reckoned: ____"), text);
    assertTrue(text.contains("Ask: felloe card heron.yaml"), text);
    assertTrue(text.contains("Ask: felloe load heron.yaml --proof --out templates-out"), text);
    assertTrue(Files.exists(folder.resolve("heron/heron-bill.csv")));
    assertFalse(Files.exists(folder.resolve("heron/heron-strips.yaml")));
    for (String row : List.of("T1", "T5", "1 H1 diameter 5.00 5.12", "21 H3 H6 outside")) {
      assertTrue(text.contains(row), row);
    }
    JsonNode layup = json(run("layup", "shapes/heron.yaml", "--format", "json"));
    for (JsonNode item : layup.get("shopping")) {
      // Longer names go on below, and words of other columns stand between.
      String what = item.get("what").asText();
      String begin = what.substring(0, Math.min(22, what.length()));
      assertTrue(text.contains(begin), begin);
    }
    for (JsonNode pot : layup.get("pots")) {
      String mixed =
          Numbers.fixed(pot.get("resin").asDouble(), 0)
              + " "
              + Numbers.fixed(pot.get("hardener").asDouble(), 0)
              + " "
              + Numbers.fixed(pot.get("millilitres").asDouble(), 0);
      assertTrue(text.contains(mixed), mixed);
    }
  }

  /** Each act's page is the page on which its words stand. */
  @Test
  void everyPageThatIsNamedIsThereAndTellsOfItsAct() throws IOException {
    String out = folder.toString();
    assertEquals(0, run("make", "shapes/heron.yaml", "--out", out).code());
    assertEquals(0, run("drill", "shapes/heron.yaml", "--out", out).code());
    assertEquals(0, run("layup", "shapes/heron.yaml", "--out", out).code());
    String text = pages(folder.resolve("heron/heron-card-A4.pdf"));
    int found = 0;
    CardSheet sheet = CardFiles.sheet(Jobs.of("heron"), Jobs.CALLS, UsualPrint.on(Paper.A4));
    for (CardOrder.Line line : sheet.order()) {
      CardLead lead = line.page().orElse(new CardLead("", 0));
      Path file = folder.resolve("heron").resolve(lead.file());
      if (lead.page() > 0 && Files.exists(file)) {
        String words = line.words().substring(0, 20);
        assertTrue(text.contains(words), words);
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
          assertTrue(lead.page() <= document.getNumberOfPages(), lead.toString());
        }
        found++;
      }
      String group = line.task().holes().map(holes -> holes.labels().get(0)).orElse("");
      if (!group.isEmpty()) {
        assertTrue(onPage(lead, " " + group), lead + " has no " + group);
      }
      if (line.task().act() == Act.LAY_UP) {
        assertTrue(onPage(lead, "Pots; hours"), lead.toString());
      }
      if (line.task().act() == Act.MEASURE_HOLES) {
        assertTrue(onPage(lead, "Readings of the finished hub pattern"), lead.toString());
      }
      if (line.task().act() == Act.STICK_TEMPLATE) {
        assertTrue(onPage(lead, "H1"), lead.toString());
      }
    }
    assertTrue(found >= 10, "pages " + found);
  }

  private boolean onPage(CardLead lead, String words) throws IOException {
    byte[] bytes = Files.readAllBytes(folder.resolve("heron").resolve(lead.file()));
    try (PDDocument document = Loader.loadPDF(bytes)) {
      PDFTextStripper text = new PDFTextStripper();
      text.setStartPage(lead.page());
      text.setEndPage(lead.page());
      return text.getText(document).replaceAll("\\s+", " ").contains(words);
    }
  }

  @Test
  void theSameCallWritesTheSameBytes() throws IOException {
    for (String out : List.of("one", "two")) {
      run("make", "shapes/dunlin.yaml", "--out", folder.resolve(out).toString());
    }
    for (String name : List.of("dunlin-card-A4.pdf", "dunlin-bill.csv")) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("one/dunlin").resolve(name)),
          Files.readAllBytes(folder.resolve("two/dunlin").resolve(name)),
          name);
    }
  }

  @Test
  void aPlateThatIsTooWeakIsNotToBeMadeByItsCard() throws IOException {
    Run run = card("--set", "stock.thickness=2");
    assertEquals(1, run.code(), run.err());
    String second = run.out().lines().skip(1).findFirst().orElseThrow();
    assertTrue(second.startsWith("DO NOT MAKE IT YET. Loads: NOT AS WANTED"), second);
    assertEquals(1, run.out().split("NOT AS WANTED", -1).length - 1, run.out());
    String pages = pages(folder.resolve("dunlin/dunlin-card-A4.pdf"));
    assertTrue(pages.contains("DO NOT CUT") && pages.contains("loads not as"), pages);
  }

  @Test
  void aPlateThatFailsHasItsCardAndSaysWhatFails() throws IOException {
    Run run = card("--hub", "6x74-m5");
    assertEquals(1, run.code(), run.err());
    String first = String.join(" ", run.out().lines().limit(5).toList());
    assertTrue(
        first.contains("DO NOT MAKE IT YET. As drawn, not all screws of hub 6x74-m5"), first);
    String text = pages(folder.resolve("dunlin/dunlin-card-A4.pdf"));
    assertTrue(text.contains("DO NOT CUT"), text);
    assertTrue(text.contains("Not to be proved as it is"), text);
  }

  @Test
  void loadsThatCannotBeReckonedLeaveTheRestOfTheCard() throws IOException {
    Run run =
        run(
            "card",
            "shapes/dunlin.yaml",
            "--out",
            folder.toString(),
            "--set",
            "bolt_circles=[]",
            "--set",
            "joints=[]");
    assertEquals(1, run.code(), run.err());
    String text = pages(folder.resolve("dunlin/dunlin-card-A4.pdf"));
    assertTrue(text.contains("Loads: could not be reckoned: "), text);
    assertTrue(text.contains("Order of work"), text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "card|felloe card: SHAPE is missing",
        "card shapes/none.yaml|shapes/none.yaml: ",
        "card shapes/dunlin.yaml --papr A4|felloe card: unknown option '--papr'; did you mean",
        "card shapes/dunlin.yaml --paper A44|--paper: 'A44' is not a known paper; did you mean"
            + " 'A4'?",
        "card shapes/dunlin.yaml --hub no-such-hub|--hub: 'no-such-hub'",
        "card shapes/dunlin.yaml --materials none.yaml|none.yaml: ",
        "card shapes/dunlin.yaml --tested none.yaml|none.yaml: ",
        "card shapes/dunlin.yaml --set stock.thickness=-1|--set stock.thickness: '-1'",
        "card shapes/heron.yaml --set stock.layup={cloth:\u00a0nylon}|--set stock.layup cloth:"
            + " 'nylon' is no cloth"
      })
  void aCallThatIsWrongIsRefusedAndWritesNothing(String call, String said) throws IOException {
    List<String> args = new ArrayList<>();
    for (String word : call.split(" ")) {
      args.add(word.replace('\u00a0', ' '));
    }
    args.addAll(List.of("--out", folder.resolve("none").toString()));
    Run run = Run.of(args.toArray(String[]::new));
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().contains(said), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
    assertFalse(Files.exists(folder.resolve("none")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"taken"})
  void aFileInTheWayOfTheFolderIsTold(String name) throws IOException {
    Files.writeString(folder.resolve(name), "a file");
    Run run =
        run(
            "card",
            "shapes/dunlin.yaml",
            CLAMPED[0],
            CLAMPED[1],
            "--out",
            folder.resolve(name).toString());
    assertEquals(3, run.code(), run.err());
  }
}
