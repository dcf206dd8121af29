package felloe.cutting;

import felloe.geometry.Point;
import felloe.geometry.Segment;

/**
 * A cut as a file will say it.
 *
 * @param way in plan, after rounding
 * @param fromZ height at its start, mm
 * @param toZ height at its end, mm
 * @param operation the operation's title
 * @param beam whether a beam does it, at any height
 * @param starts whether it is the first after travel
 */
record WrittenMove(
    Segment way, double fromZ, double toZ, String operation, boolean beam, boolean starts) {

  double low() {
    return Math.min(fromZ, toZ);
  }

  double high() {
    return Math.max(fromZ, toZ);
  }

  /** The stretch that lies below a height, where some of it does. */
  Segment below(double top) {
    if (high() <= top) {
      return way;
    }
    double fraction = (top - fromZ) / (toZ - fromZ);
    Point crossing = way.at(fraction);
    return fromZ < toZ
        ? Loop.part(way, 0, fraction, way.from(), crossing)
        : Loop.part(way, fraction, 1, crossing, way.to());
  }

  /** Whether it takes material anywhere. */
  boolean cuts() {
    return beam || low() < 0;
  }
}
