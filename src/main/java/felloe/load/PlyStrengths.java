package felloe.load;

import felloe.laminate.Laminate;
import felloe.laminate.PlyRecovery;

/**
 * A laminate that fails when a first ply does, by the worse of maximum strain and Tsai and Wu.
 *
 * <p>Where only one of them is known for a ply, that one counts.
 */
public final class PlyStrengths implements Strength {

  private final PlyRecovery recovery;

  private PlyStrengths(PlyRecovery recovery) {
    this.recovery = recovery;
  }

  /** For the plies of a laminate. */
  public static PlyStrengths of(Laminate laminate) {
    return new PlyStrengths(PlyRecovery.of(laminate));
  }

  @Override
  public double use(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    double most = 0;
    for (int face = 0; face < recovery.faceCount(); face++) {
      most = Math.max(most, use(face, ex, ey, gxy, kx, ky, kxy));
    }
    return most;
  }

  private double use(int face, double ex, double ey, double gxy, double kx, double ky, double kxy) {
    return Math.max(
        recovery.strainUse(face, ex, ey, gxy, kx, ky, kxy),
        recovery.tsaiWuUse(face, ex, ey, gxy, kx, ky, kxy));
  }

  @Override
  public Worst worst(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    int worst = 0;
    double most = -1;
    for (int face = 0; face < recovery.faceCount(); face++) {
      double use = use(face, ex, ey, gxy, kx, ky, kxy);
      if (use > most) {
        most = use;
        worst = face;
      }
    }
    double z = recovery.z(worst);
    double[] stresses = new double[3];
    recovery.stresses(worst, ex, ey, gxy, kx, ky, kxy, stresses, 0);
    boolean strainLeads =
        recovery.strainUse(worst, ex, ey, gxy, kx, ky, kxy)
            >= recovery.tsaiWuUse(worst, ex, ey, gxy, kx, ky, kxy);
    double fibre = Math.abs(stresses[0]) >= Math.abs(stresses[1]) ? stresses[0] : stresses[1];
    return new Worst(
        most,
        z,
        worst / 2 + 1,
        strainLeads ? "along the ply, by maximum strain" : "along the ply, by Tsai and Wu",
        Math.abs(fibre),
        Strains.largest(ex + z * kx, ey + z * ky, gxy + z * kxy));
  }
}
