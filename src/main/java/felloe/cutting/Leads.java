package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.Optional;

/**
 * Ways onto a path and off it, on the side of the waste: quarter arcs that touch it, or, for a beam
 * where no arc has room, straight across to it.
 */
final class Leads {

  /** No lead is shorter than this, mm: below it a lead is no more than the cutter's own play. */
  static final double LEAST = 0.1;

  private static final double QUARTER = Math.PI / 2;

  private final Clearance clearance;
  private final boolean wasteLeft;

  Leads(Clearance clearance, boolean wasteLeft) {
    this.clearance = clearance;
    this.wasteLeft = wasteLeft;
  }

  /** From a place on a path to the waste, of length one. */
  Point waste(Point travel) {
    return wasteLeft ? travel.left() : travel.right();
  }

  /** The arc of a radius onto a point of a path, if it has room. */
  Optional<Segment> onto(Point at, Point travel, double radius) {
    Point centre = at.plus(waste(travel), radius);
    Point start = centre.plus(travel, -radius);
    return clear(new Arc(start, at, centre, radius, wasteLeft ? QUARTER : -QUARTER));
  }

  /** The straight way of a length onto a point of a path, square to it, if it has room. */
  Optional<Segment> across(Point at, Point travel, double length) {
    return clear(new Line(at.plus(waste(travel), length), at));
  }

  /** The largest arc off a point of a path, at most of a radius, that has room. */
  Optional<Segment> off(Point at, Point travel, double radius) {
    for (double r = radius; r >= LEAST; r /= 2) {
      Point centre = at.plus(waste(travel), r);
      Point end = centre.plus(travel, r);
      Optional<Segment> arc = clear(new Arc(at, end, centre, r, wasteLeft ? QUARTER : -QUARTER));
      if (arc.isPresent()) {
        return arc;
      }
    }
    return Optional.empty();
  }

  /** How far a place lies from every edge of the plate and from clamps, mm. */
  double room(Point p) {
    return clearance.room(p);
  }

  /** Whether a tab at a place of a path has a wall to hold on to. */
  boolean wallBehind(Point at, Point travel) {
    return clearance.wallBehind(at, waste(travel));
  }

  private Optional<Segment> clear(Segment way) {
    return clearance.clear(way) ? Optional.of(way) : Optional.empty();
  }
}
