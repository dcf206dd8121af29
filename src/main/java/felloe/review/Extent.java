package felloe.review;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;

/** How far a contour reaches in any direction, exact for lines and arcs. */
final class Extent {

  private final Contour contour;

  Extent(Contour contour) {
    this.contour = contour;
  }

  /**
   * The width of the contour as seen along a direction square to the given one.
   *
   * @param direction of length one
   */
  double along(Point direction) {
    return reach(direction) + reach(direction.times(-1));
  }

  /** The farthest the contour reaches from the origin in a direction of length one. */
  double reach(Point direction) {
    double most = Double.NEGATIVE_INFINITY;
    for (Segment segment : contour.segments()) {
      most = Math.max(most, segment.from().dot(direction));
      if (segment instanceof Arc arc) {
        double tip = arc.centre().dot(direction) + arc.radius();
        if (tip > most && arc.passes(arc.centre().plus(direction, arc.radius()))) {
          most = tip;
        }
      }
    }
    return most;
  }
}
