package felloe.service;

import felloe.cutting.CutJob;
import java.util.List;

/**
 * What is cut, or that nothing is.
 *
 * @param request how it was asked for
 * @param studies the plates
 * @param jobs one for each plate, or one for a sheet; none while a plate fails its review
 */
public record CutOutcome(PlateCutting.Request request, List<Study> studies, List<CutJob> jobs) {

  public CutOutcome {
    studies = List.copyOf(studies);
    jobs = List.copyOf(jobs);
  }

  /** Whether nothing is cut because a plate fails its review. */
  public boolean held() {
    return jobs.isEmpty();
  }
}
