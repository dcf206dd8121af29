package felloe.shape;

import java.util.List;
import java.util.stream.Collectors;

/** A feature that cannot be made from its parameters; it holds every fault that was found. */
public final class ShapeException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<ShapeFault> faults;

  /** The faults of one feature; at least one. */
  public ShapeException(List<ShapeFault> faults) {
    super(faults.stream().map(ShapeFault::sentence).collect(Collectors.joining("; ")));
    this.faults = List.copyOf(faults);
  }

  /** The faults, in the order of the parameters. */
  public List<ShapeFault> faults() {
    return faults;
  }
}
