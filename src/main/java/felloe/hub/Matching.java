package felloe.hub;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which screw goes into which hole, how the hub must be turned and shifted for it, and how much
 * room the tightest screw then has: the greatest over all turns, shifts and ways to give each screw
 * a hole of its own.
 *
 * <p>First every placement that lays one screw on one hole's direction gives a way of pairing by
 * nearness, and the best turn for each is found by {@link TurnSearch}. Then all other ways are
 * searched through in depth: two screws keep their distance, so a pair of holes whose distance
 * differs by more than the slacks allow can't better the best so far, and the branch is dropped.
 * Pairings that differ only by a turn of the hub onto itself are tried once.
 *
 * <p>The result is the true greatest when it is above {@link #floor}: a quarter of the smallest
 * distance of two screws, or of two holes, taken negative. Below it the patterns have nothing in
 * common, and the best of the first step is given.
 */
final class Matching {

  private static final int MOST_STEPS = 400_000;

  private final double[] px;
  private final double[] py;
  private final double[] pinSlack;
  private final double[] qx;
  private final double[] qy;
  private final double[] holeSlack;
  private final int[][] symmetries;
  private final int[] order;
  private final double floor;
  private final Set<List<Integer>> tried = new HashSet<>();
  private int steps;
  private TurnSearch best;
  private int[] bestHoles;
  private double bestValue = Double.NEGATIVE_INFINITY;

  /**
   * @param pins x, y and slack (minus the screw's radius) of the screws
   * @param holes x, y and slack (the hole's radius) of the holes, at least as many
   * @param symmetries for each turn of the hub onto itself, which screw each screw becomes
   */
  private Matching(double[][] pins, double[][] holes, int[][] symmetries) {
    this.px = pins[0];
    this.py = pins[1];
    this.pinSlack = pins[2];
    this.qx = holes[0];
    this.qy = holes[1];
    this.holeSlack = holes[2];
    this.symmetries = symmetries;
    this.order = order();
    this.floor = -Math.min(nearest(px, py), nearest(qx, qy)) / 4;
  }

  /** Finds the best matching; see the class. */
  static Matching of(double[][] pins, double[][] holes, int[][] symmetries) {
    Matching matching = new Matching(pins, holes, symmetries);
    matching.search();
    return matching;
  }

  private void search() {
    double[] pinCentre = mean(px, py);
    double[] holeCentre = mean(qx, qy);
    seeds(0, 0, 0, 0);
    seeds(pinCentre[0], pinCentre[1], holeCentre[0], holeCentre[1]);
    int[] holes = new int[px.length];
    Arrays.fill(holes, -1);
    deepen(0, holes, new boolean[qx.length]);
  }

  /** Pairs by nearness after turning one screw into the direction of each hole in turn. */
  private void seeds(double cx, double cy, double hx, double hy) {
    for (int k = 0; k < qx.length; k++) {
      double turn =
          Math.atan2(qy[k] - hy, qx[k] - hx) - Math.atan2(py[order[0]] - cy, px[order[0]] - cx);
      double cos = Math.cos(turn);
      double sin = Math.sin(turn);
      int[] holes = new int[px.length];
      boolean[] used = new boolean[qx.length];
      for (int i : order) {
        double x = hx + cos * (px[i] - cx) - sin * (py[i] - cy);
        double y = hy + sin * (px[i] - cx) + cos * (py[i] - cy);
        int nearest = -1;
        for (int j = 0; j < qx.length; j++) {
          if (!used[j]
              && (nearest < 0
                  || reach(x, y, j) - holeSlack[j] < reach(x, y, nearest) - holeSlack[nearest])) {
            nearest = j;
          }
        }
        used[nearest] = true;
        holes[i] = nearest;
      }
      attempt(holes);
    }
  }

  private double reach(double x, double y, int hole) {
    return Math.hypot(x - qx[hole], y - qy[hole]);
  }

  private void deepen(int depth, int[] holes, boolean[] used) {
    if (depth == order.length) {
      attempt(holes);
      return;
    }
    int i = order[depth];
    for (int j = 0; j < qx.length; j++) {
      if (used[j] || steps >= MOST_STEPS) {
        continue;
      }
      steps++;
      if (repeats(i, j, holes) || bound(i, j, depth, holes) <= toBeat()) {
        continue;
      }
      holes[i] = j;
      used[j] = true;
      deepen(depth + 1, holes, used);
      used[j] = false;
      holes[i] = -1;
    }
  }

  private double toBeat() {
    return Math.max(bestValue, floor) + TurnSearch.PRECISION;
  }

  /** True when a turn of the hub onto itself gives a pairing that is tried elsewhere. */
  private boolean repeats(int screw, int hole, int[] holes) {
    int first = order[0];
    if (screw == first) {
      return false;
    }
    for (int[] symmetry : symmetries) {
      if (symmetry[first] == screw && hole < holes[first]) {
        return true;
      }
    }
    return false;
  }

  private double bound(int i, int j, int depth, int[] holes) {
    double bound = slack(i, j);
    for (int d = 0; d < depth; d++) {
      int k = order[d];
      int l = holes[k];
      double misfit =
          Math.abs(
              Math.hypot(px[i] - px[k], py[i] - py[k]) - Math.hypot(qx[j] - qx[l], qy[j] - qy[l]));
      bound = Math.min(bound, (slack(i, j) + slack(k, l) - misfit) / 2);
    }
    return bound;
  }

  private double slack(int screw, int hole) {
    return pinSlack[screw] + holeSlack[hole];
  }

  private void attempt(int[] holes) {
    List<Integer> key = new ArrayList<>(holes.length);
    for (int hole : holes) {
      key.add(hole);
    }
    if (!tried.add(key)) {
      return;
    }
    int n = px.length;
    double[][] goals = new double[2][n];
    double[] slack = new double[n];
    for (int i = 0; i < n; i++) {
      goals[0][i] = qx[holes[i]];
      goals[1][i] = qy[holes[i]];
      slack[i] = slack(i, holes[i]);
    }
    TurnSearch turn = TurnSearch.of(new double[][] {px, py}, goals, slack, bestValue);
    if (turn.found()) {
      best = turn;
      bestValue = turn.value();
      bestHoles = holes.clone();
    }
  }

  /** The screws, each next one as far as can be from those before: the distances that tell most. */
  private int[] order() {
    int n = px.length;
    int[] chosen = new int[n];
    double[] near = new double[n];
    Arrays.fill(near, Double.POSITIVE_INFINITY);
    for (int k = 0; k < n; k++) {
      int last = k == 0 ? 0 : furthest(near);
      chosen[k] = last;
      for (int i = 0; i < n; i++) {
        near[i] = Math.min(near[i], Math.hypot(px[i] - px[last], py[i] - py[last]));
      }
      near[last] = Double.NEGATIVE_INFINITY;
    }
    return chosen;
  }

  private static int furthest(double[] near) {
    int best = 0;
    for (int i = 1; i < near.length; i++) {
      if (near[i] > near[best]) {
        best = i;
      }
    }
    return best;
  }

  private static double nearest(double[] x, double[] y) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < i; j++) {
        least = Math.min(least, Math.hypot(x[i] - x[j], y[i] - y[j]));
      }
    }
    return Double.isInfinite(least) ? 0 : least;
  }

  private static double[] mean(double[] x, double[] y) {
    double sumX = 0;
    double sumY = 0;
    for (int i = 0; i < x.length; i++) {
      sumX += x[i];
      sumY += y[i];
    }
    return new double[] {sumX / x.length, sumY / x.length};
  }

  /** The hole of each screw. */
  int[] holes() {
    return bestHoles.clone();
  }

  /** The turn and shift, and the room of the tightest screw. */
  TurnSearch placement() {
    return best;
  }

  /** The room below which the patterns count as having nothing in common, mm, not above zero. */
  double floor() {
    return floor;
  }

  /** Whether every pairing was searched through; false only for very many holes. */
  boolean complete() {
    return steps < MOST_STEPS;
  }
}
