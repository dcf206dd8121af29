package felloe.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import felloe.render.HtmlRenderer;
import felloe.report.MeasureReport;
import felloe.service.HubSurvey;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A hub measured on a page. Its readings are invented: six screws of 5 mm on a circle of 70. */
class CalliperTest {

  private static final String SIX = "1;4;outside;74.98\n2;5;outside;75.03\n3;6;outside;75.00\n";
  private static final String MORE =
      SIX + "1;2;outside;40.02\n3;4;outside;39.97\n5;6;outside;40.00\n1;1;diameter;5.00";

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

  private static Map<String, String> said(String readings) {
    Map<String, String> said = new HashMap<>();
    said.put("holes", "6");
    said.put("on", "screws");
    said.put("readings", readings);
    return said;
  }

  private static JsonNode look(Served served, String readings) throws Exception {
    return Served.json(served.post("/hub/look", said(readings)));
  }

  @Test
  void thePageTellsWhatTheCommandLineTells() throws Exception {
    Path file = folder.resolve("readings");
    Files.writeString(
        file,
        "holes: 6\non: screws\nreadings:\n"
            + " - {from: 1, to: 4, over: outside, reads: 74.98}\n"
            + " - {from: 2, to: 5, over: outside, reads: 75.03}\n"
            + " - {from: 3, to: 6, over: outside, reads: 75.00}\n"
            + " - {from: 1, to: 2, over: outside, reads: 40.02}\n"
            + " - {from: 3, to: 4, over: outside, reads: 39.97}\n"
            + " - {from: 5, to: 6, over: outside, reads: 40.00}\n"
            + " - {hole: 1, over: diameter, reads: 5.00}\n");
    String told = HtmlRenderer.article(MeasureReport.of(HubSurvey.of(file, folder)));
    try (Served served = Served.empty(folder, false)) {
      JsonNode page = look(served, MORE);
      assertEquals(told.replace(file.toString(), "readings"), page.get("article").asText());
      assertTrue(page.get("told").asBoolean());
      assertTrue(page.get("words").asText().contains("6x70-m5"), page.toString());
      assertEquals(0, page.get("faults").size());
    }
  }

  @Test
  void thePatternTightensAndTheNextReadingIsAskedFor() throws Exception {
    try (Served served = Served.empty(folder, false)) {
      JsonNode none = look(served, "");
      assertTrue(none.get("next").size() > 0, none.toString());
      assertFalse(none.get("told").asBoolean());
      assertEquals("", none.get("article").asText());
      assertTrue(none.get("sketch").asText().startsWith("<svg"));
      JsonNode more = look(served, MORE);
      assertTrue(more.get("sketch").asText().contains("class=\"doubt\""));
      assertFalse(more.get("words").asText().isEmpty());
    }
  }

  @Test
  void wrongReadingsAreToldBesideTheirRow() throws Exception {
    try (Served served = Served.empty(folder, false)) {
      for (String wrong :
          List.of(
              "1;4;outside;many",
              "1;9;outside;70",
              "1;4;about;70",
              "1;4;outside;-3",
              "1;1;outside;70",
              "1;4;outside;70}, {",
              "\u0000;4;outside;70",
              "1;4;outside;1e400")) {
        JsonNode told = look(served, SIX + wrong);
        assertFalse(told.has("refused"), wrong + told);
        assertEquals(3, told.get("faults").get(0).get("row").asInt(), wrong + told);
        assertFalse(told.get("faults").get(0).get("words").asText().isEmpty());
      }
      JsonNode slip = look(served, MORE.replace("40.02", "46.02"));
      assertEquals(3, slip.get("faults").get(0).get("row").asInt(), slip.toString());
      assertTrue(slip.get("faults").get(0).get("words").asText().contains("slip"));
      assertTrue(served.faults.isEmpty(), served.faults.toString());
    }
  }

