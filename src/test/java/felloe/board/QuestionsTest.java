package felloe.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The questions, as a page asks them and in a browser. */
class QuestionsTest {

  private static Browser browser;

  @TempDir private Path folder;

  private static Browser browser() throws Exception {
    if (browser == null) {
      browser = Browser.open();
    }
    return browser;
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static Map<String, String> said() {
    Map<String, String> said = new HashMap<>();
    said.put("name", "plover.yaml");
    said.put("outline", "four-sided");
    said.put("hub", "6x70-m5");
    said.put("stock", "aluminium-6082-t6");
    said.put("width", "300");
    said.put("hand", "medium");
    said.put("legs", "little");
    said.put("use", "usual");
    said.put("holes", "by_hand");
    return said;
  }

  @Test
  void answersLeadToAWheelOnTheBoardThatIsNotSavedYet() throws Exception {
    try (Served served = Served.empty(folder, false)) {
      HttpResponse<String> begun = served.post("/start/questions", said());
      assertEquals(303, begun.statusCode(), begun.body());
      String way = begun.headers().firstValue("Location").orElseThrow();
      assertTrue(served.get(way).body().contains("It is being made"));
      JsonNode now = Served.json(served.get(way + "/state"));
      for (int i = 0; i < 600 && !now.get("done").asBoolean(); i++) {
        assertFalse(now.get("words").asText().isEmpty());
        Thread.sleep(100);
        now = Served.json(served.get(way + "/state"));
      }
      String page = served.get(way).body();
      assertTrue(page.contains("passes its review"), page);
      assertTrue(page.contains("/shape/plover.yaml"), page);
      JsonNode state = served.state("plover.yaml");
      assertFalse(state.get("saved").asBoolean());
      assertTrue(state.get("text").asText().contains("aluminium-6082-t6"));
      assertFalse(Files.exists(folder.resolve("plover.yaml")));
      assertTrue(served.faults.isEmpty());
    }
  }

  @Test
  void whatIsIllSaidIsAskedAgainBesideIt() throws Exception {
    try (Served served = Served.with(folder, "heron.yaml")) {
      for (Map.Entry<String, String> ill :
          Map.of(
                  "name", "heron.yaml",
                  "outline", "<b>",
                  "hub", "../x.yaml",
                  "stock", "acrylic",
                  "width", "9000",
                  "hand", "",
                  "legs", "x",
                  "use", "soft",
                  "holes", "x")
              .entrySet()) {
        Map<String, String> said = said();
        said.put(ill.getKey(), ill.getValue());
        HttpResponse<String> again = served.post("/start/questions", said);
        assertEquals(422, again.statusCode(), ill.toString());
        assertTrue(again.body().contains("class=\"fault\""), ill.toString());
        assertFalse(again.body().contains("<b>"));
      }
      assertEquals(404, served.get("/start/questions/77").statusCode());
      assertEquals(404, served.get("/start/questions/x/state").statusCode());
      assertTrue(served.faults.isEmpty());
    }
  }

  @Test
  void whoDoesNotKnowTheHubIsLedToTheCalliper() throws Exception {
    try (Served served = Served.empty(folder, false)) {
      Map<String, String> said = said();
      said.put("hub", "measure");
      HttpResponse<String> led = served.post("/start/questions", said);
      assertEquals("/hub", led.headers().firstValue("Location").orElseThrow());
    }
  }

  @Test
  void aPersonAnswersAndWaitsAndLooks() throws Exception {
    Browser browser = browser();
    try (Served served = Served.empty(folder, false)) {
      for (boolean dark : List.of(false, true)) {
        browser.dark(dark);
        for (int width : List.of(360, 768, 1920)) {
          String where = width + (dark ? "-dark" : "-light");
          browser.size(width, 1200);
          browser.driver.get(served.root() + "/start/questions");
          browser.find(".questions");
          browser.shoot("questions-" + where);
          browser.barriers("questions " + where);
          assertEquals(0L, over(browser), "the questions are wider than the window at " + where);
        }
      }
      browser.dark(false);
      browser.find("button.main").click();
      browser.find("#stage");
      browser.shoot("questions-waiting");
      browser.barriers("waiting");
      browser.find("#open");
      browser.shoot("questions-made");
      browser.barriers("made");
      browser.find("#open").click();
      browser.find("#plate svg.plate");
      browser.shoot("questions-board");
      assertFalse(browser.text("#verdict").contains("FAIL"));
    } finally {
      browser.dark(false);
    }
  }

  private static Object over(Browser browser) {
    return browser.run(
        "return Math.max(0, document.documentElement.scrollWidth - window.innerWidth)");
  }
}
