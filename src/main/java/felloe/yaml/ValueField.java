package felloe.yaml;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * A value about to be read: end with {@link #required}, {@link #or} or {@link #optional}, once.
 *
 * @param <T> what it is read as
 */
public final class ValueField<T> {

  private final Entry entry;
  private final String wanted;
  private final Supplier<Optional<T>> read;
  private final Supplier<T> harmless;

  /**
   * @param wanted what is wanted, with an example: {@code true or false}
   * @param read reads the value, reporting what is wrong with it
   * @param harmless stands in for a value that is missing or wrong
   */
  ValueField(Entry entry, String wanted, Supplier<Optional<T>> read, Supplier<T> harmless) {
    this.entry = entry;
    this.wanted = wanted;
    this.read = read;
    this.harmless = harmless;
  }

  /**
   * The value; a missing one is reported. When it is missing or wrong, a harmless one: an empty
   * text, {@code false}, the first of the choices, the point (0, 0), fields that hold nothing and
   * report nothing.
   */
  public T required() {
    if (!entry.present()) {
      entry.reportMissing(wanted);
      return harmless.get();
    }
    return read.get().orElseGet(harmless);
  }

  /** The value, or {@code standard} when it is missing or wrong. */
  public T or(T standard) {
    return optional().orElse(standard);
  }

  /** The value; empty when it is missing or wrong. */
  public Optional<T> optional() {
    return entry.present() ? read.get() : Optional.empty();
  }
}
