package felloe.yaml;

import felloe.geometry.Point;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One place in a file where a value may stand: behind a key, present or not, or as an item of a
 * list. It says what kind of value stands there and reads it as what is wanted.
 */
public final class Entry {

  /** What stands at an entry. */
  public enum Kind {
    /** Nothing: the key is not there. */
    MISSING,
    /** A single value, or a key with nothing behind it. */
    SCALAR,
    /** A list. */
    LIST,
    /** A group of keys. */
    MAPPING
  }

  private static final int LONGEST_TEXT = 200;

  private final Scope scope;
  private final ValuePath route;
  private final Place place;
  private final YamlValue value;

  /**
   * @param place where the value is, or where it is missed
   * @param value the value, or null when it is missing
   */
  Entry(Scope scope, ValuePath route, Place place, YamlValue value) {
    this.scope = scope;
    this.route = route;
    this.place = place;
    this.value = value;
  }

  Scope scope() {
    return scope;
  }

  /** Where the value is; when it is missing, the group of keys that lacks it. */
  public Place place() {
    return place;
  }

  /** The way to the value, such as {@code windows[2].radius}. */
  public String path() {
    return route.toString();
  }

  /** True when something stands here, even an empty value. */
  public boolean present() {
    return value != null;
  }

  /** The value as it is in the tree; empty when it is missing. */
  public Optional<YamlValue> value() {
    return Optional.ofNullable(value);
  }

  /** What stands here, for values that may be written in several ways. */
  public Kind kind() {
    if (value == null) {
      return Kind.MISSING;
    }
    if (value instanceof Scalar) {
      return Kind.SCALAR;
    }
    return value instanceof Sequence ? Kind.LIST : Kind.MAPPING;
  }

  /**
   * Reports that something is wrong with this value.
   *
   * @param wanted what is allowed, as the rest of a sentence: {@code must be at most 31.6 mm}
   * @param cure what to do; may be empty
   */
  public void problem(String wanted, String cure) {
    String read = value instanceof Scalar scalar ? scalar.text() : "";
    scope.report(new Problem(place, path(), read, wanted, cure));
  }

  void reportMissing(String wanted) {
    String key = route.isItem() || route.key() == null ? "it" : "'" + route.key() + ":'";
    scope.report(new Problem(place, path(), "", "is missing", "add " + key + " with " + wanted));
  }

  /** A length in mm: {@code 70}, {@code 70 mm}, {@code 7 cm}, {@code 2.75 in}, {@code 2 3/4 in}. */
  public NumberField length() {
    return new NumberField(this, Quantity.LENGTH);
  }

  /** An angle in degrees: {@code 30}, {@code 30 deg}, {@code 30°}. */
  public NumberField angle() {
    return new NumberField(this, Quantity.ANGLE);
  }

  /**
   * A clock position such as {@code 9}, {@code 10.5} or {@code 10:30}, read as an angle in degrees
   * counter-clockwise from +x, from 0 up to but without 360: 12 is 90, 3 is 0, 9 is 180.
   */
  public NumberField clock() {
    return new NumberField(this, Quantity.CLOCK);
  }

  /**
   * A modulus or stress in MPa: {@code 725}, {@code 725 MPa}, {@code 60 GPa}, {@code 8.7 Msi}. A
   * figure without unit is MPa.
   */
  public NumberField stress() {
    return new NumberField(this, Quantity.STRESS);
  }

  /**
   * A force in N: {@code 412}, {@code 412 N}, {@code 1.2 kN}, or {@code 5 kg} for what hangs on it,
   * by standard gravity.
   */
  public NumberField force() {
    return new NumberField(this, Quantity.FORCE);
  }

  /** A number without unit. */
  public NumberField number() {
    return new NumberField(this, Quantity.NUMBER);
  }

  /** A whole number. */
  public WholeField integer() {
    return new WholeField(this);
  }

