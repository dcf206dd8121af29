package felloe.plate;

import java.util.Objects;
import java.util.Optional;

/**
 * What the maker asked for, and where it was written.
 *
 * @param value what was asked for
 * @param place where
 * @param <T> what kind of value
 */
public record Requested<T>(T value, Place place) {

  /** The value asked for, or the usual one where none was. */
  public static <T> T or(Optional<Requested<T>> asked, T usual) {
    return asked.isPresent() ? asked.get().value : usual;
  }

  /** Refuses a missing value or place. */
  public Requested {
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(place, "place");
  }
}
