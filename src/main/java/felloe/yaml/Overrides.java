package felloe.yaml;

import felloe.plate.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Values to take instead of a file's.
 *
 * <p>Each is {@code path=value}. The path is written as messages show it: {@code outline.width},
 * {@code windows[1].radius}, lists counted from 0. Missing groups on the way are made; a position
 * just past the end of a list adds to it. The value is YAML: a single value, {@code [x, y]} or
 * {@code {key: value}}. Later ones see the earlier.
 *
 * @param place where they are given; messages show it with the path
 * @param values such as {@code outline.round.diameter=280}, in order
 */
public record Overrides(Place place, List<String> values) {

  /** Refuses a missing place. */
  public Overrides {
    Objects.requireNonNull(place, "place");
    values = List.copyOf(values);
  }

  /** The same with more after them, as if they had been given there too. */
  public Overrides and(List<String> more) {
    List<String> all = new ArrayList<>(values);
    all.addAll(more);
    return new Overrides(place, all);
  }
}
