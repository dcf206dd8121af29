package felloe.plate;

import felloe.geometry.Numbers;

/**
 * The size of the sheet that the plate is cut from.
 *
 * @param width mm
 * @param height mm
 */
public record Sheet(double width, double height) {

  /**
   * Refuses sizes that are not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Sheet {
    Numbers.positive("width", width);
    Numbers.positive("height", height);
  }
}
