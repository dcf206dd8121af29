package felloe.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import felloe.bringin.InventedPhoto;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Outlines that are sent to the board. All are invented. */
class OutlineTest {

  private static final String HEAD =
      "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm'"
          + " viewBox='-200 -200 400 400'>";

  private static final String SVG =
      HEAD
          + "<path d='M-140,-90 H140 V90 H-140 Z'/>"
          + "<circle cx='0' cy='0' r='19'/><circle cx='-35' cy='0' r='2.9'/>"
          + "<circle cx='35' cy='0' r='2.9'/></svg>";

  private static final String TABLE = "x,y,corner\n-140,-90,x\n140,-90,x\n140,90,x\n-140,90,x\n";

  private static final String DXF =
      String.join(
          "\n",
          "0",
          "SECTION",
          "2",
          "HEADER",
          "9",
          "$INSUNITS",
          "70",
          "4",
          "0",
          "ENDSEC",
          "0",
          "SECTION",
          "2",
          "ENTITIES",
          "0",
          "LWPOLYLINE",
          "8",
          "0",
          "90",
          "4",
          "70",
          "1",
          "10",
          "-140",
          "20",
          "-90",
          "10",
          "140",
          "20",
          "-90",
          "10",
          "140",
          "20",
          "90",
          "10",
          "-140",
          "20",
          "90",
          "0",
          "CIRCLE",
          "8",
          "0",
          "10",
          "0",
          "20",
          "0",
          "40",
          "19",
          "0",
          "ENDSEC",
          "0",
          "EOF",
          "");

  @TempDir private Path folder;

  private static HttpResponse<String> send(Served served, String query, byte[] bytes)
      throws Exception {
    return served.send("/start/outline?" + query, bytes);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void aDrawingAndATableOpenOnTheBoardNotSavedYet() throws Exception {
    try (Served served = Served.empty(folder, false)) {
      Map<String, String> files = new LinkedHashMap<>();
      files.put("cut.svg", SVG);
      files.put("cut.dxf", DXF);
      files.put("cut.csv", TABLE);
      int i = 0;
      for (Map.Entry<String, String> file : files.entrySet()) {
        String name = "part" + i++ + ".yaml";
        HttpResponse<String> told =
            send(served, "file=" + file.getKey() + "&name=" + name, bytes(file.getValue()));
        assertEquals(200, told.statusCode(), told.body());
        JsonNode json = Served.json(told);
        assertTrue(json.get("words").get(0).asText().contains("280 mm wide"), told.body());
        assertEquals("/shape/" + name, json.get("to").asText());
        assertTrue(served.state(name).get("plate").asBoolean());
        assertFalse(Files.exists(folder.resolve(name)));
      }
      assertTrue(served.faults.isEmpty(), served.faults.toString());
    }
  }

  @Test
  void widthAndScaleSayItsSize() throws Exception {
    try (Served served = Served.empty(folder, false)) {
      String wide = send(served, "file=a.svg&name=a.yaml&width=320", bytes(SVG)).body();
      assertTrue(wide.contains("320 mm wide"), wide);
      String inch = send(served, "file=b.svg&name=b.yaml&scale=0.5", bytes(SVG)).body();
      assertTrue(inch.contains("140 mm wide"), inch);
      for (String wrong :
          List.of("width=3&x=", "width=many", "scale=0", "scale=1&width=300", "gap=99")) {
        HttpResponse<String> told = send(served, "file=c.svg&name=c.yaml&" + wrong, bytes(SVG));
        assertEquals(422, told.statusCode(), wrong + told.body());
      }
    }
  }

  @Test
  void theSheetsOfMarksForAPhotoCanBePrintedFromThePage() throws Exception {
    try (Served served = Served.empty(folder, false)) {
      HttpResponse<String> sheets = served.get("/start/photo-frame");
      assertEquals(200, sheets.statusCode());
      assertTrue(sheets.body().startsWith("%PDF-"));
      assertTrue(served.get("/start").body().contains("/start/photo-frame"));
    }
  }

  @Test
  void tenBrokenFilesAreRefusedInWords() throws Exception {
    StringBuilder deep = new StringBuilder(HEAD);
    deep.append("<g>".repeat(200_000));
    Map<String, byte[]> broken = new LinkedHashMap<>();
    broken.put("none.svg", new byte[0]);
    broken.put("cut.svg", bytes(SVG.substring(0, SVG.length() / 2)));
    broken.put("deep.svg", bytes(deep.toString()));
    broken.put(
        "reads.svg",
        bytes(
            "<?xml version='1.0'?><!DOCTYPE svg [<!ENTITY a SYSTEM 'file:///etc/passwd'>]>"
                + "<svg xmlns='http://www.w3.org/2000/svg'><text>&a;</text></svg>"));
    broken.put(
        "laughs.svg",
        bytes(
            "<?xml version='1.0'?><!DOCTYPE svg [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b"
                + " '&a;&a;&a;&a;'>]><svg xmlns='http://www.w3.org/2000/svg'>&b;</svg>"));
    broken.put("open.svg", bytes(HEAD + "<path d='M-140,-90 H140 V90'/></svg>"));
    broken.put("half.dxf", bytes(DXF.substring(0, 120)));
    broken.put("endless.csv", bytes("x,y\n1e400,3\nNaN,2\n"));
    broken.put("words.csv", bytes("here,are\nno,points\n"));
    broken.put("picture.png", new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2});
    broken.put("crossed.csv", bytes("x,y\n-140,-90\n140,90\n140,-90\n-140,90\n-140,-90\n"));
    try (Served served = Served.empty(folder, false)) {
      for (Map.Entry<String, byte[]> one : broken.entrySet()) {
        HttpResponse<String> told =
            send(served, "name=x.yaml&file=" + one.getKey(), one.getValue());
        assertEquals(422, told.statusCode(), one.getKey() + told.body());
        assertFalse(Served.json(told).get("refused").asText().isEmpty(), one.getKey());
        assertFalse(told.body().contains("root:"), one.getKey());
      }
      byte[] large = new byte[(8 << 20) + 1];
      assertEquals(413, send(served, "name=x.yaml&file=l.svg", large).statusCode());
      assertTrue(served.faults.isEmpty(), served.faults.toString());
      try (var left = Files.list(folder)) {
        assertEquals(0, left.count());
      }
    }
  }

