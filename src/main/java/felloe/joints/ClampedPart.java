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

  /** The name of a flat scale. */
  static final String SCALE = "grip scale";

  /** The name of a grip of any other form. */
  static final String GRIP = "grip";

  /** Whether it is what a hand closes about. */
  boolean isGrip() {
    return name.equals(SCALE) || name.equals(GRIP);
  }

  /**
   * Refuses a thickness that is not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public ClampedPart {
    Numbers.positive("thickness", thickness);
  }
}
