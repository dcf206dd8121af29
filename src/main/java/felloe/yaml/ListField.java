package felloe.yaml;

import felloe.geometry.Point;
import felloe.yaml.YamlValue.Sequence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A list about to be read: set how many items it may have, then end with one of {@link #entries},
 * {@link #mappings}, {@link #each}, {@link #points}, {@link #lengths}, {@link #texts}, once. A
 * missing list is an empty one, so {@code atLeast(1)} makes it required.
 */
public final class ListField {

  private final Entry entry;
  private int fewest;
  private int most = Integer.MAX_VALUE;

  ListField(Entry entry) {
    this.entry = entry;
  }

  /** At least so many items. */
  public ListField atLeast(int items) {
    fewest = items;
    return this;
  }

  /** At most so many items. */
  public ListField atMost(int items) {
    most = items;
    return this;
  }

  /** Exactly so many items. */
  public ListField exactly(int items) {
    return atLeast(items).atMost(items);
  }

  /** The items as they are; empty when the list is missing or wrong. */
  public List<Entry> entries() {
    String wanted = "must be a list: '- ' lines, or [a, b]";
    if (!entry.present()) {
      if (fewest > 0) {
        entry.reportMissing("a list of " + count());
      }
      return List.of();
    }
    if (!(entry.value().orElseThrow() instanceof Sequence list)) {
      if (!entry.isBlank(wanted)) {
        boolean one = entry.kind() == Entry.Kind.MAPPING;
        entry.problem(wanted, one ? "put '- ' before the first key of each item" : "");
      }
      return List.of();
    }
    int size = list.items().size();
    if (size < fewest || size > most) {
      entry.problem("must have " + count() + ", but has " + size, "");
      return List.of();
    }
    List<Entry> entries = new ArrayList<>(size);
    for (int i = 0; i < size; i++) {
      YamlValue item = list.items().get(i);
      entries.add(new Entry(entry.scope(), list.route().item(i), item.place(), item));
    }
    return entries;
  }

  /** The items as groups of keys; an item that is none is reported and left out. */
  public List<Fields> mappings() {
    return all(item -> item.mapping().optional());
  }

  /**
   * What a reader makes of each item.
   *
   * @param reader reads one group of keys; empty when something in it is wrong
   */
  public <T> List<T> each(Function<Fields, Optional<T>> reader) {
    return all(item -> item.mapping().optional().flatMap(reader));
  }

  /** The items as points {@code [x, y]}, in mm; wrong ones are reported and left out. */
  public List<Point> points() {
    return all(item -> item.point().optional());
  }

  /** The items as lengths in mm; wrong ones are reported and left out. */
  public List<Double> lengths() {
    return all(
        item -> {
          double value = item.length().required();
          return Double.isNaN(value) ? Optional.<Double>empty() : Optional.of(value);
        });
  }

  /** The items as short texts; wrong ones are reported and left out. */
  public List<String> texts() {
    return all(item -> item.text().optional());
  }

  private <T> List<T> all(Function<Entry, Optional<T>> read) {
    List<T> good = new ArrayList<>();
    for (Entry item : entries()) {
      read.apply(item).ifPresent(good::add);
    }
    return good;
  }

  private String count() {
    if (fewest == most) {
      return fewest + (fewest == 1 ? " item" : " items");
    }
    if (most == Integer.MAX_VALUE) {
      return "at least " + fewest + (fewest == 1 ? " item" : " items");
    }
    return fewest == 0
        ? "at most " + most + (most == 1 ? " item" : " items")
        : fewest + " to " + most + " items";
  }
}
