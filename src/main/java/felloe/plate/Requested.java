package felloe.plate;

import java.util.Objects;

/**
 * What the maker asked for, and where it was written.
 *
 * @param value what was asked for
 * @param place where
 * @param <T> what kind of value
 */
public record Requested<T>(T value, Place place) {

  /** Refuses a missing value or place. */
  public Requested {
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(place, "place");
  }
}
