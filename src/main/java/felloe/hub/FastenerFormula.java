package felloe.hub;

import felloe.geometry.Numbers;

/**
 * How clearance and position tolerance share out: the formulas for fixed and floating fasteners
 * (ASME Y14.5, appendix; ISO 1101 for the zone). H is the smallest hole, F the largest screw, T the
 * diameter of the zone of a centre; all mm. The hub is threaded, so its screws are fixed.
 */
public final class FastenerFormula {

  private FastenerFormula() {}

  /** Both parts have clearance holes: T = H - F for each part. Negative when nothing is left. */
  public static double floatingTolerance(double hole, double screw) {
    return Numbers.finite("hole", hole) - Numbers.finite("screw", screw);
  }

  /** Both parts have clearance holes: H = F + T. */
  public static double floatingHole(double screw, double tolerance) {
    return Numbers.finite("screw", screw) + Numbers.finite("tolerance", tolerance);
  }

  /**
   * One part is threaded: T = (H - F)/2 for each part, when they share alike. The thread must stand
   * square: a projected zone.
   */
  public static double fixedTolerance(double hole, double screw) {
    return floatingTolerance(hole, screw) / 2;
  }

  /** One part is threaded: what the plate may have when the hub takes its own share. */
  public static double fixedRest(double hole, double screw, double hubTolerance) {
    return floatingTolerance(hole, screw) - Numbers.finite("hubTolerance", hubTolerance);
  }

  /** One part is threaded: H = F + T1 + T2. */
  public static double fixedHole(double screw, double hubTolerance, double plateTolerance) {
    return floatingHole(screw, hubTolerance) + Numbers.finite("plateTolerance", plateTolerance);
  }
}
