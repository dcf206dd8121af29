package felloe.geometry;

/**
 * What counts as the same, each stated here and nowhere else. They are passed on explicitly where a
 * caller may choose, and stored in no value. Lengths are millimetres.
 *
 * <p>Where a search stops, and how far one kind of arithmetic is trusted, is a named constant
 * beside it with its reason; no such figure stands bare in an expression.
 */
public final class Tolerances {

  /** Two points nearer than this are the same point; no segment is shorter. */
  public static final double SAME_POINT = 1e-6;

  /** Two lengths nearer than this are one length: what just suits is not refused. */
  public static final double SAME_LENGTH = SAME_POINT;

  /**
   * Edges whose curves lie nearer than this are of one curve, and a curve that lies nearer to its
   * chord is straight: well below a point, so that neighbours meet in one.
   */
  public static final double SAME_CURVE = 1e-7;

  /**
   * Directions nearer than this are one, radians: within a metre they part by no more than a point.
   */
  public static final double SAME_DIRECTION = 1e-9;

  /**
   * Figures of a plate's size, counts and shares that differ by less are the same figure: all that
   * sums and quotients of round figures leave over.
   */
  public static final double ROUNDING = 1e-9;

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

  /** The least whole number that is not below a figure, but for rounding. */
  public static double up(double figure) {
    return Math.ceil(figure - ROUNDING);
  }
}
