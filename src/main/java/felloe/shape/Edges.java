package felloe.shape;

import felloe.geometry.Arc;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;

/** Straight and bulged edges between two corners. */
final class Edges {

  /** A rise below this is no rise: the arc would be straight within every tolerance, mm. */
  private static final double FLAT = 1e-6;

  private Edges() {}

  /** The edge with a rise to the right of travel; a line when the rise is nothing. */
  static Segment edge(Point from, Point to, double rise) {
    return Math.abs(rise) <= FLAT || Arc.isStraight(from, to, rise)
        ? new Line(from, to)
        : Arc.withRise(from, to, rise);
  }

  /** A rise of more than half the chord is more than a half circle, surely a slip. */
  static void checkRise(String parameter, double rise, double chord, Faults faults) {
    if (!(Math.abs(rise) <= chord / 2)) {
      faults.add(
          ShapeFault.length(
              parameter,
              rise,
              "must lie between -"
                  + Faults.limit(chord / 2)
                  + " and "
                  + Faults.limit(chord / 2)
                  + " (half its edge, a half circle)",
              ""));
    }
  }
}
