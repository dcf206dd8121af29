package felloe.joints;

import felloe.geometry.Numbers;

/**
 * A nut.
 *
 * @param standard the standard it is made to
 * @param height greatest height, mm
 * @param flats greatest width across flats, mm
 * @param corners width across corners, mm
 * @param bearing outer diameter of the face that bears, mm
 * @param basis where the figures come from
 */
public record NutSize(
    String standard, double height, double flats, double corners, double bearing, String basis) {

  /**
   * Refuses figures that are not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public NutSize {
    Numbers.positive("height", height);
    Numbers.positive("flats", flats);
    Numbers.positive("corners", corners);
    Numbers.positive("bearing", bearing);
  }
}
