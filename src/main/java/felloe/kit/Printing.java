package felloe.kit;

import java.util.OptionalDouble;

/** Reads figures of requests that are still made of words. */
final class Printing {

  private Printing() {}

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
    boolean signed = figure.startsWith("-") || figure.startsWith("+");
    String digits = signed ? figure.substring(1) : figure;
    boolean plain =
        !digits.isEmpty()
            && digits.length() <= 12
            && digits.chars().allMatch(c -> c == '.' || (c >= '0' && c <= '9'))
            && digits.indexOf('.') == digits.lastIndexOf('.')
            && !digits.equals(".");
    return plain ? OptionalDouble.of(Double.parseDouble(figure)) : OptionalDouble.empty();
  }
}
