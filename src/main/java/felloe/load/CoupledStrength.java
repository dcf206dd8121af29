package felloe.load;

import felloe.laminate.Laminate;
import felloe.laminate.PlaneStiffness;

/**
 * A laminate whose stack is not symmetric: bent, its middle plane stretches as well, and that
 * strain is put to what its plies bear. The middle plane is taken as free to stretch, as the
 * reduced bending stiffness takes it.
 *
 * <p>Source: classical laminate theory with N = 0 (Jones, Mechanics of Composite Materials, from
 * memory).
 */
final class CoupledStrength implements Strength {

  private final Strength plies;

  /** Strains of the middle plane by curvatures. */
  private final double[][] stretch = new double[3][3];

  CoupledStrength(Strength plies, Laminate laminate, PlaneStiffness reduced) {
    this.plies = plies;
    double[][] d = reduced.rows();
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        for (int k = 0; k < 3; k++) {
          stretch[i][j] += laminate.compliance(i, 3 + k) * d[k][j];
        }
      }
    }
  }

  private double more(int row, double kx, double ky, double kxy) {
    return stretch[row][0] * kx + stretch[row][1] * ky + stretch[row][2] * kxy;
  }

  @Override
  public double use(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    return plies.use(
        ex + more(0, kx, ky, kxy),
        ey + more(1, kx, ky, kxy),
        gxy + more(2, kx, ky, kxy),
        kx,
        ky,
        kxy);
  }

  @Override
  public Worst worst(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    return plies.worst(
        ex + more(0, kx, ky, kxy),
        ey + more(1, kx, ky, kxy),
        gxy + more(2, kx, ky, kxy),
        kx,
        ky,
        kxy);
  }

  @Override
  public int plies() {
    return plies.plies();
  }

  @Override
  public double plyUse(
      int ply, double ex, double ey, double gxy, double kx, double ky, double kxy) {
    return plies.plyUse(
        ply,
        ex + more(0, kx, ky, kxy),
        ey + more(1, kx, ky, kxy),
        gxy + more(2, kx, ky, kxy),
        kx,
        ky,
        kxy);
  }
}
