package felloe.board;

import felloe.geometry.Numbers;
import felloe.yaml.BuiltIn;
import felloe.yaml.FlowText;
import felloe.yaml.YamlValue;
import felloe.yaml.YamlValue.Keyed;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What may stand at a place of the shape file, from its published schema (JSON Schema, draft
 * 2020-12): as much of it as a form needs.
 */
final class Schema {

  private static final String DEFINED = "#/$defs/";

  private static final String PROPERTIES = "properties";

  /** The most alternatives and references that lie between a place and what it is. */
  private static final int DEEPEST = 8;

  private final Mapping root;

  /** What is said of the place, the nearest first: its own words, then what it refers to. */
  private final List<Mapping> layers;

  private Schema(Mapping root, List<Mapping> layers) {
    this.root = root;
    this.layers = layers;
  }

  /** What a value is, to be changed on a page. */
  enum Kind {
    /** Keys with values. */
    GROUP,
    /** Values in order. */
    LIST,
    /** A number, with a unit or without. */
    FIGURE,
    /** One of some words. */
    CHOICE,
    /** Yes or no. */
    TRUTH,
    /** What cannot be anything else. */
    FIXED,
    /** Words. */
    TEXT
  }

  /** The shape file as a whole. */
  static Schema ofShapeFile() {
    YamlValue all = BuiltIn.tree("/felloe/board/shape-file.schema.json").root();
    if (all instanceof Mapping root) {
      return new Schema(root, List.of(root));
    }
    throw new IllegalStateException("the schema is no group of keys");
  }

  private Schema of(Mapping place) {
    List<Mapping> found = new ArrayList<>();
    Mapping at = place;
    for (int i = 0; i < DEEPEST && at != null; i++) {
      found.add(at);
      at = referred(at);
    }
    return new Schema(root, List.copyOf(found));
  }

  private Mapping referred(Mapping at) {
    if (get(at, "$ref") instanceof Scalar name
        && name.text().startsWith(DEFINED)
        && get(root, "$defs") instanceof Mapping all
        && get(all, name.text().substring(DEFINED.length())) instanceof Mapping one) {
      return one;
    }
    return null;
  }

  private static YamlValue get(Mapping group, String key) {
    Keyed found = group.entries().get(key);
    return found == null ? null : found.value();
  }

  private Optional<YamlValue> find(String key) {
    for (Mapping layer : layers) {
      YamlValue found = get(layer, key);
      if (found != null) {
        return Optional.of(found);
      }
    }
    return Optional.empty();
  }

  private Optional<String> text(String key) {
    return find(key).filter(v -> v instanceof Scalar).map(v -> ((Scalar) v).text());
  }

  private OptionalDouble number(String key) {
    Optional<YamlValue> found = find(key);
    return found.isPresent() && found.get() instanceof Scalar one
        ? one.length()
        : OptionalDouble.empty();
  }

  private List<YamlValue> list(String key) {
    return find(key)
        .map(v -> v instanceof Sequence list ? list.items() : List.<YamlValue>of())
        .orElse(List.of());
  }

  private static List<String> words(List<YamlValue> values) {
    return values.stream().filter(v -> v instanceof Scalar).map(v -> ((Scalar) v).text()).toList();
  }

  /** What it is for, in a line. */
  String help() {
    return text("description").orElse("");
  }

  /** Whether it is what a definition of the schema says, such as {@code point}. */
  boolean is(String definition) {
    String name = DEFINED + definition;
    return layers.stream()
        .anyMatch(l -> get(l, "$ref") instanceof Scalar s && s.text().equals(name));
  }

  /** Its value where none is written, as YAML; empty where there is none. */
  Optional<String> usual() {
    return find("default").map(FlowText::of);
  }

  /** The keys that it may have, in order. */
  List<String> keys() {
    return find(PROPERTIES)
        .map(v -> v instanceof Mapping m ? List.copyOf(m.entries().keySet()) : List.<String>of())
        .orElse(List.of());
  }

  /** What may stand behind a key. */
  Optional<Schema> key(String key) {
    // Keys may still be written with hyphens.
    String name = key.replace('-', '_');
    return find(PROPERTIES)
        .map(
            v ->
                v instanceof Mapping all
                    ? Optional.ofNullable(get(all, name)).orElse(get(all, key))
                    : null)
        .filter(v -> v instanceof Mapping)
        .map(v -> of((Mapping) v));
  }

  /** What may stand in a list. */
  Optional<Schema> item() {
    return find("items").filter(v -> v instanceof Mapping).map(v -> of((Mapping) v));
  }

  /** How many values a list has at least. */
  int least() {
    return (int) number("minItems").orElse(0);
  }

  /** How many values a list has at most. */
  int most() {
    return (int) number("maxItems").orElse(Integer.MAX_VALUE);
  }

  /** Keys that must stand there whatever else does. */
  List<String> required() {
    return words(list("required"));
  }

  /** Sets of keys of which just one set stands there; empty where there is no such choice. */
  List<List<String>> oneOf() {
    List<List<String>> sets = new ArrayList<>();
    for (YamlValue one : list("oneOf")) {
      if (one instanceof Mapping m && get(m, "required") instanceof Sequence keys) {
        sets.add(words(keys.items()));
      }
    }
    return sets;
  }

