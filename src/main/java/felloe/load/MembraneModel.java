package felloe.load;

import felloe.laminate.PlaneStiffness;
import felloe.mesh.PlateMesh;
import java.util.BitSet;

/**
 * A meshed plate under loads in its plane, held and ready to be loaded.
 *
 * <p>Unknowns of node i: displacements u at 3 i and v at 3 i + 1, mm, and its turn at 3 i + 2,
 * counter-clockwise. Loads go by the same numbers: N and N mm. Not shared between threads.
 */
public final class MembraneModel {

  private final HeldMesh on;
  private final SectionZones zones;

  /** The stiffness of all triangles, one after another. */
  private final double[] stiffness;

  private final BlockFactor factor;

  /**
   * Builds and factors.
   *
   * @param a membrane stiffness, N/mm
   * @param held unknowns that are held at zero
   */
  public MembraneModel(PlateMesh mesh, PlaneStiffness a, BitSet held) {
    this(new HeldMesh(mesh, held, new int[0]), SectionZones.even(a, a, Double.POSITIVE_INFINITY));
  }

  /** Builds and factors. */
  MembraneModel(HeldMesh on, SectionZones zones) {
    this.on = on;
    this.zones = zones;
    this.stiffness = on.stiffness(zones.stretching());
    this.factor = on.factor(stiffness);
  }

  /** The mesh, and what of it is held. */
  HeldMesh on() {
    return on;
  }

  /** Whether the supports hold the plate. */
  public boolean isHeld() {
    return factor.sound();
  }

  /** Unknowns that were solved for. */
  public int unknowns() {
    return on.free();
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
    return on.forces(stiffness, unknowns);
  }

  /** What the supports give; 0 at free unknowns. */
  double[] reactions(double[] unknowns) {
    return on.reactions(stiffness, unknowns);
  }

  /**
   * Strains at the nodes (x, y, whole shear angle), whatever pulls at the edges. See {@link
   * NodalRecovery}; 0 where all about a node is held.
   */
  public double[] strains(double[] unknowns) {
    return strained(new double[][] {unknowns}, NodalRecovery.Told.NONE)[0];
  }

  /**
   * Strains of several loads at once, at the nodes and then at other places, where nothing pulls at
   * the edges. See {@link FreeEdge}.
   */
  double[][] strains(double[][] unknowns, NodalRecovery.Told others) {
    double[][] strains = strained(unknowns, others);
    FreeEdge free = new FreeEdge(on.mesh(), on.held());
    for (int r = 0; r < strains.length; r++) {
      free.correctInPlane(unknowns[r], zones.bareInPlane(), strains[r]);
    }
    return strains;
  }

  private double[][] strained(double[][] unknowns, NodalRecovery.Told others) {
    return on.strained(zones.stretching(), unknowns, (t, x, y, shear) -> 0, others).places();
  }
}
