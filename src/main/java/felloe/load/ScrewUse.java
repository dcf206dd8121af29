package felloe.load;

import felloe.joints.JointJudgement;
import felloe.joints.JointPlan;
import felloe.joints.ScrewDemand;
import felloe.joints.Unscrewed;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;

/** What the study of a plate puts on its hub screws. */
public final class ScrewUse {

  private ScrewUse() {}

  /** Every screw, judged under the study's cases and the plan's own loads, whichever is more. */
  public static JointJudgement of(LoadPlan plan, JointPlan joints) {
    return joints.judged(plan.plate(), demands(plan));
  }

  /**
   * Holes that hold the plate to its hub by screws that nobody knows, so that none is judged.
   *
   * @param hub the hub holes that have screws
   */
  public static List<Unscrewed> unknown(List<Hole> hub, JointPlan joints) {
    return joints.unscrewed().stream()
        .filter(one -> one.holes().stream().anyMatch(hub::contains))
        .toList();
  }

  /** What each hub screw carries in each case, at limit load; falls are told and not judged. */
  public static List<ScrewDemand> demands(LoadPlan plan) {
    return plan.cases().stream()
        .filter(one -> one.fall().isEmpty())
        .flatMap(one -> demands(plan.hold(), one.field()).stream())
        .toList();
  }

  /** What each hub screw carries in one case, at limit load. */
  static List<ScrewDemand> demands(HubHold hold, CaseField field) {
    List<CaseField.BoltForce> shared = SharedBolts.of(hold.holes(), field.hub());
    double lift = Math.max(0, -field.hub().z()) / Math.max(1, hold.holes().size());
    List<ScrewDemand> demands = new ArrayList<>();
    for (CaseField.BoltForce bolt : bolts(hold, field)) {
      double slide =
          shared.stream()
              .filter(s -> s.label().equals(bolt.label()))
              .mapToDouble(CaseField.BoltForce::shear)
              .findFirst()
              .orElse(bolt.shear());
      String cause = field.load().name();
      demands.add(new ScrewDemand(bolt.label(), cause, bolt.tension(), bolt.shear(), slide, lift));
    }
    return demands;
  }

  /** Forces of the hub's screws: of the model, or shared out where the plate is clamped. */
  static List<CaseField.BoltForce> bolts(HubHold hold, CaseField field) {
    List<CaseField.BoltForce> shared = SharedBolts.of(hold.holes(), field.hub());
    if (field.bolts().isEmpty()) {
      return shared;
    }
    return hold.other().isPresent()
        ? CaseField.BoltForce.larger(field.bolts(), shared)
        : field.bolts();
  }
}
