package felloe.render;

import felloe.out.Json;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * How a type is written as JSON where its components alone are not what a reader wants: some left
 * out, some worked out of it, some taken up from a record within, or all of it as one value. A view
 * is one function and not one for each member: the virtual machine links each when it starts.
 *
 * @param <T> the type
 */
public final class View<T> {

  private final Class<T> type;
  private final BiConsumer<T, Members> own;
  private final boolean components;
  private final List<String> without;
  private final Function<T, Object> value;

  private View(
      Class<T> type,
      BiConsumer<T, Members> own,
      boolean components,
      List<String> without,
      Function<T, Object> value) {
    this.type = type;
    this.own = own;
    this.components = components;
    this.without = without;
    this.value = value;
  }

  /** The members that are added, in order. */
  public static <T> View<T> of(Class<T> type, BiConsumer<T, Members> members) {
    return new View<>(type, members, false, List.of(), null);
  }

  /**
   * A record's own components, without some, as they are named in Java, and the members that are
   * added behind them; a member stands for a component of its name.
   */
  public static <T extends Record> View<T> record(
      Class<T> type, BiConsumer<T, Members> more, String... without) {
    return new View<>(type, more, true, List.of(without), null);
  }

  /** A record's own components, without some, as they are named in Java. */
  public static <T extends Record> View<T> record(Class<T> type, String... without) {
    return record(type, (it, to) -> {}, without);
  }

  /** Another value that stands for it. */
  public static <T> View<T> as(Class<T> type, Function<T, Object> value) {
    return new View<>(type, null, false, List.of(), value);
  }

  Class<T> type() {
    return type;
  }

  Json json(Object object, RecordJson json) {
    T it = type.cast(object);
    if (value != null) {
      return json.of(value.apply(it));
    }
    Members added = new Members(json);
    own.accept(it, added);
    Members all = new Members(json);
    if (components) {
      all.takeUp(json.members((Record) it, name -> leavesOut(name, added.members)));
    }
    all.takeUp(new Json.Members(added.members));
    return new Json.Members(all.members);
  }

  private boolean leavesOut(String component, Map<String, Json> added) {
    return without.contains(component) || added.containsKey(RecordJson.snake(component));
  }

  /** The members of one value while they are gathered. */
  public static final class Members {

    private final RecordJson json;
    private final Map<String, Json> members = new LinkedHashMap<>();

    private Members(RecordJson json) {
      this.json = json;
    }

    /**
     * One more member, behind those before.
     *
     * @throws IllegalArgumentException when it is there
     */
    public Members add(String name, Object value) {
      put(name, json.of(value));
      return this;
    }

    /**
     * The members of a value, taken up among these.
     *
     * @throws IllegalArgumentException when it has none, or one is there
     */
    public Members addAll(Object value) {
      if (json.of(value) instanceof Json.Members inner) {
        takeUp(inner);
        return this;
      }
      throw new IllegalArgumentException("no members to take up in " + value.getClass());
    }

    private void takeUp(Json.Members inner) {
      inner.members().forEach(this::put);
    }

    private void put(String name, Json value) {
      if (members.put(name, value) != null) {
        throw new IllegalArgumentException("member given twice: " + name);
      }
    }
  }
}
