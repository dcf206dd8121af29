package felloe.laminate;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;

/**
 * A stack as classical laminate theory sees it: {@code N = A e + B k}, {@code M = B e + D k}, with
 * e the strains of the middle plane and k the curvatures.
 *
 * <p>Units: N/mm for forces per width and A, N for B and moments per width, N mm for D, MPa for
 * moduli and stresses. Frame: the plate's x and y; z from -h/2 at the back face, where ply 1 lies,
 * to h/2 at the driver's. Shear strains are engineering ones.
 *
 * <p>It holds for thin flat plates of perfectly joined plies with straight stress-strain lines and
 * small bending. Shear through the thickness is left out: a strip over span L bends more by a share
 * of about 1.2 E/G (h/L)², 6 % for carbon over 20 thicknesses and 1.5 % over 40.
 *
 * <p>Accuracy: that of double arithmetic. Figures that are no more than rounding (1e-12 of what was
 * added up) are exact zeros: B of a symmetric stack, A16 of a balanced one.
 *
 * <p>Source: Jones, Mechanics of Composite Materials, chapter 4; Kaw, the same title, chapter 4;
 * NASA RP-1351.
 */
public final class Laminate {

  /** Share of what was added up that is rounding of double arithmetic. */
  private static final double NOISE = 1e-12;

  private final Stack stack;
  private final double thickness;
  private final double[] faces;
  private final PlaneStiffness a;
  private final PlaneStiffness b;
  private final PlaneStiffness d;
  private final double[][] inverse;

  private Laminate(Stack stack) {
    this.stack = stack;
    this.thickness = stack.thickness();
    this.faces = stack.faces();
    PlaneStiffness sumA = PlaneStiffness.ZERO;
    PlaneStiffness sumB = PlaneStiffness.ZERO;
    PlaneStiffness sumD = PlaneStiffness.ZERO;
    double scale = 0;
    for (int i = 0; i < stack.plies().size(); i++) {
      Ply ply = stack.plies().get(i);
      PlaneStiffness q = ply.stiffness();
      double t = ply.thickness();
      double z = (faces[i] + faces[i + 1]) / 2;
      sumA = sumA.plus(q.times(t));
      sumB = sumB.plus(q.times(t * z));
      sumD = sumD.plus(q.times(t * z * z + t * t * t / 12));
      scale += q.largest() * t;
    }
    double noise = NOISE * scale;
    a = sumA.without(noise);
    b = sumB.without(noise * thickness);
    d = sumD.without(noise * thickness * thickness);
    inverse = inverse();
  }

  public static Laminate of(Stack stack) {
    return new Laminate(stack);
  }

  /** The stack that it was made from. */
  public Stack stack() {
    return stack;
  }

  /** Thickness h, mm. */
  public double thickness() {
    return thickness;
  }

  /** Stiffness in the plane, N/mm. */
  public PlaneStiffness a() {
    return a;
  }

  /** What joins stretch and bending, N; zero for a symmetric stack. */
  public PlaneStiffness b() {
    return b;
  }

  /** Stiffness in bending, N mm. */
  public PlaneStiffness d() {
    return d;
  }

  /** Whether stretch and bending are joined: B is not zero, so that it warps on cooling. */
  public boolean isCoupled() {
    return b.largest() > 0;
  }

  /**
   * One figure of the inverse of the 6 by 6 matrix [A B; B D]: 0 to 2 are the strains of the middle
   * plane or forces, 3 to 5 curvatures or moments. mm/N where both are below 3, 1/N where one is,
   * 1/(N mm) where none is.
   */
  public double compliance(int row, int column) {
    return inverse[row][column];
  }

