package felloe.shape;

import felloe.geometry.Contour;

/**
 * A kind of closed shape that is made from a few parameters, about its own origin. Lengths are
 * millimetres, x runs to the right and y up.
 */
public sealed interface Family permits Round, FourSided, Points, Slot {

  /**
   * Its edge, exact in lines and arcs.
   *
   * @throws ShapeException with every parameter that cannot be
   */
  Contour contour();
}
