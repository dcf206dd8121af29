package felloe.cutting;

import java.util.List;

/** A cut is asked for in a way that cannot be. It holds everything that was found in one run. */
public final class CutRefused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<CutFault> faults;

  /**
   * With faults.
   *
   * @throws IllegalArgumentException when there is none
   */
  public CutRefused(List<CutFault> faults) {
    super(words(faults), null, false, false);
    if (faults.isEmpty()) {
      throw new IllegalArgumentException("no fault");
    }
    this.faults = List.copyOf(faults);
  }

  /** What was found, in order; at least one. */
  public List<CutFault> faults() {
    return faults;
  }

  private static String words(List<CutFault> faults) {
    return String.join(
        "\n",
        faults.stream()
            .map(
                fault ->
                    fault.figure().map(CutFigure::words).orElse(fault.place() + " " + fault.who())
                        + ": "
                        + fault.value()
                        + " "
                        + fault.wanted())
            .toList());
  }
}
