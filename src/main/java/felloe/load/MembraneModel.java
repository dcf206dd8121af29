package felloe.load;

import felloe.laminate.PlaneStiffness;
import felloe.mesh.PlateMesh;
import java.util.BitSet;

/**
 * A meshed plate under loads in its plane, held and ready to be loaded.
 *
 * <p>Unknowns of point i of the mesh, nodes and middles of sides alike: displacements u at 2 i and
 * v at 2 i + 1, mm. Not shared between threads.
 */
public final class MembraneModel {

  private static final int SIZE = MembraneTriangle.UNKNOWNS;

  private final PlateMesh mesh;
  private final SparseSystem system;

  /** The stiffness of all triangles, one after another. */
  private final double[] stiffness;

  private final BlockFactor factor;
  private final BitSet held;
  private final NodalRecovery recovery;

  /**
   * Builds and factors.
   *
   * @param a membrane stiffness, N/mm
   * @param held unknowns that are held at zero
   */
  public MembraneModel(PlateMesh mesh, PlaneStiffness a, BitSet held) {
    this.mesh = mesh;
    this.held = (BitSet) held.clone();
    double[] x = new double[mesh.points()];
    double[] y = new double[mesh.points()];
    boolean[] fixed = new boolean[2 * mesh.points()];
    for (int i = 0; i < mesh.points(); i++) {
      x[i] = mesh.x(i);
      y[i] = mesh.y(i);
    }
    for (int i = 0; i < fixed.length; i++) {
      fixed[i] = held.get(i);
    }
    int[] elements = new int[6 * mesh.triangles()];
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int p = 0; p < 6; p++) {
        elements[6 * t + p] = point(t, p);
      }
    }
    system = new SparseSystem(x, y, 2, elements, 6, fixed, new int[0]);
    stiffness = stiffness(a);
    factor = system.factor(stiffness);
    recovery = recovery();
  }

  /** The same mesh, held in the same way, of another plate. */
  MembraneModel(MembraneModel like, PlaneStiffness a) {
    mesh = like.mesh;
    held = like.held;
    system = like.system;
    recovery = like.recovery;
    stiffness = stiffness(a);
    factor = system.factor(stiffness);
  }

  private double[] stiffness(PlaneStiffness a) {
    MembraneTriangle triangle = new MembraneTriangle();
    double[] k = new double[SIZE * SIZE * mesh.triangles()];
    for (int t = 0; t < mesh.triangles(); t++) {
      place(triangle, t);
      triangle.stiffness(a, k, SIZE * SIZE * t);
    }
    return k;
  }

  private int point(int triangle, int p) {
    return p < 3 ? mesh.corner(triangle, p) : mesh.middle(triangle, p - 3);
  }

  private void place(MembraneTriangle triangle, int t) {
    for (int p = 0; p < 6; p++) {
      triangle.point(p, mesh.x(point(t, p)), mesh.y(point(t, p)));
    }
  }

  /** Whether the supports hold the plate. */
  public boolean isHeld() {
    return factor.sound();
  }

  /** Unknowns that were solved for. */
  public int unknowns() {
    return system.free();
  }

  /** The displacements under a load. */
  public double[] solve(double[] load) {
    return factor.solve(load);
  }

  /** The displacements under some loads. */
  double[][] solve(double[][] loads) {
    return factor.solve(loads, new int[0], moved -> moved);
  }

  /** What the supports give, and at free unknowns the load itself. */
  public double[] forces(double[] unknowns) {
    double[] forces = new double[unknowns.length];
    double[] own = new double[SIZE];
    for (int t = 0; t < mesh.triangles(); t++) {
      own(unknowns, t, own);
      int at = SIZE * SIZE * t;
      for (int i = 0; i < SIZE; i++) {
        double sum = 0;
        for (int j = 0; j < SIZE; j++) {
          sum += stiffness[at++] * own[j];
        }
        forces[2 * point(t, i / 2) + i % 2] += sum;
      }
    }
    return forces;
  }

  private void own(double[] unknowns, int t, double[] into) {
    for (int p = 0; p < 6; p++) {
      System.arraycopy(unknowns, 2 * point(t, p), into, 2 * p, 2);
    }
  }

  /**
   * Strains at the nodes (x, y, whole shear angle). See {@link NodalRecovery}; 0 where all about a
   * node is held.
   */
  public double[] strains(double[] unknowns) {
    return strains(new double[][] {unknowns})[0];
  }

  /** Strains of several loads at once: the triangles are looked at once for all. */
  double[][] strains(double[][] unknowns) {
    int loads = unknowns.length;
    MembraneTriangle triangle = new MembraneTriangle();
    double[] own = new double[SIZE];
    double[] found = new double[3];
    double[] values = new double[9 * loads * mesh.triangles()];
    for (int t = 0; t < mesh.triangles(); t++) {
      if (recovery.idle()[t]) {
        continue;
      }
      place(triangle, t);
      for (int s = 0; s < 3; s++) {
        triangle.at(s);
        int at = 3 * loads * (3 * t + s);
        for (int r = 0; r < loads; r++) {
          own(unknowns[r], t, own);
          triangle.strains(own, found);
          System.arraycopy(found, 0, values, at + 3 * r, 3);
        }
      }
    }
    double[] nodes = recovery.atNodes(values, 3 * loads);
    double[][] strains = new double[loads][3 * mesh.nodes()];
    for (int r = 0; r < loads; r++) {
      for (int i = 0; i < mesh.nodes(); i++) {
        System.arraycopy(nodes, 3 * (loads * i + r), strains[r], 3 * i, 3);
      }
    }
    return strains;
  }

  private NodalRecovery recovery() {
    MembraneTriangle triangle = new MembraneTriangle();
    int count = mesh.triangles();
    boolean[] idle = new boolean[count];
    double[] px = new double[3 * count];
    double[] py = new double[3 * count];
    for (int t = 0; t < count; t++) {
      place(triangle, t);
      idle[t] = true;
      for (int i = 0; i < SIZE; i++) {
        idle[t] &= held.get(2 * point(t, i / 2) + i % 2);
      }
      for (int s = 0; s < 3; s++) {
        px[3 * t + s] = triangle.innerX(s);
        py[3 * t + s] = triangle.innerY(s);
      }
    }
    return new NodalRecovery(mesh, idle, 3, px, py);
  }
}
