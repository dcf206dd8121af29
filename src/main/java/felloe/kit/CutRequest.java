package felloe.kit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How cut files are wanted, in the words that the maker wrote. What is left out is as usual. The
 * words are read, and all that is wrong with them is said, when the request is carried out.
 *
 * @param options each option that was given, such as {@code --cutter}, with its values; an option
 *     without a value has none
 */
public record CutRequest(Map<String, List<String>> options) {

  /** Copies the options in order. */
  public CutRequest {
    Map<String, List<String>> copy = new LinkedHashMap<>();
    options.forEach((name, values) -> copy.put(name, List.copyOf(values)));
    options = java.util.Collections.unmodifiableMap(copy);
  }

  /** A request by a process with everything else as usual. */
  public static CutRequest of(String process) {
    return new CutRequest(Map.of("--process", List.of(process)));
  }

  /** The value of an option that was given. */
  Optional<String> value(String option) {
    return options.getOrDefault(option, List.of()).stream().findFirst();
  }

  /** All values of an option that may be given more than once. */
  List<String> all(String option) {
    return options.getOrDefault(option, List.of());
  }

  /** Whether an option was given. */
  boolean has(String option) {
    return options.containsKey(option);
  }
}
