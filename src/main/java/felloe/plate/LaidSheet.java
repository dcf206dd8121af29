package felloe.plate;

import felloe.geometry.Numbers;

/**
 * What a sheet of one's own comes to, once its plies are planned.
 *
 * @param thickness of the stack, mm
 * @param density of the laminate, g/cm³
 */
public record LaidSheet(double thickness, double density) {

  /**
   * Refuses figures that are not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public LaidSheet {
    Numbers.positive("thickness", thickness);
    Numbers.positive("density", density);
  }
}
