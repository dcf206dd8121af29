package felloe.geometry;

/**
 * A cubic Bézier curve.
 *
 * @param from where it starts
 * @param first first control point
 * @param second second control point
 * @param to where it ends
 */
public record CubicCurve(Point from, Point first, Point second, Point to) implements FreeCurve {

  @Override
  public Point at(double t) {
    if (t == 1) {
      return to;
    }
    double u = 1 - t;
    double a = 3 * u * u * t;
    double b = 3 * u * t * t;
    double c = t * t * t;
    // Summed as shifts from the start, so that a curve of equal points stays there exactly.
    return from.plus(first.minus(from), a).plus(second.minus(from), b).plus(to.minus(from), c);
  }

  @Override
  public Point derivative(double t, int order) {
    Point a = first.minus(from);
    Point b = second.minus(first);
    Point c = to.minus(second);
    double u = 1 - t;
    return switch (order) {
      case 1 -> a.times(3 * u * u).plus(b, 6 * u * t).plus(c, 3 * t * t);
      case 2 -> b.minus(a).times(6 * u).plus(c.minus(b), 6 * t);
      case 3 -> c.minus(b).minus(b.minus(a)).times(6);
      default -> throw new IllegalArgumentException("order: " + order);
    };
  }
}
