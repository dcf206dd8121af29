package felloe.files;

import java.nio.file.Path;
import java.util.List;

/**
 * What was written.
 *
 * @param files the files, in the order in which they were given
 * @param kept forms that were there with something typed into them, and were left as they are
 * @param older files beside them that were made of the same shape before it was changed
 */
public record Written(List<Path> files, List<Path> kept, List<Path> older) {

  /** Nothing. */
  public static final Written NONE = new Written(List.of(), List.of(), List.of());

  public Written {
    files = List.copyOf(files);
    kept = List.copyOf(kept);
    older = List.copyOf(older);
  }
}
