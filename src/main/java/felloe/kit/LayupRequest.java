package felloe.kit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How a lay-up is wanted, in the words that the maker wrote. What is left out is as the shape file
 * has it, or as usual. The words are read, and all that is wrong with them is said, when the
 * request is carried out.
 *
 * @param options each option that was given, such as {@code --cloth}, with its value
 */
public record LayupRequest(Map<String, String> options) {

  /** Copies the options in order. */
  public LayupRequest {
    options = Collections.unmodifiableMap(new LinkedHashMap<>(options));
  }

  Optional<String> value(String option) {
    return Optional.ofNullable(options.get(option));
  }
}
