package felloe.kit;

import felloe.cutting.SheetRequest;
import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.plate.Sheet;
import felloe.yaml.Nearest;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the words of a cut request one by one, and keeps what is wrong with them. */
final class CutWords {

  /** Beyond this a figure is taken for a slip. */
  private static final double LARGEST = 10_000;

  private static final double FASTEST = 1e6;

  private final CutRequest request;
  private final Problems problems;

  CutWords(CutRequest request, Problems problems) {
    this.request = request;
    this.problems = problems;
  }

  boolean has(String option) {
    return request.has(option);
  }

  /** The value of an option as it was written. */
  Optional<String> text(String option) {
    return request.value(option);
  }

  /** A length, mm. Whether it makes sense for the plate is asked when the plate is known. */
  OptionalDouble length(String option) {
    return figure(option, "a length such as 4, 4 mm or 0.16 in", LARGEST, " mm");
  }

  /** A length from a least one on, mm. */
  OptionalDouble length(String option, double least) {
    OptionalDouble length = length(option);
    if (length.isPresent() && !(length.getAsDouble() >= least)) {
      problem(
          option,
          request.value(option).orElse(""),
          "must be at least " + Numbers.brief(least, 2) + " mm",
          "");
      return OptionalDouble.empty();
    }
    return length;
  }

  /** A feed, a speed or another figure whose unit the help tells. */
  OptionalDouble number(String option) {
    return figure(option, "a number such as 600", FASTEST, "");
  }

  private OptionalDouble figure(String option, String wanted, double largest, String unit) {
    Optional<String> given = request.value(option);
    if (given.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble value =
        unit.isEmpty() ? Printing.plain(given.get()) : Printing.millimetres(given.get());
    if (value.isEmpty()) {
      problem(option, given.get(), "must be " + wanted, "");
    } else if (Math.abs(value.getAsDouble()) > largest) {
      String most = Numbers.brief(largest, 0) + unit;
      problem(option, given.get(), "must be at most " + most, "check the figure and its unit");
      return OptionalDouble.empty();
    }
    return value;
  }

  /** A whole number from 0 to a greatest one; {@code none} is 0. */
  Optional<Integer> count(String option, int most) {
    Optional<String> given = request.value(option);
    if (given.isEmpty()) {
      return Optional.empty();
    }
    if (given.get().equals("none")) {
      return Optional.of(0);
    }
    Optional<Integer> count = whole(given.get(), most);
    if (count.isEmpty()) {
      problem(option, given.get(), "must be a whole number from 0 to " + most, "");
    }
    return count;
  }

  private static Optional<Integer> whole(String text, int most) {
    boolean plain = text.matches("[0-9]{1,4}");
    return Optional.of(plain ? Integer.parseInt(text) : most + 1).filter(n -> n <= most);
  }

  /** One of some words. */
  Optional<String> word(String option, List<String> words) {
    Optional<String> given = request.value(option);
    if (given.isEmpty() || words.contains(given.get())) {
      return given;
    }
    String near =
        Nearest.to(given.get(), words).map(word -> "did you mean '" + word + "'?").orElse("");
    problem(option, given.get(), "must be " + String.join(" or ", words), near);
    return Optional.empty();
  }

  /** Diameters with commas between; empty for {@code none} or when the option is not there. */
  List<Double> sizes(String option) {
    List<Double> sizes = new ArrayList<>();
    String given = request.value(option).orElse("none");
    if (given.equals("none")) {
      return sizes;
    }
    for (String part : given.split(",", -1)) {
      OptionalDouble size = Printing.millimetres(part);
      if (size.isEmpty()) {
        problem(
            option, given, "must be diameters in mm with commas between, or none", "write 5,4.3");
        return List.of();
      }
      sizes.add(size.getAsDouble());
    }
    return sizes;
  }

  /** Width and height with an x between. */
  Optional<Sheet> sheet(String option) {
    Optional<String> given = request.value(option);
    if (given.isEmpty()) {
      return Optional.empty();
    }
    List<Double> sides = parts(given.get(), "x");
    if (sides.size() != 2 || !sides.stream().allMatch(s -> s > 0 && s <= LARGEST)) {
      problem(
          option,
          given.get(),
          "must be width and height in mm with an x between, each above 0",
          "write 600x400");
      return Optional.empty();
    }
    return Optional.of(new Sheet(sides.get(0), sides.get(1)));
  }

  /** Boxes: lower left corner, width and height. */
  List<Box> boxes(String option) {
    List<Box> boxes = new ArrayList<>();
    for (String given : request.all(option)) {
      List<Double> sides = parts(given, ",");
      if (sides.size() != 4 || !(sides.get(2) > 0 && sides.get(3) > 0)) {
        problem(
            option,
            given,
            "must be x,y,width,height in mm from the sheet's lower left corner, width and height"
                + " above 0",
            "write 0,180,30,40");
        continue;
      }
      boxes.add(
          new Box(
              sides.get(0),
              sides.get(1),
              sides.get(0) + sides.get(2),
              sides.get(1) + sides.get(3)));
    }
    return boxes;
  }

  /** Test strips as COUNTxWIDTHxLENGTH. */
  List<SheetRequest.Strips> strips(String option) {
    List<SheetRequest.Strips> strips = new ArrayList<>();
    for (String given : request.all(option)) {
      String[] words = plain(given).split("x", -1);
      Optional<Integer> count = words.length == 3 ? whole(words[0].strip(), 99) : Optional.empty();
      List<Double> sides =
          words.length == 3 ? parts(words[1] + "x" + words[2], "x") : List.<Double>of();
      boolean right = sides.size() == 2 && sides.stream().allMatch(s -> s > 0 && s <= LARGEST);
      if (count.isEmpty() || count.get() == 0 || !right) {
        problem(
            option,
            given,
            "must be how many (1 to 99), width and length in mm with an x between",
            "write 6x15x80");
        continue;
      }
      strips.add(new SheetRequest.Strips(count.get(), sides.get(0), sides.get(1)));
    }
    return strips;
  }

  /** Lengths in a row; empty when one is none. */
  private static List<Double> parts(String text, String between) {
    List<Double> parts = new ArrayList<>();
    for (String part : plain(text).split(between, -1)) {
      OptionalDouble length = Printing.millimetres(part);
      if (length.isEmpty() || Math.abs(length.getAsDouble()) > LARGEST) {
        return List.of();
      }
      parts.add(length.getAsDouble());
    }
    return parts;
  }

  private static String plain(String text) {
    return text.strip().replace('\u00d7', 'x').replace('X', 'x');
  }

  /** Says that an option counts only beside another. */
  void only(String option, boolean counts, String beside) {
    if (request.has(option) && !counts) {
      problem(
          option,
          request.value(option).orElse(""),
          "only counts " + beside,
          "add that, or take this out");
    }
  }

  void problem(String option, String value, String wanted, String cure) {
    problems.add(new Problem(Place.ofOption(option, ""), "", value, wanted, cure));
  }
}
