package felloe.service;

import felloe.hub.HubFitResult;
import felloe.hub.HubSpec;
import felloe.joints.JointCure;
import felloe.joints.JointCures;
import felloe.joints.JointPlan;
import felloe.plate.Finding;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.review.ReviewReport;
import java.util.List;
import java.util.Optional;

/**
 * A plate, read and judged once, and handed on from there.
 *
 * @param source where its shape comes from
 * @param plate the plate
 * @param hub that it is compared with: its own, or the one that was asked for
 * @param fit how it meets that hub
 * @param joints the plan of its screws
 * @param review of all rules and of the hub fit
 */
public record Study(
    ShapeSource source,
    Plate plate,
    Optional<HubSpec> hub,
    Optional<HubFitResult> fit,
    JointPlan joints,
    ReviewReport review) {

  /** The findings of all rules and of the hub fit, in order. */
  public List<Finding> findings() {
    return review.findings();
  }

  /** Sentences that must be shown wherever the findings are. */
  public List<String> cautions() {
    return review.cautions();
  }

  /** The worst verdict of all findings. */
  public Verdict verdict() {
    return review.verdict();
  }

  /** How many findings have a verdict. */
  public int count(Verdict verdict) {
    return review.with(verdict).size();
  }

  /** What mends the joint that fails the most; none when every screw holds. */
  public List<JointCure> screwCures() {
    return JointCures.of(plate, hub, joints.judgement(), List.of());
  }

  /** Whether it fails a check. */
  public boolean fails() {
    return verdict() == Verdict.FAIL;
  }
}
