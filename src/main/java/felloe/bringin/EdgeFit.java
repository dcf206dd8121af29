package felloe.bringin;

/**
 * Finds an edge in a row of values across it, to part of a step: blurred steps are fitted by least
 * squares. Where the wall of the part is seen beyond its upper edge, a second step stands at a
 * known distance: both are fitted together, so that the place is that of the upper edge whatever
 * the wall's shade.
 */
final class EdgeFit {

  /** Steps that explain less of the values' squares are no edge. */
  private static final double LEAST_SHARE = 0.5;

  /** Steps that rise by less of all that the values do are none: a soft shadow's slope is. */
  private static final double LEAST_RISE = 0.25;

  /** Light below which noise does not fall further. */
  private static final double DARKEST = 0.01;

  /** Noise's square grows with so high a power of the light: the slope of sRGB's encoding. */
  private static final double NOISE = 1.17;

  /** What {@link #sureness} is held against: a face of 0.06 beside a ground of 0.45. */
  private static final double DARK_FACE = 0.046;

  /** Levels before, at the first step, at the second, and the slope beyond. */
  private static final int TERMS = 4;

  /** Where the search ends, share of a step. */
  private static final double CLOSE = 1e-4;

  /** Rounding of places. */
  private static final double SAME = 1e-9;

  /** A pivot below this is none. */
  private static final double NOTHING = 1e-9;

  /** The slope beyond is held to 0 by so little. */
  private static final double SLOPE_HELD = 1e-3;

  private EdgeFit() {}

  /**
   * What is known of the steps.
   *
   * @param second how far beyond the first one a second step lies; 0 for none
   * @param still whether the second one stays where it is, so far from the origin, wherever the
   *     first one is
   * @param darker than the face is the wall between the two, share of the face's light
   * @param held how much that is believed, as so many values beside a dark face
   * @param blur of both, standard deviation
   * @param evenly whether dark values count as bright ones: better for the last digit, worse to
   *     tell a dark wall from a shadow
   */
  record Steps(
      double second, boolean still, double darker, double held, double blur, boolean evenly) {}

  /**
   * An edge.
   *
   * @param at where, in the unit of the values' places
   * @param rise how much lighter it is beyond
   * @param off root mean square of the values from the fit
   * @param wall how much darker than the face it is beyond the first step, share of its light
   * @param beyond whether it is the second step that tells where
   */
  record Found(double at, double rise, double off, double wall, boolean beyond) {
    static final Found NONE = new Found(Double.NaN, 0, Double.POSITIVE_INFINITY, Double.NaN, false);

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
   */
  static Found strongest(
      double[] values, double first, double step, double from, double to, Steps steps) {
    double[] weights = weights(values, steps.evenly());
    double sureness = sureness(values);
    double best = Double.POSITIVE_INFINITY;
    double at = Double.NaN;
    double stride = Math.max(step / 2, steps.blur() / 2);
    for (double x = from; x <= to + SAME; x += stride) {
      double off = fit(values, weights, first, step, x, steps, sureness, null);
      if (off < best) {
        best = off;
        at = x;
      }
    }
    if (at <= from + SAME || at >= to - stride) {
      return Found.NONE;
    }
    double width = stride;
    for (int i = 0; i < 40 && width > CLOSE * step; i++) {
      // Parabola through three: least squares are smooth here.
      double left = fit(values, weights, first, step, at - width, steps, sureness, null);
      double mid = fit(values, weights, first, step, at, steps, sureness, null);
      double right = fit(values, weights, first, step, at + width, steps, sureness, null);
      double bend = left - 2 * mid + right;
      if (bend <= 0) {
        break;
      }
      double move = width * (left - right) / (2 * bend);
      at += Math.max(-width, Math.min(width, move));
      width *= 0.5;
    }
    double[] levels = new double[TERMS];
    double squares = fit(values, weights, first, step, at, steps, sureness, levels);
    double mean = 0;
    for (int i = 0; i < values.length; i++) {
      mean += weights[i] * values[i] / values.length;
    }
    double all = 0;
    for (int i = 0; i < values.length; i++) {
      all += weights[i] * (values[i] - mean) * (values[i] - mean);
    }
    if (squares > (1 - LEAST_SHARE) * all) {
      return Found.NONE;
    }
    double rise = levels[1] + levels[2];
    double steep = Math.max(Math.abs(rise), Math.max(Math.abs(levels[1]), Math.abs(levels[2])));
    if (steps.evenly() && steep < LEAST_RISE * range(values)) {
      return Found.NONE;
    }
    return new Found(
        at,
        rise,
        Math.sqrt(Math.max(0, squares) / values.length),
        levels[0] > 0 ? -levels[1] / levels[0] : steps.darker(),
        Math.abs(levels[2]) > Math.abs(levels[1]));
  }

