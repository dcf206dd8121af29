package felloe.load;

import felloe.laminate.Laminate;
import felloe.laminate.Ply;
import felloe.laminate.PlyRecovery;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A laminate that fails when a first ply does, by the worse of maximum strain and Tsai and Wu.
 *
 * <p>Where only one of them is known for a ply, that one counts.
 */
public final class PlyStrengths implements Strength {

  private final PlyRecovery recovery;

  /** Faces among which the worst is. */
  private final int[] faces;

  private PlyStrengths(Laminate laminate) {
    recovery = PlyRecovery.of(laminate);
    faces = outermost(laminate.stack().plies());
  }

  /**
   * The lowest and the highest face of each kind of ply. Strains run straight through the thickness
   * and what a ply stands is a convex bound about them, so plies of one material and direction are
   * worst at the outermost of their faces.
   */
  private static int[] outermost(List<Ply> plies) {
    Set<Integer> chosen = new TreeSet<>();
    for (int i = 0; i < plies.size(); i++) {
      int first = i;
      int last = i;
      for (int j = 0; j < plies.size(); j++) {
        Ply a = plies.get(i);
        Ply b = plies.get(j);
        if (a.material().equals(b.material()) && a.angle() == b.angle()) {
          first = Math.min(first, j);
          last = Math.max(last, j);
        }
      }
      chosen.add(2 * first);
      chosen.add(2 * last + 1);
    }
    return chosen.stream().mapToInt(Integer::intValue).toArray();
  }

  /** For the plies of a laminate. */
  public static PlyStrengths of(Laminate laminate) {
    return new PlyStrengths(laminate);
  }

  @Override
  public double use(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    double most = 0;
    for (int face : faces) {
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
  public int plies() {
    return recovery.faceCount() / 2;
  }

  @Override
  public double plyUse(
      int ply, double ex, double ey, double gxy, double kx, double ky, double kxy) {
    int back = 2 * (ply - 1);
    return Math.max(use(back, ex, ey, gxy, kx, ky, kxy), use(back + 1, ex, ey, gxy, kx, ky, kxy));
  }

  @Override
  public Worst worst(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    int worst = 0;
    double most = -1;
    for (int face : faces) {
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
