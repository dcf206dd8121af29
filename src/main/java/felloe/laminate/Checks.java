package felloe.laminate;

import felloe.geometry.Numbers;

/** What constructors refuse, and the one root that failure criteria share. */
final class Checks {

  private Checks() {}

  static double positive(String name, double value) {
    Numbers.finite(name, value);
    if (value <= 0) {
      throw new IllegalArgumentException(name + " must be more than 0, not " + value);
    }
    return value;
  }

  /**
   * The least positive R with a R² + b R + c = 0, where c below 0 is inside.
   *
   * @param a not negative
   * @return 0 when c is 0 or more; infinite when there is no such R
   */
  static double growth(double a, double b, double c) {
    if (c >= 0) {
      return 0;
    }
    double root = Math.sqrt(b * b - 4 * a * c);
    // Both forms are exact; the one without a difference of like figures keeps its digits.
    if (b >= 0) {
      return b + root == 0 ? Double.POSITIVE_INFINITY : -2 * c / (b + root);
    }
    return a == 0 ? Double.POSITIVE_INFINITY : (root - b) / (2 * a);
  }
}
