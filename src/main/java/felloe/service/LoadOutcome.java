package felloe.service;

import felloe.joints.JointJudgement;
import felloe.load.LoadPlan;
import felloe.plate.Plate;
import java.util.Comparator;

/**
 * What loads do to a plate.
 *
 * @param study the plate
 * @param plan mesh, fields and all that was reckoned
 * @param screws every screw, judged
 * @param seconds that it took
 */
public record LoadOutcome(Study study, LoadPlan plan, JointJudgement screws, double seconds) {

  /** The plate. */
  public Plate plate() {
    return study.plate();
  }

  /** Whether all is as wanted. */
  public boolean met() {
    return plan.met() && screws.met();
  }

  /** The case with the least margin; a fall only where there is nothing else. */
  public LoadPlan.Judged worst() {
    return plan.cases().stream()
        .min(
            Comparator.comparing((LoadPlan.Judged one) -> one.fall().isPresent())
                .thenComparing(LoadPlan.Judged::margin))
        .orElseThrow();
  }
}
