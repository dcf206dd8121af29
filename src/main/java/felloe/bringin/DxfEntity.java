package felloe.bringin;

import java.util.ArrayList;
import java.util.List;

/**
 * An entity of a DXF file: its kind and its groups, those of its vertices in entities of their own.
 *
 * @param kind such as LINE
 * @param pairs its groups, in order
 * @param line where it begins
 * @param vertices of a polyline
 */
record DxfEntity(String kind, List<DxfPairs.Pair> pairs, int line, List<DxfEntity> vertices) {

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
