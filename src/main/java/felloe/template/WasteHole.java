package felloe.template;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;

/**
 * A hole that is drilled in the waste before a plate is sawn, so that the saw starts or turns
 * there. It is no hole of the plate.
 *
 * @param at its centre, in the plate's own axes, mm
 * @param diameter mm
 */
public record WasteHole(Point at, double diameter) {

  /**
   * Refuses a diameter that is not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public WasteHole {
    Numbers.positive("diameter", diameter);
  }

  /** Its edge. */
  Contour edge() {
    return Contour.circle(at, diameter / 2);
  }
}
