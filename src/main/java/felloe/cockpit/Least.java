package felloe.cockpit;

import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.function.DoubleUnaryOperator;

/**
 * The least value of a function that changes by no more than its argument does, such as a distance
 * along a way: by halving stretches that may still hold a smaller one.
 *
 * @param at where, from the start of the way
 * @param value at most {@link #TOLERANCE} above the true least
 */
record Least(double at, double value) {

  /** mm. */
  static final double TOLERANCE = 0.01;

  private record Stretch(double middle, double half, double least) {}

  /** Over a way of some length. */
  static Least of(double length, DoubleUnaryOperator distance) {
    PriorityQueue<Stretch> open = new PriorityQueue<>(Comparator.comparingDouble(Stretch::least));
    Least best = new Least(0, distance.applyAsDouble(0));
    double end = distance.applyAsDouble(length);
    best = end < best.value ? new Least(length, end) : best;
    open.add(new Stretch(length / 2, length / 2, Double.NEGATIVE_INFINITY));
    while (!open.isEmpty() && open.peek().least < best.value - TOLERANCE) {
      Stretch stretch = open.poll();
      double value = distance.applyAsDouble(stretch.middle);
      best = value < best.value ? new Least(stretch.middle, value) : best;
      double half = stretch.half / 2;
      if (value - stretch.half < best.value - TOLERANCE) {
        open.add(new Stretch(stretch.middle - half, half, value - stretch.half));
        open.add(new Stretch(stretch.middle + half, half, value - stretch.half));
      }
    }
    return best;
  }
}
