package felloe.hub;

import felloe.geometry.RigidTransform;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * Whether all screws of a hub enter the plate, and everything worth knowing about it.
 *
 * @param hub the hub
 * @param rings the rings of it that are used, at the best placement
 * @param drilling how the plate's holes are made
 * @param verdict fail when a screw or the spigot does not enter as drawn; caution when it may not
 *     at the worst of the tolerances or something else is worth a thought
 * @param clearance room all round of the tightest screw as drawn, mm; empty when there are fewer
 *     holes than screws
 * @param worst the same when every part is at the far end of its tolerance, mm; a bound on the safe
 *     side
 * @param placement carries the hub's screws onto the plate; empty as above
 * @param step radians: the placement turned on by this, or a multiple, is as good; a whole turn
 *     when there is only one
 * @param screws each screw with its hole; empty as above
 * @param spare bolt holes that no screw uses
 * @param pilot the spigot, when the hub has one
 * @param pattern the circle of the holes that are used, or of all bolt holes when there are too few
 * @param hubCalliper for each ring, what a calliper reads over screws put into the hub
 * @param plateCalliper what it reads on the plate's holes, when they are alike and evenly spaced
 * @param mismatches the figures that are off; empty when all enter
 * @param cures what would mend it, the simplest first; empty when nothing needs mending. Of a
 *     drilled plate its bore alone: which drills and slots mend the rest is sought with the
 *     readings
 * @param findings the same as findings of a review
 * @param complete false when there were too many holes to try every pairing
 */
public record HubFitResult(
    HubSpec hub,
    List<HubRing> rings,
    DrillingMethod drilling,
    Verdict verdict,
    Optional<Double> clearance,
    Optional<Double> worst,
    Optional<RigidTransform> placement,
    double step,
    List<ScrewFit> screws,
    List<Hole> spare,
    Optional<PilotFit> pilot,
    Optional<PatternFigures> pattern,
    List<CalliperFigures> hubCalliper,
    Optional<CalliperFigures> plateCalliper,
    List<Mismatch> mismatches,
    List<Cure> cures,
    List<Finding> findings,
    boolean complete) {

  public HubFitResult {
    rings = List.copyOf(rings);
    screws = List.copyOf(screws);
    spare = List.copyOf(spare);
    hubCalliper = List.copyOf(hubCalliper);
    mismatches = List.copyOf(mismatches);
    cures = List.copyOf(cures);
    findings = List.copyOf(findings);
  }

  /** Whether all screws, and the spigot if there is one, enter as drawn. */
  public boolean enters() {
    return clearance.isPresent()
        && clearance.get() >= -HubFit.ROUNDING
        && pilot.map(PilotFit::enters).orElse(true);
  }

  /**
   * How far the plate then sits turned on the hub, radians counter-clockwise as the driver sees it;
   * empty when there is no placement.
   */
  public Optional<Double> plateTurn() {
    return placement.map(m -> 0.0 - m.turn());
  }

  /** How far the hub's axis then lies from the plate's origin, mm. */
  public Optional<Double> offCentre() {
    return placement.map(m -> m.shift().norm());
  }
}
