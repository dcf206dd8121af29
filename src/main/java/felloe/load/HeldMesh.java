package felloe.load;

import felloe.geometry.Point;
import felloe.mesh.PlateMesh;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A mesh and what of it is held, laid out once for every plate and for bending as for stretching:
 * three unknowns a node, numbered 3 i to 3 i + 2. Immutable.
 */
final class HeldMesh {

  /** Area coordinates of the points where strains are read. */
  private static final double NEAR = 2.0 / 3;

  private static final double FAR = 1.0 / 6;

  private static final int SIZE = PlateTriangle.UNKNOWNS;

  private final PlateMesh mesh;
  private final BitSet held;
  private final int[] asked;
  private final MeshOrder order;
  private final SparseSystem system;
  private final NodalRecovery recovery;
  private final int[] supported;

  /**
   * Lays it out.
   *
   * @param held unknowns that are held at zero
   * @param asked nodes whose first unknowns are asked about under pushes at one another
   */
  HeldMesh(PlateMesh mesh, BitSet held, int[] asked) {
    this(mesh, held, asked, new int[0]);
  }

  /**
   * Lays it out.
   *
   * @param zones of the triangles, where not all are alike; 0 for bare ones
   */
  HeldMesh(PlateMesh mesh, BitSet held, int[] asked, int[] zones) {
    this(mesh, (BitSet) held.clone(), asked.clone(), order(mesh), recovery(mesh, held, zones));
  }

  private HeldMesh(
      PlateMesh mesh, BitSet held, int[] asked, MeshOrder order, NodalRecovery recovery) {
    this.mesh = mesh;
    this.order = order;
    this.held = held;
    this.asked = asked;
    this.recovery = recovery;
    this.system = system();
    this.supported = supported();
  }

  /** The same with other nodes to ask about. */
  HeldMesh asking(int[] other) {
    return Arrays.equals(asked, other)
        ? this
        : new HeldMesh(mesh, held, other.clone(), order, recovery);
  }

