package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Numbers;

/**
 * A drawing to be looked at, not measured: its lettering and lines suit the size of what is shown.
 * The part itself stands at its true coordinates.
 *
 * @param drawing what is drawn, mm
 * @param page what is seen of it, mm
 * @param pen factor on the widths and dashes of lines, in proportion to the size of the part
 */
public record Picture(Drawing drawing, Box page, double pen) {

  /** Refuses a factor that is not finite. */
  public Picture {
    Numbers.finite("pen", pen);
  }
}
