package felloe.hub;

import java.util.PriorityQueue;

/**
 * The best turn and shift of a set of screws p(i) that go into holes q(i), one into each: the
 * greatest g = min over i of c(i) - |R p(i) + t - q(i)|, R the turn by an angle a, t the shift,
 * c(i) half of hole minus screw. Found for the whole turn, not only near a guess.
 *
 * <p><b>Why the answer is the greatest.</b> The second derivative of |R p + t - q| along any path
 * (a, t) that is straight is at least -|p|, since turning bends the path of a screw by no more than
 * its radius. So c - |R p + t - q| - r a^2/2, with r the greatest |p|, is concave in a and t
 * together, the least of such functions is concave, and what is left after choosing the best t is
 * concave in a. Hence for any angle b at which the best shift is known, with its weights (see
 * {@link SmallestReach#weights}) and the slope s that they give,
 *
 * <pre>g(a) &lt;= g(b) + s (a - b) + r (a - b)^2 / 2 for every a.</pre>
 *
 * Two such parabolas, one from each end of an interval, bound g on it. They have the same leading
 * term, so their lower envelope has its greatest value at an end or where they cross. Intervals
 * whose bound does not beat the best found by more than {@link #PRECISION} are dropped; the others
 * are split where the parabolas cross. What is left when none remain is the greatest, to {@link
 * #PRECISION}. The screws are taken about the centre of their smallest circle, which makes r as
 * small as can be.
 */
final class TurnSearch {

  /** How far below the true greatest the result may lie, mm. */
  static final double PRECISION = 1e-9;

  private static final int FIRST_POINTS = 12;

  /** A span of turns as narrow as this holds no other double worth trying, radians. */
  private static final double NARROWEST = 1e-13;

  /** A turn whose equations are off by more is worked out anew, mm. */
  private static final double SMALL_RESIDUAL = 1e-9;

  private final double[] px;
  private final double[] py;
  private final double[] qx;
  private final double[] qy;
  private final double[] slack;
  private double radius;
  private double centreX;
  private double centreY;
  private double best;
  private double bestTurn;
  private double bestX;
  private double bestY;
  private boolean found;

  private record Sample(double turn, double value, double slope) {}

  /** Orders by bound, the greatest first. */
  private record Interval(Sample from, Sample to, double bound, double split)
      implements Comparable<Interval> {
    @Override
    public int compareTo(Interval other) {
      return Double.compare(other.bound, bound);
    }
  }

  private TurnSearch(double[][] screws, double[][] holes, double[] slack) {
    this.px = screws[0].clone();
    this.py = screws[1].clone();
    this.qx = holes[0];
    this.qy = holes[1];
    this.slack = slack;
  }

  /**
   * Searches.
   *
   * @param screws x and y of the screws
   * @param holes x and y of the hole that each screw goes into
   * @param slack half of hole minus screw, for each screw
   * @param toBeat only a value above this is of interest
   * @return the search; ask {@link #found} first
   */
  static TurnSearch of(double[][] screws, double[][] holes, double[] slack, double toBeat) {
    TurnSearch search = new TurnSearch(screws, holes, slack);
    search.best = toBeat;
    search.run();
    return search;
  }

  private void run() {
    centre();
    double ceiling = ceiling();
    if (ceiling <= best + PRECISION) {
      return;
    }
    sample(alignedTurn());
    PriorityQueue<Interval> open = new PriorityQueue<>();
    double start = alignedTurn() - Math.PI / FIRST_POINTS;
    Sample first = sample(start);
    Sample from = first;
    for (int i = 1; i <= FIRST_POINTS; i++) {
      double turn = start + 2 * Math.PI * i / FIRST_POINTS;
      Sample to = i == FIRST_POINTS ? new Sample(turn, first.value(), first.slope()) : sample(turn);
      open.add(interval(from, to));
      from = to;
    }
    while (!open.isEmpty() && best < ceiling - PRECISION / 2) {
      Interval widest = open.poll();
      if (widest.bound() <= best + PRECISION) {
        return;
      }
      if (widest.to().turn() - widest.from().turn() < NARROWEST) {
        continue;
      }
      Sample middle = sample(widest.split());
      open.add(interval(widest.from(), middle));
      open.add(interval(middle, widest.to()));
    }
  }

  private void centre() {
    SmallestReach circle = SmallestReach.of(px.clone(), py.clone(), new double[px.length]);
    centreX = circle.x();
    centreY = circle.y();
    radius = Math.max(0, circle.value());
    for (int i = 0; i < px.length; i++) {
      px[i] -= centreX;
      py[i] -= centreY;
    }
  }