  @Test
  void namesLeadNowhereElseAndWriteNothingIntoTheText() throws Exception {
    try (Served served = Served.with(folder, "heron.yaml")) {
      for (String name : List.of("heron.yaml", "..%2Fx.yaml", "x", "", "a%2Fb.yaml")) {
        HttpResponse<String> told = send(served, "file=a.svg&name=" + name, bytes(SVG));
        assertEquals(422, told.statusCode(), name + told.body());
      }
      String odd = "..%2F%0Atitle:%20odd%0A%23.svg";
      HttpResponse<String> told = send(served, "file=" + odd + "&name=o.yaml", bytes(SVG));
      assertEquals(200, told.statusCode(), told.body());
      String text = served.state("o.yaml").get("text").asText();
      assertFalse(text.contains("\ntitle: odd"), text);
      assertTrue(served.faults.isEmpty(), served.faults.toString());
    }
  }

  @Test
  void aPersonChoosesAFile() throws Exception {
    try (Served served = Served.empty(folder, false);
        Browser browser = Browser.open()) {
      Path file = folder.resolve("cut out.svg");
      Files.writeString(file, SVG);
      browser.size(360, 1400);
      browser.driver.get(served.root() + "/start");
      browser.find("#file").sendKeys(file.toAbsolutePath().toString());
      browser.find("#outline button").click();
      browser.find("#to-board");
      assertTrue(browser.text("#brought").contains("280 mm wide"));
      browser.barriers("brought in");
      browser.shoot("outline-360");
      browser.find("#to-board").click();
      browser.find("#plate svg.plate");
      assertTrue(browser.driver.getCurrentUrl().endsWith("/shape/cut-out.yaml"));
    }
  }

  /** A rendered photo of an invented wheel 9 mm thick. */
  @Test
  void aPersonChoosesAPhotoAndSeesWhatWasFoundOnIt() throws Exception {
    try (Served served = Served.empty(folder, false);
        Browser browser = Browser.open()) {
      Path file = folder.resolve("wheel.jpg");
      Files.write(file, InventedPhoto.small());
      browser.size(768, 1400);
      browser.driver.get(served.root() + "/start");
      browser.find("#file").sendKeys(file.toAbsolutePath().toString());
      browser.find("#outline button").click();
      browser.await(() -> browser.text("#brought").contains("Thickness"), "what is lacking");
      browser.find("#thickness").sendKeys("9");
      browser.find("#outline button").click();
      browser.find("#brought img");
      assertTrue(browser.text("#brought").contains("in 95 of 100 photos"));
      browser.barriers("a photo brought in");
      browser.driver.executeScript("document.getElementById('brought').scrollIntoView()");
      browser.shoot("outline-photo-768");
      browser.find("#to-board").click();
      browser.find("#plate svg.plate");
      JsonNode state = served.state("wheel.yaml");
      assertTrue(state.get("plate").asBoolean());
      assertTrue(state.get("text").asText().contains("thickness: 9"), state.get("text").asText());
    }
  }
}
