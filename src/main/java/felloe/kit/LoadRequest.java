package felloe.kit;

import java.util.List;
import java.util.Optional;

/**
 * How loads are asked for, in the words of the call.
 *
 * @param support {@code clamped} or {@code bolts}
 * @param cases names of the cases that are wanted; empty for all
 * @param thicknesses a list or a range
 * @param materials a file of the maker's own materials
 * @param tested a file of broken test strips
 * @param paper of the pages
 */
public record LoadRequest(
    Optional<String> support,
    List<String> cases,
    Optional<String> thicknesses,
    Optional<String> materials,
    Optional<String> tested,
    Optional<String> paper) {

  /** Nothing is asked for. */
  public static final LoadRequest USUAL =
      new LoadRequest(
          Optional.empty(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** Copies the list. */
  public LoadRequest {
    cases = List.copyOf(cases);
  }
}
