package felloe.review;

import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Verdict;
import java.util.Comparator;
import java.util.List;

/**
 * What a review says.
 *
 * @param findings in the order of the rules, other checks' last
 * @param cautions sentences that must go with the findings wherever they are shown
 */
public record ReviewReport(List<Finding> findings, List<String> cautions) {

  public ReviewReport {
    findings = List.copyOf(findings);
    cautions = List.copyOf(cautions);
  }

  /** The worst verdict of all findings; a pass when there are none. */
  public Verdict verdict() {
    return findings.stream()
        .map(Finding::verdict)
        .max(Comparator.naturalOrder())
        .orElse(Verdict.PASS);
  }

  /** The findings with a verdict, in order. */
  public List<Finding> with(Verdict verdict) {
    return findings.stream().filter(finding -> finding.verdict() == verdict).toList();
  }

  /** The findings of a rule, in order. */
  public List<Finding> of(String rule) {
    return findings.stream().filter(finding -> finding.rule().equals(rule)).toList();
  }

  /** The findings that were held against a limit which the shape file sets, in order. */
  public List<Finding> overridden() {
    return findings.stream()
        .filter(finding -> finding.limit().map(Limit::overridden).orElse(false))
        .toList();
  }
}