  private static double range(double[] values) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    return high - low;
  }

  /**
   * A photo's values are encoded so that noise is alike in dark and bright places: in light itself
   * dark ones are surer, by the slope of the encoding. On average 1.
   */
  private static double[] weights(double[] values, boolean evenly) {
    double[] all = new double[values.length];
    double sum = 0;
    for (int i = 0; i < all.length; i++) {
      all[i] = evenly ? Math.pow(Math.max(0, values[i]) + DARKEST, -0.6) : weight(values[i]);
      sum += all[i];
    }
    for (int i = 0; i < all.length; i++) {
      all[i] *= all.length / sum;
    }
    return all;
  }

  /**
   * How much a belief about the wall weighs beside what is seen, 1 for a dark face on a light
   * ground: noise is small beside a light face's own light, and on a dark ground, so that there the
   * least step that is seen says more than any belief.
   */
  private static double sureness(double[] values) {
    double face = 0;
    double weights = 0;
    int inside = Math.max(1, values.length / 5);
    for (int i = 0; i < values.length; i++) {
      face += i < inside ? values[i] / inside : 0;
      weights += weight(values[i]) / values.length;
    }
    return sureness(face, weights);
  }

  /**
   * The same by the light of the face and the mean {@link #weight} of what is seen.
   *
   * @return 0 to 1
   */
  static double sureness(double face, double weights) {
    return Math.min(1, DARK_FACE / (weights * (face * face + DARKEST * DARKEST)));
  }

  /** How sure a value is: one over the square of its noise, but for a factor. */
  static double weight(double value) {
    return Math.pow(Math.max(0, value) + DARKEST, -NOISE);
  }

  /**
   * The sum of squares that is left with steps at a place; their levels are told. Beyond the last
   * step the ground may grow lighter or darker evenly, as beside a soft shadow.
   */
  private static double fit(
      double[] values,
      double[] weights,
      double first,
      double step,
      double at,
      Steps steps,
      double sureness,
      double[] levels) {
    double[][] m = new double[TERMS][TERMS + 1];
    double[] t = new double[TERMS];
    double squares = 0;
    boolean two = steps.second() > 0;
    for (int i = 0; i < values.length; i++) {
      double x = first + i * step - at;
      double beyond = steps.still() ? x + at - steps.second() : x - steps.second();
      t[0] = 1;
      t[1] = normal(x / steps.blur());
      t[2] = two ? normal(beyond / steps.blur()) : 0;
      t[3] = beyond > 0 ? beyond / (step * values.length) : 0;
      double v = values[i];
      double w = weights[i];
      squares += w * v * v;
      for (int r = 0; r < TERMS; r++) {
        double wr = w * t[r];
        for (int c = 0; c <= r; c++) {
          m[r][c] += wr * t[c];
        }
        m[r][TERMS] += wr * v;
      }
    }
    if (two) {
      double held = sureness * steps.held();
      m[0][0] += held * steps.darker() * steps.darker();
      m[1][0] += held * steps.darker();
      m[1][1] += held;
    } else {
      m[2][2] = 1;
    }
    m[3][3] += SLOPE_HELD;
    double left = LeastSquares.left(m, squares, NOTHING);
    if (levels != null) {
      LeastSquares.terms(m, levels);
    }
    return left;
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
