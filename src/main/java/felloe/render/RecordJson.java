package felloe.render;

import felloe.geometry.Point;
import felloe.out.Json;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;

/**
 * Result records as JSON, by one policy: members are the record's components, in order, their names
 * in small letters with underscores; what is not there is null; a point is {@code [x, y]}; words of
 * a choice are written as in the shape file, in small letters with hyphens; figures have about ten
 * digits that count.
 *
 * <p>A type whose components are not just what a reader wants is told by a {@link View}.
 */
public final class RecordJson {

  private static final int DIGITS = 10;

  /** Smaller than this is what rounding leaves over. */
  private static final double NOTHING = 1e-13;

  private final Map<Class<?>, View<?>> views;

  /**
   * @param views of the types that are not written as they are
   */
  public RecordJson(List<View<?>> views) {
    this.views = new LinkedHashMap<>();
    for (View<?> view : views) {
      if (this.views.put(view.type(), view) != null) {
        throw new IllegalArgumentException("two views of " + view.type());
      }
    }
  }

  /**
   * A value as JSON.
   *
   * @throws IllegalArgumentException when a type is neither a record nor has a view
   */
  public Json of(Object value) {
    View<?> view = view(value.getClass());
    if (view != null) {
      return view.json(value, this);
    }
    if (value instanceof Json json) {
      return json;
    } else if (value instanceof String || value instanceof Path) {
      return Json.text(value.toString());
    } else if (value instanceof Boolean truth) {
      return new Json.Truth(truth);
    } else if (value instanceof Integer || value instanceof Long) {
      return Json.number(((Number) value).doubleValue(), 0);
    } else if (value instanceof Double number) {
      return number(number);
    } else if (value instanceof Enum<?> choice) {
      return Json.text(choice.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    } else if (value instanceof Optional<?> optional) {
      return optional.isPresent() ? of(optional.get()) : new Json.Nothing();
    } else if (value instanceof OptionalDouble optional) {
      return optional.isPresent() ? number(optional.getAsDouble()) : new Json.Nothing();
    } else if (value instanceof OptionalInt optional) {
      return optional.isPresent() ? of(optional.getAsInt()) : new Json.Nothing();
    } else if (value instanceof Point point) {
      return array(List.of(point.x(), point.y()));
    } else if (value instanceof double[] numbers) {
      return new Json.Array(java.util.Arrays.stream(numbers).mapToObj(RecordJson::number).toList());
    } else if (value instanceof Collection<?> values) {
      return array(values);
    } else if (value instanceof Map<?, ?> map) {
      return object(map);
    } else if (value instanceof Record record) {
      return members(record, component -> false);
    }
    throw new IllegalArgumentException("no view of " + value.getClass());
  }

  /** The view of a type, or of the one interface that says what all of a kind are. */
  private View<?> view(Class<?> type) {
    View<?> own = views.get(type);
    Class<?>[] kinds = type.getInterfaces();
    return own == null && type.isRecord() && kinds.length == 1 ? views.get(kinds[0]) : own;
  }

  private Json array(Collection<?> values) {
    List<Json> all = new ArrayList<>(values.size());
    values.forEach(value -> all.add(of(value)));
    return new Json.Array(all);
  }

  private Json object(Map<?, ?> map) {
    Map<String, Json> members = new LinkedHashMap<>();
    map.forEach((name, value) -> members.put(name.toString(), of(value)));
    return new Json.Members(members);
  }

  /** A figure with about ten digits that count. */
  static Json number(double value) {
    double size = Math.abs(value);
    if (size < NOTHING) {
      return Json.number(0, 0);
    }
    int decimals = (int) Math.max(0, Math.min(20, DIGITS - 1 - Math.floor(Math.log10(size))));
    return Json.number(value, decimals);
  }

  /** The components of a record, without those that are left out. */
  Json.Members members(Record record, Predicate<String> leftOut) {
    Map<String, Json> members = new LinkedHashMap<>();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      if (!leftOut.test(component.getName())) {
        members.put(snake(component.getName()), of(read(record, component)));
      }
    }
    return new Json.Members(members);
  }

  private static Object read(Record record, RecordComponent component) {
    try {
      var accessor = component.getAccessor();
      if (!accessor.canAccess(record)) {
        // Records of other rooms may be seen by their room alone.
        accessor.setAccessible(true);
      }
      return accessor.invoke(record);
    } catch (ReflectiveOperationException closed) {
      throw new IllegalStateException(record.getClass() + "." + component.getName(), closed);
    }
  }

  /** {@code pitchDiameter} as {@code pitch_diameter}. */
  static String snake(String name) {
    StringBuilder text = new StringBuilder(name.length() + 4);
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (Character.isUpperCase(c)) {
        text.append('_').append(Character.toLowerCase(c));
      } else {
        text.append(c);
      }
    }
    return text.toString();
  }
}
