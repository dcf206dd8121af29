package felloe.render;

import felloe.out.Json;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * How a type is written as JSON where its components alone are not what a reader wants: some left
 * out, some worked out of it, some taken up from a record within, or all of it as one value.
 *
 * @param <T> the type
 */
public final class View<T> {

  private final Class<T> type;
  private final boolean components;
  private final List<String> without;
  private final List<Step<T>> steps;
  private final Function<T, Object> value;

  /** Members, or with an empty name all members of a value. */
  private record Step<T>(String name, Function<T, Object> value) {}

  private View(
      Class<T> type,
      boolean components,
      List<String> without,
      List<Step<T>> steps,
      Function<T, Object> value) {
    this.type = type;
    this.components = components;
    this.without = without;
    this.steps = steps;
    this.value = value;
  }

  /** A view with no members yet. */
  public static <T> View<T> of(Class<T> type) {
    return new View<>(type, false, List.of(), List.of(), null);
  }

  /** A record's own components, without some, as they are named in Java. */
  public static <T extends Record> View<T> record(Class<T> type, String... without) {
    return new View<>(type, true, List.of(without), List.of(), null);
  }

  /** Another value that stands for it. */
  public static <T> View<T> as(Class<T> type, Function<T, Object> value) {
    return new View<>(type, false, List.of(), List.of(), value);
  }

  /** One more member, behind those before; it stands for a component of that name. */
  public View<T> with(String name, Function<T, Object> member) {
    List<Step<T>> more = new ArrayList<>(steps);
    more.add(new Step<>(name, member));
    return new View<>(type, components, without, more, value);
  }

  /** The members of a value that it holds, taken up among its own. */
  public View<T> with(Function<T, Object> members) {
    return with("", members);
  }

  Class<T> type() {
    return type;
  }

  Json json(Object object, RecordJson json) {
    T it = type.cast(object);
    if (value != null) {
      return json.of(value.apply(it));
    }
    Map<String, Json> members = new LinkedHashMap<>();
    if (components) {
      members.putAll(json.members((Record) it, this::leavesOut).members());
    }
    for (Step<T> step : steps) {
      Json member = json.of(step.value().apply(it));
      if (!step.name().isEmpty()) {
        put(members, step.name(), member);
      } else if (member instanceof Json.Members inner) {
        inner.members().forEach((name, value) -> put(members, name, value));
      } else {
        throw new IllegalArgumentException("no members to take up in " + type);
      }
    }
    return new Json.Members(members);
  }

  private boolean leavesOut(String component) {
    String member = RecordJson.snake(component);
    return without.contains(component) || steps.stream().anyMatch(s -> s.name().equals(member));
  }

  private void put(Map<String, Json> members, String name, Json member) {
    if (members.put(name, member) != null) {
      throw new IllegalArgumentException("member given twice: " + name + " of " + type);
    }
  }
}
