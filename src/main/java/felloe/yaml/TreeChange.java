package felloe.yaml;

import felloe.yaml.YamlValue.Keyed;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Trees with a value more or less, and what they have alike. Places and ways are left as they were.
 */
final class TreeChange {

  private TreeChange() {}

  /** The value at a path, if there is one. */
  static Optional<YamlValue> find(YamlValue root, ValuePath path) {
    YamlValue value = root;
    for (ValuePath step : path.steps()) {
      Optional<YamlValue> child = child(value, step);
      if (child.isEmpty()) {
        return Optional.empty();
      }
      value = child.get();
    }
    return Optional.of(value);
  }

  private static Optional<YamlValue> child(YamlValue value, ValuePath step) {
    if (step.isItem()) {
      return value instanceof Sequence list && step.index() < list.items().size()
          ? Optional.of(list.items().get(step.index()))
          : Optional.empty();
    }
    return value instanceof Mapping group
        ? Optional.ofNullable(group.entries().get(KeySpelling.in(group, step.key())))
            .map(Keyed::value)
        : Optional.empty();
  }

  /** The tree with a value in a list, before the item at a path that is there. */
  static YamlValue insert(YamlValue root, ValuePath path, YamlValue value) {
    Sequence list = (Sequence) find(root, path.parent()).orElseThrow();
    List<YamlValue> items = new ArrayList<>(list.items());
    items.add(path.index(), value);
    return put(root, path.parent().steps(), 0, new Sequence(list.place(), path.parent(), items));
  }

  /**
   * The tree without the value at a path that is there, and without the lists and groups that hold
   * nothing else; the top stays.
   */
  static YamlValue remove(YamlValue root, ValuePath path) {
    ValuePath last = path;
    YamlValue holder = find(root, last.parent()).orElseThrow();
    while (size(holder) == 1 && !last.parent().isTop()) {
      last = last.parent();
      holder = find(root, last.parent()).orElseThrow();
    }
    YamlValue less;
    if (holder instanceof Sequence list) {
      List<YamlValue> items = new ArrayList<>(list.items());
      items.remove(last.index());
      less = new Sequence(list.place(), last.parent(), items);
    } else {
      Mapping group = (Mapping) holder;
      Map<String, Keyed> entries = new LinkedHashMap<>(group.entries());
      entries.remove(KeySpelling.in(group, last.key()));
      less = new Mapping(group.place(), last.parent(), entries);
    }
    return put(root, last.parent().steps(), 0, less);
  }

  private static YamlValue put(
      YamlValue target, List<ValuePath> steps, int depth, YamlValue value) {
    if (depth == steps.size()) {
      return value;
    }
    ValuePath step = steps.get(depth);
    YamlValue fresh = put(child(target, step).orElseThrow(), steps, depth + 1, value);
    if (target instanceof Sequence list) {
      List<YamlValue> items = new ArrayList<>(list.items());
      items.set(step.index(), fresh);
      return new Sequence(list.place(), step.parent(), items);
    }
    Mapping group = (Mapping) target;
    Map<String, Keyed> entries = new LinkedHashMap<>(group.entries());
    entries.computeIfPresent(
        KeySpelling.in(group, step.key()), (key, old) -> new Keyed(old.keyPlace(), fresh));
    return new Mapping(group.place(), step.parent(), entries);
  }

  private static int size(YamlValue value) {
    return value instanceof Sequence list
        ? list.items().size()
        : value instanceof Mapping group ? group.entries().size() : 0;
  }

  /** Whether a text that was written says what is wanted; at the top nothing is an empty group. */
  static boolean saysAll(YamlValue wanted, YamlValue written) {
    boolean nothing = !(wanted instanceof Scalar) && size(wanted) == 0;
    return nothing && written instanceof Scalar scalar && scalar.isNull() || same(wanted, written);
  }

  /** Whether two trees are alike but for the places. */
  static boolean alike(YamlValue a, YamlValue b) {
    return same(a, b) && same(b, a);
  }

  /**
   * Whether two trees say the same, whatever the order of their keys. What cannot stand without
   * quotes where it is may be written in quotes.
   */
  private static boolean same(YamlValue wanted, YamlValue written) {
    if (wanted instanceof Scalar a && written instanceof Scalar b) {
      if (a.isNull() || b.isNull()) {
        return a.isNull() && b.isNull();
      }
      return a.text().equals(b.text())
          && (a.quoted() == b.quoted() || !a.quoted() && !FlowText.standsPlain(a.text()));
    }
    if (wanted instanceof Sequence a && written instanceof Sequence b) {
      if (a.items().size() != b.items().size()) {
        return false;
      }
      for (int i = 0; i < a.items().size(); i++) {
        if (!same(a.items().get(i), b.items().get(i))) {
          return false;
        }
      }
      return true;
    }
    if (wanted instanceof Mapping a && written instanceof Mapping b) {
      if (!a.entries().keySet().equals(b.entries().keySet())) {
        return false;
      }
      for (Map.Entry<String, Keyed> entry : a.entries().entrySet()) {
        if (!same(entry.getValue().value(), b.entries().get(entry.getKey()).value())) {
          return false;
        }
      }
      return true;
    }
    return false;
  }

  /** How deep the lists and groups of a tree are nested. */
  static int depth(YamlValue value) {
    int deepest = 0;
    for (YamlValue part : parts(value)) {
      deepest = Math.max(deepest, depth(part));
    }
    return value instanceof Scalar ? 0 : deepest + 1;
  }

  /** How many values a tree has. */
  static int count(YamlValue value) {
    int count = 1;
    for (YamlValue part : parts(value)) {
      count += count(part);
    }
    return count;
  }

  private static List<YamlValue> parts(YamlValue value) {
    if (value instanceof Sequence list) {
      return list.items();
    }
    return value instanceof Mapping group
        ? group.entries().values().stream().map(Keyed::value).toList()
        : List.of();
  }
}