  /**
   * A short text on one line, such as a name or a label: not blank, at most 200 characters, no
   * control characters. A number without quotes is taken as it is written.
   */
  public ValueField<String> text() {
    return new ValueField<>(
        this,
        "a text",
        () ->
            scalar("must be a text")
                .filter(s -> isText(s) && isShort(s.text()))
                .map(s -> s.text().strip()),
        () -> "");
  }

  /** A text of any length that may have several lines, such as path data or notes. */
  public ValueField<String> longText() {
    return new ValueField<>(
        this,
        "a text",
        () -> scalar("must be a text").filter(this::isText).map(Scalar::text),
        () -> "");
  }

  private boolean isText(Scalar scalar) {
    if (!scalar.quoted() && truth(scalar.text()).isPresent()) {
      problem("must be a text", "put it in quotes");
      return false;
    }
    if (hasHalf(scalar.text())) {
      problem("must be a text of whole characters", "check the \\u escapes");
      return false;
    }
    return true;
  }

  /** What the words for true and false of YAML's core schema stand for (YAML 1.2.2, 10.3.2). */
  private static Optional<Boolean> truth(String text) {
    return switch (text) {
      case "true", "True", "TRUE" -> Optional.of(true);
      case "false", "False", "FALSE" -> Optional.of(false);
      default -> Optional.empty();
    };
  }

  // A loop, here and below: these look at every text of every start, and streams come dear there.
  private static boolean hasHalf(String text) {
    for (int at = 0; at < text.length(); at++) {
      if (Character.isSurrogate(text.charAt(at))) {
        int c = text.codePointAt(at);
        if (!Character.isSupplementaryCodePoint(c)) {
          return true;
        }
        at++;
      }
    }
    return false;
  }

  private boolean isShort(String text) {
    if (text.isBlank()) {
      problem("must be a text that is not empty", "");
      return false;
    }
    int worst = ' ';
    for (int at = 0; at < text.length() && !isUnseen(worst); ) {
      int c = text.codePointAt(at);
      worst = isUnseen(c) || Character.isISOControl(c) ? c : worst;
      at += Character.charCount(c);
    }
    if (isUnseen(worst)) {
      problem(
          "must not have characters that cannot be seen or turn the direction of writing",
          "delete them: " + unseen(text));
      return false;
    }
    if (Character.isISOControl(worst) || text.length() > LONGEST_TEXT) {
      problem("must be a text on one line of at most 200 characters", "");
      return false;
    }
    return true;
  }

  /**
   * Marks that turn the direction of writing, and other characters that print as nothing: a text
   * with them reads otherwise than it is written.
   */
  private static boolean isUnseen(int c) {
    int type = Character.getType(c);
    return type == Character.FORMAT
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.UNASSIGNED
        || type == Character.PRIVATE_USE
        || c == 0x85;
  }

  private static String unseen(String text) {
    return text.codePoints()
        .filter(Entry::isUnseen)
        .distinct()
        .mapToObj(
            c -> "U+" + Integer.toHexString(0x10000 | c).substring(1).toUpperCase(Locale.ROOT))
        .collect(Collectors.joining(", "));
  }

  /** {@code true} or {@code false}. */
  public ValueField<Boolean> bool() {
    return new ValueField<>(
        this,
        "true or false",
        () ->
            scalar("must be true or false")
                .flatMap(
                    s -> {
                      Optional<Boolean> truth = truth(s.text());
                      if (!s.quoted() && truth.isPresent()) {
                        return truth;
                      }
                      problem("must be true or false", s.quoted() ? "write it without quotes" : "");
                      return Optional.empty();
                    }),
        () -> false);
  }

  /**
   * One of the constants of an enum, written in small letters with hyphens: {@code FRONT_FACE} is
   * {@code front-face}.
   */
  public <E extends Enum<E>> ValueField<E> oneOf(Class<E> type) {
    List<E> constants = List.of(type.getEnumConstants());
    List<String> names = constants.stream().map(Entry::nameOf).toList();
    return choice(names, constants);
  }

