package felloe.geometry;

/**
 * A quadratic Bézier curve: a piece of a parabola.
 *
 * @param from where it starts
 * @param control its control point
 * @param to where it ends
 */
public record QuadraticCurve(Point from, Point control, Point to) implements FreeCurve {

  @Override
  public Point at(double t) {
    if (t == 1) {
      return to;
    }
    return from.plus(control.minus(from), 2 * (1 - t) * t).plus(to.minus(from), t * t);
  }

  @Override
  public Point derivative(double t, int order) {
    Point a = control.minus(from);
    Point b = to.minus(control);
    return switch (order) {
      case 1 -> a.times(2 * (1 - t)).plus(b, 2 * t);
      case 2 -> b.minus(a).times(2);
      case 3 -> Point.ORIGIN;
      default -> throw new IllegalArgumentException("order: " + order);
    };
  }
}
