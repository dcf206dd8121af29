package felloe.service;

import felloe.measure.AsDrilledResult;
import felloe.plate.Finding;
import felloe.plate.Verdict;
import java.util.List;

/**
 * Whether a plate, as it was drilled, goes on its hub.
 *
 * @param study of the plate as drawn
 * @param drilled what the readings tell of its holes, and how the hub meets them
 * @param findings what is worse than it was drawn, by the review of the plate as drilled; the worst
 *     first
 */
public record DrilledOutcome(Study study, AsDrilledResult drilled, List<Finding> findings) {

  public DrilledOutcome {
    findings = List.copyOf(findings);
  }

  /** Of the plate as drilled. */
  public Verdict verdict() {
    Verdict worst = drilled.verdict();
    for (Finding finding : findings) {
      worst = finding.verdict().compareTo(worst) > 0 ? finding.verdict() : worst;
    }
    return worst;
  }

  /** Whether it fails as drilled or as drawn. */
  public boolean fails() {
    return verdict() == Verdict.FAIL || study.fails();
  }
}
