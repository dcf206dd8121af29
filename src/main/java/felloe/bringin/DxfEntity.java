package felloe.bringin;

import felloe.plate.FeatureTag;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An entity of a DXF file: its kind and its groups, those of its vertices in entities of their own.
 *
 * @param kind such as LINE
 * @param pairs its groups, in order
 * @param line where it begins
 * @param vertices of a polyline
 */
record DxfEntity(String kind, List<DxfPairs.Pair> pairs, int line, List<DxfEntity> vertices) {

  /** A string of extended data. */
  private static final int TEXT = 1000;

  private static final Pattern LETTER = Pattern.compile("\\\\U\\+([0-9A-Fa-f]{4})");
  private static final int HEXADECIMAL = 16;

  /** The first number under a code; another where there is none, or it is no number. */
  double number(int code, double usual) {
    for (DxfPairs.Pair pair : pairs) {
      if (pair.code() == code) {
        return value(pair, usual);
      }
    }
    return usual;
  }

  int whole(int code, int usual) {
    return (int) number(code, usual);
  }

  String text(int code) {
    return pairs.stream()
        .filter(pair -> pair.code() == code)
        .map(DxfPairs.Pair::value)
        .findFirst()
        .orElse("");
  }

  /** The feature that the program's own extended data name. */
  Optional<FeatureTag> tag() {
    for (int i = 0; i + 2 < pairs.size(); i++) {
      boolean own =
          pairs.get(i).code() == 1001 && pairs.get(i).value().equals(FeatureTag.APPLICATION);
      if (own && pairs.get(i + 1).code() == TEXT && pairs.get(i + 2).code() == TEXT) {
        return FeatureTag.read(letters(pairs.get(i + 1).value()), pairs.get(i + 2).value());
      }
    }
    return Optional.empty();
  }

  /** With the letters beyond ASCII that the format writes by their numbers. */
  private static String letters(String text) {
    return LETTER
        .matcher(text)
        .replaceAll(
            m ->
                Matcher.quoteReplacement(
                    String.valueOf((char) Integer.parseInt(m.group(1), HEXADECIMAL))));
  }

  boolean has(int code) {
    return pairs.stream().anyMatch(pair -> pair.code() == code);
  }

  /** All numbers under a code. */
  List<Double> numbers(int code) {
    List<Double> all = new ArrayList<>();
    for (DxfPairs.Pair pair : pairs) {
      if (pair.code() == code) {
        all.add(value(pair, Double.NaN));
      }
    }
    return all;
  }

  static double value(DxfPairs.Pair pair, double usual) {
    try {
      double value = Double.parseDouble(pair.value());
      return Double.isFinite(value) ? value : usual;
    } catch (NumberFormatException none) {
      return usual;
    }
  }
}
