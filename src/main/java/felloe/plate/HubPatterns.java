package felloe.plate;

import java.util.List;
import java.util.Optional;

/** The hub patterns that a shape file may name. */
public interface HubPatterns {

  /** The pattern with a name, if there is one. */
  Optional<HubPattern> find(String name);

  /**
   * The holes that suit a screw's thread, mm, from close to wide (fine, medium and coarse series of
   * ISO 273, or those of its inch standard).
   *
   * @param thread its name, such as {@code M5}
   * @return empty for what is no thread that is known
   */
  default List<Double> clearances(String thread) {
    return List.of();
  }

  /** All names, in order, to offer when one is misspelt. */
  List<String> names();
}