  /** Strains of the middle plane and curvatures under a load. */
  public Deformation deformation(LaminateLoad load) {
    double[] n = {load.nx(), load.ny(), load.nxy(), load.mx(), load.my(), load.mxy()};
    double[] e = new double[6];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        e[i] += inverse[i][j] * n[j];
      }
    }
    return new Deformation(e[0], e[1], e[2], e[3], e[4], e[5]);
  }

  /** The forces and moments that a deformation takes: the other way of {@link #deformation}. */
  public LaminateLoad load(Deformation e) {
    return new LaminateLoad(
        a.x(e.ex(), e.ey(), e.gxy()) + b.x(e.kx(), e.ky(), e.kxy()),
        a.y(e.ex(), e.ey(), e.gxy()) + b.y(e.kx(), e.ky(), e.kxy()),
        a.shear(e.ex(), e.ey(), e.gxy()) + b.shear(e.kx(), e.ky(), e.kxy()),
        b.x(e.ex(), e.ey(), e.gxy()) + d.x(e.kx(), e.ky(), e.kxy()),
        b.y(e.ex(), e.ey(), e.gxy()) + d.y(e.kx(), e.ky(), e.kxy()),
        b.shear(e.ex(), e.ey(), e.gxy()) + d.shear(e.kx(), e.ky(), e.kxy()));
  }

  /** Strains and stresses of every ply under a load, at its two faces. */
  public LaminateResponse response(LaminateLoad load) {
    return LaminateResponse.of(this, deformation(load), 0);
  }

  /**
   * Deformation, and stresses left in the plies, after all of it has changed its temperature with
   * no load and nothing to hold it. Plies without thermal expansion are taken to have none.
   *
   * @param kelvin the change; negative for cooling from the temperature at which the resin set
   */
  public LaminateResponse warmed(double kelvin) {
    return LaminateResponse.of(this, deformation(thermalLoad(kelvin)), kelvin);
  }

  /**
   * The forces and moments that would stretch and bend it as a change of temperature does.
   *
   * @param kelvin the change; negative for cooling
   */
  public LaminateLoad thermalLoad(double kelvin) {
    double[] n = new double[6];
    for (int i = 0; i < stack.plies().size(); i++) {
      Ply ply = stack.plies().get(i);
      PlaneStiffness q = ply.stiffness();
      PlaneTriple free = Thermal.free(ply, kelvin);
      double t = ply.thickness();
      double z = (faces[i] + faces[i + 1]) / 2;
      double[] stress = {
        q.x(free.first(), free.second(), free.shear()),
        q.y(free.first(), free.second(), free.shear()),
        q.shear(free.first(), free.second(), free.shear())
      };
      for (int j = 0; j < 3; j++) {
        n[j] += stress[j] * t;
        n[j + 3] += stress[j] * t * z;
      }
    }
    return new LaminateLoad(n[0], n[1], n[2], n[3], n[4], n[5]);
  }

  /**
   * Moduli of a plate of this laminate that is pulled or bent and may curve as it likes; for a
   * symmetric stack the figures of the textbooks.
   */
  public LaminateModuli moduli() {
    return LaminateModuli.of(thickness, part(inverse, 0), part(inverse, 3));
  }

  /**
   * Moduli by A and D alone: of a plate that is held so that it does not curve when pulled, nor
   * stretch when bent. The same as {@link #moduli} where stretch and bending are not joined.
   */
  public LaminateModuli heldModuli() {
    return LaminateModuli.of(thickness, inverse(a), inverse(d));
  }

  /** Plies of the stack, from the back. */
  List<Ply> plies() {
    return stack.plies();
  }

  /** Height of the lower ({@code ply}) and upper ({@code ply + 1}) face of a ply, from 0, mm. */
  double face(int index) {
    return faces[index];
  }

  private double[][] inverse() {
    // Brought to one size first, so that thin and thick stacks keep their digits.
    double stretch = 1 / Math.sqrt(thickness);
    double bend = Math.sqrt(12) / (thickness * Math.sqrt(thickness));
    double[][] m = new double[6][6];
    fill(m, 0, 0, a.times(stretch * stretch));
    fill(m, 0, 3, b.times(stretch * bend));
    fill(m, 3, 0, b.times(stretch * bend));
    fill(m, 3, 3, d.times(bend * bend));
    double[][] inverted = inverted(m);
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        inverted[i][j] *= (i < 3 ? stretch : bend) * (j < 3 ? stretch : bend);
      }
    }
    return inverted;
  }

  private static double[][] inverse(PlaneStiffness m) {
    return inverted(m.rows());
  }

  /** The inverse of a symmetric matrix, made symmetric to the last bit. */
  private static double[][] inverted(double[][] m) {
    double[][] inverted =
        new LUDecomposition(new Array2DRowRealMatrix(m, false), 0)
            .getSolver()
            .getInverse()
            .getData();
    for (int i = 0; i < m.length; i++) {
      for (int j = 0; j < i; j++) {
        double mean = (inverted[i][j] + inverted[j][i]) / 2;
        inverted[i][j] = mean;
        inverted[j][i] = mean;
      }
    }
    return inverted;
  }

  private static void fill(double[][] m, int row, int column, PlaneStiffness part) {
    double[][] rows = part.rows();
    for (int i = 0; i < 3; i++) {
      System.arraycopy(rows[i], 0, m[row + i], column, 3);
    }
  }

  private static double[][] part(double[][] m, int from) {
    double[][] part = new double[3][3];
    for (int i = 0; i < 3; i++) {
      System.arraycopy(m[from + i], from, part[i], 0, 3);
    }
    return part;
  }
}
