package felloe.load;

import felloe.joints.Fasteners;
import felloe.joints.JointPlan;
import felloe.joints.PlannedJoint;
import felloe.plate.Hole;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The most that a hub screw carries in any case, beside what its joint stands.
 *
 * @param label of its hole
 * @param tension N
 * @param tensionCase name of the case
 * @param shear N
 * @param shearCase name of the case
 * @param clampRatio least clamp force over tension; empty without tension or a planned screw
 * @param bearing shear over thread diameter and thickness, MPa; empty without a planned screw
 * @param bearingLimit what the plate stands there, MPa
 */
public record ScrewUse(
    String label,
    double tension,
    String tensionCase,
    double shear,
    String shearCase,
    Optional<Double> clampRatio,
    Optional<Double> bearing,
    double bearingLimit) {

  /** Below this a screw carries nothing, N. */
  private static final double NOTHING = 0.01;

  /** The screws of a plate under its cases, in the order of their holes. */
  public static List<ScrewUse> of(LoadPlan plan, JointPlan joints) {
    Plate plate = plan.plate();
    double limit = Fasteners.standard().allowables(plate.stock().material()).bearing().value();
    List<ScrewUse> uses = new ArrayList<>();
    for (Hole hole : plan.hubHoles()) {
      double tension = 0;
      double shear = 0;
      String tensionCase = "";
      String shearCase = "";
      boolean told = false;
      for (LoadPlan.Judged one : plan.cases()) {
        for (CaseField.BoltForce bolt : one.bolts()) {
          if (!bolt.label().equals(hole.label())) {
            continue;
          }
          told = true;
          if (bolt.tension() > tension + NOTHING) {
            tension = bolt.tension();
            tensionCase = one.field().load().name();
          }
          if (bolt.shear() > shear + NOTHING) {
            shear = bolt.shear();
            shearCase = one.field().load().name();
          }
        }
      }
      if (told) {
        Optional<PlannedJoint> joint =
            joints.joints().stream().filter(j -> j.holes().contains(hole)).findFirst();
        double most = tension;
        double side = shear;
        uses.add(
            new ScrewUse(
                hole.label(),
                tension,
                tensionCase,
                shear,
                shearCase,
                joint.filter(j -> most > NOTHING).map(j -> j.torque().leastClamp() / most),
                joint.map(j -> side / (j.thread().diameter() * plan.gauge().thickness())),
                limit));
      }
    }
    return uses;
  }

  /** Whether the screw's clamp outlasts its tension, and the plate its bearing. */
  public boolean fine() {
    return clampRatio.map(r -> r >= 1).orElse(true)
        && bearing.map(b -> b <= bearingLimit).orElse(true);
  }
}
