package felloe.cli;

import felloe.drawing.Paper;
import felloe.geometry.Numbers;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.Nearest;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** How values of options are read. Each refuses in one voice: option, value, what is allowed. */
final class Read {

  private static final int DIGITS = 12;

  /** A length beyond this is taken for a slip, whatever it is of, mm. */
  static final double LONGEST = 10_000;

  private Read() {}

  /** As it was written. */
  static String text(String option, String text) {
    return text;
  }

  /** The name of a file or folder. */
  static Path path(String option, String text) {
    try {
      if (text.isEmpty()) {
        throw wrong(option, text, "needs the name of a file or folder", "");
      }
      return Path.of(text);
    } catch (InvalidPathException odd) {
      throw wrong(option, text, "cannot be the name of a file", "check the name");
    }
  }

  static Paper paper(String option, String text) {
    List<String> known = Paper.names();
    return Paper.find(text)
        .orElseThrow(
            () ->
                wrong(
                    option,
                    text,
                    "is not a known paper",
                    near(text, known) + "known: " + String.join(", ", known)));
  }

  /** One of some constants, written in small letters with hyphens. */
  @SafeVarargs
  static <E extends Enum<E>> Opt.Reader<E> choice(E... allowed) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E constant : allowed) {
      words.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
    }
    return word(words);
  }

  /** One of some words. */
  static <T> Opt.Reader<T> word(Map<String, T> words) {
    return (option, text) -> {
      if (!words.containsKey(text)) {
        List<String> known = List.copyOf(words.keySet());
        throw wrong(
            option,
            text,
            "must be " + String.join(" or ", known),
            near(text, known).replace("? ", "?"));
      }
      return words.get(text);
    };
  }

  /** A length between two, mm. */
  static Opt.Reader<Double> length(double least, double most) {
    String range = Numbers.brief(least, 3) + " to " + Numbers.brief(most, 2) + " mm";
    return (option, text) -> {
      OptionalDouble value = millimetres(text);
      if (value.isEmpty()) {
        throw wrong(option, text, "must be a length such as 10, 10 mm or 0.4 in", "from " + range);
      }
      return within(option, text, value.getAsDouble(), least, most, range);
    };
  }

  /** A plain number between two. */
  static Opt.Reader<Double> number(double least, double most, String unit) {
    String range = (Numbers.brief(least, 3) + " to " + Numbers.brief(most, 2) + " " + unit).strip();
    return (option, text) -> {
      OptionalDouble value = plain(text);
      if (value.isEmpty()) {
        throw wrong(option, text, "must be a number", "from " + range);
      }
      return within(option, text, value.getAsDouble(), least, most, range);
    };
  }

  /** A whole number between two. */
  static Opt.Reader<Integer> count(int least, int most) {
    return (option, text) -> {
      int value = text.matches("[0-9]{1,7}") ? Integer.parseInt(text) : least - 1;
      if (value < least || value > most) {
        throw wrong(option, text, "must be a whole number from " + least + " to " + most, "");
      }
      return value;
    };
  }

  private static double within(
      String option, String text, double value, double least, double most, String range) {
    if (value < least || value > most) {
      throw wrong(option, text, "must be from " + range, "");
    }
    return value;
  }

  /** Lengths in a row, mm, of which a value is made; what makes none is refused. */
  static <T> Opt.Reader<T> lengths(
      String between, Function<List<Double>, Optional<T>> made, String wanted, String cure) {
    return (option, text) ->
        made.apply(lengths(text, between)).orElseThrow(() -> wrong(option, text, wanted, cure));
  }

  /** Lengths in a row, mm; none when one cannot be read. */
  static List<Double> lengths(String text, String between) {
    List<Double> lengths = new ArrayList<>();
    for (String part : text.replace('\u00d7', 'x').replace('X', 'x').split(between, -1)) {
      OptionalDouble length = millimetres(part);
      if (length.isEmpty() || Math.abs(length.getAsDouble()) > LONGEST) {
        return List.of();
      }
      lengths.add(length.getAsDouble());
    }
    return lengths;
  }

  /** A plain number of mm, or one with mm or in behind it; empty for anything else. */
  static OptionalDouble millimetres(String text) {
    String figure = text.strip();
    double unit = 1;
    if (figure.endsWith("mm")) {
      figure = figure.substring(0, figure.length() - 2).strip();
    } else if (figure.endsWith("in")) {
      figure = figure.substring(0, figure.length() - 2).strip();
      unit = 25.4;
    }
    OptionalDouble plain = plain(figure);
    return plain.isPresent() ? OptionalDouble.of(plain.getAsDouble() * unit) : plain;
  }

  /** A plain decimal number; empty for anything else. */
  static OptionalDouble plain(String text) {
    String figure = text.strip();
    // Java's own reader takes NaN, exponents, hexadecimal figures and a trailing f.
    boolean plain =
        figure.length() <= DIGITS + 1 && figure.matches("[+-]?([0-9]+\\.?[0-9]*|\\.[0-9]+)");
    return plain ? OptionalDouble.of(Double.parseDouble(figure)) : OptionalDouble.empty();
  }

  /** A value of an option that is not allowed. */
  static BadInput wrong(String option, String value, String wanted, String cure) {
    return new BadInput(new Problem(Place.ofOption(option), "", value, wanted, cure));
  }

  /** A call that is wrong as a whole, or for want of something. */
  static BadInput wrong(String what, String wanted, String cure) {
    return wrong(what, "", wanted, cure);
  }

  private static String near(String word, List<String> known) {
    return Nearest.to(word, known).map(near -> "did you mean '" + near + "'? ").orElse("");
  }
}
