package felloe.kit;

import java.util.List;
import java.util.Optional;

/**
 * How the least mass is asked for, in the words of the call.
 *
 * @param vary figures of the shape file with their bounds, such as {@code stock.thickness=3-6}
 * @param steps values of each in the first round
 */
public record SearchRequest(List<String> vary, Optional<String> steps) {

  /** Copies the list. */
  public SearchRequest {
    vary = List.copyOf(vary);
  }
}
