package felloe.load;

import felloe.laminate.PlaneStiffness;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A meshed plate in bending, held and ready to be loaded: the stiffness is assembled and factored
 * once, and then solved for each load.
 *
 * <p>Unknowns of node i: deflection w at 3 i, positive toward the driver, and the slopes of its
 * cross-sections gx at 3 i + 1 and gy at 3 i + 2, which are w,x and w,y where shear gives nothing.
 * Loads go by the same numbers: N and N mm. Not shared between threads.
 */
public final class BendingModel {

  /** Area coordinates of the points where curvatures are read. */
  private static final double NEAR = 2.0 / 3;

  private static final double FAR = 1.0 / 6;

  private static final int SIZE = ShearTriangle.UNKNOWNS;

  private final PlateMesh mesh;
  private final PlaneStiffness d;
  private final double shear;
  private final BitSet held;
  private final SparseSystem system;
  private final int[] asked;

  /** The stiffness of all triangles, one after another. */
  private final double[] stiffness;

  private final BlockFactor factor;
  private final NodalRecovery recovery;

  /**
   * Builds and factors a thin plate, which does not give in shear.
   *
   * @param d bending stiffness, N mm
   * @param held unknowns that are held at zero
   */
  public BendingModel(PlateMesh mesh, PlaneStiffness d, BitSet held) {
    this(mesh, d, Double.POSITIVE_INFINITY, held);
  }

  /**
   * Builds and factors.
   *
   * @param d bending stiffness, N mm
   * @param shear stiffness against shear across the thickness, N/mm
   * @param held unknowns that are held at zero
   */
  public BendingModel(PlateMesh mesh, PlaneStiffness d, double shear, BitSet held) {
    this(mesh, d, shear, held, new int[0]);
  }

  /**
   * Builds and factors.
   *
   * @param asked nodes about which {@link #underPush} is going to be asked
   */
  BendingModel(PlateMesh mesh, PlaneStiffness d, double shear, BitSet held, int[] asked) {
    this.mesh = mesh;
    this.d = d;
    this.shear = shear;
    this.held = (BitSet) held.clone();
    this.asked = asked.clone();
    this.system = system(mesh, this.held, this.asked);
    this.stiffness = stiffness();
    this.factor = system.factor(stiffness);
    this.recovery = recovery();
  }

  /** The same mesh, held in the same way, of another plate. */
  BendingModel(BendingModel like, PlaneStiffness d, double shear, int[] asked) {
    this.mesh = like.mesh;
    this.d = d;
    this.shear = shear;
    this.held = like.held;
    this.asked = asked.clone();
    this.system = Arrays.equals(asked, like.asked) ? like.system : system(mesh, held, asked);
    this.recovery = like.recovery;
    this.stiffness = stiffness();
    this.factor = system.factor(stiffness);
  }

