package felloe.kit;

import felloe.service.Study;
import java.nio.file.Path;
import java.util.List;

/**
 * Templates that were written.
 *
 * @param files their paths, in order
 * @param checks what the review says of each plate
 */
public record TemplateAnswer(List<Path> files, List<Study> checks) {

  public TemplateAnswer {
    files = List.copyOf(files);
    checks = List.copyOf(checks);
  }
}