  /**
   * The same in its plane. Where material begins that is not held, a held node may still turn:
   * along a clamped edge shear turns it.
   */
  HeldMesh inPlane() {
    BitSet fast = (BitSet) held.clone();
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3 && !idle()[t]; c++) {
        fast.clear(3 * mesh.corner(t, c) + 2);
      }
    }
    return new HeldMesh(mesh, fast, new int[0], order, recovery);
  }

  private static MeshOrder order(PlateMesh mesh) {
    double[] x = new double[mesh.nodes()];
    double[] y = new double[mesh.nodes()];
    for (int i = 0; i < mesh.nodes(); i++) {
      x[i] = mesh.x(i);
      y[i] = mesh.y(i);
    }
    int[] elements = new int[3 * mesh.triangles()];
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3; c++) {
        elements[3 * t + c] = mesh.corner(t, c);
      }
    }
    return MeshOrder.of(x, y, 3, elements, 3);
  }

  private SparseSystem system() {
    boolean[] fixed = new boolean[3 * mesh.nodes()];
    for (int i = 0; i < fixed.length; i++) {
      fixed[i] = held.get(i);
    }
    return new SparseSystem(order, fixed, asked);
  }

  PlateMesh mesh() {
    return mesh;
  }

  BitSet held() {
    return held;
  }

  /** Triangles of which all is held. */
  boolean[] idle() {
    return recovery.idle();
  }

  /** The first unknowns of the nodes that are asked about. */
  int[] asked() {
    return Arrays.stream(asked).map(node -> 3 * node).toArray();
  }

  /** Unknowns that are not held. */
  int free() {
    return system.free();
  }

  /** The stiffness of all triangles, one after another; none of idle ones. */
  double[] stiffness(PlateTriangle triangle) {
    double[] k = new double[SIZE * SIZE * mesh.triangles()];
    for (int t = 0; t < mesh.triangles(); t++) {
      if (idle()[t]) {
        continue;
      }
      triangle.on(mesh, t);
      triangle.stiffness(k, SIZE * SIZE * t);
    }
    return k;
  }

  /** Factors. */
  BlockFactor factor(double[] stiffness) {
    return system.factor(stiffness);
  }

  /** What the supports give, and at free unknowns the load itself: the stiffness times them. */
  double[] forces(double[] stiffness, double[] unknowns) {
    double[] forces = new double[unknowns.length];
    double[] own = new double[SIZE];
    for (int t = 0; t < mesh.triangles(); t++) {
      forces(stiffness, unknowns, t, own, forces);
    }
    return forces;
  }

  /** What the supports give; 0 at free unknowns. */
  double[] reactions(double[] stiffness, double[] unknowns) {
    double[] forces = new double[unknowns.length];
    double[] own = new double[SIZE];
    for (int t : supported) {
      forces(stiffness, unknowns, t, own, forces);
    }
    for (int i = held.nextClearBit(0); i < forces.length; i = held.nextClearBit(i + 1)) {
      forces[i] = 0;
    }
    return forces;
  }

  private void forces(double[] stiffness, double[] unknowns, int t, double[] own, double[] into) {
    own(unknowns, t, own);
    int at = SIZE * SIZE * t;
    for (int i = 0; i < SIZE; i++) {
      double sum = 0;
      for (int j = 0; j < SIZE; j++) {
        sum += stiffness[at++] * own[j];
      }
      into[3 * mesh.corner(t, i / 3) + i % 3] += sum;
    }
  }

  /** Triangles that touch what is held, without idle ones. */
  private int[] supported() {
    return IntStream.range(0, mesh.triangles())
        .filter(t -> !idle()[t])
        .filter(t -> IntStream.range(0, SIZE).anyMatch(i -> held.get(unknown(t, i))))
        .toArray();
  }

  private int unknown(int triangle, int number) {
    return 3 * mesh.corner(triangle, number / 3) + number % 3;
  }

  private void own(double[] unknowns, int t, double[] into) {
    for (int c = 0; c < 3; c++) {
      System.arraycopy(unknowns, 3 * mesh.corner(t, c), into, 3 * c, 3);
    }
  }

  /**
   * What is strained at the nodes.
   *
   * @param places of each load, three figures a node and then three each of other places; 0 where
   *     all about a node is held
   * @param energies of each load: half the sum of strains, stiffness and strains over the plate
   */
  record Strained(double[][] places, double[] energies) {}

  /** The energy of strains at a place, for each mm2, times two. */
  interface Density {
    double of(int triangle, double x, double y, double shear);
  }

  /** How strains at other places than nodes are told. */
  NodalRecovery.Told at(List<Point> places) {
    return recovery.at(places);
  }

  /**
   * What some loads strain: the triangles are looked at once for all.
   *
   * @param others places beside the nodes at which it is asked for
   */
  Strained strained(
      PlateTriangle triangle, double[][] unknowns, Density density, NodalRecovery.Told others) {
    int loads = unknowns.length;
    double[][] own = new double[loads][SIZE];
    double[] values = new double[9 * loads * mesh.triangles()];
    double[] energies = new double[loads];
    for (int t = 0; t < mesh.triangles(); t++) {
      if (idle()[t]) {
        continue;
      }
      triangle.on(mesh, t);
      for (int r = 0; r < loads; r++) {
        own(unknowns[r], t, own[r]);
      }
      for (int s = 0; s < 3; s++) {
        triangle.at(near(s, 0), near(s, 1), near(s, 2));
        for (int r = 0; r < loads; r++) {
          int at = 3 * (loads * (3 * t + s) + r);
          triangle.strains(own[r], values, at);
          // Strains are linear over a triangle, so that these three points are exact.
          energies[r] +=
              triangle.area() / 6 * density.of(t, values[at], values[at + 1], values[at + 2]);
        }
      }
    }
    double[] told = recovery.told(values, 3 * loads, others);
    int places = mesh.nodes() + others.nodes().length;
    double[][] strains = new double[loads][3 * places];
    for (int r = 0; r < loads; r++) {
      for (int i = 0; i < places; i++) {
        System.arraycopy(told, 3 * (loads * i + r), strains[r], 3 * i, 3);
      }
    }
    return new Strained(strains, energies);
  }

  private static double near(int sample, int corner) {
    return sample == corner ? NEAR : FAR;
  }

  private static NodalRecovery recovery(PlateMesh mesh, BitSet held, int[] zones) {
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
    return new NodalRecovery(mesh, idle, zones, 3, px, py);
  }
}
