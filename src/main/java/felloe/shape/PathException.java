package felloe.shape;

import java.util.List;
import java.util.stream.Collectors;

/** Path data that cannot be read or closed; it holds what was found, up to a limit. */
public final class PathException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<PathFault> faults;

  /** The faults, in reading order; at least one. */
  public PathException(List<PathFault> faults) {
    super(
        faults.stream()
            .map(f -> "character " + (f.offset() + 1) + ": '" + f.read() + "' " + f.wanted())
            .collect(Collectors.joining("; ")));
    this.faults = List.copyOf(faults);
  }

  /** The faults, in reading order. */
  public List<PathFault> faults() {
    return faults;
  }
}
