package felloe.measure;

import felloe.hub.HubFitResult;
import felloe.plate.Verdict;
import java.util.List;

/**
 * Whether a plate, as it was drilled, goes on its hub.
 *
 * @param survey what the readings tell
 * @param holes those that were measured, in the order of the plate
 * @param fit the hub fit with holes where they are and as large as they are; its worst case counts
 *     how unsure the readings are in place of how true drilling is
 * @param verdict fail when a screw does not enter; caution when one may not at the worst, when a
 *     hole misses its zone, or when a reading looks like a slip
 * @param fixed zone that each hole of the plate may have by the formula for fixed fasteners, mm:
 *     the smallest hole as drawn, less the largest screw, less the hub's own zone
 * @param floating the same for floating fasteners, where the hub has clear holes and nuts, mm
 * @param withBonus whether the bonus of ISO 2692 was counted
 * @param openings ways to open holes: the least for all screws to enter as measured, and the least
 *     for them to enter at the worst too; empty when nothing needs it or no drill will do
 * @param notes what the maker should know
 */
public record AsDrilledResult(
    SurveyResult survey,
    List<DrilledHole> holes,
    HubFitResult fit,
    Verdict verdict,
    double fixed,
    double floating,
    boolean withBonus,
    List<HoleEnlargement> openings,
    List<String> notes) {

  /** Copies the lists. */
  public AsDrilledResult {
    holes = List.copyOf(holes);
    openings = List.copyOf(openings);
    notes = List.copyOf(notes);
  }
}
