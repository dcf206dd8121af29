package felloe.bringin;

/**
 * Finds an edge in a row of values across it, to part of a step: blurred steps are fitted by least
 * squares. Where the wall of the part is seen beyond its upper edge, a second step stands at a known
 * distance: both are fitted together, so that the place is that of the upper edge whatever the
 * wall's shade.
 */
final class EdgeFit {

  /** Whether a found edge is the strongest that the values allow; else it says nothing. */
  private static final double LEAST_SHARE = 0.5;

  private EdgeFit() {}

  /**
   * An edge.
   *
   * @param at where, in the unit of the values' places
   * @param rise how much lighter it is beyond
   * @param off root mean square of the values from the fit
   * @param wall the share of the rise that lies at the first step
   */
  record Found(double at, double rise, double off, double wall) {
    static final Found NONE = new Found(Double.NaN, 0, Double.POSITIVE_INFINITY, Double.NaN);

    boolean well() {
      return !Double.isNaN(at);
    }
  }

  /**
   * The strongest edge.
   *
   * @param values at first, first + step, ...
   * @param from the least and
   * @param to the greatest place at which it may be
   * @param second how far beyond it a second step lies; 0 for none
   * @param share of the rise at the first of two steps, when the values hardly tell
   * @param blur of the steps, standard deviation
   */
  static Found strongest(
      double[] values,
      double first,
      double step,
      double from,
      double to,
      double second,
      double share,
      double blur) {
    double best = Double.POSITIVE_INFINITY;
    double at = Double.NaN;
    double stride = Math.max(step / 2, blur / 2);
    for (double x = from; x <= to + 1e-9; x += stride) {
      double off = fit(values, first, step, x, second, share, blur, null);
      if (off < best) {
        best = off;
        at = x;
      }
    }
    if (at <= from + 1e-9 || at >= to - stride) {
      return Found.NONE;
    }
    double width = stride;
    for (int i = 0; i < 40 && width > 1e-4 * step; i++) {
      // Parabola through three: least squares are smooth here.
      double left = fit(values, first, step, at - width, second, share, blur, null);
      double mid = fit(values, first, step, at, second, share, blur, null);
      double right = fit(values, first, step, at + width, second, share, blur, null);
      double bend = left - 2 * mid + right;
      if (bend <= 0) {
        break;
      }
      double move = width * (left - right) / (2 * bend);
      at += Math.max(-width, Math.min(width, move));
      width *= 0.5;
    }
    double[] levels = new double[3];
    double squares = fit(values, first, step, at, second, share, blur, levels);
    double mean = 0;
    for (double value : values) {
      mean += value / values.length;
    }
    double all = 0;
    for (double value : values) {
      all += (value - mean) * (value - mean);
    }
    if (squares > (1 - LEAST_SHARE) * all) {
      return Found.NONE;
    }
    double rise = levels[1] + levels[2];
    return new Found(
        at,
        rise,
        Math.sqrt(Math.max(0, squares) / values.length),
        rise == 0 ? share : levels[1] / rise);
  }

  /** The sum of squares that is left with steps at a place; their levels are told. */
  private static double fit(
      double[] values,
      double first,
      double step,
      double at,
      double second,
      double share,
      double blur,
      double[] levels) {
    boolean two = second > 0;
    double s11 = values.length;
    double s12 = 0;
    double s13 = 0;
    double s22 = 0;
    double s23 = 0;
    double s33 = 0;
    double b1 = 0;
    double b2 = 0;
    double b3 = 0;
    double vv = 0;
    for (int i = 0; i < values.length; i++) {
      double t = first + i * step - at;
      double p = normal(t / blur);
      double q = two ? normal((t - second) / blur) : 0;
      double v = values[i];
      s12 += p;
      s13 += q;
      s22 += p * p;
      s23 += p * q;
      s33 += q * q;
      b1 += v;
      b2 += p * v;
      b3 += q * v;
      vv += v * v;
    }
    if (two) {
      // A faint wish that the first step has its share of the rise: it decides only where the steps
      // lie so near that the values cannot tell them apart.
      double w = 0.02;
      s22 += w * (1 - share) * (1 - share);
      s23 -= w * share * (1 - share);
      s33 += w * share * share;
    } else {
      s33 = 1;
    }
    double d22 = s22 - s12 * s12 / s11;
    double d23 = s23 - s12 * s13 / s11;
    double d33 = s33 - s13 * s13 / s11;
    double e2 = b2 - s12 * b1 / s11;
    double e3 = b3 - s13 * b1 / s11;
    double det = d22 * d33 - d23 * d23;
    if (Math.abs(det) < 1e-12) {
      return vv - b1 * b1 / s11;
    }
    double x2 = (e2 * d33 - e3 * d23) / det;
    double x3 = (d22 * e3 - d23 * e2) / det;
    if (levels != null) {
      levels[0] = (b1 - s12 * x2 - s13 * x3) / s11;
      levels[1] = x2;
      levels[2] = x3;
    }
    return vv - b1 * b1 / s11 - x2 * e2 - x3 * e3;
  }

  /**
   * The normal distribution up to a place, from a table: {@code Math} has none. Summed from its
   * series once; linear between entries, within 1e-6.
   */
  static double normal(double x) {
    if (x <= -REACH) {
      return 0;
    }
    if (x >= REACH) {
      return 1;
    }
    double at = (x + REACH) * PER_UNIT;
    int i = (int) at;
    return TABLE[i] + (at - i) * (TABLE[i + 1] - TABLE[i]);
  }

  private static final int REACH = 6;
  private static final int PER_UNIT = 512;
  private static final double[] TABLE = table();

  private static double[] table() {
    double[] all = new double[2 * REACH * PER_UNIT + 2];
    double sum = 0;
    for (int i = 0; i < all.length; i++) {
      all[i] = sum;
      double x = (i + 0.5) / PER_UNIT - REACH;
      sum += Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI) / PER_UNIT;
    }
    return all;
  }
}
