package felloe.hub;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.hub.RigidFit.Round;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The fit again by trial alone: every pairing, turns all round the circle, shifts by cutting
 * thirds. Shares nothing with the code under test.
 */
final class BruteForceFit {

  private static final double HOPELESS = -4;

  private BruteForceFit() {}

  static double best(List<Round> screws, List<Round> holes) {
    return pair(screws, holes, new int[screws.size()], 0, new boolean[holes.size()]);
  }

  private static double pair(
      List<Round> screws, List<Round> holes, int[] chosen, int depth, boolean[] used) {
    if (depth == screws.size()) {
      return bestTurn(screws, holes, chosen);
    }
    double best = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < holes.size(); j++) {
      if (!used[j]) {
        used[j] = true;
        chosen[depth] = j;
        best = Math.max(best, pair(screws, holes, chosen, depth + 1, used));
        used[j] = false;
      }
    }
    return best;
  }

  private static double bestTurn(List<Round> screws, List<Round> holes, int[] chosen) {
    double bestTurn = 0;
    double best = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < 90; k++) {
      double turn = 2 * Math.PI * k / 90;
      double value = bestShift(screws, holes, chosen, turn, 8);
      if (value > best) {
        best = value;
        bestTurn = turn;
      }
    }
    if (best < HOPELESS) {
      return best;
    }
    for (double step = 0.03; step > 1e-8; step /= 2) {
      for (double side : new double[] {-step, step}) {
        double value = bestShift(screws, holes, chosen, bestTurn + side, 36);
        if (value > best) {
          best = value;
          bestTurn += side;
        }
      }
    }
    return best;
  }

  /** The room of the tightest screw is concave in the shift, so thirds of thirds close in on it. */
  private static double bestShift(
      List<Round> screws, List<Round> holes, int[] chosen, double turn, int rounds) {
    RigidTransform motion = RigidTransform.turn(turn);
    Point[] at = screws.stream().map(s -> motion.of(s.centre())).toArray(Point[]::new);
    double x = 0;
    double y = 0;
    for (int i = 0; i < at.length; i++) {
      Point d = holes.get(chosen[i]).centre().minus(at[i]);
      x += d.x() / at.length;
      y += d.y() / at.length;
    }
    double middle = y;
    double across = x;
    return top(
        across, rounds, nx -> top(middle, rounds, ny -> room(screws, holes, chosen, at, nx, ny)));
  }

  private static double top(double start, int rounds, DoubleUnaryOperator f) {
    double low = start - 3;
    double high = start + 3;
    for (int i = 0; i < rounds; i++) {
      double a = low + (high - low) / 3;
      double b = high - (high - low) / 3;
      if (f.applyAsDouble(a) < f.applyAsDouble(b)) {
        low = a;
      } else {
        high = b;
      }
    }
    return f.applyAsDouble((low + high) / 2);
  }

  private static double room(
      List<Round> screws, List<Round> holes, int[] chosen, Point[] at, double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < at.length; i++) {
      Round hole = holes.get(chosen[i]);
      double room =
          (hole.diameter() - screws.get(i).diameter()) / 2
              - Math.hypot(at[i].x() + x - hole.centre().x(), at[i].y() + y - hole.centre().y());
      least = Math.min(least, room);
    }
    return least;
  }
}
