package felloe.joints;

import felloe.geometry.Numbers;

/**
 * What a screw carries in one case, at limit load.
 *
 * @param hole label of its hole
 * @param cause the case, in words or by its name
 * @param tension along the screw, prying included, N
 * @param shear in the plane of the plate, N
 */
public record ScrewDemand(String hole, String cause, double tension, double shear) {

  /**
   * Refuses forces that are below zero or not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public ScrewDemand {
    if (Numbers.finite("tension", tension) < 0 || Numbers.finite("shear", shear) < 0) {
      throw new IllegalArgumentException("tension and shear must not be below zero");
    }
  }
}
