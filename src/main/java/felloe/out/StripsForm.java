package felloe.out;

import felloe.drawing.TextWidth;
import felloe.geometry.Numbers;
import felloe.job.Readings;
import felloe.plate.Plate;
import java.nio.charset.StandardCharsets;

/**
 * A file of test strips (YAML) whose readings are still blank: what the job card asks for, strip by
 * strip in the same order, to be typed in behind the colons.
 */
public final class StripsForm {

  private StripsForm() {}

  /** The file's bytes. */
  public static byte[] write(Plate plate, Readings.Strips strips) {
    StringBuilder text = new StringBuilder();
    text.append("# Test strips of ")
        .append(TextWidth.shown(plate.title()))
        .append(", revision ")
        .append(plate.revision())
        .append(". Type each reading behind its colon, in mm;\n")
        .append("# the load with its unit, such as 648 N, or 66 kg for a mass that hung on it.\n")
        .append("# Take out the line of a strip that was not broken. Span as it was, in mm.\n")
        .append("method: three-point\n")
        .append("span: ")
        .append(Numbers.brief(strips.span(), 1))
        .append("\nstrips:\n");
    for (String label : strips.labels()) {
      text.append("  - {label: ")
          .append(label)
          .append(", width: , thickness: [], load: , deflection: }\n");
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
