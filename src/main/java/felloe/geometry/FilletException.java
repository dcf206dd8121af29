package felloe.geometry;

import java.util.List;
import java.util.stream.Collectors;

/** Corner radii that have no room: every one of a chain, with the largest radius that fits. */
public final class FilletException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<FilletFault> faults;

  /** The faults, in the order of the corners; at least one. */
  public FilletException(List<FilletFault> faults) {
    super(faults.stream().map(FilletFault::sentence).collect(Collectors.joining("; ")));
    this.faults = List.copyOf(faults);
  }

  /** The faults, in the order of the corners. */
  public List<FilletFault> faults() {
    return faults;
  }
}
