package felloe.measure;

import felloe.measure.Layout.EvenRing;
import felloe.measure.Layout.Free;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.linear.MatrixUtils;

/**
 * Adjusts from several first guesses and keeps the best. The first guess is a ring on which the
 * holes stand evenly in their order; where it leads to poor residuals, the distances themselves
 * (classical scaling, W. S. Torgerson 1952) and shaken rings are tried as well.
 */
final class Solver {

  /** Residuals that chance leaves in all but one of so many cases are no reason to try again. */
  private static final double GOOD = 1e-4;

  /** Another start must bring the cost down by this share to be taken. */
  private static final double BETTER = 1 - 1e-6;

  private static final double NEAR = 0.02;
  private static final int PHASES = 12;
  private static final int SHAKES = 8;
  private static final long SEED = 20;

  private Solver() {}

  /** With the holes evenly on a circle. */
  static Adjustment even(Equations equations) {
    Unknowns unknowns = equations.unknowns();
    boolean turns = !unknowns.edges().isEmpty();
    double radius = radius(equations);
    Adjustment best = null;
    for (int p = 0; p < (turns ? PHASES : 1); p++) {
      for (boolean clockwise : turns ? new boolean[] {false, true} : new boolean[] {false}) {
        EvenRing ring = new EvenRing(unknowns, clockwise);
        double[] figures = new double[ring.size()];
        figures[0] = radius;
        if (turns) {
          figures[1] = 2 * Math.PI * p / PHASES;
        }
        double[] guess = ring.all(figures);
        rest(equations, guess);
        int rest = unknowns.sizes() + unknowns.edges().size();
        System.arraycopy(guess, 2 * unknowns.holes(), figures, figures.length - rest, rest);
        best = better(best, Adjuster.adjust(equations, ring, figures));
        if (good(best)) {
          return best;
        }
      }
    }
    return best;
  }

  /** With nothing taken for granted, starting from guesses and from all that fits an even ring. */
  static Adjustment free(Equations equations, double[] first) {
    Free free = new Free(equations.unknowns());
    Adjustment best = Adjuster.adjust(equations, free, first);
    if (good(best)) {
      return best;
    }
    for (double[] guess : guesses(equations, first)) {
      best = better(best, Adjuster.adjust(equations, free, guess));
      if (good(best)) {
        return best;
      }
    }
    return best;
  }

  private static Adjustment better(Adjustment old, Adjustment next) {
    if (old == null || next.settled() != old.settled()) {
      return old == null || next.settled() ? next : old;
    }
    return next.cost() < old.cost() * BETTER ? next : old;
  }

  private static boolean good(Adjustment adjustment) {
    if (!adjustment.settled()) {
      return false;
    }
    if (near(adjustment)) {
      return true;
    }
    int freedom = adjustment.freedom();
    return freedom == 0
        ? adjustment.cost() < GOOD
        : new ChiSquaredDistribution(freedom).cumulativeProbability(adjustment.cost()) < 1 - GOOD;
  }

  /** A slip leaves residuals; holes in the wrong places leave far larger ones. */
  private static boolean near(Adjustment adjustment) {
    double most = 0;
    double widest = 0;
    for (int k = 0; k < adjustment.readings().size(); k++) {
      most = Math.max(most, Math.abs(adjustment.residual(k)));
      widest = Math.max(widest, adjustment.readings().get(k).reads());
    }
    return most < NEAR * widest;
  }

  private static List<double[]> guesses(Equations equations, double[] first) {
    List<double[]> guesses = new ArrayList<>();
    double[] scaled = scaled(equations, first);
    guesses.add(scaled);
    if (!equations.unknowns().edges().isEmpty()) {
      for (int p = 0; p < PHASES; p++) {
        guesses.add(turned(equations, scaled, 2 * Math.PI * p / PHASES, false));
        guesses.add(turned(equations, scaled, 2 * Math.PI * p / PHASES, true));
      }
    }
    Random random = new Random(SEED);
    double radius = Math.max(1, radius(equations));
    for (int s = 0; s < SHAKES; s++) {
      double[] shaken = first.clone();
      for (int i = 0; i < 2 * equations.unknowns().holes(); i++) {
        shaken[i] += 0.3 * radius * random.nextGaussian();
      }
      rest(equations, shaken);
      guesses.add(shaken);
    }
    return guesses;
  }

