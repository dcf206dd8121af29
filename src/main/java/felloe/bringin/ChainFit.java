package felloe.bringin;

import felloe.geometry.Point;
import java.util.Arrays;
import java.util.List;

/**
 * Fits a chain to measured places by Gauss and Newton, places that are astray weighing little.
 * Stretches that nearly run on into each other are likely to be tangent, and arcs that round a
 * corner more so.
 */
final class ChainFit {

  private static final int ROUNDS = 12;

  /**
   * On arcs that round corners residuals of so much count at first, mm, and from step to step of
   * this share of it: the few places of such a corner that lie off a chain which fits all others
   * would never be heard.
   */
  private static final double EASY = 0.2;

  private static final double EASE = 0.6;

  private static final double TANGENT_SPREAD = Math.toRadians(0.6);

  /** The same of an arc that rounds a corner. */
  private static final double ROUNDING_TURN = Math.toRadians(40);

  private static final double ROUNDING_SPREAD = Math.toRadians(2);

  /** A joint where nothing turns may lie anywhere: it stays within this of where it is, mm. */
  private static final double JOINT_SPREAD = 1.5;

  /**
   * Joints and rises move no farther at once, mm: beyond, what follows is no longer in proportion.
   */
  private static final double FARTHEST = 1;

  /** By what numbers are moved to learn what follows, mm. */
  private static final double STEP = 1e-4;

  /** Below this a residual's spread is not believed, mm. */
  static final double LEAST_SPREAD = 0.01;

  /** Keeps a line a line, and an arc's rise, where nothing speaks of them, from running away. */
  private static final double LINE_STAYS = 1e12;

  private static final double RISE_STAYS = 1e-3;

  /** How much each unknown is held by its own weight, for steps not to overshoot. */
  private static final double HELD = 1e-6;

  private static final double LITTLE = 1e-9;

  private EdgeChain chain;

  /** The scale of residuals on arcs that round corners, mm. */
  private double easy;

  /**
   * The scale of residuals on each stretch, mm: at least that of all. A long stretch whose places
   * all lie off it must move to them, and not leave them as astray; the few places of a short one
   * may be.
   */
  private double[] scales;

  private Point[] joints;
  private double[] rises;

  private ChainFit(EdgeChain chain) {
    this.chain = chain;
    if (!chain.round()) {
      joints = new Point[chain.stretches()];
      rises = new double[joints.length];
      for (int k = 0; k < joints.length; k++) {
        joints[k] = chain.joint(k);
        rises[k] = chain.rise(k);
      }
    }
  }

  /**
   * Fits.
   *
   * @param sites at how many places the edge was looked for
   */
  static EdgeChain of(EdgeChain chain, List<EdgeChain.Measured> places, int sites) {
    ChainFit fit = new ChainFit(chain);
    for (int round = 0; round < ROUNDS; round++) {
      double easy = EASY * Math.pow(EASE, round);
      double scale = scale(fit.chain, places);
      fit.easy = Math.max(scale, easy);
      fit.scales = scales(fit.chain, places, scale);
      double moved = chain.round() ? fit.circleStep(places, scale) : fit.step(places, scale);
      if (moved < STEP && easy < LEAST_SPREAD) {
        break;
      }
    }
    double scale = scale(fit.chain, places);
    double squares = 0;
    int near = 0;
    for (EdgeChain.Measured m : places) {
      double r = fit.chain.off(m);
      if (Math.abs(r) < 4 * scale) {
        squares += r * r;
        near++;
      }
    }
    return fit.chain.known(
        Math.sqrt(squares / Math.max(1, near)), near / (double) Math.max(1, sites));
  }

  private static double scale(EdgeChain chain, List<EdgeChain.Measured> places) {
    double[] off = places.stream().mapToDouble(m -> Math.abs(chain.off(m))).sorted().toArray();
    return off.length == 0 ? LEAST_SPREAD : Math.max(LEAST_SPREAD, 1.4826 * off[off.length / 2]);
  }

  private static double[] scales(
      EdgeChain chain, List<EdgeChain.Measured> places, double leastScale) {
    double[] all = new double[chain.round() ? 1 : chain.stretches()];
    for (int k = 0; k < all.length; k++) {
      int stretch = k;
      List<EdgeChain.Measured> own =
          places.stream().filter(m -> chain.round() || m.stretch() == stretch).toList();
      boolean many = chain.round() || chain.segment(k).length() >= EdgeChain.ROUNDING_ARC;
      all[k] = many ? Math.max(leastScale, scale(chain, own)) : leastScale;
    }
    return all;
  }

  /**
   * So much does a residual count.
   *
   * @param scale what most residuals are, mm
   * @param usual what residuals may be there, mm: what is off by more counts little
   */
  private static double weight(double off, double scale, double usual) {
    double share = off / (3 * usual);
    double w = 1 / (1 + share * share);
    return w * w / (scale * scale);
  }

