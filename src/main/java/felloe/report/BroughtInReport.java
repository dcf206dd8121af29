package felloe.report;

import static felloe.document.Quantity.brief;

import felloe.bringin.PhotoTold;
import felloe.bringin.PlateOutline;
import felloe.document.Phrase;
import felloe.geometry.Box;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An outline that was brought in, in sentences. */
public final class BroughtInReport {

  private BroughtInReport() {}

  /**
   * What was found, what was passed over, and how far it is from the source.
   *
   * @param plate what the shape file makes
   * @param apart the greatest distance between the source's lines and the plate's, mm
   * @param photo how well it was measured, when the source is a photo
   */
  public static List<String> of(
      PlateOutline drawn, Plate plate, double apart, Optional<PhotoTold> photo) {
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
        Phrase.of(
            photo.isPresent()
                ? "No line that was measured is farther from it than {}."
                : "No line of the source is farther from it than {}.",
            brief(apart, 3, "mm")));
    photo.ifPresent(told -> lines.addAll(measured(told)));
    lines.addAll(drawn.notes());
    return List.copyOf(lines);
  }

  private static List<String> measured(PhotoTold told) {
    List<String> lines = new ArrayList<>();
    lines.add(
        Phrase.of(
            "Measured on a photo: its width of {} is right within {} in 95 of 100 photos{}.",
            brief(told.width(), 1, "mm"),
            brief(told.widthBound(), 2, "mm"),
            told.holeBound().isPresent()
                ? Phrase.of(
                    ", the diameter of each round hole within {}",
                    brief(told.holeBound().getAsDouble(), 2, "mm"))
                : ""));
    lines.add(
        Phrase.of(
            "That holds for sheets printed at true scale (measure their bars) and a part {} thick:"
                + " the scale is then right within {}.",
            brief(told.thickness(), 2, "mm"),
            brief(100 * told.scale(), 2, "%")));
    lines.add(
        Phrase.of(
            "{} on {}; {} left over at their sides; {} to a millimetre; camera {} from straight"
                + " down, {} above the paper within {}.",
            counted(told.marks(), "mark"),
            counted(told.sheets(), "sheet"),
            brief(told.residual(), 2, "pixels"),
            brief(told.perMm(), 1, "pixels"),
            brief(told.oblique(), 0, "degrees"),
            brief(told.height(), 0, "mm"),
            brief(told.heightBound(), 0, "mm")));
    lines.add("Look at the overlay: red lines must lie on the part's upper edges, all of them.");
    lines.add(
        "A photo can take a bend wrongly, now and then by half a millimetre, and miss a deep hole"
            + " whose wall is no darker than the face: follow the red lines of the overlay round"
            + " every bend, count the holes, and measure on the part what matters.");
    return lines;
  }

  private static String counted(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }
}
