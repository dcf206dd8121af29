package felloe.yaml;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.YamlValue.Keyed;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts overrides into a tree. */
final class OverrideReader {

  /** The longest that is read, in characters. */
  static final int LONGEST = 64 * 1024;

  private static final int MOST = 1000;

  private final Place given;
  private final Problems problems;

  /** A step that cannot be taken, and why. */
  private static final class NoWay extends Exception {
    private static final long serialVersionUID = 1L;

    NoWay(String why) {
      super(why, null, false, false);
    }
  }

  /**
   * @param given where they are given
   */
  OverrideReader(Place given, Problems problems) {
    this.given = given;
    this.problems = problems;
  }

  YamlValue apply(YamlValue root, List<String> sets) {
    if (sets.size() > MOST) {
      report(given, "", "", "is given more than 1000 times", "change the file");
      return root;
    }
    YamlValue changed = root;
    for (String set : sets) {
      changed = apply(changed, set);
    }
    return changed;
  }

  private YamlValue apply(YamlValue root, String set) {
    if (set.length() > LONGEST) {
      report(given, "", set, "is longer than 65536 characters", "change the file instead");
      return root;
    }
    PathReader reader = new PathReader(set);
    Optional<ValuePath> path = reader.path();
    if (path.isEmpty()) {
      report(
          given,
          "",
          set,
          "must be path=value",
          "write it as outline.width=280 or windows[0].radius=12");
      return root;
    }
    Place place = given.naming(path.get().toString());
    return value(path.get(), place, reader.rest())
        .flatMap(value -> put(root, path.get(), value, place))
        .orElse(root);
  }

  /**
   * The tree with a value at a path.
   *
   * @return empty when there is no way to the path; that has been reported
   */
  Optional<YamlValue> put(YamlValue root, ValuePath path, YamlValue value, Place place) {
    try {
      return Optional.of(put(root, path.steps(), 0, value, place));
    } catch (NoWay noWay) {
      report(place, path.toString(), "", noWay.getMessage(), "");
      return Optional.empty();
    }
  }

  /**
   * The value that a text is.
   *
   * @param path where it goes
   * @param place what messages point at
   * @return empty when it cannot be read; that has been reported
   */
  Optional<YamlValue> value(ValuePath path, Place place, String text) {
    if (path.steps().size() > TreeBuilder.DEEPEST) {
      report(place, path.toString(), "", "is nested deeper than 50 levels", "");
      return Optional.empty();
    }
    try {
      return Optional.of(read(path, place, text));
    } catch (BadInput bad) {
      problems.add(named(bad, path.toString()));
      return Optional.empty();
    }
  }

  private static YamlValue read(ValuePath path, Place place, String text) {
    String clean = SourceText.checked("", text, place);
    Problems found = new Problems();
    Optional<YamlValue> value = new TreeBuilder("", place, clean, found).build(path);
    found.throwIfAny();
    if (!(value.get() instanceof Scalar)
        && !clean.stripLeading().startsWith("[")
        && !clean.stripLeading().startsWith("{")) {
      throw new BadInput(
          new Problem(
              place,
              "",
              text,
              "must be one value, a list in [ ] or a group in { }",
              "put a text that has ': ' or starts with '- ' in quotes"));
    }
    return value.get();
  }

  /** The same, each problem with whom it is about. */
  private static BadInput named(BadInput bad, String who) {
    return new BadInput(
        bad.problems().stream()
            .map(
                p ->
                    p.who().isEmpty()
                        ? new Problem(p.place(), who, p.value(), p.wanted(), p.cure())
                        : p)
            .toList(),
        bad.more());
  }

  private YamlValue put(
      YamlValue target, List<ValuePath> steps, int depth, YamlValue value, Place place)
      throws NoWay {
    if (depth == steps.size()) {
      return value;
    }
    ValuePath step = steps.get(depth);
    boolean absent = target == null || (target instanceof Scalar s && s.isNull());
    if (step.isItem()) {
      if (!absent && !(target instanceof Sequence)) {
        throw new NoWay(step.parent() + " is " + kind(target) + ", so [..] finds nothing in it");
      }
      Place at = absent ? place : target.place();
      List<YamlValue> items =
          new ArrayList<>(target instanceof Sequence list ? list.items() : List.of());
      int index = step.index();
      if (index > items.size()) {
        throw new NoWay(pastTheEnd(step.parent(), items.size(), index));
      }
      YamlValue old = index < items.size() ? items.get(index) : null;
      YamlValue fresh = put(old, steps, depth + 1, value, place);
      if (index < items.size()) {
        items.set(index, fresh);
      } else {
        items.add(fresh);
      }
      return new Sequence(at, step.parent(), items);
    }
    if (!absent && !(target instanceof Mapping)) {
      String whole = step.parent().toString();
      throw new NoWay(
          (whole.isEmpty() ? "the file" : whole) + " is " + kind(target) + ", so it has no keys");
    }
    Map<String, Keyed> entries =
        new LinkedHashMap<>(target instanceof Mapping group ? group.entries() : Map.of());
    String key = target instanceof Mapping group ? KeySpelling.in(group, step.key()) : step.key();
    Keyed old = entries.get(key);
    YamlValue fresh = put(old == null ? null : old.value(), steps, depth + 1, value, place);
    entries.put(key, new Keyed(old == null ? place : old.keyPlace(), fresh));
    return new Mapping(absent ? place : target.place(), step.parent(), entries);
  }

  private static String pastTheEnd(ValuePath list, int size, int index) {
    if (size == 0) {
      return list + " has no items, so [" + index + "] is past the end; use [0] to add one";
    }
    String range = size == 1 ? "[0]" : "[0] to [" + (size - 1) + "]";
    return list
        + " has "
        + size
        + (size == 1 ? " item" : " items")
        + ", so ["
        + index
        + "] is past the end; use "
        + range
        + ", or ["
        + size
        + "] to add one";
  }

  /** What a value is, in words. */
  static String kind(YamlValue value) {
    if (value instanceof Scalar) {
      return "a single value";
    }
    return value instanceof Sequence ? "a list" : "a group of keys";
  }

  private void report(Place place, String who, String value, String wanted, String cure) {
    problems.add(new Problem(place, who, value, wanted, cure));
  }
}
