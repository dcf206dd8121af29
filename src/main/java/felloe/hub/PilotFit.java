package felloe.hub;

import java.util.Optional;

/**
 * The hub's spigot and the opening of the plate that it must enter.
 *
 * @param pilot diameter of the spigot, mm
 * @param opening label of the bore or window round the hub axis; empty when the plate has none
 * @param bore diameter of the opening when it is a round hole, mm
 * @param clearance room all round, mm, as drawn; negative when the spigot does not enter; empty
 *     when there is no opening
 */
public record PilotFit(
    double pilot, Optional<String> opening, Optional<Double> bore, Optional<Double> clearance) {

  /** Whether the spigot enters. */
  public boolean enters() {
    return clearance.isPresent() && clearance.get() >= -HubFit.ROUNDING;
  }
}
