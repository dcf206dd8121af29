package felloe.joints;

import felloe.geometry.Numbers;

/**
 * A washer.
 *
 * @param standard the standard it is made to
 * @param hole its hole, mm
 * @param diameter its outer diameter, mm
 * @param thickness mm
 * @param basis where the figures come from
 */
public record WasherSize(
    String standard, double hole, double diameter, double thickness, String basis) {

  /**
   * Refuses figures that make no ring.
   *
   * @throws IllegalArgumentException naming the field
   */
  public WasherSize {
    if (!(Numbers.finite("hole", hole) > 0
        && Numbers.finite("diameter", diameter) > hole
        && Numbers.finite("thickness", thickness) > 0)) {
      throw new IllegalArgumentException("a washer is a ring: diameter above hole above zero");
    }
  }
}
