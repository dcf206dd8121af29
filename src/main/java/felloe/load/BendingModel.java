package felloe.load;

import felloe.laminate.PlaneStiffness;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
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

  private final HeldMesh on;
  private final SectionZones zones;

  /** The stiffness of all triangles, one after another. */
  private final double[] stiffness;

  private final BlockFactor factor;

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
    this(new HeldMesh(mesh, held, new int[0]), SectionZones.even(d, d, shear));
  }

  /** Builds and factors. */
  BendingModel(HeldMesh on, SectionZones zones) {
    this.on = on;
    this.zones = zones;
    this.stiffness = on.stiffness(zones.bending());
    this.factor = on.factor(stiffness);
  }

  /** The mesh, and what of it is held. */
  HeldMesh on() {
    return on;
  }

  /** Deflections of the nodes that are asked about under a push of 1 N at one of them, mm. */
  double[] underPush(int number) {
    return factor.amongLast(on.asked(), number);
  }

  /** Whether the supports hold the plate: without that nothing can be solved. */
  public boolean isHeld() {
    return factor.sound();
  }

  /** Unknowns that were solved for. */
  public int unknowns() {
    return on.free();
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
    return factor.solve(loads, on.asked(), pushes);
  }

  /** The load that a uniform pressure toward the driver makes, lumped at the nodes. */
  public double[] pressure(double mpa) {
    PlateMesh mesh = on.mesh();
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
    return on.forces(stiffness, unknowns);
  }

  /** What the supports give; 0 at free unknowns. */
  double[] reactions(double[] unknowns) {
    return on.reactions(stiffness, unknowns);
  }

  /**
   * What bends, and how much of the deflection is shear.
   *
   * @param curvatures at the nodes and then at other places, 1/mm, three each: -gx,x, -gy,y, -(gx,y
   *     + gy,x). See {@link NodalRecovery}, and along clamped edges {@link ClampedEdge}; 0 where
   *     all about a node is held
   * @param shearShare the energy of shear across the thickness over that of bending
   */
  record Bent(double[] curvatures, double shearShare) {}

  /** Curvatures at the nodes, see {@link Bent}. */
  public double[] curvatures(double[] unknowns) {
    return bent(unknowns).curvatures();
  }

  /** The energy of shear across the thickness over that of bending. */
  public double shearShare(double[] unknowns) {
    return bent(unknowns).shearShare();
  }

  private Bent bent(double[] unknowns) {
    double[] forces = forces(unknowns);
    double work = 0;
    for (int i = 0; i < forces.length; i++) {
      work += forces[i] * unknowns[i];
    }
    return bent(
            new double[][] {unknowns},
            new double[][] {forces},
            new double[] {work},
            NodalRecovery.Told.NONE)
        .get(0);
  }

  /**
   * What is bent, of several loads at once: the triangles are looked at once for all.
   *
   * @param reactions of the same loads
   * @param work what each load would do if it moved with the plate from the first: the sum of all
   *     its forces times their ways, N mm
   * @param others places beside the nodes at which it is asked for
   */
  List<Bent> bent(
      double[][] unknowns, double[][] reactions, double[] work, NodalRecovery.Told others) {
    HeldMesh.Strained strained = on.strained(zones.bending(), unknowns, zones::bent, others);
    FreeEdge free = new FreeEdge(on.mesh(), on.held());
    ClampedEdge clamped = new ClampedEdge(on.mesh(), zones.bare(), on.held(), on.idle());
    List<Bent> all = new ArrayList<>();
    for (int r = 0; r < unknowns.length; r++) {
      double[] curvatures = strained.places()[r];
      double bending = strained.energies()[r];
      if (zones.givesInShear()) {
        // A plate that does not give in shear keeps some twist at its edge.
        free.correct(unknowns[r], zones.bare(), curvatures);
      }
      clamped.correct(reactions[r], curvatures);
      boolean gives = zones.givesInShear() && bending > 0;
      all.add(new Bent(curvatures, gives ? Math.max(0, work[r] / 2 / bending - 1) : 0));
    }
    return all;
  }
}
