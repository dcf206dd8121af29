package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import felloe.geometry.Arc;
import felloe.geometry.AreaProperties;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.Segment;
import felloe.plate.DemoPlates;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.Limit;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.plate.Window;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** JSON read back with an independent parser (Jackson). */
class JsonTest {

  private static final ObjectMapper PARSER = new ObjectMapper();

  @Test
  void thePlateReadsBackAsTheSameContoursWithinAMillionth() throws Exception {
    for (Plate plate : DemoPlates.all()) {
      JsonNode shape = PARSER.readTree(JsonWriter.write(ShapeJson.of(plate)));
      assertSame(plate.outline(), contour(shape.get("outline").get("segments")));
      assertEquals(plate.windows().size(), shape.get("windows").size());
      for (int i = 0; i < plate.windows().size(); i++) {
        Window window = plate.windows().get(i);
        JsonNode node = shape.get("windows").get(i);
        assertEquals(window.label(), node.get("label").asText());
        assertSame(window.contour(), contour(node.get("segments")));
      }
      for (int i = 0; i < plate.holes().size(); i++) {
        Hole hole = plate.holes().get(i);
        JsonNode node = shape.get("holes").get(i);
        assertEquals(hole.label(), node.get("label").asText());
        assertEquals(hole.role().name().toLowerCase(Locale.ROOT), node.get("role").asText());
        assertEquals(hole.centre().x(), node.get("x").asDouble(), 1e-9);
        assertEquals(hole.centre().y(), node.get("y").asDouble(), 1e-9);
        assertEquals(hole.diameter(), node.get("diameter").asDouble(), 1e-9);
      }
    }
  }

  @Test
  void randomContoursReadBackAsTheSameContoursWithinAMillionth() throws Exception {
    for (long seed = 0; seed < 200; seed++) {
      Contour contour = RandomShapes.contour(seed, 10 + 7 * seed);
      Plate heron = DemoPlates.heron();
      Plate plate =
          new Plate(
              "knot",
              "Knot",
              "00000000",
              contour,
              List.of(),
              List.of(),
              List.of(),
              Optional.empty(),
              heron.stock(),
              heron.making(),
              List.of(),
              List.of());
      JsonNode shape = PARSER.readTree(JsonWriter.write(ShapeJson.of(plate)));
      assertSame(contour, contour(shape.get("outline").get("segments")));
    }
  }

  @Test
  void figuresAreThoseOfTheFinishedPlateAboutItsCentroid() throws Exception {
    Plate plate = DemoPlates.bittern();
    JsonNode figures = PARSER.readTree(JsonWriter.write(ShapeJson.of(plate))).get("figures");
    AreaProperties central = plate.region().properties().central();
    assertEquals(central.area(), figures.get("area").asDouble(), 1e-8);
    // A circle of 270 mm: closed form.
    assertEquals(Math.PI * 270, figures.get("perimeter").asDouble(), 1e-8);
    assertEquals(central.ixx(), figures.get("ixx").asDouble(), 1e-7);
    assertEquals(central.iyy(), figures.get("iyy").asDouble(), 1e-7);
    assertEquals(central.ixx() + central.iyy(), figures.get("polar").asDouble(), 1e-6);
    // Three-fold symmetry: the centroid lies on the axis and the ellipse of inertia is a circle.
    assertEquals(0, figures.get("centroid").get(0).asDouble(), 1e-6);
    assertEquals(0, figures.get("centroid").get(1).asDouble(), 1e-6);
    assertEquals(1, figures.get("ixx").asDouble() / figures.get("iyy").asDouble(), 1e-7);
    assertEquals(
        figures.get("area").asDouble() * 6 * 2.70 / 1000, figures.get("mass").asDouble(), 1e-6);
  }

  @Test
  void findingsReadBackWithTheWorstVerdictOnTop() throws Exception {
    Limit limit = new Limit(Limit.Sense.AT_LEAST, 2, "handbook, \"from memory\"", true);
    Finding caution =
        new Finding(
            "edge-distance",
            "a hole near an edge tears out",
            Verdict.CAUTION,
            "H3 to outline",
            new Figure("e/D", 1.85, ""),
            Optional.of(limit),
            Optional.of(new Point(1.5, -2)),
            Place.of("heron.yaml", 14, 9),
            "move it inward");
    Finding pass =
        new Finding(
            "mass",
            "a heavy wheel",
            Verdict.PASS,
            "plate",
            new Figure("mass", 312.5, "g"),
            Optional.empty(),
            Optional.empty(),
            Place.BUILT_IN,
            "");
    JsonNode report = PARSER.readTree(JsonWriter.write(FindingsJson.of(List.of(caution, pass))));
    assertEquals("caution", report.get("verdict").asText());
    assertEquals(1, report.get("counts").get("caution").asInt());
    assertEquals(0, report.get("counts").get("fail").asInt());
    JsonNode first = report.get("findings").get(0);
    assertEquals("edge-distance", first.get("rule").asText());
    assertEquals("at-least", first.get("limit").get("sense").asText());
    assertEquals("handbook, \"from memory\"", first.get("limit").get("source").asText());
    assertTrue(first.get("limit").get("overridden").asBoolean());
    assertEquals(-2, first.get("at").get(1).asDouble());
    assertEquals(14, first.get("place").get("line").asInt());
    assertTrue(report.get("findings").get(1).get("limit").isNull());
    assertTrue(report.get("findings").get(1).get("at").isNull());
    assertEquals(
        "pass",
        PARSER.readTree(JsonWriter.write(FindingsJson.of(List.of()))).get("verdict").asText());
  }

