package felloe.service;

import felloe.load.LoadPlan;
import felloe.load.ScrewUse;
import felloe.plate.Plate;
import java.util.Comparator;
import java.util.List;

/**
 * What loads do to a plate.
 *
 * @param study the plate
 * @param plan mesh, fields and all that was reckoned
 * @param screws the most that each hub screw carries
 * @param seconds that it took
 */
public record LoadOutcome(Study study, LoadPlan plan, List<ScrewUse> screws, double seconds) {

  public LoadOutcome {
    screws = List.copyOf(screws);
  }

  /** The plate. */
  public Plate plate() {
    return study.plate();
  }

  /** Whether all is as wanted. */
  public boolean met() {
    return plan.met();
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
