package felloe.cli;

import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Limit.Sense;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Findings as rows of a list: rule by rule, the worst first, and of those that passed only the one
 * nearest to its limit, unless all are wanted.
 */
final class FindingRows {

  /**
   * A row.
   *
   * @param finding what it tells
   * @param alike how many of the rule passed and stand behind it, itself included
   */
  record Row(Finding finding, int alike) {}

  private FindingRows() {}

  static List<Row> of(List<Finding> findings, boolean all) {
    Map<String, List<Finding>> byRule = new LinkedHashMap<>();
    for (Finding finding : findings) {
      byRule.computeIfAbsent(finding.rule(), rule -> new ArrayList<>()).add(finding);
    }
    List<Row> rows = new ArrayList<>();
    for (List<Finding> ofRule : byRule.values()) {
      add(rows, ofRule, Verdict.FAIL);
      add(rows, ofRule, Verdict.CAUTION);
      if (all) {
        add(rows, ofRule, Verdict.PASS);
      } else {
        addTightest(rows, ofRule);
      }
    }
    return rows;
  }

  private static void add(List<Row> rows, List<Finding> findings, Verdict verdict) {
    for (Finding finding : findings) {
      if (finding.verdict() == verdict) {
        rows.add(new Row(finding, 1));
      }
    }
  }

  private static void addTightest(List<Row> rows, List<Finding> findings) {
    Finding tightest = null;
    int passed = 0;
    for (Finding finding : findings) {
      if (finding.verdict() == Verdict.PASS) {
        passed++;
        if (tightest == null || room(finding) < room(tightest)) {
          tightest = finding;
        }
      }
    }
    if (tightest != null) {
      rows.add(new Row(tightest, passed));
    }
  }

  /** How far a figure keeps from its limit. */
  private static double room(Finding finding) {
    if (finding.limit().isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    Limit limit = finding.limit().get();
    double over = finding.figure().value() - limit.value();
    return limit.sense() == Sense.AT_LEAST ? over : -over;
  }
}
