package felloe.geometry;

/**
 * The tolerances of the whole program, each stated here and nowhere else. They are passed on
 * explicitly where a caller may choose, and stored in no value. All are millimetres.
 */
public final class Tolerances {

  /** Two points nearer than this are the same point; no segment is shorter. */
  public static final double SAME_POINT = 1e-6;

  /** Greatest distance of the arcs that stand for a free curve from the curve itself. */
  public static final double FREE_CURVE = 0.01;

  /**
   * Greatest distance of a chord from its arc where contours are handed to JTS. It decides which
   * pieces meet, never where: see {@code CurveRecovery}.
   */
  public static final double CHORD = 0.002;

  /** Coordinates and radii beyond this (10 m) are refused as a slip. */
  public static final double LARGEST = 10_000;

  /**
   * No arc has a greater radius (1000 km): over a metre it rises by a ten-thousandth of a
   * millimetre, and a farther centre would leave the ends no digits.
   */
  public static final double FLATTEST = 1e9;

  private Tolerances() {}
}
