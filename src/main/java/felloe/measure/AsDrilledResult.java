package felloe.measure;

import felloe.hub.Cure;
import felloe.hub.HubFitResult;
import felloe.plate.Finding;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * Whether a plate, as it was drilled, goes on its hub; what is told first stands first.
 *
 * @param verdict fail when a screw does not enter, or holes break out; caution when one may not at
 *     the worst, when a hole misses its zone or has another size, or when a reading looks like a
 *     slip. The review of the plate as drilled is not in it: see {@code plate}.
 * @param odd holes that are the odd ones out: without them all others lie in their places
 * @param fit the hub fit with holes where they are and as large as they are; its worst case counts
 *     how unsure the readings are in place of how true drilling is
 * @param openings the holes to open; empty when nothing needs it or no drill will do
 * @param cures what mends it where there are no openings: a slot of the odd hole, where no drill
 *     reaches it alone; slots of others, or new holes
 * @param findings which holes lie elsewhere, which have another size
 * @param holes those that were measured, in the order of the plate
 * @param fixed the least zone that a hole of the plate may have by the formula for fixed fasteners,
 *     mm: as drawn, less its screw, less the hub's own zone
 * @param floating the same for floating fasteners, where the hub has clear holes and nuts, mm
 * @param withBonus whether the bonus of ISO 2692 was counted
 * @param survey what the readings tell
 * @param plate the plate with its holes as drilled, to be reviewed like a drawn one; empty when
 *     they break into each other or out of it
 * @param notes what the maker should know
 */
public record AsDrilledResult(
    Verdict verdict,
    List<OddHole> odd,
    HubFitResult fit,
    List<HoleEnlargement> openings,
    List<Cure> cures,
    List<Finding> findings,
    List<DrilledHole> holes,
    double fixed,
    double floating,
    boolean withBonus,
    SurveyResult survey,
    Optional<Plate> plate,
    List<String> notes) {

  public AsDrilledResult {
    odd = List.copyOf(odd);
    openings = List.copyOf(openings);
    cures = List.copyOf(cures);
    findings = List.copyOf(findings);
    holes = List.copyOf(holes);
    notes = List.copyOf(notes);
  }
}
