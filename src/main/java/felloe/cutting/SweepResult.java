package felloe.cutting;

import felloe.plate.Finding;
import felloe.plate.Verdict;
import java.util.List;

/**
 * What the sweep check found.
 *
 * @param findings one for each thing that was looked at, with the worst figure and its place
 * @param worstGouge how far the cutter's edge comes into the plate at most, and a V tool's beyond
 *     what is wished, mm; 0 or above
 * @param worstRemaining how far the cutter's edge stays off the finish line at most, apart from
 *     left-overs and tabs, mm; 0 or above
 * @param worstArc greatest difference of an arc's two radii as written, mm
 * @param deepest lowest height of any move, mm; 0 for a beam
 */
public record SweepResult(
    List<Finding> findings,
    double worstGouge,
    double worstRemaining,
    double worstArc,
    double deepest) {

  /** Copies the list. */
  public SweepResult {
    findings = List.copyOf(findings);
  }

  /** Whether a file may be written. */
  public boolean passed() {
    return failures().isEmpty();
  }

  /** What speaks against it. */
  public List<Finding> failures() {
    return findings.stream().filter(finding -> finding.verdict() == Verdict.FAIL).toList();
  }
}
