package felloe.load;

/**
 * A symmetric 3 by 3 matrix between (x, y, shear) quantities: the A or D matrix of a laminate.
 *
 * <p>Strains and curvatures are engineering ones: the third is the whole shear angle, and twice the
 * twist. A in N/mm, D in N mm.
 *
 * @param m11 entry 11
 * @param m12 entry 12
 * @param m22 entry 22
 * @param m16 entry 16
 * @param m26 entry 26
 * @param m66 entry 66
 */
public record Stiffness(double m11, double m12, double m22, double m16, double m26, double m66) {

  /** Refuses a matrix that would give energy back. */
  public Stiffness {
    double minor = m11 * m22 - m12 * m12;
    double whole =
        m11 * (m22 * m66 - m26 * m26)
            - m12 * (m12 * m66 - m26 * m16)
            + m16 * (m12 * m26 - m22 * m16);
    if (!(m11 > 0) || !(minor > 0) || !(whole > 0)) {
      throw new IllegalArgumentException("a stiffness must be positive definite");
    }
  }

  /**
   * The bending stiffness of an isotropic plate, N mm: D = E t^3 / (12 (1 - nu^2)).
   *
   * @param e modulus of elasticity, MPa
   * @param nu Poisson's ratio
   * @param t thickness, mm
   */
  public static Stiffness bending(double e, double nu, double t) {
    double d = e * t * t * t / 12 / (1 - nu * nu);
    return isotropic(d, nu);
  }

  /** The membrane stiffness of an isotropic plate, N/mm: E t / (1 - nu^2). */
  public static Stiffness membrane(double e, double nu, double t) {
    return isotropic(e * t / (1 - nu * nu), nu);
  }

  /** An isotropic matrix from its first entry and Poisson's ratio. */
  public static Stiffness isotropic(double m11, double nu) {
    return new Stiffness(m11, nu * m11, m11, 0, 0, m11 * (1 - nu) / 2);
  }

  /** All entries times a factor above 0. */
  public Stiffness times(double factor) {
    return new Stiffness(
        m11 * factor, m12 * factor, m22 * factor, m16 * factor, m26 * factor, m66 * factor);
  }

  double first(double a, double b, double c) {
    return m11 * a + m12 * b + m16 * c;
  }

  double second(double a, double b, double c) {
    return m12 * a + m22 * b + m26 * c;
  }

  double third(double a, double b, double c) {
    return m16 * a + m26 * b + m66 * c;
  }
}
