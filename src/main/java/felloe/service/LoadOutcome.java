package felloe.service;

import felloe.cure.Widening;
import felloe.joints.JointCure;
import felloe.joints.JointJudgement;
import felloe.joints.Unscrewed;
import felloe.load.LoadPlan;
import felloe.load.ScrewUse;
import felloe.plate.Plate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What loads do to a plate.
 *
 * @param study the plate
 * @param plan mesh, fields and all that was reckoned
 * @param screws every screw, judged
 * @param screwCures what mends the joint that fails the most; none when every screw holds
 * @param widening what wider webs would do; none where all is as wanted, or not to be told
 * @param whole whether all cases were reckoned, not some that were picked
 * @param seconds that it took
 */
public record LoadOutcome(
    Study study,
    LoadPlan plan,
    JointJudgement screws,
    List<JointCure> screwCures,
    Optional<Widening> widening,
    boolean whole,
    double seconds) {

  public Plate plate() {
    return study.plate();
  }

  /** The thinnest that does all that is wanted; never told of fewer than all cases. */
  public Optional<LoadPlan.Trial> least() {
    return whole ? plan.least() : Optional.empty();
  }

  /** Whether all is as wanted; never where a hub screw is not known, and so not judged. */
  public boolean met() {
    return plan.met() && screws.met() && unscrewed().isEmpty();
  }

  /** Holes that hold it to the hub by screws that nobody knows. */
  public List<Unscrewed> unscrewed() {
    return ScrewUse.unknown(plan.hold().holes(), study.joints());
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
