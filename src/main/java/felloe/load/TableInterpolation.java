package felloe.load;

import java.util.List;

/** Figures of a table with few rows. */
final class TableInterpolation {

  private TableInterpolation() {}

  /** On a straight line between neighbouring rows; beyond the ends, what the end row has. */
  static double at(List<Double> places, List<Double> values, double place) {
    int last = places.size() - 1;
    if (place <= places.get(0)) {
      return values.get(0);
    }
    for (int i = 0; i < last; i++) {
      if (place <= places.get(i + 1)) {
        double part = (place - places.get(i)) / (places.get(i + 1) - places.get(i));
        return values.get(i) + part * (values.get(i + 1) - values.get(i));
      }
    }
    return values.get(last);
  }
}
