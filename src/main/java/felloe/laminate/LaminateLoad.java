package felloe.laminate;

import felloe.geometry.Numbers;

/**
 * Forces and moments per width of a plate's edge. A positive {@code mx} presses the back face (z =
 * -h/2) and pulls the driver's face along x: M is the integral of stress times z.
 *
 * @param nx pull along x, N/mm
 * @param ny pull along y, N/mm
 * @param nxy shear, N/mm
 * @param mx bending by stresses along x, N mm/mm
 * @param my bending by stresses along y, N mm/mm
 * @param mxy twist, N mm/mm
 */
public record LaminateLoad(double nx, double ny, double nxy, double mx, double my, double mxy) {

  /** A pull of 1 N/mm along x: what plies bear of it is their share of any such pull. */
  public static final LaminateLoad UNIT = new LaminateLoad(1, 0, 0, 0, 0, 0);

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public LaminateLoad {
    Numbers.finite("nx", nx);
    Numbers.finite("ny", ny);
    Numbers.finite("nxy", nxy);
    Numbers.finite("mx", mx);
    Numbers.finite("my", my);
    Numbers.finite("mxy", mxy);
  }
}
