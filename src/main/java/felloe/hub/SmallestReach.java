package felloe.hub;

/**
 * For points s(i) with slacks c(i), the place t that makes the greatest of |t - s(i)| - c(i)
 * smallest. Seen from the hub: where to shift it so that the tightest screw has most room, when its
 * turn is given; that room is minus the value found.
 *
 * <p>Each |t - s(i)| - c(i) is a cone, hence convex, and so is their maximum: a minimum where three
 * cones or fewer meet is the only one. Such a minimum is known in closed form: the tip of one cone;
 * the point between two; the point of equal reach of three (the circle of Apollonius). The search
 * holds at most three points, adds the one that sticks out most, and keeps the best meeting of the
 * four. The value grows with each round and there are finitely many threes, so it ends, and it ends
 * where nothing sticks out.
 */
final class SmallestReach {

  /** Sine of an angle below which three points lie in one line, and a square has no first term. */
  private static final double IN_LINE = 1e-14;

  /** Reaches nearer than this are one: rounding of double arithmetic at a plate's size, mm. */
  private static final double ROUNDING = 1e-12;

  private static final int[][] SUBSETS = {
    {0}, {1}, {2}, {3}, {0, 1}, {0, 2}, {0, 3}, {1, 2}, {1, 3}, {2, 3}, {0, 1, 2}, {0, 1, 3},
    {0, 2, 3}, {1, 2, 3}
  };

  private final double[] x;
  private final double[] y;
  private final double[] slack;
  private int[] basis = {0};
  private double tx;
  private double ty;
  private double value;

  private SmallestReach(double[] x, double[] y, double[] slack) {
    this.x = x;
    this.y = y;
    this.slack = slack;
  }

  /** Solves it for at least one point; the arrays are read and not kept beyond the answer's use. */
  static SmallestReach of(double[] x, double[] y, double[] slack) {
    SmallestReach reach = new SmallestReach(x, y, slack);
    reach.solve();
    return reach;
  }

  private void solve() {
    tx = x[0];
    ty = y[0];
    value = -slack[0];
    // Every round but the last raises the value; the count is a guard against rounding alone.
    for (int round = 0; round < 20 * x.length + 20; round++) {
      int worst = furthest();
      if (reach(worst, tx, ty) <= value + ROUNDING) {
        return;
      }
      double before = value;
      improve(worst);
      if (value <= before) {
        value = Math.max(value, reach(furthest(), tx, ty));
        return;
      }
    }
  }

