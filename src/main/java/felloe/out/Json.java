package felloe.out;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** A JSON value (RFC 8259). Members of an object keep the order in which they were added. */
public sealed interface Json {

  /**
   * A string.
   *
   * @param value its characters
   */
  record Text(String value) implements Json {}

  /**
   * A number.
   *
   * @param value finite
   * @param decimals places it is rounded to; trailing zeros are not written
   */
  record Number(double value, int decimals) implements Json {
    /** Refuses a value that is not finite: JSON has no word for it. */
    public Number {
      Numbers.finite("value", value);
    }
  }

  /**
   * True or false.
   *
   * @param value which
   */
  record Truth(boolean value) implements Json {}

  /** Null: there is no such figure. */
  record Nothing() implements Json {}

  /**
   * An array.
   *
   * @param values in order
   */
  record Array(List<Json> values) implements Json {
    public Array {
      values = List.copyOf(values);
    }
  }

  /**
   * An object.
   *
   * @param members by name, in order
   */
  record Members(Map<String, Json> members) implements Json {
    /** Copies the members, keeping their order. */
    public Members {
      members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }

    /**
     * The object with one more member.
     *
     * @throws IllegalArgumentException when the name is taken
     */
    public Members with(String name, Json value) {
      Map<String, Json> more = new LinkedHashMap<>(members);
      if (more.put(name, value) != null) {
        throw new IllegalArgumentException("member given twice: " + name);
      }
      return new Members(more);
    }

    /** The object with one more member, a string. */
    public Members with(String name, String value) {
      return with(name, text(value));
    }

    /** The object with one more member, a whole number. */
    public Members with(String name, int value) {
      return with(name, number(value, 0));
    }

    /** The object with one more member, a number of at most so many decimals. */
    public Members with(String name, double value, int decimals) {
      return with(name, number(value, decimals));
    }

    /** The object with one more member, true or false. */
    public Members with(String name, boolean value) {
      return with(name, new Truth(value));
    }
  }

  /** An object without members, to add to. */
  static Members object() {
    return new Members(Map.of());
  }

  /** A string. */
  static Json text(String value) {
    return new Text(value);
  }

  /** A number of at most so many decimals. */
  static Json number(double value, int decimals) {
    return new Number(value, decimals);
  }

  /** An array of what a function makes of each element. */
  static <T> Json array(List<T> elements, Function<? super T, ? extends Json> each) {
    return new Array(elements.stream().<Json>map(each).toList());
  }

  /** What a function makes of a value, or null when there is none. */
  static <T> Json maybe(Optional<T> value, Function<? super T, ? extends Json> each) {
    return value.<Json>map(each).orElseGet(Nothing::new);
  }

  /** A point as an array of x and y. */
  static Json point(Point p, int decimals) {
    return new Array(List.of(number(p.x(), decimals), number(p.y(), decimals)));
  }
}
