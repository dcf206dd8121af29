package felloe.hub;

import felloe.plate.Basis;
import felloe.yaml.Entry;
import java.util.Optional;

/** Reads where a figure comes from. */
final class BasisEntry {

  private BasisEntry() {}

  /** Reads a basis; empty, and reported, when it is none. A missing one is not reported. */
  static Optional<Basis> read(Entry entry) {
    Optional<String> text = entry.text().optional();
    Optional<Basis> basis = text.isPresent() ? Basis.of(text.get()) : Optional.empty();
    if (text.isPresent() && basis.isEmpty()) {
      entry.problem("must be " + Basis.WANTED, "say how you know the figure, such as: measured");
    }
    return basis;
  }
}
