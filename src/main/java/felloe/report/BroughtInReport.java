package felloe.report;

import static felloe.document.Quantity.brief;

import felloe.bringin.PlateOutline;
import felloe.document.Phrase;
import felloe.geometry.Box;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/** An outline that was brought in, in sentences. */
public final class BroughtInReport {

  private BroughtInReport() {}

  /**
   * What was found, what was passed over, and how far it is from the source.
   *
   * @param plate what the shape file makes
   * @param apart the greatest distance between the source's lines and the plate's, mm
   */
  public static List<String> of(PlateOutline drawn, Plate plate, double apart) {
    Box box = plate.box();
    List<String> lines = new ArrayList<>();
    lines.add(
        Phrase.of(
            "The outline is {} wide and {} high, with {} and {}. Its axis is {}.",
            brief(box.width(), 2, "mm"),
            brief(box.height(), 2, "mm"),
            counted(plate.windows().size(), "opening"),
            counted(plate.holes().size(), "hole"),
            drawn.centre()));
    lines.add(
        Phrase.of("No line of the source is farther from it than {}.", brief(apart, 3, "mm")));
    lines.addAll(drawn.notes());
    return List.copyOf(lines);
  }

  private static String counted(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }
}
