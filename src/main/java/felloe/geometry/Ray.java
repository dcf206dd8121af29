package felloe.geometry;

/**
 * Crossings of a ray that runs from a point to +x. Each segment counts its start height and not its
 * end height (the lower end of a piece counts, the upper does not), so that a ray through a joint
 * is counted once.
 */
final class Ray {

  private Ray() {}

  /** Whether the ray from {@code p} crosses the segment an odd number of times. */
  static boolean crossesOddly(Segment segment, Point p) {
    if (segment instanceof Line line) {
      return lineCrosses(line, p);
    }
    return arcCrosses((Arc) segment, p);
  }

  private static boolean lineCrosses(Line line, Point p) {
    Point a = line.from();
    Point b = line.to();
    if (a.y() <= p.y() == b.y() <= p.y()) {
      return false;
    }
    Point low = a.y() <= b.y() ? a : b;
    Point high = low == a ? b : a;
    // Positive when p lies to the left of the line upward, so that the ray meets it.
    return high.minus(low).cross(p.minus(low)) > 0;
  }

  /** Counts the arc in pieces that run only up or only down, cut at its top and bottom. */
  private static boolean arcCrosses(Arc arc, Point p) {
    Point c = arc.centre();
    double r = arc.radius();
    // Beside the circle's box the answer needs no angles. Ends may lie off the circle by a little.
    double reach = r + 2 * Tolerances.SAME_POINT;
    if (p.x() > c.x() + reach || Math.abs(p.y() - c.y()) > reach) {
      return false;
    }
    if (p.x() < c.x() - reach) {
      return arc.from().y() <= p.y() != arc.to().y() <= p.y();
    }
    Point top = new Point(c.x(), c.y() + r);
    Point bottom = new Point(c.x(), c.y() - r);
    double[] cuts = {arc.travelled(top), arc.travelled(bottom)};
    boolean topFirst = cuts[0] <= cuts[1];
    double sweep = Math.abs(arc.sweep());
    boolean odd = false;
    double height = arc.from().y();
    double at = 0;
    for (int k = 0; k < 2; k++) {
      int which = topFirst ? k : 1 - k;
      if (cuts[which] > 0 && cuts[which] < sweep) {
        double next = which == 0 ? top.y() : bottom.y();
        odd ^= pieceCrosses(arc, at, cuts[which], height, next, p);
        height = next;
        at = cuts[which];
      }
    }
    return odd ^ pieceCrosses(arc, at, sweep, height, arc.to().y(), p);
  }

  private static boolean pieceCrosses(
      Arc arc, double start, double end, double fromY, double toY, Point p) {
    if (fromY <= p.y() == toY <= p.y()) {
      return false;
    }
    double middle = arc.at((start + end) / 2 / Math.abs(arc.sweep())).x();
    double dy = p.y() - arc.centre().y();
    double half = Math.sqrt(Math.max(0, arc.radius() * arc.radius() - dy * dy));
    double x = arc.centre().x() + Math.copySign(half, middle - arc.centre().x());
    return p.x() < x;
  }
}
