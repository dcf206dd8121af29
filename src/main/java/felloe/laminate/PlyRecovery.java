package felloe.laminate;

import java.util.List;

/**
 * Stresses of a laminate's plies from its deformation, made for many calls: everything that does
 * not change is worked out once, and no call makes an object. One may be shared by threads.
 *
 * <p>A ply's strain runs straight from face to face, and both criteria are convex, so its faces are
 * where it is worst; they are the only places looked at. Faces are numbered from 0 at the back: ply
 * {@code i} (from 0) has faces {@code 2 i} and {@code 2 i + 1}.
 */
public final class PlyRecovery {

  /** Figures a face: z, cos², sin², cos sin; Q11, Q12, Q22, Q66; five limits. */
  private static final int SIZE = 13;

  private final double[] faces;
  private final PlyStrength[] strengths;
  private final int count;

  private PlyRecovery(Laminate laminate) {
    List<Ply> plies = laminate.plies();
    count = 2 * plies.size();
    faces = new double[count * SIZE];
    strengths = new PlyStrength[plies.size()];
    for (int i = 0; i < plies.size(); i++) {
      Ply ply = plies.get(i);
      strengths[i] = ply.material().strength().orElse(null);
      fill(2 * i, ply, laminate.face(i));
      fill(2 * i + 1, ply, laminate.face(i + 1));
    }
  }

  private void fill(int face, Ply ply, double z) {
    int at = face * SIZE;
    double c = Angles.cosine(ply.angle());
    double s = Angles.sine(ply.angle());
    PlaneStiffness q = ply.material().reduced();
    double never = Double.POSITIVE_INFINITY;
    StrainLimits limits = ply.material().limits().orElse(null);
    double[] figures = {
      z,
      c * c,
      s * s,
      c * s,
      q.m11(),
      q.m12(),
      q.m22(),
      q.m66(),
      limits == null ? never : limits.e1t(),
      limits == null ? never : limits.e1c(),
      limits == null ? never : limits.e2t(),
      limits == null ? never : limits.e2c(),
      limits == null ? never : limits.g12()
    };
    System.arraycopy(figures, 0, faces, at, SIZE);
  }

  /** For the plies of a laminate. */
  public static PlyRecovery of(Laminate laminate) {
    return new PlyRecovery(laminate);
  }

  /** How many faces there are: two a ply. */
  public int faceCount() {
    return count;
  }

  /** Height of a face above the middle plane, mm. */
  public double z(int face) {
    return faces[face * SIZE];
  }

  /**
   * Stresses of a ply at one of its faces, along the ply's own axes.
   *
   * @param face from 0
   * @param ex middle plane's strain along x; the others as in {@link Deformation}
   * @param into gets stress along 1, along 2 and shear, MPa, at {@code from} and the next two
   * @param from where to put the first
   */
  public void stresses(
      int face,
      double ex,
      double ey,
      double gxy,
      double kx,
      double ky,
      double kxy,
      double[] into,
      int from) {
    int at = face * SIZE;
    double z = faces[at];
    double x = ex + z * kx;
    double y = ey + z * ky;
    double xy = gxy + z * kxy;
    double e1 = along1(at, x, y, xy);
    double e2 = along2(at, x, y, xy);
    double e12 = shear(at, x, y, xy);
    into[from] = faces[at + 4] * e1 + faces[at + 5] * e2;
    into[from + 1] = faces[at + 5] * e1 + faces[at + 6] * e2;
    into[from + 2] = faces[at + 7] * e12;
  }

  /**
   * The highest of a face's strains over their limits: 1 is the edge of failure, and the load may
   * grow by one over it. 0 where the ply's limits are not known.
   */
  public double strainUse(
      int face, double ex, double ey, double gxy, double kx, double ky, double kxy) {
    int at = face * SIZE;
    double z = faces[at];
    double x = ex + z * kx;
    double y = ey + z * ky;
    double xy = gxy + z * kxy;
    double e1 = along1(at, x, y, xy);
    double e2 = along2(at, x, y, xy);
    double e12 = shear(at, x, y, xy);
    double one = e1 >= 0 ? e1 / faces[at + 8] : -e1 / faces[at + 9];
    double two = e2 >= 0 ? e2 / faces[at + 10] : -e2 / faces[at + 11];
    return Math.max(one, Math.max(two, Math.abs(e12) / faces[at + 12]));
  }

  /**
   * The face whose strains are nearest to their limits.
   *
   * @return its number; -1 when no ply's limits are known, or nothing is strained
   */
  public int weakestFace(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    int weakest = -1;
    double most = 0;
    for (int face = 0; face < count; face++) {
      double use = strainUse(face, ex, ey, gxy, kx, ky, kxy);
      if (use > most) {
        most = use;
        weakest = face;
      }
    }
    return weakest;
  }

  /**
   * One over the factor by which the load may grow until Tsai and Wu's polynomial reaches 1 at a
   * face, so that it grows in step with the load as {@link #strainUse} does. 0 where the ply's
   * strengths are not known.
   */
  public double tsaiWuUse(
      int face, double ex, double ey, double gxy, double kx, double ky, double kxy) {
    PlyStrength strength = strengths[face / 2];
    if (strength == null) {
      return 0;
    }
    int at = face * SIZE;
    double z = faces[at];
    double x = ex + z * kx;
    double y = ey + z * ky;
    double xy = gxy + z * kxy;
    double e1 = along1(at, x, y, xy);
    double e2 = along2(at, x, y, xy);
    double e12 = shear(at, x, y, xy);
    return 1
        / strength.tsaiWuReserve(
            faces[at + 4] * e1 + faces[at + 5] * e2,
            faces[at + 5] * e1 + faces[at + 6] * e2,
            faces[at + 7] * e12);
  }

  private double along1(int at, double x, double y, double xy) {
    return faces[at + 1] * x + faces[at + 2] * y + faces[at + 3] * xy;
  }

  private double along2(int at, double x, double y, double xy) {
    return faces[at + 2] * x + faces[at + 1] * y - faces[at + 3] * xy;
  }

  private double shear(int at, double x, double y, double xy) {
    return 2 * faces[at + 3] * (y - x) + (faces[at + 1] - faces[at + 2]) * xy;
  }
}
