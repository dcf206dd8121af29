package felloe.joints;

import felloe.grips.GripPlan;
import felloe.hub.HubSpec;
import felloe.plate.BadInput;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;

/**
 * The fasteners of a plate: for each joint the screw, its length, what it clamps and what holds it,
 * a torque to start from; and the hub screws under the hands' loads.
 *
 * @param joints those of the shape file in its order, then the usual ones of hub and grips
 * @param grips what lies on the rim; a grip screw is as long as they are thick where it stands
 * @param load the hub screws under load; empty when none is planned or they cannot carry a torque
 * @param judgement of every hub and grip screw
 * @param unscrewed holes that have no screw, and why
 * @param cautions sentences that go with the plan wherever it is shown
 */
public record JointPlan(
    List<PlannedJoint> joints,
    GripPlan grips,
    Optional<GroupLoad> load,
    JointJudgement judgement,
    List<Unscrewed> unscrewed,
    List<String> cautions) {

  public JointPlan {
    joints = List.copyOf(joints);
    unscrewed = List.copyOf(unscrewed);
    cautions = List.copyOf(cautions);
  }

  /** The plan of a plate whose hub is not known: threads follow from the holes. */
  public static JointPlan of(Plate plate) {
    return of(plate, Optional.empty());
  }

  /**
   * The plan of a plate.
   *
   * @param hub the hub it goes on
   * @throws BadInput when the shape file names a thread or a class that is not known, or parts that
   *     do not go together, or grips that do not fit on the rim; all of them, each at its place
   */
  public static JointPlan of(Plate plate, Optional<HubSpec> hub) {
    return new JointPlanner(plate, hub, Fasteners.standard()).plan();
  }

  /**
   * The judgement when the screws carry more than the plan's own loads put on them, by the same
   * calculation.
   *
   * @param plate the same plate
   * @param more what a closer study of the plate puts on its screws, at limit load
   */
  public JointJudgement judged(Plate plate, List<ScrewDemand> more) {
    return JointJudging.of(plate, joints, load, more);
  }
}
