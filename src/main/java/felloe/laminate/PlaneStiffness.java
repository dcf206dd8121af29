package felloe.laminate;

import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import java.util.OptionalDouble;

/**
 * A symmetric 3 by 3 matrix between in-plane strains (x, y, engineering shear) and in-plane
 * stresses or forces: the reduced stiffness of a ply in MPa, or one of a laminate's A (N/mm), B (N)
 * and D (N mm).
 *
 * @param m11 x with x
 * @param m12 x with y
 * @param m22 y with y
 * @param m16 x with shear
 * @param m26 y with shear
 * @param m66 shear with shear
 */
public record PlaneStiffness(
    double m11, double m12, double m22, double m16, double m26, double m66) {

  public static final PlaneStiffness ZERO = new PlaneStiffness(0, 0, 0, 0, 0, 0);

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public PlaneStiffness {
    Numbers.finite("m11", m11);
    Numbers.finite("m12", m12);
    Numbers.finite("m22", m22);
    Numbers.finite("m16", m16);
    Numbers.finite("m26", m26);
    Numbers.finite("m66", m66);
  }

  /**
   * The same stiffness when what has it is turned.
   *
   * <p>Source: Tsai and Pagano's invariants, written for a stiffness of any symmetry: {@code U1},
   * {@code U4}, {@code U5} stay, one pair turns with twice the angle and one with four times.
   *
   * @param degrees counter-clockwise; multiples of 45 are turned without rounding of the angle
   */
  public PlaneStiffness turned(double degrees) {
    double c2 = Angles.cosine(2 * degrees);
    double s2 = Angles.sine(2 * degrees);
    double c4 = Angles.cosine(4 * degrees);
    double s4 = Angles.sine(4 * degrees);
    double two = (m11 - m22) / 2;
    double twoShear = m16 + m26;
    double four = (m11 + m22 - 2 * m12 - 4 * m66) / 8;
    double fourShear = (m16 - m26) / 2;
    double p = two * c2 - twoShear * s2;
    double q = two * s2 + twoShear * c2;
    double r = four * c4 - fourShear * s4;
    double t = four * s4 + fourShear * c4;
    double u1 = (3 * m11 + 3 * m22 + 2 * m12 + 4 * m66) / 8;
    double u4 = (m11 + m22 + 6 * m12 - 4 * m66) / 8;
    double u5 = (m11 + m22 - 2 * m12 + 4 * m66) / 8;
    return new PlaneStiffness(u1 + p + r, u4 - r, u1 - p + r, q / 2 + t, q / 2 - t, u5 - r);
  }

  /**
   * Tsai and Pagano's invariants U1 to U5, in the unit of the matrix. U1, U4 and U5 do not change
   * when it is turned; U2 and U3 are told for the axes that it is given in. They are those of the
   * textbooks for a ply along its fibres, where m16 and m26 are 0.
   */
  public double[] invariants() {
    return new double[] {
      (3 * m11 + 3 * m22 + 2 * m12 + 4 * m66) / 8,
      (m11 - m22) / 2,
      (m11 + m22 - 2 * m12 - 4 * m66) / 8,
      (m11 + m22 + 6 * m12 - 4 * m66) / 8,
      (m11 + m22 - 2 * m12 + 4 * m66) / 8
    };
  }

  /**
   * How far the stiffness is from being the same in all directions: the larger of the two parts
   * that turn (with twice and with four times the angle) over U1. 0 is isotropic in the plane; a
   * ply of fibres one way has about 1. It does not change when the matrix is turned.
   */
  public double anisotropy() {
    double two = Math.hypot((m11 - m22) / 2, m16 + m26);
    double four = Math.hypot((m11 + m22 - 2 * m12 - 4 * m66) / 8, (m16 - m26) / 2);
    double u1 = (3 * m11 + 3 * m22 + 2 * m12 + 4 * m66) / 8;
    return u1 == 0 ? 0 : Math.max(two, four) / u1;
  }

  /** The sum of both. */
  public PlaneStiffness plus(PlaneStiffness other) {
    return new PlaneStiffness(
        m11 + other.m11,
        m12 + other.m12,
        m22 + other.m22,
        m16 + other.m16,
        m26 + other.m26,
        m66 + other.m66);
  }

  /** Every figure times a factor. */
  public PlaneStiffness times(double factor) {
    return new PlaneStiffness(
        m11 * factor, m12 * factor, m22 * factor, m16 * factor, m26 * factor, m66 * factor);
  }

  /** The first component of the matrix times (x, y, shear). */
  public double x(double x, double y, double shear) {
    return m11 * x + m12 * y + m16 * shear;
  }

  /** The second component of the matrix times (x, y, shear). */
  public double y(double x, double y, double shear) {
    return m12 * x + m22 * y + m26 * shear;
  }

  /** The third component of the matrix times (x, y, shear). */
  public double shear(double x, double y, double shear) {
    return m16 * x + m26 * y + m66 * shear;
  }

  /** (x, y, shear) times the matrix times itself: twice the energy of strains or curvatures. */
  public double square(double x, double y, double shear) {
    return x * x(x, y, shear) + y * y(x, y, shear) + shear * shear(x, y, shear);
  }

  /** How many times another matrix this is; empty when it is no multiple of it. */
  public OptionalDouble multipleOf(PlaneStiffness other) {
    double factor = largest() / other.largest();
    boolean same = plus(other.times(-factor)).largest() <= Tolerances.ROUNDING * largest();
    return same ? OptionalDouble.of(factor) : OptionalDouble.empty();
  }

  /** The figures as rows, a fresh array. */
  public double[][] rows() {
    return new double[][] {{m11, m12, m16}, {m12, m22, m26}, {m16, m26, m66}};
  }

  /** Strains (x, y, whole shear angle) under forces (x, y, shear) for each mm of width. */
  public double[] underPull(double x, double y, double shear) {
    double xx = m22 * m66 - m26 * m26;
    double xy = m16 * m26 - m12 * m66;
    double xs = m12 * m26 - m16 * m22;
    double yy = m11 * m66 - m16 * m16;
    double ys = m12 * m16 - m11 * m26;
    double ss = m11 * m22 - m12 * m12;
    double det = m11 * xx + m12 * xy + m16 * xs;
    return new double[] {
      (xx * x + xy * y + xs * shear) / det,
      (xy * x + yy * y + ys * shear) / det,
      (xs * x + ys * y + ss * shear) / det
    };
  }

  /** The largest figure, without sign. */
  public double largest() {
    double direct = Math.max(Math.abs(m11), Math.max(Math.abs(m22), Math.abs(m66)));
    double mixed = Math.max(Math.abs(m12), Math.max(Math.abs(m16), Math.abs(m26)));
    return Math.max(direct, mixed);
  }

  /** Figures that are no more than rounding of others, as exact zeros. */
  PlaneStiffness without(double noise) {
    return new PlaneStiffness(
        clean(m11, noise),
        clean(m12, noise),
        clean(m22, noise),
        clean(m16, noise),
        clean(m26, noise),
        clean(m66, noise));
  }

  private static double clean(double value, double noise) {
    return Math.abs(value) <= noise ? 0 : value;
  }
}
