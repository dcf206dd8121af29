package felloe.geometry;

import java.util.Optional;

/**
 * A smooth curve that is not made of lines and circular arcs, given by its position at a parameter
 * from 0 to 1. {@link ArcFit} turns it into lines and arcs. Millimetres.
 */
public sealed interface FreeCurve permits CubicCurve, QuadraticCurve, EllipticalArc {

  /** A derivative below this share of all of them is none: rounding of double arithmetic. */
  double STILL = 1e-12;

  /** Where it starts. */
  Point from();

  /** Where it ends. */
  Point to();

  /** The point at a parameter; exactly {@link #from} at 0 and {@link #to} at 1. */
  Point at(double t);

  /**
   * A derivative of the position with respect to the parameter.
   *
   * @param order 1, 2 or 3
   */
  Point derivative(double t, int order);

  /** The one line or arc that it is, if it is one. */
  default Optional<Segment> exact() {
    return Optional.empty();
  }

  /**
   * Direction of travel at a parameter, or its limit from one side where the curve stands still.
   */
  default Point tangent(double t, boolean after) {
    Point first = derivative(t, 1);
    Point second = derivative(t, 2);
    Point third = derivative(t, 3);
    double still = STILL * (first.norm() + second.norm() + third.norm());
    if (first.norm() > still) {
      return first.unit();
    }
    if (second.norm() > still) {
      return after ? second.unit() : second.unit().times(-1);
    }
    return third.norm() > 0 ? third.unit() : new Point(1, 0);
  }

  /**
   * Curvature at a parameter, 1/mm, positive to the left; infinite where the curve stands still.
   */
  default double curvature(double t) {
    Point first = derivative(t, 1);
    double speed = first.norm();
    return first.cross(derivative(t, 2)) / (speed * speed * speed);
  }
}
