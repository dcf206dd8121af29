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

  /** Made when it is first asked for. */
  private NodalRecovery recovery;

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
    MembraneTriangle triangle = new MembraneTriangle();
    stiffness = new double[SIZE * SIZE * mesh.triangles()];
    for (int t = 0; t < mesh.triangles(); t++) {
      place(triangle, t);
      triangle.stiffness(a, stiffness, SIZE * SIZE * t);
    }
    factor = system.factor(stiffness);
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

  /** What the supports give, and at free unknowns the load itself. */
  public double[] forces(double[] unknowns) {
    double[] forces = new double[unknowns.length];
    for (int t = 0; t < mesh.triangles(); t++) {
      int base = SIZE * SIZE * t;
      for (int i = 0; i < SIZE; i++) {
        double sum = 0;
        for (int j = 0; j < SIZE; j++) {
          sum += stiffness[base + SIZE * i + j] * unknowns[2 * point(t, j / 2) + j % 2];
        }
        forces[2 * point(t, i / 2) + i % 2] += sum;
      }
    }
    return forces;
  }

  /**
   * Strains at the nodes (x, y, whole shear angle). See {@link NodalRecovery}; 0 where all about a
   * node is held.
   */
  public double[] strains(double[] unknowns) {
    MembraneTriangle triangle = new MembraneTriangle();
    double[] own = new double[SIZE];
    double[] found = new double[3];
    NodalRecovery told = recovery();
    double[][] values = new double[3][3 * mesh.triangles()];
    for (int t = 0; t < mesh.triangles(); t++) {
      if (told.idle()[t]) {
        continue;
      }
      place(triangle, t);
      for (int i = 0; i < own.length; i++) {
        own[i] = unknowns[2 * point(t, i / 2) + i % 2];
      }
      for (int s = 0; s < 3; s++) {
        triangle.strains(s, own, found);
        for (int i = 0; i < 3; i++) {
          values[i][3 * t + s] = found[i];
        }
      }
    }
    return told.atNodes(values);
  }

  private NodalRecovery recovery() {
    if (recovery == null) {
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
      recovery = new NodalRecovery(mesh, idle, 3, px, py);
    }
    return recovery;
  }
}
