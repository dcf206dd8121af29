package felloe.plate;

import felloe.geometry.Numbers;

/**
 * How the maker means to work, as far as the shape depends on it.
 *
 * @param cutterDiameter diameter of the router cutter, burr or file that finishes inside corners,
 *     mm
 * @param roughAllowance distance from the finish line out to the rough line, mm
 * @param gripScale thickness of the grip scale on each face, mm; 0 for a bare plate
 */
public record Making(double cutterDiameter, double roughAllowance, double gripScale) {

  /**
   * Refuses figures below zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Making {
    if (Numbers.finite("cutterDiameter", cutterDiameter) < 0
        || Numbers.finite("roughAllowance", roughAllowance) < 0
        || Numbers.finite("gripScale", gripScale) < 0) {
      throw new IllegalArgumentException("making figures must not be below zero");
    }
  }
}
