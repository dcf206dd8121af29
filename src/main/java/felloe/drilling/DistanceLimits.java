package felloe.drilling;

import felloe.geometry.Numbers;

/**
 * Between what figures a calliper reads two holes that are where they should be and as large as
 * they should be.
 *
 * <p>Let c be the distance of the true centres, T1 and T2 the diameters of the zones in which the
 * drilled centres may lie (position tolerance, ISO 1101), and d1, d2 the holes' diameters with
 * their limits. Each centre strays at most T/2, so the centres lie c ± (T1 + T2)/2 apart. Then
 *
 * <ul>
 *   <li>over the outside edges a calliper reads from c - (T1 + T2)/2 + (d1 least + d2 least)/2 to c
 *       + (T1 + T2)/2 + (d1 most + d2 most)/2;
 *   <li>between the inside edges from c - (T1 + T2)/2 - (d1 most + d2 most)/2 to c + (T1 + T2)/2 -
 *       (d1 least + d2 least)/2.
 * </ul>
 *
 * <p>Direction: a reading outside of these limits proves a hole out of place or out of size. One
 * inside does not prove the opposite, since a distance says nothing of what lies across it; several
 * distances together do, by adjustment.
 *
 * @param centres distance of the true centres, mm
 * @param nominal what is read when all is true, mm
 * @param least smallest reading, mm
 * @param most largest reading, mm
 */
public record DistanceLimits(double centres, double nominal, double least, double most) {

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public DistanceLimits {
    Numbers.finite("centres", centres);
    Numbers.finite("nominal", nominal);
    Numbers.finite("least", least);
    Numbers.finite("most", most);
  }

  /**
   * Over the outside edges of two holes.
   *
   * @param centres distance of the true centres, mm
   * @param zones T1 + T2, mm
   * @param first size of one hole
   * @param second size of the other
   */
  public static DistanceLimits outside(
      double centres, double zones, SizeLimits first, SizeLimits second) {
    double small = (first.least() + second.least()) / 2;
    double large = (first.most() + second.most()) / 2;
    return new DistanceLimits(
        centres, centres + small, centres - zones / 2 + small, centres + zones / 2 + large);
  }

  /** Between the inside edges of two holes; see {@link #outside}. */
  public static DistanceLimits inside(
      double centres, double zones, SizeLimits first, SizeLimits second) {
    double small = (first.least() + second.least()) / 2;
    double large = (first.most() + second.most()) / 2;
    return new DistanceLimits(
        centres, centres - small, centres - zones / 2 - large, centres + zones / 2 - small);
  }
}
