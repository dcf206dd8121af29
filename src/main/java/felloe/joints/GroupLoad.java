package felloe.joints;

import felloe.geometry.Numbers;
import java.util.List;

/**
 * The hub screws under the hands' loads.
 *
 * @param torque about the hub axis, N m
 * @param pull in the plane of the plate through the hub axis, any way, N
 * @param push square to the plate, N
 * @param reach distance of the push from the middle of the screws, mm
 * @param basis where torque, pull and push come from
 * @param strength of the plate
 * @param screws what each one carries, in the order of the holes
 */
public record GroupLoad(
    double torque,
    double pull,
    double push,
    double reach,
    List<String> basis,
    Allowables strength,
    List<ScrewLoad> screws) {

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException naming a figure that is not finite
   */
  public GroupLoad {
    Numbers.finite("torque", torque);
    Numbers.finite("pull", pull);
    Numbers.finite("push", push);
    Numbers.finite("reach", reach);
    basis = List.copyOf(basis);
    screws = List.copyOf(screws);
  }
}
