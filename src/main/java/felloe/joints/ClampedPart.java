package felloe.joints;

import felloe.geometry.Numbers;

/**
 * Something that a screw clamps.
 *
 * @param name what it is, such as {@code plate} or {@code plain washer}
 * @param thickness mm
 */
public record ClampedPart(String name, double thickness) {

  /** The name of the plate itself. */
  public static final String PLATE = "plate";

  /**
   * Refuses a thickness that is not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public ClampedPart {
    Numbers.positive("thickness", thickness);
  }
}
