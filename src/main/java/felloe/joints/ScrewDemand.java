package felloe.joints;

import felloe.geometry.Numbers;

/**
 * What a screw carries in one case, at limit load.
 *
 * @param hole label of its hole
 * @param cause the case, in words or by its name
 * @param tension along the screw, prying included, N
 * @param shear in the plane of the plate, N: what the hole's edge may come to bear
 * @param slide what friction must hold, N. A joint slips when all its screws do, so it is the share
 *     of a stiff plate, where the plate's own stretching loads one screw more than another
 * @param lift what takes from the pressure of the faces, N: its part of the force that pulls the
 *     plate off the hub. A moment takes from one side what it adds on the other
 */
public record ScrewDemand(
    String hole, String cause, double tension, double shear, double slide, double lift) {

  /** A demand of which only tension and shear are known: all of both counts against friction. */
  public ScrewDemand(String hole, String cause, double tension, double shear) {
    this(hole, cause, tension, shear, shear, tension);
  }

  /**
   * Refuses forces that are below zero or not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public ScrewDemand {
    if (Numbers.finite("tension", tension) < 0
        || Numbers.finite("shear", shear) < 0
        || Numbers.finite("slide", slide) < 0
        || Numbers.finite("lift", lift) < 0) {
      throw new IllegalArgumentException("a screw's forces must not be below zero");
    }
  }
}
