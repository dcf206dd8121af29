package felloe.laminate;

import felloe.geometry.Numbers;

/**
 * Moduli of a sheet in its plane.
 *
 * @param ex along x, MPa
 * @param ey along y, MPa
 * @param gxy shear, MPa
 * @param nuxy contraction along y over stretch along x when pulled along x
 * @param nuyx contraction along x over stretch along y when pulled along y
 * @param highest the highest modulus of all directions, MPa
 * @param highestAt in which direction from x, whole degrees from -89 to 90
 * @param lowest the lowest modulus of all directions, MPa
 * @param lowestAt in which direction from x, whole degrees from -89 to 90
 */
public record SheetModuli(
    double ex,
    double ey,
    double gxy,
    double nuxy,
    double nuyx,
    double highest,
    int highestAt,
    double lowest,
    int lowestAt) {

  // Directions that differ by less are the same one: the first from 0 on is told.
  private static final double SAME = 1e-9;

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public SheetModuli {
    Numbers.finite("ex", ex);
    Numbers.finite("ey", ey);
    Numbers.finite("gxy", gxy);
    Numbers.finite("nuxy", nuxy);
    Numbers.finite("nuyx", nuyx);
    Numbers.finite("highest", highest);
    Numbers.finite("lowest", lowest);
  }

  /**
   * From a compliance.
   *
   * @param s strains over forces
   * @param scale what 1/s is to be multiplied by to become MPa
   */
  static SheetModuli of(double[][] s, double scale) {
    double highest = scale / s[0][0];
    double lowest = highest;
    int highestAt = 0;
    int lowestAt = 0;
    for (int i = 1; i < 180; i++) {
      int degrees = i <= 90 ? i : i - 180;
      double modulus = scale / along(s, degrees);
      if (modulus > highest * (1 + SAME)) {
        highest = modulus;
        highestAt = degrees;
      }
      if (modulus < lowest * (1 - SAME)) {
        lowest = modulus;
        lowestAt = degrees;
      }
    }
    return new SheetModuli(
        scale / s[0][0],
        scale / s[1][1],
        scale / s[2][2],
        -s[0][1] / s[0][0],
        -s[0][1] / s[1][1],
        highest,
        highestAt,
        lowest,
        lowestAt);
  }

  /** Strain along a direction under a pull of 1 along it. */
  private static double along(double[][] m, double degrees) {
    double c = Angles.cosine(degrees);
    double s = Angles.sine(degrees);
    double[] pull = {c * c, s * s, c * s};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        sum += pull[i] * m[i][j] * pull[j];
      }
    }
    return sum;
  }
}
