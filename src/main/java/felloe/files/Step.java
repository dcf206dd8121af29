package felloe.files;

import java.util.Optional;

/**
 * A file that changes.
 *
 * @param name its name
 * @param before digest of what is there now; empty when nothing is
 * @param after digest of what comes; empty when the file goes
 */
record Step(String name, Optional<String> before, Optional<String> after) {

  static Step put(String name, Optional<String> before, String after) {
    return new Step(name, before, Optional.of(after));
  }

  static Step drop(String name, String before) {
    return new Step(name, Optional.of(before), Optional.empty());
  }
}
