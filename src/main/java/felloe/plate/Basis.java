package felloe.plate;

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

  /** What a text must be to state a basis. */
  public static final String WANTED =
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

  /** Whether words speak of memory or of the trade's habit, and not of a source. */
  public static boolean isAssumed(String basis) {
    return basis.contains("from memory")
        || basis.contains("common practice")
        || basis.contains("not stated");
  }
}