  /** No placement can do better: two screws keep their distance, and no slack is exceeded. */
  private double ceiling() {
    double ceiling = Double.POSITIVE_INFINITY;
    for (int i = 0; i < px.length; i++) {
      ceiling = Math.min(ceiling, slack[i]);
      for (int j = 0; j < i; j++) {
        double misfit =
            Math.abs(
                Math.hypot(px[i] - px[j], py[i] - py[j])
                    - Math.hypot(qx[i] - qx[j], qy[i] - qy[j]));
        ceiling = Math.min(ceiling, (slack[i] + slack[j] - misfit) / 2);
      }
    }
    return ceiling;
  }

  /** The turn of least squares: a good first guess, no more. */
  private double alignedTurn() {
    double mx = 0;
    double my = 0;
    for (int i = 0; i < px.length; i++) {
      mx += qx[i] / px.length;
      my += qy[i] / px.length;
    }
    double dot = 0;
    double cross = 0;
    for (int i = 0; i < px.length; i++) {
      dot += px[i] * (qx[i] - mx) + py[i] * (qy[i] - my);
      cross += px[i] * (qy[i] - my) - py[i] * (qx[i] - mx);
    }
    return dot == 0 && cross == 0 ? 0 : Math.atan2(cross, dot);
  }

  private Sample sample(double turn) {
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    int n = px.length;
    double[] sx = new double[n];
    double[] sy = new double[n];
    for (int i = 0; i < n; i++) {
      sx[i] = qx[i] - (cos * px[i] - sin * py[i]);
      sy[i] = qy[i] - (sin * px[i] + cos * py[i]);
    }
    SmallestReach reach = SmallestReach.of(sx, sy, slack);
    double value = -reach.value();
    if (value > best) {
      best = value;
      bestTurn = turn;
      bestX = reach.x();
      bestY = reach.y();
      found = true;
    }
    if (reach.residual() > SMALL_RESIDUAL) {
      return pairSample(turn, sx, sy, reach.basis());
    }
    double slope = 0;
    int[] basis = reach.basis();
    double[] weights = reach.weights();
    for (int k = 0; k < basis.length; k++) {
      int i = basis[k];
      slope -=
          weights[k]
              * (reach.unitX(i) * movesX(i, sin, cos) + reach.unitY(i) * movesY(i, sin, cos));
    }
    return new Sample(turn, value, slope);
  }

  private double movesX(int i, double sin, double cos) {
    return -sin * px[i] - cos * py[i];
  }

  private double movesY(int i, double sin, double cos) {
    return cos * px[i] - sin * py[i];
  }

  /**
   * A bound from two screws alone, whose direction is that of their points from each other and not
   * of the place: for the rare turn at which the directions to the place are lost in rounding.
   */
  private Sample pairSample(double turn, double[] sx, double[] sy, int[] basis) {
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    Sample least = null;
    for (int i : basis) {
      for (int j : basis) {
        double d = Math.hypot(sx[i] - sx[j], sy[i] - sy[j]);
        boolean tip = d <= Math.abs(slack[i] - slack[j]);
        double value = tip ? Math.min(slack[i], slack[j]) : (slack[i] + slack[j] - d) / 2;
        if (least == null || value < least.value()) {
          double apart =
              tip
                  ? 0
                  : (sx[i] - sx[j]) / d * (movesX(i, sin, cos) - movesX(j, sin, cos))
                      + (sy[i] - sy[j]) / d * (movesY(i, sin, cos) - movesY(j, sin, cos));
          least = new Sample(turn, value, apart / 2);
        }
      }
    }
    return least;
  }

  private Interval interval(Sample from, Sample to) {
    double width = to.turn() - from.turn();
    // Both parabolas about the left end, u = a - from: equal where
    // from.value + from.slope u = to.value + to.slope (u - width) + r (width^2 - 2 u width)/2.
    double constant = to.value() - to.slope() * width + radius * width * width / 2 - from.value();
    double linear = from.slope() - to.slope() + radius * width;
    double ends = Math.max(from.value(), to.value());
    double u = constant / linear;
    if (!(u > 0 && u < width)) {
      return new Interval(from, to, ends, from.turn() + width / 2);
    }
    double crossing = from.value() + from.slope() * u + radius * u * u / 2;
    double inside = Math.min(Math.max(u, width * 0.02), width * 0.98);
    return new Interval(from, to, Math.max(ends, crossing), from.turn() + inside);
  }

  /** Whether a value above the one to beat was found. */
  boolean found() {
    return found;
  }

  /** The greatest smallest clearance. */
  double value() {
    return best;
  }

  /** The turn, radians counter-clockwise about the origin of the screws. */
  double turn() {
    return bestTurn;
  }

  /** The shift after the turn, x. */
  double shiftX() {
    return bestX - (Math.cos(bestTurn) * centreX - Math.sin(bestTurn) * centreY);
  }

  /** The shift after the turn, y. */
  double shiftY() {
    return bestY - (Math.sin(bestTurn) * centreX + Math.cos(bestTurn) * centreY);
  }
}
