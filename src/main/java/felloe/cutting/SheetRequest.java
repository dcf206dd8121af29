package felloe.cutting;

import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.plate.Sheet;
import java.util.List;
import java.util.Optional;

/**
 * How parts are to lie on a sheet. Lengths in mm.
 *
 * @param size of the sheet; empty to take the shape files' own
 * @param margin strip along its edges that no cut touches
 * @param spacing between parts, beyond their slots
 * @param keepOut where clamps sit, from the sheet's lower left corner
 * @param held whether the grain or the 0 degree fibres keep their direction
 * @param copies how many of each plate, at least 1
 * @param strips test strips to cut along
 */
public record SheetRequest(
    Optional<Sheet> size,
    double margin,
    double spacing,
    List<Box> keepOut,
    boolean held,
    int copies,
    List<Strips> strips) {

  /** Refuses figures below zero and fewer copies than one. */
  public SheetRequest {
    keepOut = List.copyOf(keepOut);
    strips = List.copyOf(strips);
    if (Numbers.finite("margin", margin) < 0 || Numbers.finite("spacing", spacing) < 0) {
      throw new IllegalArgumentException("margin and spacing must not be below zero");
    }
    if (copies < 1) {
      throw new IllegalArgumentException("copies must be at least 1");
    }
  }

  /**
   * Test strips, all alike.
   *
   * @param count how many
   * @param width across the grain
   * @param length along the grain
   */
  public record Strips(int count, double width, double length) {}
}