  @Test
  void aHubIsSavedNeverOverAnotherAndAskedForAfterwards() throws Exception {
    try (Served served = Served.with(folder, "heron.yaml")) {
      Map<String, String> said = said(MORE);
      for (String name : List.of("heron.yaml", "../hub.yaml", "hub", "", "a/b.yaml", ".x.yaml")) {
        said.put("name", name);
        assertEquals(422, served.post("/hub/save", said).statusCode(), name);
      }
      said.put("name", "barn-hub.yaml");
      said.put("thread", "M5");
      HttpResponse<String> saved = served.post("/hub/save", said);
      assertEquals(200, saved.statusCode(), saved.body());
      String text = Files.readString(folder.resolve("barn-hub.yaml"));
      assertTrue(text.contains("felloe-hub: 1"), text);
      assertEquals(422, served.post("/hub/save", said).statusCode());
      String asked = served.get(Served.json(saved).get("ask").asText()).body();
      assertTrue(asked.contains("value=\"barn-hub.yaml\" selected"), asked);
      assertFalse(served.get("/start").body().contains("/shape/barn-hub.yaml"));
      said.put("readings", "");
      said.put("name", "other.yaml");
      assertEquals(422, served.post("/hub/save", said).statusCode());
      assertTrue(served.faults.isEmpty(), served.faults.toString());
    }
  }

  @Test
  void oddNumbersOfHolesAreToldAndAskedAgain() throws Exception {
    try (Served served = Served.empty(folder, false)) {
      for (String holes : List.of("0", "-3", "many", "100000", "%3Cb%3E", "2.5", "%5B1%5D")) {
        String page = served.get("/hub?on=holes&holes=" + holes).body();
        assertTrue(page.contains("aria-invalid"), holes);
        assertFalse(page.contains("<b>"), holes);
      }
      assertEquals(404, served.get("/hub/look").statusCode());
      assertEquals(404, served.post("/hub/else", Map.of()).statusCode());
      assertTrue(served.faults.isEmpty(), served.faults.toString());
    }
  }

  @Test
  void aPersonMeasuresAndSaves() throws Exception {
    Browser browser = browser();
    try (Served served = Served.empty(folder, false)) {
      browser.size(1200, 1000);
      browser.driver.get(served.root() + "/hub");
      browser.find("#holes").sendKeys("6");
      browser.find("[value=screws]").click();
      browser.barriers("holes");
      browser.shoot("hub-holes");
      browser.find("button.main").click();
      browser.find("svg.hub");
      for (int i = 0; i < 6; i++) {
        WebElement row = browser.find("#rows li:last-child");
        String from = browser.value(row, "from");
        String to = browser.value(row, "to");
        String over = browser.value(row, "over");
        row.findElement(By.cssSelector("[data-part=reads]"))
            .sendKeys(reading(from, to, over) + Keys.ENTER);
        int rows = i + 2;
        browser.await(
            () -> browser.driver.findElements(By.cssSelector("#rows li")).size() >= rows,
            "the next reading");
      }
      browser.await(() -> browser.text("#sofar").contains("6x70-m5"), "the hub");
      for (boolean dark : List.of(false, true)) {
        browser.dark(dark);
        for (int width : List.of(360, 768, 1920)) {
          browser.size(width, 1200);
          browser.shoot("hub-" + width + (dark ? "-dark" : "-light"));
          browser.barriers("hub at " + width);
          assertEquals(
              0L,
              browser.run(
                  "return Math.max(0, document.documentElement.scrollWidth - window.innerWidth)"));
        }
      }
      browser.dark(false);
      browser.find("#save").click();
      browser.find("#begin").click();
      browser.find("#q-hub");
      assertTrue(Files.exists(folder.resolve("my-hub.yaml")));
    } finally {
      browser.dark(false);
    }
  }

  /** What a calliper reads on the invented hub, a little off. */
  private static String reading(String from, String to, String over) {
    if (over.equals("diameter")) {
      return "5.00";
    }
    double turn = (Integer.parseInt(to) - Integer.parseInt(from)) * Math.PI / 6;
    double side = over.equals("outside") ? 5 : over.equals("inside") ? -5 : 0;
    double reads = Math.abs(70 * Math.sin(turn)) + side + 0.01;
    return String.format(java.util.Locale.ROOT, "%.2f", reads);
  }
}
