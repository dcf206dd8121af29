package felloe.bringin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a list of transforms as SVG writes them (W3C CSS Transforms, the SVG attribute). */
final class SvgTransform {

  private static final Pattern ONE = Pattern.compile("\\s*,?\\s*([a-zA-Z]+)\\s*\\(([^)]*)\\)\\s*");

  private static final Pattern NUMBER =
      Pattern.compile(
          "[\\s,]*([+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,4})?)[\\s,]*");

  /** A list longer than this is refused. */
  private static final int LONGEST = 4_000;

  private SvgTransform() {}

  /** All of them, the last one the innermost; empty where it is no such list. */
  static Optional<Affine> read(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    Affine all = Affine.NONE;
    Matcher next = ONE.matcher(text);
    int at = 0;
    while (at < text.length()) {
      if (!next.find(at) || next.start() != at) {
        return Optional.empty();
      }
      Optional<Affine> one = one(next.group(1), numbers(next.group(2)));
      if (one.isEmpty()) {
        return Optional.empty();
      }
      all = all.of(one.get());
      at = next.end();
    }
    return Optional.of(all);
  }

  private static Optional<Affine> one(String name, List<Double> n) {
    int count = n.size();
    Affine made =
        switch (name) {
          case "matrix" ->
              count == 6
                  ? new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5))
                  : null;
          case "translate" ->
              count == 1 || count == 2 ? Affine.shift(n.get(0), count == 2 ? n.get(1) : 0) : null;
          case "scale" ->
              count == 1 || count == 2
                  ? Affine.scale(n.get(0), count == 2 ? n.get(1) : n.get(0))
                  : null;
          case "rotate" -> turn(n);
          case "skewX" ->
              count == 1 ? new Affine(1, 0, Math.tan(Math.toRadians(n.get(0))), 1, 0, 0) : null;
          case "skewY" ->
              count == 1 ? new Affine(1, Math.tan(Math.toRadians(n.get(0))), 0, 1, 0, 0) : null;
          default -> null;
        };
    return Optional.ofNullable(made);
  }

  private static Affine turn(List<Double> n) {
    if (n.size() != 1 && n.size() != 3) {
      return null;
    }
    Affine turn = Affine.turn(Math.toRadians(n.get(0)));
    return n.size() == 1
        ? turn
        : Affine.shift(n.get(1), n.get(2)).of(turn).of(Affine.shift(-n.get(1), -n.get(2)));
  }

  /**
   * Numbers parted by blanks, commas or their own signs; none where something else stands there.
   */
  static List<Double> numbers(String text) {
    List<Double> all = new ArrayList<>();
    Matcher next = NUMBER.matcher(text);
    int at = 0;
    while (at < text.length()) {
      if (!next.find(at) || next.start() != at) {
        return text.substring(at).isBlank() ? all : List.of();
      }
      double value = Double.parseDouble(next.group(1));
      if (!Double.isFinite(value)) {
        return List.of();
      }
      all.add(value);
      at = next.end();
    }
    return all;
  }
}
