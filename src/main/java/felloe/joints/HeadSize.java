package felloe.joints;

import felloe.geometry.Numbers;

/**
 * The head of a screw.
 *
 * @param standard the standard it is made to
 * @param diameter its widest round, mm; of a countersunk head the sharp diameter of the cone
 * @param height mm; of a countersunk head the depth of the sharp cone
 * @param bearing outer diameter of the face that bears, mm
 * @param angle of the cone, radians; 0 for a flat face
 * @param basis where the figures come from
 */
public record HeadSize(
    String standard, double diameter, double height, double bearing, double angle, String basis) {

  /**
   * Refuses figures that are not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public HeadSize {
    Numbers.finite("angle", angle);
    Numbers.positive("diameter", diameter);
    Numbers.positive("height", height);
    Numbers.positive("bearing", bearing);
  }

  /**
   * How deep the cone of a countersunk head reaches into a part with a hole, mm: from the face,
   * with which the head lies flush, to where the cone meets the hole. 0 for a flat head.
   *
   * @param hole diameter of the hole, mm
   */
  public double coneDepth(double hole) {
    return angle == 0 ? 0 : Math.max(0, (diameter - hole) / 2 / Math.tan(angle / 2));
  }
}
