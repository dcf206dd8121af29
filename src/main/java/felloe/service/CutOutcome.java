package felloe.service;

import felloe.cutting.CutJob;
import felloe.plate.Plate;
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

  /** The plate that a job is for: it is cut, or a grip of it. */
  public Plate owner(CutJob job) {
    Plate cut = job.shapes().get(0);
    return studies.stream()
        .map(Study::plate)
        .filter(
            plate ->
                cut.name().equals(plate.name()) || cut.name().startsWith(plate.name() + "-grip-"))
        .findFirst()
        .orElseThrow();
  }

  /** Whether nothing is cut because a plate fails its review. */
  public boolean held() {
    return jobs.isEmpty();
  }
}
