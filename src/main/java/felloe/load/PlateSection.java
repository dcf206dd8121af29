package felloe.load;

import felloe.laminate.Laminate;
import felloe.laminate.PlaneStiffness;
import java.util.List;

/**
 * A plate through its thickness: how stiff and how strong.
 *
 * @param thickness mm
 * @param a membrane stiffness, N/mm
 * @param d bending stiffness, N mm
 * @param shear stiffness against transverse shear, N/mm: five sixths of G t
 * @param strength what it stands
 * @param notes what was assumed
 * @param bonding what is glued on; stiffness is that of the bare plate
 */
public record PlateSection(
    double thickness,
    PlaneStiffness a,
    PlaneStiffness d,
    double shear,
    Strength strength,
    List<String> notes,
    Bonding bonding) {

  /** A bare plate. */
  public PlateSection(
      double thickness,
      PlaneStiffness a,
      PlaneStiffness d,
      double shear,
      Strength strength,
      List<String> notes) {
    this(thickness, a, d, shear, strength, notes, Bonding.NONE);
  }

  /** The same with something glued on. */
  PlateSection with(Bonding glued) {
    return new PlateSection(thickness, a, d, shear, strength, notes, glued);
  }

  /** Rows along free edges, in lengths within which a twist dies away. */
  private static final double FIRST_ROW = 0.6;

  /** Where a bent and twisted spoke is stressed most: 1.5 to 2 such lengths from its edge. */
  private static final double SECOND_ROW = 1.8;

  private static final double THIRD_ROW = 3.2;

  /** How much farther than the second the third is at least, where the first is far out. */
  private static final double APART = 1.7;

  /** Refuses figures that are not above 0. */
  public PlateSection {
    PositiveFigure.zero("thickness", thickness);
    PositiveFigure.zero("shear", shear);
    notes = List.copyOf(notes);
  }

  /**
   * Whether it stretches as it bends, which is reckoned here as if nothing hindered it: too rough
   * for a verdict.
   */
  public boolean coupled() {
    return strength instanceof CoupledStrength;
  }

  /**
   * Within how much of a free edge a twist of the plate dies away, mm: the square root of the
   * stiffness in twist over that in shear. Source: the edge effect in Reissner's theory of plates.
   */
  double edgeLayer() {
    return Math.sqrt(d.m66() / shear);
  }

  /** Where nodes are to follow free edges so that the layer is seen, mm. */
  List<Double> edgeRows() {
    double layer = edgeLayer();
    if (layer < 0.02 * thickness) {
      return List.of();
    }
    double first = strength.plies() > 0 ? JudgingBook.builtIn().pointStress() : FIRST_ROW * layer;
    double second = Math.max(2 * first, SECOND_ROW * layer);
    return List.of(first, second, Math.max(APART * second, THIRD_ROW * layer));
  }

  /**
   * An isotropic plate.
   *
   * @param e modulus of elasticity, MPa
   * @param nu Poisson's ratio
   * @param t thickness, mm
   * @param limit von Mises stress that it stands, MPa
   */
  public static PlateSection isotropic(double e, double nu, double t, double limit) {
    return new PlateSection(
        t,
        Isotropic.membrane(e, nu, t),
        Isotropic.bending(e, nu, t),
        5.0 / 6 * e / 2 / (1 + nu) * t,
        new YieldStrength(e, nu, t, limit),
        List.of());
  }

  /**
   * A laminate. One whose stretching and bending are coupled is bent with its reduced bending
   * stiffness, D - B A^-1 B, which is what a plate has whose middle plane is free to stretch.
   *
   * <p>Source of the reduced stiffness: Ashton and Whitney, Theory of Laminated Plates, from
   * memory.
   *
   * @param shearModulus between the plies, MPa
   */
  public static PlateSection of(Laminate laminate, double shearModulus) {
    double t = laminate.thickness();
    PlaneStiffness d = laminate.isCoupled() ? reduced(laminate) : laminate.d();
    List<String> notes =
        laminate.isCoupled()
            ? List.of(
                "the stack is not symmetric: it stretches as it bends, which is reckoned as if"
                    + " nothing hindered it, and it warps as it cools; make it symmetric")
            : List.of();
    Strength plies = PlyStrengths.of(laminate);
    Strength strength = laminate.isCoupled() ? new CoupledStrength(plies, laminate, d) : plies;
    return new PlateSection(t, laminate.a(), d, 5.0 / 6 * shearModulus * t, strength, notes);
  }

  /** The inverse of the bending part of the whole compliance. */
  private static PlaneStiffness reduced(Laminate laminate) {
    double[][] c = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        c[i][j] = laminate.compliance(3 + i, 3 + j);
      }
    }
    double m11 = c[1][1] * c[2][2] - c[1][2] * c[1][2];
    double m12 = c[0][2] * c[1][2] - c[0][1] * c[2][2];
    double m16 = c[0][1] * c[1][2] - c[0][2] * c[1][1];
    double m22 = c[0][0] * c[2][2] - c[0][2] * c[0][2];
    double m26 = c[0][1] * c[0][2] - c[0][0] * c[1][2];
    double m66 = c[0][0] * c[1][1] - c[0][1] * c[0][1];
    double whole = c[0][0] * m11 + c[0][1] * m12 + c[0][2] * m16;
    return new PlaneStiffness(
        m11 / whole, m12 / whole, m22 / whole, m16 / whole, m26 / whole, m66 / whole);
  }
}
