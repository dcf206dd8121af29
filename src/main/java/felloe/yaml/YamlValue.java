package felloe.yaml;

import felloe.plate.Place;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A value of a YAML file with the place where it was written: a single value, a list, or a group of
 * keys. Nothing is converted here; what a scalar means is decided by who asks for it.
 */
public sealed interface YamlValue {

  /** Where the value starts. */
  Place place();

  /** The way to the value, such as {@code windows[2].radius}; empty for the top of the file. */
  String path();

  /**
   * A single value, as its text.
   *
   * @param place where it starts
   * @param route its way from the top
   * @param text the text as YAML reads it, without quotes and comments
   * @param quoted true when it was written in quotes or as a text block, so that it is a text
   *     whatever it looks like
   */
  record Scalar(Place place, ValuePath route, String text, boolean quoted) implements YamlValue {

    /** The length that it is, mm, as a shape file's reader takes it; empty where it is none. */
    public OptionalDouble length() {
      Quantity.Reading reading = Quantity.LENGTH.read(this);
      return reading.good() ? OptionalDouble.of(reading.value()) : OptionalDouble.empty();
    }

    /** True when nothing was written, or {@code ~} or {@code null} without quotes. */
    public boolean isNull() {
      return !quoted
          && switch (text) {
            case "", "~", "null", "Null", "NULL" -> true;
            default -> false;
          };
    }

    @Override
    public String path() {
      return route.toString();
    }
  }

  /**
   * A list.
   *
   * @param place where it starts
   * @param route its way from the top
   * @param items its values in order
   */
  record Sequence(Place place, ValuePath route, List<YamlValue> items) implements YamlValue {

    public Sequence {
      items = List.copyOf(items);
    }

    @Override
    public String path() {
      return route.toString();
    }
  }

  /**
   * A group of keys with their values.
   *
   * @param place where its first key stands, or its opening brace
   * @param route its way from the top
   * @param entries its keys in the order of the file
   */
  record Mapping(Place place, ValuePath route, Map<String, Keyed> entries) implements YamlValue {

    /** Copies the map, keeping its order. */
    public Mapping {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    @Override
    public String path() {
      return route.toString();
    }
  }

  /**
   * What stands behind a key.
   *
   * @param keyPlace where the key is written
   * @param value its value
   */
  record Keyed(Place keyPlace, YamlValue value) {

    /** Refuses missing parts. */
    public Keyed {
      Objects.requireNonNull(keyPlace, "keyPlace");
      Objects.requireNonNull(value, "value");
    }
  }
}
