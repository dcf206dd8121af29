package felloe.cutting;

import java.util.ArrayList;
import java.util.List;

/** Height of the cutter along the way, straight between knots: positions rising, in mm. */
final class Profile {

  private final List<double[]> knots = new ArrayList<>();

  /** Adds a knot at a position not below the last. */
  void add(double position, double z) {
    knots.add(new double[] {position, z});
  }

  /** Position of the last knot. */
  double end() {
    return knots.get(knots.size() - 1)[0];
  }

  /** The positions of the knots. */
  double[] positions() {
    return knots.stream().mapToDouble(knot -> knot[0]).toArray();
  }

  /** The height at a position; level before the first knot and after the last. */
  double at(double position) {
    int low = 0;
    int high = knots.size() - 1;
    if (position <= knots.get(0)[0]) {
      return knots.get(0)[1];
    }
    if (position >= knots.get(high)[0]) {
      return knots.get(high)[1];
    }
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (knots.get(middle)[0] <= position) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double[] a = knots.get(low);
    double[] b = knots.get(high);
    double span = b[0] - a[0];
    return span <= 0 ? b[1] : a[1] + (b[1] - a[1]) * (position - a[0]) / span;
  }

  /** At each position the higher of the two. */
  Profile max(Profile other) {
    double[] all = new double[knots.size() + other.knots.size()];
    System.arraycopy(positions(), 0, all, 0, knots.size());
    System.arraycopy(other.positions(), 0, all, knots.size(), other.knots.size());
    java.util.Arrays.sort(all);
    Profile higher = new Profile();
    double last = 0;
    for (int i = 0; i < all.length; i++) {
      double s = all[i];
      if (s < knots.get(0)[0] || s > end() || (i > 0 && s == all[i - 1])) {
        continue;
      }
      double here = at(s) - other.at(s);
      if (!higher.knots.isEmpty()) {
        double before = at(last) - other.at(last);
        if (before * here < 0) {
          double cross = last + (s - last) * before / (before - here);
          higher.add(cross, at(cross));
        }
      }
      higher.add(s, Math.max(at(s), other.at(s)));
      last = s;
    }
    return higher;
  }
}