  private List<Schema> alternatives() {
    return list("anyOf").stream()
        .filter(v -> v instanceof Mapping)
        .map(v -> of((Mapping) v))
        .toList();
  }

  /** The words of which it is one. */
  List<String> choices() {
    List<String> own = words(list("enum"));
    if (!own.isEmpty()) {
      return own;
    }
    return alternatives().stream().flatMap(a -> a.choices().stream()).toList();
  }

  /** Where several kinds of value may stand, the one that does. */
  Schema as(YamlValue value) {
    if (!keys().isEmpty() || find("items").isPresent()) {
      return this;
    }
    Kind wanted =
        value instanceof Mapping ? Kind.GROUP : value instanceof Sequence ? Kind.LIST : Kind.TEXT;
    if (wanted == Kind.TEXT) {
      return this;
    }
    for (Schema one : alternatives()) {
      if (one.kind() == wanted) {
        return one;
      }
    }
    return this;
  }

  /** The same for one of which nothing is written yet. */
  Schema as(Kind wanted) {
    if (kind() == wanted) {
      return this;
    }
    return alternatives().stream().filter(a -> a.kind() == wanted).findFirst().orElse(this);
  }

  /** What it is. */
  Kind kind() {
    if (find("const").isPresent()) {
      return Kind.FIXED;
    }
    if (!list("enum").isEmpty()) {
      return Kind.CHOICE;
    }
    List<String> types =
        find("type")
            .map(v -> v instanceof Sequence s ? words(s.items()) : words(List.of(v)))
            .orElse(List.of());
    if (types.size() == 1) {
      switch (types.get(0)) {
        case "object":
          return Kind.GROUP;
        case "array":
          return Kind.LIST;
        case "boolean":
          return Kind.TRUTH;
        case "number", "integer":
          return Kind.FIGURE;
        default:
          return Kind.TEXT;
      }
    }
    return alternatives().stream().anyMatch(a -> a.kind() == Kind.FIGURE) ? Kind.FIGURE : Kind.TEXT;
  }

  /** Whether a number must be a whole one. */
  boolean whole() {
    return text("type").filter("integer"::equals).isPresent();
  }

  /** The least that a number may be, or what it must be above; not there where there is none. */
  OptionalDouble lowest() {
    return bound("minimum", "exclusiveMinimum");
  }

  /** The most that a number may be. */
  OptionalDouble highest() {
    return bound("maximum", "exclusiveMaximum");
  }

  private OptionalDouble bound(String reached, String beyond) {
    OptionalDouble own = number(reached);
    if (own.isEmpty()) {
      own = number(beyond);
    }
    for (Schema one : alternatives()) {
      if (own.isEmpty()) {
        own = one.bound(reached, beyond);
      }
    }
    return own;
  }

  /** A value to begin with, as YAML in flow style: what is usual, else an example. */
  String first() {
    List<YamlValue> examples = list("examples");
    Kind kind = kind();
    if (kind == Kind.TRUTH) {
      // What is added is to say something else than what is taken without it.
      return usual().filter("true"::equals).isPresent() ? "false" : "true";
    }
    if (kind == Kind.FIXED) {
      return find("const").map(FlowText::of).orElseThrow();
    }
    if (!examples.isEmpty()) {
      return FlowText.of(examples.get(0));
    }
    Optional<String> usual = usual();
    if (usual.isPresent()) {
      return usual.get();
    }
    return switch (kind) {
      case CHOICE -> choices().get(0);
      case GROUP -> firstGroup();
      case LIST -> firstList();
      case FIGURE -> Numbers.brief(firstFigure(), 3);
      default -> alternatives().isEmpty() ? "words" : alternatives().get(0).first();
    };
  }

  /** A size in the middle of nowhere that is allowed. */
  private double firstFigure() {
    double low = lowest().orElse(0);
    double some = low > 0 ? low : 10;
    return Math.min(some, highest().orElse(some));
  }

  private String firstGroup() {
    List<String> wanted = new ArrayList<>(required());
    oneOf().stream().findFirst().ifPresent(wanted::addAll);
    if (wanted.isEmpty()) {
      keys().stream().findFirst().ifPresent(wanted::add);
    }
    List<String> parts = new ArrayList<>();
    for (String key : wanted.stream().distinct().toList()) {
      parts.add(key + ": " + key(key).map(Schema::first).orElse("~"));
    }
    return "{" + String.join(", ", parts) + "}";
  }

  private String firstList() {
    String one = item().map(Schema::first).orElse("~");
    return "[" + String.join(", ", java.util.Collections.nCopies(Math.max(1, least()), one)) + "]";
  }

  /** What stands at the end of a way through a tree; empty where nothing may. */
  Optional<Schema> at(String path) {
    Schema at = this;
    for (String step : Steps.of(path)) {
      boolean item = step.startsWith("[");
      Schema group = at.as(item ? Kind.LIST : Kind.GROUP);
      Optional<Schema> next = item ? group.item() : group.key(step);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      at = next.get();
    }
    return Optional.of(at);
  }
}
