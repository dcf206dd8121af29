package felloe.joints;

import felloe.plate.Hole;
import java.util.Optional;

/**
 * What one hub screw and the plate round it carry, at the worst direction of the pull.
 *
 * @param hole its hole
 * @param joint the joint it belongs to
 * @param share force between screw and plate in the plane of the plate, N
 * @param pull along the screw by the push, N; empty where the screws cannot carry a tilt
 * @param edgeDistance from the hole's centre to the nearest edge, mm
 * @param bearing share / (thread diameter x thickness), MPa
 * @param shearOut share / (2 x edge distance x thickness), MPa
 * @param netSection share / (width left beside the hole x thickness), MPa
 */
public record ScrewLoad(
    Hole hole,
    PlannedJoint joint,
    double share,
    Optional<Double> pull,
    double edgeDistance,
    double bearing,
    double shearOut,
    double netSection) {

  /** The least clamp force over the pull along the screw; empty without a pull. */
  public Optional<Double> clampRatio() {
    return pull.filter(p -> p > 0).map(p -> joint.torque().leastClamp() / p);
  }
}
