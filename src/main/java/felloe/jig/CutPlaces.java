package felloe.jig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where cuts lie best: so many of them, with no part between longer than there is room for. */
final class CutPlaces {

  private CutPlaces() {}

  /**
   * So many cuts at the least cost.
   *
   * @param places where a cut may be, growing, mm
   * @param costs of a cut at each of them
   * @param low where the first part begins, mm
   * @param high where the last part ends, mm
   * @param room the most length of a part, mm
   * @param count how many cuts
   * @param uneven cost of a cut that lies a whole part off from where all parts are alike
   * @return growing; empty when there are none
   */
  static Optional<List<Double>> cheapest(
      List<Double> places,
      double[] costs,
      double low,
      double high,
      double room,
      int count,
      double uneven) {
    int n = places.size();
    double part = (high - low) / (count + 1);
    double[][] cost = new double[count][n];
    int[][] before = new int[count][n];
    for (int k = 0; k < count; k++) {
      for (int i = 0; i < n; i++) {
        cost[k][i] = Double.POSITIVE_INFINITY;
        double own = costs[i] + uneven * Math.abs(places.get(i) - low - (k + 1) * part) / part;
        if (k == 0) {
          cost[k][i] = places.get(i) - low <= room ? own : Double.POSITIVE_INFINITY;
          continue;
        }
        for (int j = i - 1; j >= 0 && places.get(i) - places.get(j) <= room; j--) {
          if (cost[k - 1][j] + own < cost[k][i]) {
            cost[k][i] = cost[k - 1][j] + own;
            before[k][i] = j;
          }
        }
      }
    }
    int best = -1;
    for (int i = 0; i < n; i++) {
      boolean last = high - places.get(i) <= room;
      if (last && (best < 0 || cost[count - 1][i] < cost[count - 1][best])) {
        best = i;
      }
    }
    if (best < 0 || cost[count - 1][best] == Double.POSITIVE_INFINITY) {
      return Optional.empty();
    }
    List<Double> cuts = new ArrayList<>();
    for (int k = count - 1; k >= 0; k--) {
      cuts.add(0, places.get(best));
      best = before[k][best];
    }
    return Optional.of(cuts);
  }
}
