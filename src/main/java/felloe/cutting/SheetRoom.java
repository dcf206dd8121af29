package felloe.cutting;

import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.plate.Sheet;
import java.util.List;

/**
 * The room on a sheet. Its lower left corner is the origin.
 *
 * @param sheet its size
 * @param margin strip along its edges that is left alone, mm
 * @param keepOut where clamps sit and nothing may be cut
 */
public record SheetRoom(Sheet sheet, double margin, List<Box> keepOut) {

  /**
   * Refuses a margin below zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public SheetRoom {
    keepOut = List.copyOf(keepOut);
    if (Numbers.finite("margin", margin) < 0) {
      throw new IllegalArgumentException("margin must not be below zero");
    }
  }

  /** Where parts may lie, keep-out strips not yet taken out; empty sheets give no box. */
  boolean usable() {
    return sheet.width() > 2 * margin && sheet.height() > 2 * margin;
  }

  Box inner() {
    return new Box(margin, margin, sheet.width() - margin, sheet.height() - margin);
  }
}
