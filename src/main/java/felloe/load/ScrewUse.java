package felloe.load;

import felloe.joints.JointJudgement;
import felloe.joints.JointPlan;
import felloe.joints.ScrewDemand;
import java.util.ArrayList;
import java.util.List;

/** What the study of a plate puts on its hub screws. */
public final class ScrewUse {

  private ScrewUse() {}

  /** Every screw, judged under the study's cases and the plan's own loads, whichever is more. */
  public static JointJudgement of(LoadPlan plan, JointPlan joints) {
    return joints.judged(plan.plate(), demands(plan));
  }

  /** What each hub screw carries in each case, at limit load; falls are told and not judged. */
  public static List<ScrewDemand> demands(LoadPlan plan) {
    List<ScrewDemand> demands = new ArrayList<>();
    for (LoadPlan.Judged one : plan.cases()) {
      if (one.fall().isEmpty()) {
        CaseField.HubForce hub = one.field().hub();
        List<CaseField.BoltForce> shared = SharedBolts.of(plan.hubHoles(), hub);
        double lift = Math.max(0, -hub.z()) / Math.max(1, plan.hubHoles().size());
        for (CaseField.BoltForce bolt : one.bolts()) {
          double slide =
              shared.stream()
                  .filter(s -> s.label().equals(bolt.label()))
                  .mapToDouble(CaseField.BoltForce::shear)
                  .findFirst()
                  .orElse(bolt.shear());
          demands.add(
              new ScrewDemand(
                  bolt.label(),
                  one.field().load().name(),
                  bolt.tension(),
                  bolt.shear(),
                  slide,
                  lift));
        }
      }
    }
    return demands;
  }
}
