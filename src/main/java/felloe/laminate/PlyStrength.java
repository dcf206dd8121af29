package felloe.laminate;

import felloe.geometry.Numbers;

/**
 * Strengths of a ply along its own axes, MPa, all told as positive figures.
 *
 * @param xt tension along axis 1 (the fibres, or the warp)
 * @param xc compression along axis 1
 * @param yt tension along axis 2
 * @param yc compression along axis 2
 * @param s shear in the plane
 */
public record PlyStrength(double xt, double xc, double yt, double yc, double s) {

  /**
   * Refuses figures that are not finite or not positive.
   *
   * @throws IllegalArgumentException naming the field
   */
  public PlyStrength {
    Numbers.positive("xt", xt);
    Numbers.positive("xc", xc);
    Numbers.positive("yt", yt);
    Numbers.positive("yc", yc);
    Numbers.positive("s", s);
  }

  /**
   * Tsai and Wu's polynomial: 1 is the edge of failure, less is inside. The coefficient that joins
   * the two directions is -1/2 sqrt(F11 F22), as usual where no biaxial test is at hand.
   *
   * <p>Source: Tsai and Wu, Journal of Composite Materials 5, 1971; Tsai and Hahn, Introduction to
   * Composite Materials, 1980, for the -1/2.
   *
   * @param s1 stress along axis 1, MPa
   * @param s2 stress along axis 2, MPa
   * @param s12 shear stress, MPa
   */
  public double tsaiWu(double s1, double s2, double s12) {
    return linear(s1, s2) + product(s1, s2, s12, s1, s2, s12);
  }

  /**
   * By how much a stress may grow until Tsai and Wu's polynomial reaches 1, while another stress
   * (left over from cooling, say) stays as it is.
   *
   * @param load the stress that grows: along 1, along 2, shear, MPa
   * @param rest the stress that stays, MPa
   * @return the factor; 0 when what stays has failed already; infinite when {@code load} is zero
   */
  public double tsaiWuReserve(double[] load, double[] rest) {
    double a = product(load[0], load[1], load[2], load[0], load[1], load[2]);
    double b =
        linear(load[0], load[1])
            + 2 * product(load[0], load[1], load[2], rest[0], rest[1], rest[2]);
    double c = tsaiWu(rest[0], rest[1], rest[2]) - 1;
    return growth(a, b, c);
  }

  /**
   * By how much a stress may grow until Tsai and Wu's polynomial reaches 1.
   *
   * @return the factor; infinite when the stress is zero
   */
  public double tsaiWuReserve(double s1, double s2, double s12) {
    return growth(product(s1, s2, s12, s1, s2, s12), linear(s1, s2), -1);
  }

  private double linear(double s1, double s2) {
    return (1 / xt - 1 / xc) * s1 + (1 / yt - 1 / yc) * s2;
  }

  private double product(double a1, double a2, double a12, double b1, double b2, double b12) {
    double f11 = 1 / (xt * xc);
    double f22 = 1 / (yt * yc);
    double f12 = -0.5 * Math.sqrt(f11 * f22);
    return f11 * a1 * b1 + f22 * a2 * b2 + f12 * (a1 * b2 + a2 * b1) + a12 * b12 / (s * s);
  }

  /**
   * The strains at which a ply with straight stress-strain lines reaches these strengths.
   *
   * @param m the ply's elastic figures
   */
  public StrainLimits limits(PlyMaterial m) {
    return new StrainLimits(xt / m.e1(), xc / m.e1(), yt / m.e2(), yc / m.e2(), s / m.g12());
  }

  /**
   * The least positive R with a R² + b R + c = 0, where c below 0 is inside.
   *
   * @param a not negative
   * @return 0 when c is 0 or more; infinite when there is no such R
   */
  private static double growth(double a, double b, double c) {
    if (c >= 0) {
      return 0;
    }
    double root = Math.sqrt(b * b - 4 * a * c);
    // Both forms are exact; the one without a difference of like figures keeps its digits.
    if (b >= 0) {
      return b + root == 0 ? Double.POSITIVE_INFINITY : -2 * c / (b + root);
    }
    return a == 0 ? Double.POSITIVE_INFINITY : (root - b) / (2 * a);
  }
}