  @Test
  void stringsOfAnyKindReadBackCharacterForCharacter() throws Exception {
    for (String text : HostileText.all()) {
      byte[] bytes = JsonWriter.write(Json.object().with(text, text));
      JsonNode read = PARSER.readTree(bytes);
      String wanted = text.equals("broken \ud83d pair \ude97") ? "broken \ufffd pair \ufffd" : text;
      assertEquals(wanted, read.fieldNames().next());
      assertEquals(wanted, read.get(wanted).asText());
      for (byte b : bytes) {
        assertFalse(b >= 0 && b < 32 && b != '\n', "a bare control character");
      }
    }
  }

  @Test
  void whatFitsALineStandsOnOne() {
    Json.Members small = Json.object().with("a", 1).with("b", 2.5, 3).with("c", true);
    assertEquals("{\"a\": 1, \"b\": 2.5, \"c\": true}\n", JsonWriter.text(small));
    assertEquals("[]\n", JsonWriter.text(Json.array(List.of(), x -> Json.text("x"))));
    assertEquals("{}\n", JsonWriter.text(Json.object()));
    String text = JsonWriter.text(Json.object().with("first", "x".repeat(90)).with("second", "y"));
    assertEquals("{\n  \"first\": \"" + "x".repeat(90) + "\",\n  \"second\": \"y\"\n}\n", text);
  }

  @Test
  void numbersThatJsonCannotSayAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> Json.number(Double.NaN, 3));
    assertThrows(IllegalArgumentException.class, () -> Json.number(Double.POSITIVE_INFINITY, 3));
    assertEquals("0\n", JsonWriter.text(Json.number(-1e-12, 6)));
    assertEquals("1000000000000000000000\n", JsonWriter.text(Json.number(1e21, 2)));
  }

  @Test
  void aMemberGivenTwiceIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Json.object().with("a", 1).with("a", 2));
  }

  @Test
  void theTextIsTheSameInAnyLocale() {
    Places.everywhere(
        () -> JsonWriter.text(ShapeJson.of(DemoPlates.heron())).getBytes(StandardCharsets.UTF_8));
  }

  private static List<Segment> contour(JsonNode segments) {
    List<Segment> chain = new ArrayList<>();
    for (JsonNode node : segments) {
      assertEquals(1, node.size());
      if (node.has("line")) {
        chain.add(new Line(point(node.get("line").get(0)), point(node.get("line").get(1))));
      } else {
        JsonNode arc = node.get("arc");
        double sweep = Math.toRadians(arc.get("sweep").asDouble());
        if (Math.abs(Math.abs(sweep) - 2 * Math.PI) < 1e-9) {
          sweep = Math.copySign(2 * Math.PI, sweep);
        }
        chain.add(
            new Arc(
                point(arc.get("from")),
                point(arc.get("to")),
                point(arc.get("centre")),
                arc.get("radius").asDouble(),
                sweep));
      }
    }
    return chain;
  }

  private static Point point(JsonNode node) {
    assertEquals(2, node.size());
    return new Point(node.get(0).asDouble(), node.get(1).asDouble());
  }

  private static void assertSame(Contour exact, List<Segment> read) {
    assertEquals(exact.segments().size(), read.size());
    for (int i = 0; i < read.size(); i++) {
      Segment a = exact.segments().get(i);
      Segment b = read.get(i);
      assertEquals(a.getClass(), b.getClass());
      for (double t : new double[] {0, 0.3, 0.5, 1}) {
        assertTrue(a.at(t).near(b.at(t), 1e-6), "segment " + i);
      }
    }
    // Closed: each end is written with the same digits as the next start.
    for (int i = 0; i < read.size(); i++) {
      assertEquals(read.get(i).to(), read.get((i + 1) % read.size()).from());
    }
  }
}