  private static SparseSystem system(PlateMesh mesh, BitSet held, int[] asked) {
    double[] x = new double[mesh.nodes()];
    double[] y = new double[mesh.nodes()];
    boolean[] fixed = new boolean[3 * mesh.nodes()];
    for (int i = 0; i < mesh.nodes(); i++) {
      x[i] = mesh.x(i);
      y[i] = mesh.y(i);
    }
    for (int i = 0; i < fixed.length; i++) {
      fixed[i] = held.get(i);
    }
    int[] elements = new int[3 * mesh.triangles()];
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3; c++) {
        elements[3 * t + c] = mesh.corner(t, c);
      }
    }
    return new SparseSystem(x, y, 3, elements, 3, fixed, asked);
  }

  private double[] stiffness() {
    ShearTriangle triangle = new ShearTriangle(d, shear);
    double[] k = new double[SIZE * SIZE * mesh.triangles()];
    for (int t = 0; t < mesh.triangles(); t++) {
      triangle.on(mesh, t);
      triangle.stiffness(k, SIZE * SIZE * t);
    }
    return k;
  }

  /** Deflections of the nodes that are asked about under a push of 1 N at one of them, mm. */
  double[] underPush(int number) {
    int[] places = new int[asked.length];
    for (int i = 0; i < places.length; i++) {
      places[i] = 3 * asked[i];
    }
    return factor.amongLast(places, number);
  }

  /** Whether the supports hold the plate: without that nothing can be solved. */
  public boolean isHeld() {
    return factor.sound();
  }

  /** Unknowns that were solved for. */
  public int unknowns() {
    return system.free();
  }

  /** The unknowns under a load. */
  public double[] solve(double[] load) {
    return factor.solve(load);
  }

  /**
   * The unknowns under some loads, each with what it calls forth at the nodes that are asked about.
   *
   * @param pushes gives the forces there, N, for the deflections that the load by itself makes
   */
  double[][] solve(double[][] loads, UnaryOperator<double[]> pushes) {
    int[] places = new int[asked.length];
    for (int i = 0; i < places.length; i++) {
      places[i] = 3 * asked[i];
    }
    return factor.solve(loads, places, pushes);
  }

  /** The load that a uniform pressure toward the driver makes, lumped at the nodes. */
  public double[] pressure(double mpa) {
    double[] load = new double[3 * mesh.nodes()];
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3; c++) {
        load[3 * mesh.corner(t, c)] += mpa * mesh.area(t) / 3;
      }
    }
    return load;
  }

  /** What the supports give, and at free unknowns the load itself: the stiffness times them. */
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
        forces[3 * mesh.corner(t, i / 3) + i % 3] += sum;
      }
    }
    return forces;
  }

  private void own(double[] unknowns, int t, double[] into) {
    for (int c = 0; c < 3; c++) {
      System.arraycopy(unknowns, 3 * mesh.corner(t, c), into, 3 * c, 3);
    }
  }

  /**
   * What bends, and how much of the deflection is shear.
   *
   * @param curvatures at the nodes, 1/mm, three a node: -gx,x, -gy,y, -(gx,y + gy,x). See {@link
   *     NodalRecovery}, and along clamped edges {@link ClampedEdge}; 0 where all about a node is
   *     held
   * @param shearShare the energy of shear across the thickness over that of bending
   */
  record Bent(double[] curvatures, double shearShare) {}

  /** Curvatures at the nodes, see {@link Bent}. */
  public double[] curvatures(double[] unknowns) {
    return bent(new double[][] {unknowns}, new double[][] {forces(unknowns)}).get(0).curvatures();
  }

  /** The energy of shear across the thickness over that of bending. */
  public double shearShare(double[] unknowns) {
    return bent(new double[][] {unknowns}, new double[][] {forces(unknowns)}).get(0).shearShare();
  }

  /**
   * What is bent, of several loads at once: the triangles are looked at once for all.
   *
   * @param forces of the same loads, as {@link #forces} tells them
   */
  List<Bent> bent(double[][] unknowns, double[][] forces) {
    int loads = unknowns.length;
    ShearTriangle triangle = new ShearTriangle(d, shear);
    double[] own = new double[SIZE];
    double[] found = new double[3];
    double[] values = new double[9 * loads * mesh.triangles()];
    double[] energies = new double[loads];
    for (int t = 0; t < mesh.triangles(); t++) {
      if (recovery.idle()[t]) {
        continue;
      }
      triangle.on(mesh, t);
      for (int s = 0; s < 3; s++) {
        triangle.at(near(s, 0), near(s, 1), near(s, 2));
        int at = 3 * loads * (3 * t + s);
        for (int r = 0; r < loads; r++) {
          own(unknowns[r], t, own);
          triangle.curvatures(own, found);
          System.arraycopy(found, 0, values, at + 3 * r, 3);
          // Curvatures are linear over a triangle, so that these three points are exact.
          energies[r] += triangle.area() / 6 * d.square(found[0], found[1], found[2]);
        }
      }
    }
    double[] nodes = recovery.atNodes(values, 3 * loads);
    ClampedEdge edge = new ClampedEdge(mesh, d, held, recovery.idle());
    List<Bent> all = new ArrayList<>();
    for (int r = 0; r < loads; r++) {
      double[] curvatures = new double[3 * mesh.nodes()];
      double work = 0;
      for (int i = 0; i < mesh.nodes(); i++) {
        System.arraycopy(nodes, 3 * (loads * i + r), curvatures, 3 * i, 3);
      }
      for (int i = 0; i < forces[r].length; i++) {
        work += forces[r][i] * unknowns[r][i] / 2;
      }
      edge.correct(forces[r], curvatures);
      boolean gives = shear < Double.POSITIVE_INFINITY && energies[r] > 0;
      all.add(new Bent(curvatures, gives ? Math.max(0, work / energies[r] - 1) : 0));
    }
    return all;
  }

  private static double near(int sample, int corner) {
    return sample == corner ? NEAR : FAR;
  }

  private NodalRecovery recovery() {
    int count = mesh.triangles();
    boolean[] idle = new boolean[count];
    double[] px = new double[3 * count];
    double[] py = new double[3 * count];
    for (int t = 0; t < count; t++) {
      idle[t] = true;
      for (int i = 0; i < SIZE; i++) {
        idle[t] &= held.get(3 * mesh.corner(t, i / 3) + i % 3);
      }
      for (int s = 0; s < 3; s++) {
        for (int c = 0; c < 3; c++) {
          px[3 * t + s] += near(s, c) * mesh.x(mesh.corner(t, c));
          py[3 * t + s] += near(s, c) * mesh.y(mesh.corner(t, c));
        }
      }
    }
    return new NodalRecovery(mesh, idle, 3, px, py);
  }
}
