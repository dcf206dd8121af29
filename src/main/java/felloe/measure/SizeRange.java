package felloe.measure;

import felloe.hub.ScrewThread;

/**
 * Sizes that suit a hub's screws. Holes suit that are no smaller than the screw and no larger than
 * its coarse clearance hole; screws suit that are at most a tolerance under their nominal diameter;
 * threaded holes suit from their smallest size (d - 1.0825 P, ISO 68-1) up to a tolerance more.
 *
 * @param low the smallest, mm
 * @param high the largest, mm
 */
record SizeRange(double low, double high) {

  private static final double MINOR = 1.082532;

  static SizeRange of(ContactFeature on, ScrewThread thread, MeasurePractice practice) {
    double minor = thread.diameter() - MINOR * thread.pitch();
    return switch (on) {
      case HOLES -> new SizeRange(thread.diameter(), thread.coarse());
      case SCREWS -> new SizeRange(thread.diameter() - practice.screwUnder(), thread.diameter());
      case THREADS -> new SizeRange(minor, minor + practice.threadOver() * thread.pitch());
    };
  }

  /** How far a size lies outside, mm; 0 or less inside. */
  double outside(double size) {
    return Math.max(low - size, size - high);
  }

  /** Whether a size with bounds of so much may be one of them. */
  boolean holds(double size, double half) {
    return outside(size) <= half;
  }
}
