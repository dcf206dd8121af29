package felloe.geometry;

import java.util.function.DoubleUnaryOperator;

/** Bounded searches along a parameter. */
final class LineSearch {

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private LineSearch() {}

  /** Where a function with one valley between two parameters is lowest; golden section. */
  static double lowest(DoubleUnaryOperator f, double from, double to) {
    return lowest(f, from, to, 60);
  }

  static double lowest(DoubleUnaryOperator f, double from, double to, int steps) {
    double low = from;
    double high = to;
    double left = high - GOLDEN * (high - low);
    double right = low + GOLDEN * (high - low);
    double atLeft = f.applyAsDouble(left);
    double atRight = f.applyAsDouble(right);
    for (int i = 0; i < steps; i++) {
      if (atLeft <= atRight) {
        high = right;
        right = left;
        atRight = atLeft;
        left = high - GOLDEN * (high - low);
        atLeft = f.applyAsDouble(left);
      } else {
        low = left;
        left = right;
        atLeft = atRight;
        right = low + GOLDEN * (high - low);
        atRight = f.applyAsDouble(right);
      }
    }
    return (low + high) / 2;
  }

  /** Where a function that has opposite signs at two parameters is zero; halving. */
  static double root(DoubleUnaryOperator f, double from, double to) {
    double low = from;
    double high = to;
    boolean rises = f.applyAsDouble(low) < 0;
    for (int i = 0; i < 55; i++) {
      double middle = (low + high) / 2;
      if (f.applyAsDouble(middle) < 0 == rises) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