  private double circleStep(List<EdgeChain.Measured> places, double scale) {
    NormalEquations equations = new NormalEquations(3);
    for (EdgeChain.Measured m : places) {
      Point u = m.at().minus(chain.centre()).unit();
      double r = chain.off(m);
      equations.add(new double[] {-u.x(), -u.y(), -1}, r, weight(r, scale, scale));
    }
    double[] step = equations.step(LITTLE);
    chain =
        EdgeChain.circle(
            chain.centre().plus(new Point(step[0], step[1])),
            chain.radius() + step[2],
            chain.clockwise());
    return Math.hypot(step[0], step[1]) + Math.abs(step[2]);
  }

  private double step(List<EdgeChain.Measured> places, double scale) {
    int n = joints.length;
    NormalEquations equations = new NormalEquations(3 * n);
    for (EdgeChain.Measured m : places) {
      int k = m.stretch();
      int next = (k + 1) % n;
      double r = chain.off(m);
      double[] row = new double[3 * n];
      for (int axis = 0; axis < 2; axis++) {
        row[2 * k + axis] +=
            (EdgeChain.off(nudged(k, axis), joints[next], rises[k], m.at()) - r) / STEP;
        row[2 * next + axis] +=
            (EdgeChain.off(joints[k], nudged(next, axis), rises[k], m.at()) - r) / STEP;
      }
      if (rises[k] != 0) {
        row[2 * n + k] =
            (EdgeChain.off(joints[k], joints[next], rises[k] + STEP, m.at()) - r) / STEP;
      }
      double own = rounds(k) ? easy : scale;
      equations.add(row, r, weight(r, own, Math.max(own, scales[k])));
    }
    for (int k = 0; k < n; k++) {
      tangent(k, equations);
      for (int axis = 0; axis < 2; axis++) {
        double[] stays = new double[3 * n];
        stays[2 * k + axis] = 1;
        equations.add(stays, 0, 1 / (JOINT_SPREAD * JOINT_SPREAD));
      }
      double[] stays = new double[3 * n];
      stays[2 * n + k] = 1;
      equations.add(stays, 0, rises[k] == 0 ? LINE_STAYS : RISE_STAYS);
    }
    double[] step = equations.step(HELD);
    double most = 0;
    double wide = FARTHEST;
    for (int k = 0; k < n; k++) {
      most = Math.max(most, Math.hypot(step[2 * k], step[2 * k + 1]));
      wide = Math.max(wide, Math.max(most, Math.abs(step[2 * n + k])));
    }
    // All by one share: a joint held back by itself would leave the arcs beside it on wrong rises.
    double share = FARTHEST / wide;
    for (int k = 0; k < n; k++) {
      joints[k] = joints[k].plus(new Point(step[2 * k], step[2 * k + 1]), share);
      rises[k] = rises[k] == 0 ? 0 : rises[k] + share * step[2 * n + k];
    }
    chain = made(joints, rises);
    return most;
  }

  private Point nudged(int k, int axis) {
    return joints[k].plus(axis == 0 ? new Point(STEP, 0) : new Point(0, STEP));
  }

  /** Where two stretches nearly run on into each other, they are likely to do so quite. */
  private void tangent(int k, NormalEquations equations) {
    int n = joints.length;
    int before = (k + n - 1) % n;
    if (rises[k] == 0 && rises[before] == 0) {
      return;
    }
    double turn = turn(joints, rises, before, k);
    boolean rounds = rounds(before) || rounds(k);
    if (Math.abs(turn) > (rounds ? ROUNDING_TURN : EdgeChain.NEARLY_TANGENT)) {
      return;
    }
    double[] row = new double[3 * n];
    for (int i : new int[] {before, k, (k + 1) % n}) {
      for (int axis = 0; axis < 2; axis++) {
        Point[] moved = joints.clone();
        moved[i] = nudged(i, axis);
        row[2 * i + axis] = (turn(moved, rises, before, k) - turn) / STEP;
      }
    }
    for (int i : new int[] {before, k}) {
      if (rises[i] != 0) {
        double[] moved = rises.clone();
        moved[i] += STEP;
        row[2 * n + i] = (turn(joints, moved, before, k) - turn) / STEP;
      }
    }
    // What is a corner after all is not held.
    double hold = rounds ? ROUNDING_SPREAD : TANGENT_SPREAD;
    double share = rounds ? 0 : turn / (3 * hold);
    double w = 1 / (1 + share * share);
    equations.add(row, turn, w * w / (hold * hold));
  }

  private static EdgeChain made(Point[] joints, double[] rises) {
    return EdgeChain.of(List.of(joints), Arrays.stream(rises).boxed().toList());
  }

  private static double turn(Point[] joints, double[] rises, int before, int k) {
    EdgeChain moved = made(joints, rises);
    return EdgeChain.turn(moved.segment(before), moved.segment(k));
  }

  private boolean rounds(int k) {
    return rises[k] != 0 && chain.segment(k).length() < EdgeChain.ROUNDING_ARC;
  }
}
