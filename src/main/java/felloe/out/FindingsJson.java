package felloe.out;

import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Verdict;
import java.util.Comparator;
import java.util.List;

/**
 * Findings of a check as JSON: {@code verdict}, the worst of all ({@code pass} when there are
 * none), {@code counts} of each verdict, and {@code findings} in the order given. {@code limit} and
 * {@code at} are null where a finding has none. Figures have at most six decimals.
 */
public final class FindingsJson {

  private static final int DECIMALS = 6;

  private FindingsJson() {}

  /** The findings as a JSON value, to write or to put into a larger answer. */
  public static Json.Members of(List<Finding> findings) {
    Json.Members counts = Json.object();
    for (Verdict verdict : Verdict.values()) {
      long count = findings.stream().filter(finding -> finding.verdict() == verdict).count();
      counts = counts.with(word(verdict), (int) count);
    }
    return Json.object()
        .with("verdict", ShapeJson.word(worst(findings)))
        .with("counts", counts)
        .with("findings", Json.array(findings, FindingsJson::finding));
  }

  private static Verdict worst(List<Finding> findings) {
    return findings.stream()
        .map(Finding::verdict)
        .max(Comparator.naturalOrder())
        .orElse(Verdict.PASS);
  }

  private static String word(Verdict verdict) {
    return ((Json.Text) ShapeJson.word(verdict)).value();
  }

  private static Json finding(Finding finding) {
    return Json.object()
        .with("rule", finding.rule())
        .with("why", finding.why())
        .with("verdict", ShapeJson.word(finding.verdict()))
        .with("subject", finding.subject())
        .with("figure", figure(finding.figure()))
        .with("limit", Json.maybe(finding.limit(), FindingsJson::limit))
        .with("at", Json.maybe(finding.at(), at -> Json.point(at, DECIMALS)))
        .with("place", ShapeJson.place(finding.place()))
        .with("advice", finding.advice());
  }

  private static Json figure(Figure figure) {
    return Json.object()
        .with("name", figure.name())
        .with("value", figure.value(), DECIMALS)
        .with("unit", figure.unit());
  }

  private static Json limit(Limit limit) {
    return Json.object()
        .with("sense", ShapeJson.word(limit.sense()))
        .with("value", limit.value(), DECIMALS)
        .with("source", limit.source())
        .with("overridden", limit.overridden());
  }
}
