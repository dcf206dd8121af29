package felloe.cutting;

import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import felloe.plate.LaidSheet;
import felloe.plate.Plate;
import felloe.plate.Sheet;
import java.util.ArrayList;
import java.util.List;

/**
 * Cautions on the stock that a router's program is made for, and that may not be the stock that is
 * clamped: tabs then do not hold the part.
 */
final class StockAtHand {

  /** A panel further off than this is another thickness, mm: a tenth of a usual tab's height. */
  private static final double OTHER = 0.1;

  private StockAtHand() {}

  /** The cautions, in sentences. */
  static List<String> cautions(Plate plate, CutSetup setup, Surroundings round) {
    List<String> cautions = new ArrayList<>();
    if (setup.process() == CutProcess.ROUTER) {
      plate.stock().laid().ifPresent(panel -> thickness(plate, setup, panel, cautions));
      if (round.room().isEmpty()) {
        plate.stock().sheet().ifPresent(sheet -> size(plate, setup, sheet, cautions));
      }
    }
    return cautions;
  }

  /** Nothing is told of a thickness that the maker has given for this cut: it was measured. */
  private static void thickness(
      Plate plate, CutSetup setup, LaidSheet panel, List<String> cautions) {
    double stock = setup.depths().stock();
    double thinner = stock - panel.thickness();
    if (stock != plate.stock().thickness() || Math.abs(thinner) <= OTHER) {
      return;
    }
    cautions.add(
        "The lay-up comes to "
            + mm(panel.thickness())
            + ", and this is planned for "
            + mm(stock)
            + ": "
            + (thinner > 0
                ? "tabs would be " + mm(thinner) + " lower than told, and may not hold the part"
                : "the last pass may not go through")
            + ". Measure the panel, and tell its thickness.");
  }

  /**
   * Whether slot and a wall that tabs hold on to find room on the sheet, the part in its middle.
   */
  private static void size(Plate plate, CutSetup setup, Sheet sheet, List<String> cautions) {
    Box part = plate.outline().box();
    double round = 2 * (setup.cutter() + Surroundings.WALL);
    double width = part.width() + round;
    double height = part.height() + round;
    if (fits(width, height, sheet) || fits(height, width, sheet)) {
      return;
    }
    cautions.add(
        "With the slot round it and a wall that holds tabs the part takes "
            + mm(width)
            + " by "
            + mm(height)
            + ", as drawn, and the sheet has "
            + mm(sheet.width())
            + " by "
            + mm(sheet.height())
            + ": the cutter runs out at its edges, and what is left of the sheet falls apart and"
            + " holds no tabs. Take a larger sheet or a thinner cutter, or screw the part itself"
            + " down through its holes.");
  }

  private static boolean fits(double width, double height, Sheet sheet) {
    return width <= sheet.width() + Tolerances.SAME_LENGTH
        && height <= sheet.height() + Tolerances.SAME_LENGTH;
  }

  private static String mm(double value) {
    return Numbers.brief(value, 2) + " mm";
  }
}
