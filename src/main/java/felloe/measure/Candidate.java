package felloe.measure;

import felloe.geometry.Tolerances;
import felloe.hub.HubSpec;
import java.util.List;
import java.util.Optional;

/**
 * A known hub that may be the one that was measured.
 *
 * @param hub the hub
 * @param misfit how ill it fits, for ranking: deviations over what the readings leave open; about 1
 *     or less is as good as it can be
 * @param off how far the worst hole is from where the hub has it, laid best on each other, mm
 * @param pcdOff measured pitch circle diameter less the hub's, mm
 * @param sizeSuits whether the size that was measured suits the hub's screws; empty when no size is
 *     known
 * @param clearance room all round of the tightest screw, mm; negative where it does not enter;
 *     empty when no size is known
 * @param worst the same when hub and readings are both at the far end of what they allow, mm
 * @param like names of the other candidates that the readings cannot tell from this one
 */
public record Candidate(
    HubSpec hub,
    double misfit,
    double off,
    double pcdOff,
    Optional<Boolean> sizeSuits,
    Optional<Double> clearance,
    Optional<Double> worst,
    List<String> like) {

  public Candidate {
    like = List.copyOf(like);
  }

  /** Whether all screws enter, by the figures as measured; false when no size is known. */
  public boolean enters() {
    return clearance.map(c -> c >= -Tolerances.SAME_LENGTH).orElse(false);
  }

  Candidate with(List<String> names) {
    return new Candidate(hub, misfit, off, pcdOff, sizeSuits, clearance, worst, names);
  }
}
