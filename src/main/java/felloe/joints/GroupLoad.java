package felloe.joints;

import felloe.geometry.Numbers;
import java.util.List;
import java.util.Optional;

/**
 * The hub screws under the hands' limit forces, shared out as if the plate were stiff.
 *
 * @param torque about the hub axis, N m
 * @param pull in the plane of the plate, N: of one hand at the rim, or through the hub axis and any
 *     way where the shape file sets it
 * @param push square to the plate at the rim, either way, N
 * @param reach of the rim from the middle of the screws, mm
 * @param basis where torque, pull and push come from
 * @param tilts whether the screws can carry a tilt; without, no tension is told
 * @param demands what each screw carries in each case
 */
public record GroupLoad(
    double torque,
    double pull,
    double push,
    double reach,
    List<String> basis,
    boolean tilts,
    List<ScrewDemand> demands) {

  /**
   * @throws IllegalArgumentException naming a figure that is not finite
   */
  public GroupLoad {
    Numbers.finite("torque", torque);
    Numbers.finite("pull", pull);
    Numbers.finite("push", push);
    Numbers.finite("reach", reach);
    basis = List.copyOf(basis);
    demands = List.copyOf(demands);
  }

  /** The most that a screw carries in the plane of the plate, N. */
  public double share(String hole) {
    return demands.stream()
        .filter(d -> d.hole().equals(hole))
        .mapToDouble(ScrewDemand::shear)
        .max()
        .orElse(0);
  }

  /** The most that a screw is pulled with, N; empty where the screws cannot carry a tilt. */
  public Optional<Double> tension(String hole) {
    return tilts
        ? Optional.of(
            demands.stream()
                .filter(d -> d.hole().equals(hole))
                .mapToDouble(ScrewDemand::tension)
                .max()
                .orElse(0))
        : Optional.empty();
  }
}
