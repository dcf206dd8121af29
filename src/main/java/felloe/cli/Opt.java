package felloe.cli;

import felloe.plate.Place;
import felloe.plate.Requested;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * An option with its type: what it is called, how its value is read, and how it is asked for in a
 * call.
 *
 * @param name such as {@code --paper}
 * @param label what stands for its value in the help; empty for one without a value
 * @param reads its text
 * @param several whether it may be given more than once
 * @param help what it does
 * @param <T> what a value becomes
 */
record Opt<T>(String name, String label, Reader<T> reads, boolean several, String help) {

  /**
   * Reads a value.
   *
   * @param <T> what it becomes
   */
  interface Reader<T> {

    /**
     * @param option the option's name, for the message
     * @throws felloe.plate.BadInput telling what is allowed
     */
    T read(String option, String text);
  }

  /** A value as picocli carries it; its own converters would tell faults in their own words. */
  private record Value(Object it) {}

  /** An option with one value. */
  static <T> Opt<T> one(String name, String label, Reader<T> reads, String help) {
    return new Opt<>(name, label, reads, false, help);
  }

  /** An option that may be given more than once. */
  static <T> Opt<T> many(String name, String label, Reader<T> reads, String help) {
    return new Opt<>(name, label, reads, true, help + " May be given more than once.");
  }

  /** An option without a value. */
  static Opt<Boolean> flag(String name, String help) {
    return new Opt<>(name, "", (option, text) -> true, false, help);
  }

  /** The option as the parser wants it. */
  OptionSpec spec() {
    OptionSpec.Builder spec = OptionSpec.builder(name).description(help);
    if (label.isEmpty()) {
      return spec.type(boolean.class).arity("0").build();
    }
    ITypeConverter<Value> converter = text -> new Value(reads.read(name, text));
    spec.paramLabel(label).arity("1").converters(converter);
    return several
        ? spec.type(List.class).auxiliaryTypes(Value.class).build()
        : spec.type(Value.class).build();
  }

  /** Whether it was given. */
  boolean given(ParseResult call) {
    return call.hasMatchedOption(name);
  }

  /** The value, if it was given. */
  Optional<T> in(ParseResult call) {
    Value value = call.matchedOptionValue(name, (Value) null);
    return Optional.ofNullable(value).map(this::cast);
  }

  /** The value with the option as its place. */
  Optional<Requested<T>> requested(ParseResult call) {
    return in(call).map(value -> new Requested<>(value, place()));
  }

  /** All values that were given, in order. */
  List<T> all(ParseResult call) {
    return call.matchedOptionValue(name, List.<Value>of()).stream().map(this::cast).toList();
  }

  /** The option as a place. */
  Place place() {
    return Place.ofOption(name, "");
  }

  @SuppressWarnings("unchecked")
  private T cast(Value value) {
    return (T) value.it();
  }
}
