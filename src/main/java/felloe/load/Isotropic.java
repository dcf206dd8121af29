package felloe.load;

import felloe.laminate.PlaneStiffness;

/** Stiffness of a plate that is the same in all directions. */
public final class Isotropic {

  private Isotropic() {}

  /**
   * Bending stiffness, N mm: D = E t^3 / (12 (1 - nu^2)).
   *
   * @param e modulus of elasticity, MPa
   * @param nu Poisson's ratio
   * @param t thickness, mm
   */
  public static PlaneStiffness bending(double e, double nu, double t) {
    return stiffness(e * t * t * t / 12 / (1 - nu * nu), nu);
  }

  /** Membrane stiffness, N/mm: E t / (1 - nu^2). */
  public static PlaneStiffness membrane(double e, double nu, double t) {
    return stiffness(e * t / (1 - nu * nu), nu);
  }

  /** A stiffness from its first entry and Poisson's ratio. */
  public static PlaneStiffness stiffness(double m11, double nu) {
    return new PlaneStiffness(m11, nu * m11, m11, 0, 0, m11 * (1 - nu) / 2);
  }
}
