package felloe.yaml;

import felloe.geometry.Point;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.YamlValue.Keyed;
import felloe.yaml.YamlValue.Mapping;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The keys of a group, read by what is wanted of each. What is wrong is collected and a harmless
 * value given back, so that the reader goes on and the maker sees all problems at once. Every key
 * asked for counts as known; {@link #done} reports the others. Open each group inside once.
 *
 * <pre>{@code
 * static Optional<Slot> slot(Fields f) {
 *   Point at = f.point("at").required();
 *   double length = f.length("length").positive().required();
 *   double width = f.length("width").positive().atMost(length, "the slot's length", "").required();
 *   return f.build(() -> new Slot(f.place(), at, length, width));
 * }
 * }</pre>
 */
public final class Fields {

  /** So many unknown keys of one group are told one by one. */
  private static final int MOST_UNKNOWN = 50;

  private final Mapping group;
  private final Scope scope;
  private final Set<String> known = new LinkedHashSet<>();
  private final Set<String> spelt = new LinkedHashSet<>();
  private Map<String, String> elsewhere = Map.of();
  private boolean closed;

  Fields(Mapping group, Scope scope) {
    this.group = group;
    this.scope = scope;
    scope.enter(this);
  }

  /** Fields that hold nothing and report nothing, in place of what is missing or wrong. */
  static Fields silent(Place place, ValuePath route, Scope scope) {
    return new Fields(new Mapping(place, route, Map.of()), scope);
  }

  /** Where the group starts. */
  public Place place() {
    return group.place();
  }

  /** Where the value of a key stands; the group's place when it is missing. */
  public Place place(String key) {
    return entry(key).place();
  }

  /** The way to the group, such as {@code windows[2]}; empty for the top of the file. */
  public String path() {
    return group.path();
  }

  /** All keys written in the group, in the order of the file, for groups with free names. */
  public List<String> keys() {
    return List.copyOf(group.entries().keySet());
  }

  /** True when the key is written here. */
  public boolean has(String key) {
    return entry(key).present();
  }

  /** Counts keys as known without reading them. */
  public void allow(String... keys) {
    known.addAll(List.of(keys));
  }

  /** Tells of keys that are looked for here where they stand: each with the way to it. */
  public void elsewhere(Map<String, String> ways) {
    elsewhere = Map.copyOf(ways);
  }

  /** What stands behind a key, for values that may be written in several ways. */
  public Entry entry(String key) {
    known.add(key);
    String written = KeySpelling.in(group, key);
    Keyed keyed = group.entries().get(written);
    if (keyed != null && !written.equals(key) && spelt.add(written)) {
      known.add(written);
      scope.oldSpelling(keyed.keyPlace(), written);
    }
    return new Entry(
        scope,
        group.route().key(written),
        keyed == null ? group.place() : keyed.value().place(),
        keyed == null ? null : keyed.value());
  }

  /** A length in mm; see {@link Entry#length}. */
  public NumberField length(String key) {
    return entry(key).length();
  }

  /** An angle in degrees; see {@link Entry#angle}. */
  public NumberField angle(String key) {
    return entry(key).angle();
  }

  /** A clock position, read as degrees counter-clockwise from +x; see {@link Entry#clock}. */
  public NumberField clock(String key) {
    return entry(key).clock();
  }

  /** A modulus or stress in MPa; see {@link Entry#stress}. */
  public NumberField stress(String key) {
    return entry(key).stress();
  }

  /** A force in N; see {@link Entry#force}. */
  public NumberField force(String key) {
    return entry(key).force();
  }

  /** A number without unit. */
  public NumberField number(String key) {
    return entry(key).number();
  }

  /** A whole number. */
  public WholeField integer(String key) {
    return entry(key).integer();
  }

  /** A short text on one line; see {@link Entry#text}. */
  public ValueField<String> text(String key) {
    return entry(key).text();
  }

  /** A text of any length; see {@link Entry#longText}. */
  public ValueField<String> longText(String key) {
    return entry(key).longText();
  }

  /** {@code true} or {@code false}. */
  public ValueField<Boolean> bool(String key) {
    return entry(key).bool();
  }

  /** One of the constants of an enum; see {@link Entry#oneOf(Class)}. */
  public <E extends Enum<E>> ValueField<E> oneOf(String key, Class<E> type) {
    return entry(key).oneOf(type);
  }

  /** One of the given words. */
  public ValueField<String> oneOf(String key, String first, String... others) {
    List<String> words = new ArrayList<>(List.of(first));
    words.addAll(List.of(others));
    return entry(key).oneOf(words.toArray(String[]::new));
  }

  /** A point {@code [x, y]} in mm. */
  public ValueField<Point> point(String key) {
    return entry(key).point();
  }

  /** A group of keys that may be required or not. */
  public ValueField<Fields> mapping(String key) {
    return entry(key).mapping();
  }

  /**
   * A group of keys of which each has a default or reports itself missing: when the whole group is
   * missing, it is read as one without keys.
   */
  public Fields group(String key) {
    Entry entry = entry(key);
    return entry.present()
        ? entry.mapping().required()
        : new Fields(new Mapping(group.place(), group.route().key(key), Map.of()), scope.inner());
  }

  public ListField list(String key) {
    return entry(key).list();
  }

  /**
   * Which one of several keys is written. None, or more than one, is a problem.
   *
   * @return the key; empty when there is not exactly one
   */
  public Optional<String> exactlyOneOf(String... keys) {
    Optional<String> found = atMostOneOf(keys);
    List<String> all = List.of(keys);
    if (all.stream().noneMatch(this::has)) {
      problem("must have one of " + String.join(", ", all), "add one of them");
    }
    return found;
  }

  /**
   * Which one of several keys that exclude each other is written. More than one is a problem.
   *
   * @return the key; empty when there is none or more than one
   */
  public Optional<String> atMostOneOf(String... keys) {
    List<String> present = new ArrayList<>();
    for (String key : keys) {
      if (has(key)) {
        present.add(key);
      }
    }
    if (present.size() > 1) {
      String second = present.get(1);
      scope.report(
          new Problem(
              group.entries().get(KeySpelling.in(group, second)).keyPlace(),
              group.route().key(second).toString(),
              "",
              "cannot stand beside " + present.get(0),
              "keep one of " + String.join(", ", present)));
    }
    return present.size() == 1 ? Optional.of(present.get(0)) : Optional.empty();
  }

  /**
   * Reports that something is wrong with the group as a whole.
   *
   * @param wanted what is allowed, as the rest of a sentence about the group
   * @param cure what to do; may be empty
   */
  public void problem(String wanted, String cure) {
    scope.report(new Problem(group.place(), path(), "", wanted, cure));
  }

  /** Reports that something is wrong with the value of a key; see {@link Entry#problem}. */
  public void problem(String key, String wanted, String cure) {
    entry(key).problem(wanted, cure);
  }

  /** True when nothing wrong has been found in this group or in anything that lies in it. */
  public boolean good() {
    return scope.good();
  }

  /**
   * Ends the reading: reports each key that was never asked for, with the nearest known one. The
   * groups inside that were opened are ended first, if their reader did not.
   *
   * @return true when nothing wrong was found in this group or in anything that lies in it
   */
  public boolean done() {
    if (!closed) {
      closed = true;
      scope.closeAll();
      reportUnknown();
    }
    return scope.good();
  }

  private void reportUnknown() {
    if (known.containsAll(group.entries().keySet())) {
      return;
    }
    List<String> unknown =
        group.entries().keySet().stream().filter(key -> !known.contains(key)).toList();
    unknown.stream().limit(MOST_UNKNOWN).forEach(this::reportUnknown);
    if (unknown.size() > MOST_UNKNOWN) {
      problem(
          "has " + (unknown.size() - MOST_UNKNOWN) + " more keys that are not known",
          "check that it is the right file");
    }
  }

  private void reportUnknown(String key) {
    Keyed keyed = group.entries().get(key);
    List<String> names = known.stream().filter(name -> !spelt.contains(name)).sorted().toList();
    String allowed =
        names.isEmpty() ? "no key is allowed here" : "allowed here: " + String.join(", ", names);
    String cure =
        Optional.ofNullable(elsewhere.get(key.toLowerCase(Locale.ROOT).replace('-', '_')))
            .or(() -> Nearest.to(key, names))
            .map(near -> "did you mean '" + near + "'? " + allowed)
            .orElse(allowed);
    scope.report(
        new Problem(
            keyed.keyPlace(), group.route().key(key).toString(), "", "is not a known key", cure));
  }

  /**
   * Ends the reading and makes the result, if nothing was wrong.
   *
   * @param make makes the result from what was read; called only when all is well
   * @return empty when something was wrong
   */
  public <T> Optional<T> build(Supplier<T> make) {
    return done() ? Optional.of(make.get()) : Optional.empty();
  }
}
