package felloe.kit;

import felloe.out.JsonWriter;
import felloe.plate.Finding;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a check of a plate says.
 *
 * @param plate what was checked
 * @param findings of all rules and of the hub fit, in order
 * @param cautions sentences that must be shown wherever the findings are
 * @param hub how the plate meets its hub; empty when neither shape file nor request names one
 */
public record CheckAnswer(
    Plate plate, List<Finding> findings, List<String> cautions, Optional<HubAnswer> hub) {

  /** Copies the lists. */
  public CheckAnswer {
    findings = List.copyOf(findings);
    cautions = List.copyOf(cautions);
  }

  /** The worst verdict of all findings. */
  public Verdict verdict() {
    return findings.stream()
        .map(Finding::verdict)
        .max(Comparator.naturalOrder())
        .orElse(Verdict.PASS);
  }

  /** How many findings have a verdict. */
  public int count(Verdict verdict) {
    return (int) findings.stream().filter(finding -> finding.verdict() == verdict).count();
  }

  /** The answer as JSON text; its shape is told in {@code docs/}. */
  public String json() {
    return JsonWriter.text(AnswerJson.check(this));
  }
}