  private static double[] turned(Equations equations, double[] z, double turn, boolean mirrored) {
    double[] turned = z.clone();
    Unknowns unknowns = equations.unknowns();
    for (int i = 0; i < unknowns.holes(); i++) {
      double x = mirrored ? -z[unknowns.x(i)] : z[unknowns.x(i)];
      double y = z[unknowns.y(i)];
      turned[unknowns.x(i)] = x * Math.cos(turn) - y * Math.sin(turn);
      turned[unknowns.y(i)] = x * Math.sin(turn) + y * Math.cos(turn);
    }
    rest(equations, turned);
    return turned;
  }

  /** Sizes and edges that go with given centres: sizes as read, edges where they fit on average. */
  static void rest(Equations equations, double[] z) {
    Unknowns unknowns = equations.unknowns();
    double[] sum = new double[z.length];
    int[] count = new int[z.length];
    for (Reading r : equations.readings()) {
      if (r.over() == ReadingKind.DIAMETER) {
        sum[unknowns.size(r.from())] += r.reads();
        count[unknowns.size(r.from())]++;
      }
    }
    for (int k = 2 * unknowns.holes(); k < z.length; k++) {
      z[k] = count[k] > 0 ? sum[k] / count[k] : 0;
    }
    for (Reading r : equations.readings()) {
      if (r.edge().isPresent()) {
        ReferenceEdge edge = r.edge().get();
        double along =
            edge.inward().x() * z[unknowns.x(r.from())]
                + edge.inward().y() * z[unknowns.y(r.from())]
                + r.over().halves() * z[unknowns.size(r.from())] / 2;
        sum[unknowns.offset(edge)] += r.reads() - along;
        count[unknowns.offset(edge)]++;
      }
    }
    for (ReferenceEdge edge : unknowns.edges()) {
      int k = unknowns.offset(edge);
      z[k] = sum[k] / Math.max(1, count[k]);
    }
  }

  /** What each pair says of the radius of an even ring: the middle one of these. */
  private static double radius(Equations equations) {
    Unknowns unknowns = equations.unknowns();
    double[] z = new double[unknowns.all()];
    rest(equations, z);
    List<Double> radii = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Reading r : equations.readings()) {
      if (r.isPair()) {
        double chord = 2 * Math.sin(Math.PI * Math.abs(r.from() - r.to()) / unknowns.holes());
        radii.add(Math.max(0.1, centres(unknowns, z, r)) / chord);
      } else if (r.edge().isPresent()) {
        least = Math.min(least, r.reads());
        most = Math.max(most, r.reads());
      }
    }
    if (radii.isEmpty()) {
      return Math.max(1, (most - least) / 2);
    }
    radii.sort(null);
    return radii.get(radii.size() / 2);
  }

  private static double centres(Unknowns unknowns, double[] z, Reading r) {
    double halves = (z[unknowns.size(r.from())] + z[unknowns.size(r.to())]) / 2;
    return r.reads() - r.over().halves() * halves;
  }

  /** Classical scaling of the distances; those not read are the shortest way round. */
  private static double[] scaled(Equations equations, double[] first) {
    Unknowns unknowns = equations.unknowns();
    int n = unknowns.holes();
    double[][] d = new double[n][n];
    for (double[] row : d) {
      Arrays.fill(row, 1e6);
    }
    double[] z = first.clone();
    rest(equations, z);
    for (int i = 0; i < n; i++) {
      d[i][i] = 0;
    }
    for (Reading r : equations.readings()) {
      if (r.isPair()) {
        double length = Math.max(0.1, centres(unknowns, z, r));
        d[r.from()][r.to()] = Math.min(d[r.from()][r.to()], length);
        d[r.to()][r.from()] = d[r.from()][r.to()];
      }
    }
    for (int k = 0; k < n; k++) {
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          d[i][j] = Math.min(d[i][j], d[i][k] + d[k][j]);
        }
      }
    }
    double[][] b = new double[n][n];
    double[] mean = new double[n];
    double all = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        mean[i] += d[i][j] * d[i][j] / n;
        all += d[i][j] * d[i][j] / (n * n);
      }
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        b[i][j] = -(d[i][j] * d[i][j] - mean[i] - mean[j] + all) / 2;
      }
    }
    SymmetricEigen eigen = SymmetricEigen.of(MatrixUtils.createRealMatrix(b));
    for (int axis = 0; axis < 2; axis++) {
      double root = Math.sqrt(Math.max(0, eigen.value(axis)));
      double[] vector = eigen.vector(axis);
      for (int i = 0; i < n; i++) {
        z[2 * i + axis] = root * vector[i];
      }
    }
    rest(equations, z);
    return z;
  }
}
