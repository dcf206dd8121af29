package felloe.cli;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Requested;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/**
 * An option or an argument with its type: what it is called, how its value is read, and how it is
 * asked for in a call.
 *
 * @param name such as {@code --paper}; of an argument, which has no name in a call, its label
 * @param label what stands for its value in the help; empty for one without a value
 * @param reads its text
 * @param arity how many values it takes: {@code 0}, {@code 1}, {@code 0..1} or {@code 0..*}
 * @param help what it does
 * @param <T> what a value becomes
 */
record Opt<T>(String name, String label, Reader<T> reads, String arity, String help) {

  private static final String ANY = "0..*";

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

  /** A value as picocli carries it, or why it is none: the parser would tell it in its words. */
  private record Value(Object it, BadInput fault) {

    /** The parser asks for it; the text that a record has by itself costs each start. */
    @Override
    public String toString() {
      return "value";
    }
  }

  /** An option with one value. */
  static <T> Opt<T> one(String name, String label, Reader<T> reads, String help) {
    return new Opt<>(name, label, reads, "1", help);
  }

  /** An option that may be given more than once. */
  static <T> Opt<T> many(String name, String label, Reader<T> reads, String help) {
    return new Opt<>(name, label, reads, ANY, help + " May be given more than once.");
  }

  /** An option without a value. */
  static Opt<Boolean> flag(String name, String help) {
    return new Opt<>(name, "", (option, text) -> true, "0", help);
  }

  /** An argument: a value that stands by itself. */
  static <T> Opt<T> argument(String label, String arity, Reader<T> reads, String help) {
    return new Opt<>(label, label, reads, arity, help);
  }

  /**
   * The same as the parser wants it.
   *
   * @param before how many arguments stand before it
   */
  ArgSpec spec(int before) {
    Class<?> type = arity.equals(ANY) ? List.class : Value.class;
    ITypeConverter<Value> converter = this::value;
    if (!name.startsWith("-")) {
      return PositionalParamSpec.builder()
          .paramLabel(label)
          .description(help)
          .index(arity.equals(ANY) ? ANY : Integer.toString(before))
          .arity(arity)
          .required(arity.equals("1"))
          .converters(converter)
          .type(type)
          .auxiliaryTypes(Value.class)
          .build();
    }
    OptionSpec.Builder option = OptionSpec.builder(name).description(help);
    return label.isEmpty()
        ? option.type(boolean.class).arity("0").build()
        : option
            .paramLabel(label)
            .arity("1")
            .converters(converter)
            .type(type)
            .auxiliaryTypes(Value.class)
            .build();
  }

  private Value value(String text) {
    try {
      return new Value(reads.read(name, text), null);
    } catch (BadInput fault) {
      return new Value(null, fault);
    }
  }

  /** What is wrong with the values of a call. */
  static void faults(ParseResult call, Problems problems) {
    for (ArgSpec given : call.matchedArgs()) {
      for (Object one : values(given.getValue())) {
        if (one instanceof Value value && value.fault() != null) {
          // What is given several times is matched as often, each time with all of its values.
          value.fault().problems().forEach(problems::addOnce);
        }
      }
    }
  }

  private static List<?> values(Object value) {
    return value instanceof List<?> several ? several : value == null ? List.of() : List.of(value);
  }

  /** Whether it was given. */
  boolean given(ParseResult call) {
    return value(call) != null;
  }

  /** The value, if it was given. */
  Optional<T> in(ParseResult call) {
    return all(call).stream().findFirst();
  }

  /** The value with the option as its place. */
  Optional<Requested<T>> requested(ParseResult call) {
    return in(call).map(value -> new Requested<>(value, place()));
  }

  /** All values that were given and can be read, in order. */
  List<T> all(ParseResult call) {
    List<T> all = new ArrayList<>();
    for (Object one : values(value(call))) {
      if (one instanceof Value value && value.fault() == null) {
        all.add(cast(value));
      }
    }
    return all;
  }

  /** The option as a place. */
  Place place() {
    return Place.ofOption(name);
  }

  private Object value(ParseResult call) {
    for (ArgSpec given : call.matchedArgs()) {
      if (name(given).equals(name)) {
        return given.getValue();
      }
    }
    return null;
  }

  /** What an option or argument is called. */
  static String name(ArgSpec arg) {
    return arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel();
  }

  @SuppressWarnings("unchecked")
  private T cast(Value value) {
    return (T) value.it();
  }
}
