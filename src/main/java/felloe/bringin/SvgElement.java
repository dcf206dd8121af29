package felloe.bringin;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An element of an SVG drawing.
 *
 * @param name without its prefix
 * @param attributes by their names without prefixes
 * @param children in order
 * @param title what its title says; empty where it has none
 * @param line where it begins
 * @param reading is told what is wrong
 */
record SvgElement(
    String name,
    Map<String, String> attributes,
    List<SvgElement> children,
    StringBuilder title,
    int line,
    Reading reading) {

  /** A pixel, mm: CSS has 96 to the inch. */
  static final double PIXEL = 25.4 / 96;

  /** Millimetres of the units that have a size. Source: CSS Values and Units, absolute lengths. */
  private static final Map<String, Double> UNITS =
      Map.of(
          "mm", 1.0, "cm", 10.0, "q", 0.25, "in", 25.4, "pt", 25.4 / 72, "pc", 25.4 / 6, "px",
          PIXEL);

  String text(String attribute) {
    return attributes.getOrDefault(attribute, "").strip();
  }

  /** How long its attributes are. */
  int letters() {
    return attributes.values().stream().mapToInt(String::length).sum();
  }

  boolean hidden() {
    String style = text("style").replace(" ", "");
    return text("display").equals("none")
        || style.contains("display:none")
        || text("visibility").equals("hidden")
        || text("visibility").equals("collapse")
        || style.contains("visibility:hidden");
  }

  /** A length with a unit, mm. */
  OptionalDouble size(String attribute) {
    String text = text(attribute).toLowerCase(Locale.ROOT);
    int end = text.length();
    while (end > 0 && Character.isLetter(text.charAt(end - 1))) {
      end--;
    }
    Optional<Double> unit = Optional.ofNullable(UNITS.get(text.substring(end)));
    OptionalDouble value = plain(text.substring(0, end).strip());
    return unit.isPresent() && value.isPresent() && value.getAsDouble() > 0
        ? OptionalDouble.of(value.getAsDouble() * unit.get())
        : OptionalDouble.empty();
  }

  static OptionalDouble plain(String text) {
    List<Double> numbers = SvgTransform.numbers(text);
    return numbers.size() == 1 ? OptionalDouble.of(numbers.get(0)) : OptionalDouble.empty();
  }

  /** A coordinate or a radius: a bare number, or one with a unit of a fixed size. */
  double number(String attribute, double usual) {
    String text = text(attribute);
    if (text.isEmpty() || text.equals("auto")) {
      return usual;
    }
    OptionalDouble bare = plain(text);
    if (bare.isPresent()) {
      return bare.getAsDouble();
    }
    OptionalDouble mm = size(attribute);
    if (mm.isPresent()) {
      return mm.getAsDouble() / PIXEL;
    }
    reading.wrong(line, name() + "." + attribute, text, "must be a number", "");
    return usual;
  }

  List<Double> numbers(String attribute) {
    String text = text(attribute);
    List<Double> found = SvgTransform.numbers(text);
    if (found.isEmpty() && !text.isEmpty()) {
      reading.wrong(line, name() + "." + attribute, text, "must be numbers", "");
    }
    return found;
  }

  Affine transform() {
    String text = text("transform");
    if (text.isEmpty()) {
      return Affine.NONE;
    }
    Optional<Affine> transform = SvgTransform.read(text);
    if (transform.isEmpty()) {
      reading.wrong(
          line,
          name() + ".transform",
          text,
          "must be a list of matrix, translate, scale, rotate, skewX and skewY",
          "");
    }
    return transform.orElse(Affine.NONE);
  }
}
