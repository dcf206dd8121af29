package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.plate.DemoPlates;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The hole table parsed back by the grammar of RFC 4180, section 2. */
class HoleCsvTest {

  @Test
  void everyHoleReadsBackWithinATenThousandth() {
    for (Plate plate : DemoPlates.all()) {
      List<List<String>> rows = parse(text(plate));
      assertEquals(
          List.of(
              "label",
              "role",
              "x_mm",
              "y_mm",
              "radius_mm",
              "angle_deg",
              "diameter_mm",
              "length_mm",
              "direction_deg"),
          rows.get(0));
      List<Hole> holes = plate.benchHoles(Double.POSITIVE_INFINITY);
      assertEquals(holes.size() + 1, rows.size());
      for (int i = 1; i < rows.size(); i++) {
        Hole hole = holes.get(i - 1);
        List<String> row = rows.get(i);
        double x = Double.parseDouble(row.get(2));
        double y = Double.parseDouble(row.get(3));
        assertEquals(hole.label(), row.get(0));
        assertEquals(hole.role().words(), row.get(1));
        assertEquals(hole.centre().x(), x, 0.5001e-4);
        assertEquals(hole.centre().y(), y, 0.5001e-4);
        assertEquals(Math.hypot(x, y), Double.parseDouble(row.get(4)), 2e-4);
        assertEquals(hole.diameter(), Double.parseDouble(row.get(6)), 0.5001e-4);
        double angle = Double.parseDouble(row.get(5));
        assertTrue(angle >= 0 && angle < 360, row.get(5));
        double radius = Double.parseDouble(row.get(4));
        assertEquals(x, radius * Math.cos(Math.toRadians(angle)), 1e-3);
        assertEquals(y, radius * Math.sin(Math.toRadians(angle)), 1e-3);
      }
    }
  }

  @Test
  void aLineReadsAsAMakerExpects() {
    String[] lines = text(DemoPlates.heron()).split("\r\n");
    assertEquals("H1,hub bolt,0.0000,35.0000,35.0000,90.0000,5.0000,5.0000,", lines[1]);
    assertEquals("B1,bore,0.0000,0.0000,0.0000,0.0000,50.0000,50.0000,", lines[7]);
  }

  @Test
  void aHairBelowTheAxisIsNoughtDegreesAndNotThreeHundredAndSixty() {
    assertEquals("0.0000", parse(text(hole("a", new Point(50, -1e-7)))).get(1).get(5));
    assertEquals("0.0000", parse(text(hole("a", new Point(50, -1e-7)))).get(1).get(3));
    assertEquals("359.9989", parse(text(hole("a", new Point(50, -1e-3)))).get(1).get(5));
    assertEquals("180.0000", parse(text(hole("a", new Point(-50, -1e-9)))).get(1).get(5));
  }

  @Test
  void labelsOfAnyKindStayOneFieldAndAreNeverAFormula() {
    for (String text : HostileText.all()) {
      List<List<String>> rows = parse(text(hole(text, new Point(10, 10))));
      assertEquals(2, rows.size());
      assertEquals(9, rows.get(1).size());
      String label = rows.get(1).get(0);
      assertFalse(label.strip().matches("[=+\\-@].*"), label);
      String legal = HostileText.legal(text);
      assertEquals(legal.strip().matches("[=+\\-@].*") ? "'" + legal : legal, label);
    }
    for (String start : List.of("=", "+", "-", "@", "\t=", " =")) {
      String label = parse(text(hole(start + "1", new Point(10, 10)))).get(1).get(0);
      assertEquals("'" + start.replace('\t', ' ') + "1", label);
    }
  }

  @Test
  void theTableIsTheSameInAnyLocale() {
    Places.everywhere(() -> HoleCsv.write(DemoPlates.heron()));
  }

  private static Plate hole(String label, Point centre) {
    Hole hole = new Hole(label, HoleRole.OTHER, centre, 5, Place.BUILT_IN);
    return DemoPlates.named("Knot", List.of(), List.of(hole));
  }

  private static String text(Plate plate) {
    return new String(HoleCsv.write(plate), StandardCharsets.UTF_8);
  }

  /** The grammar of RFC 4180: records end in CR LF, quotes are doubled within quotes. */
  private static List<List<String>> parse(String text) {
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quoted) {
        if (c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
          field.append('"');
          i++;
        } else if (c == '"') {
          quoted = false;
        } else {
          field.append(c);
        }
      } else if (c == '"') {
        assertEquals(0, field.length(), "a quote within a bare field");
        quoted = true;
      } else if (c == ',') {
        row.add(field.toString());
        field.setLength(0);
      } else if (c == '\r') {
        assertEquals('\n', text.charAt(++i));
        row.add(field.toString());
        field.setLength(0);
        rows.add(row);
        row = new ArrayList<>();
      } else {
        assertFalse(c == '\n', "a bare line feed");
        field.append(c);
      }
    }
    assertTrue(row.isEmpty() && field.length() == 0, "the last record is not ended");
    return rows;
  }
}
