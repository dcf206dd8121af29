package felloe.joints;

import felloe.plate.Hole;
import felloe.plate.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A screw with all that was asked of it.
 *
 * @param hole its hole
 * @param joint the joint it belongs to
 * @param tension the most along it, N, at limit load
 * @param tensionCause the case of that
 * @param shear the most in the plane of the plate, N, at limit load
 * @param shearCause the case of that
 * @param checks each way to give way
 */
public record JudgedScrew(
    Hole hole,
    PlannedJoint joint,
    double tension,
    String tensionCause,
    double shear,
    String shearCause,
    List<JointCheck> checks) {

  public JudgedScrew {
    checks = List.copyOf(checks);
  }

  /** How it stands one way to give way, by its id; empty where that way was not judged. */
  public Optional<JointCheck> check(String id) {
    return checks.stream().filter(c -> c.what().id().equals(id)).findFirst();
  }

  /** The check of one way, if it was asked. */
  public Optional<JointCheck> check(JointCheck.What what) {
    return check(what.id());
  }

  /** Of the checks with the worst verdict the one with the least ratio. */
  public Optional<JointCheck> worst() {
    return checks.stream()
        .min(
            Comparator.comparing(JointCheck::verdict)
                .reversed()
                .thenComparingDouble(JointCheck::ratio));
  }

  /** The worst verdict of all. */
  public Verdict verdict() {
    return checks.stream()
        .map(JointCheck::verdict)
        .max(Comparator.naturalOrder())
        .orElse(Verdict.PASS);
  }
}