  /** One of the given words. */
  public ValueField<String> oneOf(String... words) {
    return choice(Arrays.asList(words), Arrays.asList(words));
  }

  /** How {@link #oneOf(Class)} writes a constant: in small letters with hyphens. */
  public static String nameOf(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private <T> ValueField<T> choice(List<String> names, List<T> choices) {
    String all = names.size() == 1 ? names.get(0) : "one of " + String.join(", ", names);
    return new ValueField<>(
        this,
        all,
        () ->
            scalar("must be " + all)
                .flatMap(
                    s -> {
                      int index = names.indexOf(s.text());
                      if (index >= 0) {
                        return Optional.of(choices.get(index));
                      }
                      problem(
                          "must be " + all,
                          Nearest.to(s.text(), names)
                              .map(near -> "did you mean '" + near + "'?")
                              .orElse(""));
                      return Optional.empty();
                    }),
        () -> choices.get(0));
  }

  /** A point {@code [x, y]} of two lengths, in mm. */
  public ValueField<Point> point() {
    String wanted = "a point [x, y] of two lengths";
    return new ValueField<>(
        this,
        wanted,
        () -> {
          if (isBlank("must be " + wanted)) {
            return Optional.empty();
          }
          if (!(value instanceof Sequence list) || list.items().size() != 2) {
            problem("must be " + wanted, pointCure());
            return Optional.empty();
          }
          double[] xy = new double[2];
          for (int i = 0; i < 2; i++) {
            YamlValue item = list.items().get(i);
            xy[i] = new Entry(scope, route.item(i), item.place(), item).length().required();
          }
          return Double.isNaN(xy[0] + xy[1])
              ? Optional.empty()
              : Optional.of(new Point(xy[0], xy[1]));
        },
        () -> new Point(0, 0));
  }

  private String pointCure() {
    if (value instanceof Scalar scalar) {
      String text = scalar.text().replaceAll("^\\(|\\)$", "");
      return text.matches("[^,]+,[^,]+") ? "write [" + text + "]" : "";
    }
    if (!(value instanceof Sequence list)) {
      return "it is a group of keys";
    }
    int size = list.items().size();
    return size == 1 && list.items().get(0) instanceof Scalar one && one.text().contains(" ")
        ? "put a comma between x and y"
        : "it has " + size + (size == 1 ? " item" : " items");
  }

  /** A group of keys. */
  public ValueField<Fields> mapping() {
    return new ValueField<>(
        this,
        "a group of 'key: value' lines",
        () -> {
          if (value instanceof Mapping group) {
            return Optional.of(new Fields(group, scope.inner()));
          }
          if (!isBlank("must be a group of 'key: value' lines, indented below it")) {
            boolean tight = value instanceof Scalar s && !s.quoted() && s.text().contains(":");
            problem(
                "must be a group of 'key: value' lines",
                tight ? "put a space after the colon" : "");
          }
          return Optional.empty();
        },
        () -> Fields.silent(place, route, scope.silence()));
  }

  public ListField list() {
    return new ListField(this);
  }

  /** True, and reported, when a key has nothing behind it. */
  boolean isBlank(String wanted) {
    boolean blank = value instanceof Scalar scalar && scalar.isNull();
    if (blank) {
      String cure = "write " + wanted.substring("must be ".length()) + ", or take the key out";
      scope.report(new Problem(place, path(), "", "has no value", cure));
    }
    return blank;
  }

  /** The scalar that stands here; anything else is reported, except that nothing stands here. */
  Optional<Scalar> scalar(String wanted) {
    if (value == null) {
      return Optional.empty();
    }
    if (!(value instanceof Scalar scalar)) {
      problem(wanted, "it is " + (value instanceof Sequence ? "a list" : "a group of keys"));
      return Optional.empty();
    }
    if (isBlank(wanted)) {
      return Optional.empty();
    }
    return Optional.of(scalar);
  }
}