  private int furthest() {
    int worst = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      double reach = reach(i, tx, ty);
      if (reach > most) {
        most = reach;
        worst = i;
      }
    }
    return worst;
  }

  private double reach(int i, double px, double py) {
    return Math.hypot(px - x[i], py - y[i]) - slack[i];
  }

  private void improve(int added) {
    int[] pool = new int[basis.length + 1];
    System.arraycopy(basis, 0, pool, 0, basis.length);
    pool[basis.length] = added;
    double best = Double.POSITIVE_INFINITY;
    double bestX = tx;
    double bestY = ty;
    int[] bestBasis = basis;
    for (int[] subset : SUBSETS) {
      int[] chosen = chosen(subset, pool);
      double[] t = chosen == null ? null : meeting(chosen);
      if (t != null) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i : pool) {
          most = Math.max(most, reach(i, t[0], t[1]));
        }
        // A larger set must earn its place, so that rounding never prefers it.
        if (most < best - ROUNDING / 10) {
          best = most;
          bestX = t[0];
          bestY = t[1];
          bestBasis = chosen;
        }
      }
    }
    value = best;
    tx = bestX;
    ty = bestY;
    basis = bestBasis;
  }

  private static int[] chosen(int[] subset, int[] pool) {
    int[] chosen = new int[subset.length];
    for (int k = 0; k < subset.length; k++) {
      if (subset[k] >= pool.length) {
        return null;
      }
      chosen[k] = pool[subset[k]];
    }
    return chosen;
  }

  /** The lowest common point of the cones, or null where they have none of their own. */
  private double[] meeting(int[] of) {
    return switch (of.length) {
      case 1 -> new double[] {x[of[0]], y[of[0]]};
      case 2 -> between(of[0], of[1]);
      default -> amid(of[0], of[1], of[2]);
    };
  }

  private double[] between(int i, int j) {
    double d = Math.hypot(x[j] - x[i], y[j] - y[i]);
    if (d <= Math.abs(slack[i] - slack[j])) {
      return null;
    }
    double f = ((d - slack[i] - slack[j]) / 2 + slack[i]) / d;
    return new double[] {x[i] + f * (x[j] - x[i]), y[i] + f * (y[j] - y[i])};
  }

  /** The point whose distance from each of three is its slack and one common length. */
  private double[] amid(int i, int j, int k) {
    double ax = x[j] - x[i];
    double ay = y[j] - y[i];
    double bx = x[k] - x[i];
    double by = y[k] - y[i];
    double det = ax * by - ay * bx;
    if (Math.abs(det) <= IN_LINE * Math.hypot(ax, ay) * Math.hypot(bx, by)) {
      return null; // on one line, where two of them decide
    }
    // With r = |t - s(i)| the differences of the squared equations are linear in t and r:
    // a.t = (a.a - m(j)^2)/2 - m(j) r, m(j) = slack(j) - slack(i); likewise for b.
    double mj = slack[j] - slack[i];
    double mk = slack[k] - slack[i];
    double pj = (ax * ax + ay * ay - mj * mj) / 2;
    double pk = (bx * bx + by * by - mk * mk) / 2;
    double ux = (pj * by - pk * ay) / det;
    double uy = (ax * pk - bx * pj) / det;
    double vx = (-mj * by + mk * ay) / det;
    double vy = (-ax * mk + bx * mj) / det;
    // |u + v r| = r
    double qa = vx * vx + vy * vy - 1;
    double qb = ux * vx + uy * vy;
    double qc = ux * ux + uy * uy;
    double r = smallestRoot(qa, qb, qc, Math.max(0, Math.max(-mj, -mk)));
    return Double.isNaN(r) ? null : new double[] {x[i] + ux + vx * r, y[i] + uy + vy * r};
  }

  /** The smallest root of a r^2 + 2 b r + c that is not less than {@code least}; NaN if none. */
  private static double smallestRoot(double a, double b, double c, double least) {
    if (Math.abs(a) < IN_LINE) {
      double r = -c / (2 * b);
      return r >= least ? r : Double.NaN;
    }
    double disc = b * b - a * c;
    if (disc < 0) {
      return Double.NaN;
    }
    double q = -(b + Math.copySign(Math.sqrt(disc), b));
    double one = q / a;
    double two = q == 0 ? one : c / q;
    double low = Math.min(one, two);
    double high = Math.max(one, two);
    double slightlyLess = least - ROUNDING * (1 + least);
    if (low >= slightlyLess) {
      return low;
    }
    return high >= slightlyLess ? high : Double.NaN;
  }

  /** The greatest |t - s(i)| - c(i) at the place found. */
  double value() {
    return value;
  }

  /** The place found, x. */
  double x() {
    return tx;
  }

  /** The place found, y. */
  double y() {
    return ty;
  }

  /** The points that hold the place, three at most. */
  int[] basis() {
    return basis;
  }

  /**
   * Weights of the {@link #basis}, not negative, with sum 1, for which the weighted unit vectors
   * from the points to the place cancel: the proof that the place is best.
   */
  double[] weights() {
    if (basis.length == 1) {
      return new double[] {1};
    }
    if (basis.length == 2) {
      return new double[] {0.5, 0.5};
    }
    double[] w = new double[3];
    double sum = 0;
    for (int k = 0; k < 3; k++) {
      int i = basis[(k + 1) % 3];
      int j = basis[(k + 2) % 3];
      w[k] = unitX(i) * unitY(j) - unitY(i) * unitX(j);
      sum += w[k];
    }
    double total = 0;
    for (int k = 0; k < 3; k++) {
      w[k] = sum == 0 ? 1 : Math.max(0, w[k] / sum);
      total += w[k];
    }
    for (int k = 0; k < 3; k++) {
      w[k] /= total;
    }
    return w;
  }

  /**
   * Length of the weighted sum of the unit vectors, which is 0 but for rounding; not small only
   * where points and place coincide so nearly that directions are rounding.
   */
  double residual() {
    if (basis.length == 1) {
      return 0;
    }
    double[] w = weights();
    double sumX = 0;
    double sumY = 0;
    for (int k = 0; k < basis.length; k++) {
      sumX += w[k] * unitX(basis[k]);
      sumY += w[k] * unitY(basis[k]);
    }
    return Math.hypot(sumX, sumY);
  }

  /** Unit vector from a point to the place, x; 0 where they coincide. */
  double unitX(int i) {
    double d = Math.hypot(tx - x[i], ty - y[i]);
    return d == 0 ? 0 : (tx - x[i]) / d;
  }

  /** Unit vector from a point to the place, y; 0 where they coincide. */
  double unitY(int i) {
    double d = Math.hypot(tx - x[i], ty - y[i]);
    return d == 0 ? 0 : (ty - y[i]) / d;
  }
}
