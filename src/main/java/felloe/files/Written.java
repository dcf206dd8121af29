package felloe.files;

import java.nio.file.Path;
import java.util.List;

/**
 * What was written.
 *
 * @param files the files, in the order in which they were given
 * @param kept forms that were there with something typed into them, and were left as they are
 */
public record Written(List<Path> files, List<Path> kept) {

  public Written {
    files = List.copyOf(files);
    kept = List.copyOf(kept);
  }
}
