package felloe.drawing;

import felloe.geometry.Numbers;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the plot of thicknesses shows.
 *
 * @param title its heading
 * @param trials thicknesses, thinnest first
 * @param deflection the most that is wanted, mm; empty when none was named
 * @param margin the least that is wanted
 */
public record ThicknessView(
    String title, List<Trial> trials, OptionalDouble deflection, double margin) {

  public ThicknessView {
    trials = List.copyOf(trials);
    Numbers.finite("margin", margin);
  }

  /**
   * A thickness.
   *
   * @param thickness mm
   * @param deflection of the hands at the most, mm
   * @param margin of the worst case
   * @param words the thickness and the mass, a line each
   * @param met whether it does all that is wanted
   * @param own whether it is the plate's own
   */
  public record Trial(
      double thickness,
      double deflection,
      double margin,
      List<String> words,
      boolean met,
      boolean own) {
    /** Refuses figures that are not finite. */
    public Trial {
      words = List.copyOf(words);
      Numbers.finite("thickness", thickness);
      Numbers.finite("deflection", deflection);
      Numbers.finite("margin", margin);
    }
  }
}
