package felloe.template;

import felloe.drawing.Correction;
import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the maker measured on the two check bars of a printed page.
 *
 * @param across the horizontal bar as printed, mm
 * @param up the vertical bar as printed, mm
 */
public record BarReading(double across, double up) {

  /** A reading further off than this share is taken for a slip of the rule or the pen. */
  public static final double LARGEST_ERROR = 0.05;

  /** A bar may be off by this share before its reading is worth giving back. */
  private static final double GOOD = 0.003;

  /** How far a bar may be off before its reading is worth giving back, mm. */
  public static double good(double bar) {
    return Math.max(0.2, Math.round(10 * GOOD * bar) / 10.0);
  }

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public BarReading {
    Numbers.finite("across", across);
    Numbers.finite("up", up);
  }

  /**
   * The correction that makes the next print true.
   *
   * @param nominal true length of both bars, mm
   * @param place where the reading was given
   * @throws BadInput when a figure is more than 5 % off: then it is rather a slip than a printer
   */
  public Correction against(double nominal, Place place) {
    List<Problem> problems = new ArrayList<>();
    check("the horizontal bar", across, nominal, place).ifPresent(problems::add);
    check("the vertical bar", up, nominal, place).ifPresent(problems::add);
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    return new Correction(nominal / across, nominal / up);
  }

  private static Optional<Problem> check(String bar, double measured, double nominal, Place place) {
    if (Math.abs(measured / nominal - 1) <= LARGEST_ERROR + Tolerances.ROUNDING) {
      return Optional.empty();
    }
    return Optional.of(
        new Problem(
            place,
            bar,
            Numbers.brief(measured, 2),
            "must be within 5 % of "
                + Numbers.brief(nominal, 1)
                + " mm ("
                + Numbers.brief(nominal * (1 - LARGEST_ERROR), 2)
                + " to "
                + Numbers.brief(nominal * (1 + LARGEST_ERROR), 2)
                + " mm); a printer is not that far off",
            "print at 100 % (actual size), measure between the end ticks again and give ACROSSxUP"
                + " in mm"));
  }

  /** The reading as the maker gives it, such as {@code 99.6x100.2}. */
  public String text() {
    return Numbers.brief(across, 2) + "x" + Numbers.brief(up, 2);
  }
}
