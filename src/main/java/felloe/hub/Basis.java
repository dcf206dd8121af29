package felloe.hub;

import felloe.yaml.Entry;
import java.util.Locale;
import java.util.Optional;

/**
 * Where a figure comes from.
 *
 * @param kind how far to trust it
 * @param words as it was written, such as {@code standard ISO 273, fine series}
 */
public record Basis(Kind kind, String words) {

  /** How far a figure may be trusted. */
  public enum Kind {
    /** A published standard. */
    STANDARD("standard"),
    /** Somebody measured it. */
    MEASURED("measured"),
    /** Many in the trade do it so; no paper says so. */
    COMMON_PRACTICE("common practice"),
    /** Remembered, not looked up: check before use. */
    FROM_MEMORY("from memory");

    private final String start;

    Kind(String start) {
      this.start = start;
    }

    /** The words that a basis of this kind begins with. */
    public String words() {
      return start;
    }
  }

  static final String WANTED =
      "a text that begins with standard, measured, common practice or from memory";

  /** The basis that a text states; empty when it begins with none of the kinds. */
  public static Optional<Basis> of(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    for (Kind kind : Kind.values()) {
      if (lower.startsWith(kind.start)) {
        return Optional.of(new Basis(kind, text));
      }
    }
    return Optional.empty();
  }

  /** Reads a basis; empty, and reported, when it is none. A missing one is not reported. */
  static Optional<Basis> read(Entry entry) {
    Optional<String> text = entry.text().optional();
    Optional<Basis> basis = text.isPresent() ? of(text.get()) : Optional.empty();
    if (text.isPresent() && basis.isEmpty()) {
      entry.problem("must be " + WANTED, "say how you know the figure, such as: measured");
    }
    return basis;
  }
}
