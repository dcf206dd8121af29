package felloe.load;

import felloe.mesh.PlateMesh;
import java.util.BitSet;

/**
 * What the thin-plate model leaves out. Shear forces follow from how the moments change, Qx = Mx,x
 * + Mxy,y and Qy = Mxy,x + My,y; the energy that they would store beside that of bending tells by
 * how much the plate would give more (Reissner's energy of shear, first order).
 */
final class TransverseShear {

  private static final int ROUNDS = 2;

  private TransverseShear() {}

  /**
   * Energy of shear over energy of bending.
   *
   * @param clamped unknowns of the plate in bending that are held; where all of a triangle is, it
   *     has no part in this
   * @param k curvatures at the nodes
   * @param hub distance from the hub axis within which shear is left out, mm: on the hub's face it
   *     is all but a point force at each bolt, of which a shear without bound would follow
   */
  static double share(
      PlateMesh mesh, PlateSection section, BitSet clamped, double[] k, double hub) {
    double[] qx = new double[mesh.triangles()];
    double[] qy = new double[mesh.triangles()];
    double bending = 0;
    for (int t = 0; t < mesh.triangles(); t++) {
      if (idle(mesh, t, clamped)) {
        continue;
      }
      double area = mesh.area(t);
      double energy = 0;
      for (int c = 0; c < 3; c++) {
        int n = mesh.corner(t, c);
        int a = mesh.corner(t, (c + 1) % 3);
        int b = mesh.corner(t, (c + 2) % 3);
        double dx = (mesh.y(a) - mesh.y(b)) / (2 * area);
        double dy = (mesh.x(b) - mesh.x(a)) / (2 * area);
        double mx = section.d().x(k[3 * n], k[3 * n + 1], k[3 * n + 2]);
        double my = section.d().y(k[3 * n], k[3 * n + 1], k[3 * n + 2]);
        double mxy = section.d().shear(k[3 * n], k[3 * n + 1], k[3 * n + 2]);
        qx[t] += dx * mx + dy * mxy;
        qy[t] += dx * mxy + dy * my;
        energy += (mx * k[3 * n] + my * k[3 * n + 1] + mxy * k[3 * n + 2]) / 3;
      }
      bending += area * energy / 2;
    }
    for (int i = 0; i < ROUNDS; i++) {
      qx = evened(mesh, clamped, qx);
      qy = evened(mesh, clamped, qy);
    }
    double shear = 0;
    for (int t = 0; t < mesh.triangles(); t++) {
      double square = qx[t] * qx[t] + qy[t] * qy[t];
      shear += onHub(mesh, t, hub) ? 0 : mesh.area(t) * square / section.shear() / 2;
    }
    return bending == 0 ? 0 : shear / bending;
  }

  /**
   * Each triangle's figure as the mean of those about its corners. Moments are told with some
   * roughness, and how they change from node to node is rougher still; a square counts roughness as
   * if it were shear.
   */
  private static double[] evened(PlateMesh mesh, BitSet clamped, double[] q) {
    double[] sum = new double[mesh.nodes()];
    double[] area = new double[mesh.nodes()];
    for (int t = 0; t < q.length; t++) {
      for (int c = 0; c < 3 && !idle(mesh, t, clamped); c++) {
        sum[mesh.corner(t, c)] += mesh.area(t) * q[t];
        area[mesh.corner(t, c)] += mesh.area(t);
      }
    }
    double[] even = new double[q.length];
    for (int t = 0; t < q.length; t++) {
      for (int c = 0; c < 3 && !idle(mesh, t, clamped); c++) {
        even[t] += sum[mesh.corner(t, c)] / area[mesh.corner(t, c)] / 3;
      }
    }
    return even;
  }

  private static boolean onHub(PlateMesh mesh, int triangle, double hub) {
    double x = 0;
    double y = 0;
    for (int c = 0; c < 3; c++) {
      x += mesh.x(mesh.corner(triangle, c)) / 3;
      y += mesh.y(mesh.corner(triangle, c)) / 3;
    }
    return Math.hypot(x, y) < hub;
  }

  private static boolean idle(PlateMesh mesh, int triangle, BitSet clamped) {
    for (int c = 0; c < 3; c++) {
      int first = 3 * mesh.corner(triangle, c);
      if (clamped.nextClearBit(first) < first + 3) {
        return false;
      }
    }
    return true;
  }
}
