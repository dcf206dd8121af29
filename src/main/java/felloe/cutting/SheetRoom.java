package felloe.cutting;

import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.plate.Sheet;
import java.util.List;

/**
 * The room on a sheet. Its lower left corner is the origin.
 *
 * @param sheet its size
 * @param margin strip along its edges that no cut touches, mm
 * @param slot what is cut away round each part, mm: the cutter's width, which stays off the margin
 *     too; 0 where parts are cut with a knife
 * @param keepOut where clamps sit and nothing may be cut
 */
public record SheetRoom(Sheet sheet, double margin, double slot, List<Box> keepOut) {

  /**
   * Refuses a margin or a slot below zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public SheetRoom {
    keepOut = List.copyOf(keepOut);
    if (Numbers.finite("margin", margin) < 0) {
      throw new IllegalArgumentException("margin must not be below zero");
    }
    if (Numbers.finite("slot", slot) < 0) {
      throw new IllegalArgumentException("slot must not be below zero");
    }
  }

  /** A sheet that is cut with a knife. */
  public SheetRoom(Sheet sheet, double margin, List<Box> keepOut) {
    this(sheet, margin, 0, keepOut);
  }

  /** Whether anything is left of the sheet within its margin. */
  boolean usable() {
    double least = 2 * (margin + slot);
    return sheet.width() > least && sheet.height() > least;
  }

  /** The sheet itself. */
  public Box all() {
    return new Box(0, 0, sheet.width(), sheet.height());
  }

  /** Where the cutter's edge may come: the sheet without its margin. */
  Box cut() {
    return inside(margin);
  }

  /** Where parts may lie, keep-out strips not yet taken out. */
  Box inner() {
    return inside(margin + slot);
  }

  private Box inside(double strip) {
    return new Box(strip, strip, sheet.width() - strip, sheet.height() - strip);
  }
}
