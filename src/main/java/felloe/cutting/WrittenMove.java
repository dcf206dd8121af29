package felloe.cutting;

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

  /** Whether it takes material anywhere. */
  boolean cuts() {
    return beam || low() < 0;
  }
}
