package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.Point;
import java.util.Optional;

/** Quarter arcs that lead tangentially onto a path and off it, on the side of the waste. */
final class Leads {

  /** No lead is smaller than this, mm: below it a lead is no more than the cutter's own play. */
  static final double LEAST = 0.1;

  private static final double QUARTER = Math.PI / 2;

  private final Clearance clearance;
  private final double half;
  private final boolean wasteLeft;

  Leads(Clearance clearance, double half, boolean wasteLeft) {
    this.clearance = clearance;
    this.half = half;
    this.wasteLeft = wasteLeft;
  }

  /** The lead of a radius onto a point of a path, if it has room. */
  Optional<Arc> onto(Point at, Point travel, double radius) {
    Point waste = wasteLeft ? travel.left() : travel.right();
    Point centre = at.plus(waste, radius);
    Point start = centre.plus(travel, -radius);
    return clear(new Arc(start, at, centre, radius, wasteLeft ? QUARTER : -QUARTER));
  }

  /** The largest lead off a point of a path, at most of a radius, that has room. */
  Optional<Arc> off(Point at, Point travel, double radius) {
    Point waste = wasteLeft ? travel.left() : travel.right();
    for (double r = radius; r >= LEAST; r /= 2) {
      Point centre = at.plus(waste, r);
      Point end = centre.plus(travel, r);
      Optional<Arc> arc = clear(new Arc(at, end, centre, r, wasteLeft ? QUARTER : -QUARTER));
      if (arc.isPresent()) {
        return arc;
      }
    }
    return Optional.empty();
  }

  private Optional<Arc> clear(Arc arc) {
    return clearance.clear(arc, half) ? Optional.of(arc) : Optional.empty();
  }
}
