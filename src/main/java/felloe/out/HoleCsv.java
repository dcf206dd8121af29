package felloe.out;

import felloe.drawing.TextWidth;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Hole;
import felloe.plate.Plate;
import java.nio.charset.StandardCharsets;

/**
 * The hole table as CSV after RFC 4180: a header line, one line a hole in the plate's order, lines
 * ended by CR LF, UTF-8. Columns: label, role, x, y, radius from the hub axis, angle (degrees
 * counter-clockwise from +x, 0 to under 360), diameter; millimetres, four decimals.
 *
 * <p>A label that begins with {@code =}, {@code +}, {@code -} or {@code @} would be run as a
 * formula by a spreadsheet; it is written with an apostrophe before it, which makes it text there.
 * Control characters are dropped from labels.
 */
public final class HoleCsv {

  private static final int DECIMALS = 4;
  private static final String HEADER =
      "label,role,x_mm,y_mm,radius_mm,angle_deg,diameter_mm,length_mm,direction_deg\r\n";

  private HoleCsv() {}

  /** The file's bytes. */
  public static byte[] write(Plate plate) {
    StringBuilder table = new StringBuilder(HEADER);
    for (Hole hole : plate.benchHoles(Double.POSITIVE_INFINITY)) {
      Point at = hole.centre();
      table.append(field(hole.label())).append(',').append(field(hole.role().words()));
      for (double figure : new double[] {at.x(), at.y(), at.norm()}) {
        table.append(',').append(Numbers.fixed(figure, DECIMALS));
      }
      table.append(',').append(Numbers.fixed(at.bearing(), DECIMALS));
      table.append(',').append(Numbers.fixed(hole.diameter(), DECIMALS));
      table.append(',').append(Numbers.fixed(hole.length(), DECIMALS)).append(',');
      hole.slot()
          .ifPresent(
              slot ->
                  table.append(
                      Numbers.fixed(Point.polar(1, slot.direction()).bearing(), DECIMALS)));
      table.append("\r\n");
    }
    return table.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** A text as a field: no control characters, no formula, quoted where it must be. */
  static String field(String text) {
    String shown = TextWidth.shown(text);
    // Spreadsheets skip leading blanks before they look for a formula.
    String start = shown.stripLeading();
    boolean formula = !start.isEmpty() && "=+-@".indexOf(start.charAt(0)) >= 0;
    String safe = formula ? "'" + shown : shown;
    boolean quoted = safe.contains(",") || safe.contains("\"") || !safe.strip().equals(safe);
    return quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
  }
}
