package felloe.kit;

import felloe.service.Study;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A drilling sheet that was written.
 *
 * @param answer the hole schedule and the order of work
 * @param check what the review says of the plate
 * @param files paths of what was written, in order
 * @param kept a form that has readings in it already and was left as it is
 */
public record DrillSheetAnswer(
    DrillAnswer answer, Study check, List<Path> files, Optional<Path> kept) {

  /** Copies the list. */
  public DrillSheetAnswer {
    files = List.copyOf(files);
  }
}
