package felloe.kit;

import felloe.out.JsonWriter;
import felloe.service.Study;
import java.util.List;

/**
 * Cut files that were written, or were held back because a plate fails its review.
 *
 * @param process {@code router}, {@code laser}, {@code waterjet} or {@code jigsaw}
 * @param compensated whether the paths leave the finish line after the cutter has taken its width
 * @param jobs one for each plate, or one for a sheet; none when held back
 * @param checks what the review says of each plate
 */
public record CutAnswer(
    String process, boolean compensated, List<CutJob> jobs, List<Study> checks) {

  /** Copies the lists. */
  public CutAnswer {
    jobs = List.copyOf(jobs);
    checks = List.copyOf(checks);
  }

  /** Whether nothing was written because a plate fails its review. */
  public boolean held() {
    return jobs.isEmpty();
  }

  /** The answer as JSON text; its shape is told in {@code docs/}. */
  public String json() {
    return JsonWriter.text(CutJson.of(this));
  }
}
