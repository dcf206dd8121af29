package felloe.laminate;

import felloe.geometry.Numbers;

/**
 * How a laminate is strained: at height z the strain is that of the middle plane plus z times the
 * curvature.
 *
 * @param ex strain of the middle plane along x
 * @param ey strain of the middle plane along y
 * @param gxy engineering shear of the middle plane
 * @param kx curvature along x, 1/mm: -d²w/dx² with w toward the driver
 * @param ky curvature along y, 1/mm
 * @param kxy twist, 1/mm: -2 d²w/dxdy
 */
public record Deformation(double ex, double ey, double gxy, double kx, double ky, double kxy) {

  public static final Deformation NONE = new Deformation(0, 0, 0, 0, 0, 0);

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Deformation {
    Numbers.finite("ex", ex);
    Numbers.finite("ey", ey);
    Numbers.finite("gxy", gxy);
    Numbers.finite("kx", kx);
    Numbers.finite("ky", ky);
    Numbers.finite("kxy", kxy);
  }

  /** Strain at a height, along the plate's axes. */
  public PlaneTriple at(double z) {
    return new PlaneTriple(ex + z * kx, ey + z * ky, gxy + z * kxy);
  }

  /** The curvature that is largest without its sign, 1/mm, in whichever direction it lies. */
  public double largestCurvature() {
    double mean = (kx + ky) / 2;
    return Math.abs(mean) + Math.hypot((kx - ky) / 2, kxy / 2);
  }
}
