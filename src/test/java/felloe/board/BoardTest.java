package felloe.board;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import felloe.files.OutFile;
import felloe.kit.KitFiles;
import felloe.plate.Place;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import felloe.yaml.Overrides;
import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a board does with a shape file, asked as a page asks. */
class BoardTest {

  private static final String HERON = "heron.yaml";
  private static final String DUNLIN = "dunlin.yaml";

  @TempDir private Path folder;

  private static Map<String, String> write(String path, String value) {
    return Map.of("act", "write", "path", path, "value", value);
  }

  @Test
  void theFirstStateIsThePlateAsTheCommandLineTellsIt() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      JsonNode state = served.state(HERON);
      Study study =
          new Studies(folder, Optional.empty())
              .one(
                  ShapeSource.file(
                      folder.resolve(HERON), new Overrides(Place.BUILT_IN, List.of())));
      assertTrue(state.get("saved").asBoolean());
      assertTrue(state.get("plate").asBoolean());
      assertEquals(study.plate().title(), state.get("title").asText());
      assertTrue(state.get("drawing").asText().startsWith("<svg"));
      assertEquals(
          study.count(felloe.plate.Verdict.CAUTION) > 0,
          state.get("tone").asText().equals("caution"));
      assertTrue(served.faults.isEmpty());
    }
  }

  @Test
  void aValueIsChangedInTheTextAloneAndNotSavedBeforeItIsSaid() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      String before = Files.readString(folder.resolve(HERON));
      JsonNode state = served.act(HERON, write("outline.round.diameter", "300"));
      String expected = before.replace("diameter: 290", "diameter: 300");
      assertEquals(expected, state.get("text").asText());
      assertEquals(before, Files.readString(folder.resolve(HERON)));
      assertFalse(state.get("saved").asBoolean());
      JsonNode saved =
          Served.json(
              served.post(
                  "/shape/heron.yaml/save", Map.of("base", state.get("revision").asText())));
      assertTrue(saved.get("saved").asBoolean());
      assertEquals(expected, Files.readString(folder.resolve(HERON)));
      assertEquals(List.of(HERON), names());
    }
  }

  private List<String> names() throws Exception {
    try (var all = Files.list(folder)) {
      return all.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void whatCannotBeIsToldBesideItsFieldAndTheLastPlateStays() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      String good = served.state(HERON).get("drawing").asText();
      JsonNode state = served.act(HERON, write("bore", "nine miles"));
      assertFalse(state.get("plate").asBoolean());
      assertTrue(state.get("stale").asBoolean());
      assertEquals(good, state.get("drawing").asText());
      assertEquals("bore", state.get("problems").get(0).get("path").asText());
      assertEquals("nine miles", state.get("values").get("bore").asText());
      assertTrue(state.get("verdict").asText().startsWith("NO PLATE"), "no verdict of another");
      assertEquals("fail", state.get("tone").asText());
      assertEquals(422, served.get("/shape/heron.yaml/kit").statusCode(), "nor a kit");
      JsonNode mended = served.act(HERON, write("bore", "36"));
      assertTrue(mended.get("plate").asBoolean());
      assertFalse(mended.get("stale").asBoolean());
    }
  }

  @Test
  void windowsThatClashAreDrawnWithTheClashMarked() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      JsonNode state = served.act(HERON, Map.of("act", "append", "path", "holes"));
      JsonNode clash = served.act(HERON, write("holes[2]", "{diameter: 30, at: [0, 40]}"));
      assertTrue(state.has("drawing"));
      assertFalse(clash.get("plate").asBoolean());
      assertFalse(clash.get("stale").asBoolean(), "it is drawn all the same");
      assertTrue(clash.get("drawing").asText().contains("data-finding=\"0\""));
    }
  }

  @Test
  void everyStepIsUndoneAndDoneAgain() throws Exception {
    try (Served served = Served.with(folder, DUNLIN)) {
      String first = served.state(DUNLIN).get("text").asText();
      for (int i = 0; i < 30; i++) {
        served.act(DUNLIN, write("bore", Integer.toString(30 + i % 7)));
      }
      String last = served.state(DUNLIN).get("text").asText();
      for (int i = 0; i < 40; i++) {
        served.act(DUNLIN, Map.of("act", "undo"));
      }
      assertEquals(first, served.state(DUNLIN).get("text").asText());
      for (int i = 0; i < 40; i++) {
        served.act(DUNLIN, Map.of("act", "redo"));
      }
      assertEquals(last, served.state(DUNLIN).get("text").asText());
    }
  }

  @Test
  void whatIsTypedInOneGoIsOneStep() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      for (String typed : List.of("3", "30", "300")) {
        served.act(
            HERON,
            Map.of("act", "write", "path", "outline.round.diameter", "value", typed, "hand", "w1"));
      }
      JsonNode undone = served.act(HERON, Map.of("act", "undo"));
      assertEquals("290", undone.get("values").get("outline.round.diameter").asText());
      assertFalse(undone.get("undo").asBoolean());
    }
  }

  @Test
  void twoWindowsCannotUndoEachOtherUnseen() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      int base = served.state(HERON).get("revision").asInt();
      assertEquals(200, served.from(base, HERON, write("bore", "36")).statusCode());
      HttpResponse<String> second = served.from(base, HERON, Map.of("act", "undo"));
      assertEquals(409, second.statusCode());
      assertEquals("36", Served.json(second).get("values").get("bore").asText());
    }
  }

  @Test
  void aFileChangedOnTheDiskIsTakenOrAskedAbout() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      Path file = folder.resolve(HERON);
      String text = Files.readString(file);
      served.state(HERON);
      Files.writeString(file, text.replace("bore: 38", "bore: 34"));
      assertEquals("34", served.state(HERON).get("values").get("bore").asText());

      served.act(HERON, write("bore", "35"));
      Files.writeString(file, text.replace("bore: 38", "bore: 33"));
      JsonNode asked = served.state(HERON);
      assertTrue(asked.get("disk").asBoolean());
      assertEquals("35", asked.get("values").get("bore").asText());
      HttpResponse<String> refused =
          served.post("/shape/heron.yaml/save", Map.of("base", asked.get("revision").asText()));
      assertEquals(422, refused.statusCode());
      assertTrue(Files.readString(file).contains("bore: 33"));

      JsonNode taken = served.act(HERON, Map.of("act", "take-disk"));
      assertEquals("33", taken.get("values").get("bore").asText());
      assertFalse(taken.get("disk").asBoolean());
      JsonNode back = served.act(HERON, Map.of("act", "undo"));
      assertEquals("35", back.get("values").get("bore").asText());
    }
  }

  @Test
  void workThatWasNotSavedOutlivesTheProgram() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      served.act(HERON, write("bore", "31"));
    }
    try (Served again = new Served2(folder).open()) {
      JsonNode state = again.state(HERON);
      assertTrue(state.get("kept").asBoolean());
      assertEquals("38", state.get("values").get("bore").asText());
      JsonNode taken = again.act(HERON, Map.of("act", "take-kept"));
      assertEquals("31", taken.get("values").get("bore").asText());
      again.post("/shape/heron.yaml/save", Map.of("base", taken.get("revision").asText()));
      assertEquals(List.of(HERON), names());
    }
  }

  @Test
  void whoGoesOnWithoutAWordAboutItStillFindsWhatWasNotSaved() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      served.act(HERON, write("bore", "31"));
    }
    try (Served again = new Served2(folder).open()) {
      JsonNode state = again.act(HERON, write("bore", "33"));
      assertFalse(state.get("kept").asBoolean());
      again.act(HERON, Map.of("act", "undo"));
      JsonNode first = again.act(HERON, Map.of("act", "undo"));
      assertEquals("31", first.get("values").get("bore").asText());
    }
  }

  /** The same folder, opened anew. */
  private record Served2(Path folder) {
    Served open() throws Exception {
      return Served.empty(folder, false);
    }
  }

  @Test
  void theKitInABoxIsTheCommandLinesByteByByte() throws Exception {
    try (Served served = Served.with(folder, "dunlin.yaml")) {
      Map<String, byte[]> box = new LinkedHashMap<>();
      try (ZipInputStream zip =
          new ZipInputStream(new ByteArrayInputStream(served.bytes("/shape/dunlin.yaml/kit")))) {
        for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
          box.put(e.getName(), zip.readAllBytes());
        }
      }
      Studies studies = new Studies(Path.of(""), Optional.empty());
      Study study =
          studies.advised(
              studies.one(
                  ShapeSource.file(
                      Path.of("shapes/dunlin.yaml"), new Overrides(Place.BUILT_IN, List.of()))));
      try (KitFiles files = new KitFiles()) {
        BoardTalk talk = Served.talk();
        List<OutFile> made = files.of(study, talk.calls().apply(study), talk.options()).files();
        assertEquals(made.stream().map(OutFile::name).toList(), List.copyOf(box.keySet()));
        for (OutFile file : made) {
          assertArrayEquals(file.bytes(), box.get(file.name()), file.name());
        }
      }
    }
  }

  @Test
  void everyViewOfEveryDemoIsThereOrSaysWhyNot() throws Exception {
    String[] shapes = {"dunlin.yaml", "bittern.yaml"};
    try (Served served = Served.with(folder, shapes)) {
      for (String shape : shapes) {
        for (String view : List.of("review", "template", "layup", "cutting", "drilling", "grips")) {
          HttpResponse<String> answer = served.get("/shape/" + shape + "/view?name=" + view);
          assertEquals(200, answer.statusCode(), shape + " " + view + answer.body());
        }
      }
      for (String view : List.of("drawing", "review", "template", "cutting", "drilling")) {
        byte[] kept = served.bytes("/shape/dunlin.yaml/view?save=true&name=" + view);
        String head = new String(kept, 0, 4, java.nio.charset.StandardCharsets.ISO_8859_1);
        assertEquals(view.equals("drawing") ? "\u0089PNG" : "%PDF", head, view);
      }
      assertEquals(422, served.get("/shape/dunlin.yaml/view?name=cockpit").statusCode());
      assertTrue(served.faults.isEmpty(), served.faults.toString());
    }
  }

  @Test
  void aHandleThatIsDraggedWritesWholeMillimetresAndIsOneStep() throws Exception {
    Files.writeString(
        folder.resolve("knob.yaml"),
        """
        felloe: 1
        outline:
          round: {diameter: 200}
        holes:
          - at: [40, 30] # a lamp
            diameter: 8
        stock: {material: birch-plywood, thickness: 6}
        """);
    try (Served served = Served.empty(folder, false)) {
      for (String x : List.of("41.2", "45.3", "51.6")) {
        served.act(
            "knob.yaml",
            Map.of("act", "drag", "path", "holes[0].at", "x", x, "y", "-12.4", "hand", "d1"));
      }
      JsonNode state = served.state("knob.yaml");
      assertTrue(state.get("text").asText().contains("- at: [52, -12] # a lamp"), state.toString());
      JsonNode near =
          served.act(
              "knob.yaml",
              Map.of("act", "drag", "path", "holes[0].at", "x", "1.9", "y", "50", "hand", "d2"));
      assertTrue(near.get("text").asText().contains("at: [0, 50]"), "it goes onto the axis");
      JsonNode fine =
          served.act(
              "knob.yaml",
              Map.of("act", "drag", "path", "holes[0].at", "x", "1.94", "y", "50", "fine", "true"));
      assertTrue(fine.get("text").asText().contains("at: [1.9, 50]"));
    }
  }

  @Test
  void aClockPositionIsDraggedRoundTheHub() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      JsonNode state =
          served.act(
              HERON,
              Map.of(
                  "act",
                  "drag",
                  "path",
                  "windows[0].derived.spokes[0].clock",
                  "x",
                  "120",
                  "y",
                  "-32"));
      assertEquals("3:30", state.get("values").get("windows[0].derived.spokes[0].clock").asText());
    }
  }

  @Test
  void aFamilyIsExchangedForAnother() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      JsonNode state = served.act(HERON, Map.of("act", "add", "path", "outline", "key", "points"));
      assertTrue(state.get("values").has("outline.points.half"), state.get("text").asText());
      assertFalse(state.get("values").has("outline.round.diameter"));
      assertTrue(state.get("text").asText().contains("# Grip screws along the rim"));
    }
  }

  @Test
  void anEarlierStateIsLaidOverTheDrawing() throws Exception {
    try (Served served = Served.with(folder, HERON)) {
      served.act(HERON, write("outline.round.diameter", "300"));
      JsonNode over = Served.json(served.get("/shape/heron.yaml/state?form=0&against=0"));
      assertTrue(over.get("drawing").asText().contains("class=\"over\""));
      assertTrue(over.get("drawing").asText().contains("class=\"new\""));
      assertTrue(over.get("drawing").asText().contains("class=\"gone\""));
    }
  }

  @Test
  void aNewShapeIsBegunFromAFamilyAndFromAnExample() throws Exception {
    try (Served served = Served.empty(folder, false)) {
      String page = served.get("/").body();
      assertTrue(page.contains("Start with this"));
      assertEquals(
          303, served.post("/start", Map.of("family", "points", "name", "wren.yaml")).statusCode());
      assertTrue(served.state("wren.yaml").get("plate").asBoolean());
      assertFalse(served.state("wren.yaml").get("saved").asBoolean());
      assertEquals(
          303, served.post("/start", Map.of("example", "heron", "name", "a.yaml")).statusCode());
      assertEquals(
          422, served.post("/start", Map.of("example", "heron", "name", "a.yaml")).statusCode());
      assertEquals(
          422, served.post("/start", Map.of("family", "oval", "name", "b.yaml")).statusCode());
    }
    assertEquals(List.of(".a.yaml.felloe-unsaved", ".wren.yaml.felloe-unsaved"), names());
  }

  /** Work that is told to stop when the board ends has nothing to report. */
  @Test
  void endingWhileLoadsAreReckonedIsNoFault() throws Exception {
    Served served = Served.with(folder, "heron.yaml");
    try (served) {
      for (int i = 0; i < 600 && !stage(served).equals("first"); i++) {
        Thread.sleep(50);
      }
      assertEquals("first", stage(served), "more is reckoned after the first figures");
    }
    for (int i = 0; i < 600 && isReckoning(); i++) {
      Thread.sleep(50);
    }
    assertFalse(isReckoning());
    assertEquals(List.of(), served.faults);
  }

  private static String stage(Served served) throws Exception {
    return served.state("heron.yaml").get("loads").get("stage").asText();
  }

  private static boolean isReckoning() {
    return Thread.getAllStackTraces().keySet().stream().anyMatch(t -> t.getName().equals("loads"));
  }

  @Test
  void whatIsTickedAtTheBenchIsKeptBesideTheShape() throws Exception {
    try (Served served = Served.with(folder, "dunlin.yaml")) {
      String view = served.get("/shape/dunlin.yaml/view?name=drilling").body();
      java.util.regex.Matcher note =
          java.util.regex.Pattern.compile("checkbox\" data-note=\"([^\"]+)\"").matcher(view);
      assertTrue(note.find(), "there is something to tick");
      String of = note.group(1).replace("&quot;", "\"").replace("&lt;", "<").replace("&amp;", "&");
      served.post("/shape/dunlin.yaml/notes", Map.of("of", of, "is", "done"));
      served.post("/shape/dunlin.yaml/notes", Map.of("of", "hole H1", "is", "5.02: \"good\" # so"));
      JsonNode notes = Served.json(served.get("/shape/dunlin.yaml/notes"));
      assertEquals("done", notes.get(of).asText());
      assertEquals("5.02: \"good\" # so", notes.get("hole H1").asText());
      assertEquals(List.of("dunlin-bench.yaml", "dunlin.yaml"), names());
      served.post("/shape/dunlin.yaml/notes", Map.of("of", of, "is", ""));
      assertFalse(Served.json(served.get("/shape/dunlin.yaml/notes")).has(of));
      String card = served.get("/shape/dunlin.yaml/view?name=card").body();
      assertTrue(card.contains("type=\"text\" data-note="), "there are readings to type");
    }
  }

  @Test
  void aFileOfTheMakersOwnIsNeverTakenForNotes() throws Exception {
    try (Served served = Served.with(folder, "dunlin.yaml")) {
      Path own = Files.copy(Path.of("shapes/avocet.yaml"), folder.resolve("dunlin-bench.yaml"));
      byte[] before = Files.readAllBytes(own);
      HttpResponse<String> answer =
          served.post("/shape/dunlin.yaml/notes", Map.of("of", "hole H1", "is", "5.0"));
      assertEquals(422, answer.statusCode());
      assertTrue(answer.body().contains("another name"), answer.body());
      assertArrayEquals(before, Files.readAllBytes(own));
    }
  }
}
