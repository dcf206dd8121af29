package felloe.load;

import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/**
 * A meshed plate on its hub: factored once, solved for every case.
 *
 * <p>Bending and stretching are reckoned apart, which holds for small deflections. Not shared
 * between threads.
 */
final class PlateOnHub {

  /** No strain is told nearer to a point force than this, in thicknesses: there it has no bound. */
  private static final double NEAR_FORCE = 1;

  private final PlateMesh mesh;
  private final PlateSection section;
  private final Support support;
  private final HeldPoints held;
  private final BendingModel bending;
  private final MembraneModel membrane;
  private final double[] areas;
  private final JudgingBook book = JudgingBook.builtIn();
  private final BitSet judged;
  private UnilateralContact face;

  /**
   * Builds.
   *
   * @param inPlane whether any case has forces in the plane
   */
  PlateOnHub(
      PlateMesh mesh, Region region, PlateSection section, Support support, boolean inPlane) {
    this.mesh = mesh;
    this.section = section;
    this.support = support;
    held = HeldPoints.of(mesh, support, book.faceBesideHead() * section.thickness());
    // The two know nothing of each other, and factoring is most of the work.
    CompletableFuture<MembraneModel> flat =
        inPlane
            ? CompletableFuture.supplyAsync(
                () -> new MembraneModel(mesh, section.a(), held.membrane()))
            : CompletableFuture.completedFuture(null);
    bending = new BendingModel(mesh, section.d(), section.shear(), held.bending(), held.face());
    membrane = flat.join();
    if (!bending.isHeld() || (membrane != null && !membrane.isHeld())) {
      throw new LoadException(
          "support", "the plate can move freely on it, or gives way in itself without end");
    }
    areas = LoadSpread.areas(mesh);
    judged = JudgedPlaces.of(mesh, region, section, support, book);
  }

  int unknowns() {
    return bending.unknowns() + (membrane == null ? 0 : membrane.unknowns());
  }

  CaseField solve(LoadCase load) {
    double[] out = new double[3 * mesh.nodes()];
    double[] along = new double[2 * mesh.points()];
    List<LoadSpread> spreads = new ArrayList<>();
    for (HandForce force : load.forces()) {
      LoadSpread spread = LoadSpread.over(mesh, areas, force.at(), load.patch());
      spreads.add(spread);
      for (int i = 0; i < spread.nodes().length; i++) {
        out[3 * spread.nodes()[i]] += force.z() * spread.shares()[i];
        along[2 * spread.nodes()[i]] += force.x() * spread.shares()[i];
        along[2 * spread.nodes()[i] + 1] += force.y() * spread.shares()[i];
      }
    }
    boolean flat = load.forces().stream().anyMatch(f -> f.x() != 0 || f.y() != 0);
    double[] bent = bend(out);
    double[] moved = flat ? membrane.solve(along) : new double[2 * mesh.points()];
    Forces given =
        new Forces(
            bending.forces(bent), flat ? membrane.forces(moved) : new double[2 * mesh.points()]);
    double[] curvatures = bending.curvatures(bent, given.out());
    double[] strains = flat ? membrane.strains(moved) : new double[3 * mesh.nodes()];
    double[] uses = uses(load, strains, curvatures);
    return field(load, spreads, bent, moved, given, strains, curvatures, uses);
  }

  /** Forces at the unknowns, out of the plane and in it. */
  private record Forces(double[] out, double[] flat) {}

  /** Bends the plate; where the hub's face pushes back, with its pushes. */
  private double[] bend(double[] load) {
    double[] bent = bending.solve(load);
    int[] places = held.face();
    if (places.length == 0) {
      return bent;
    }
    double[] free = new double[places.length];
    for (int i = 0; i < places.length; i++) {
      free[i] = bent[3 * places[i]];
    }
    if (face == null) {
      face = new UnilateralContact(bending::underPush);
    }
    double[] push = face.against(free);
    double[] pushed = load.clone();
    for (int i = 0; i < places.length; i++) {
      pushed[3 * places[i]] += push[i];
    }
    return bending.solve(pushed);
  }

  private double[] uses(LoadCase load, double[] e, double[] k) {
    double[] uses = new double[mesh.nodes()];
    for (int i = 0; i < uses.length; i++) {
      int n = 3 * i;
      uses[i] =
          near(load, i)
              ? 0
              : section.strength().use(e[n], e[n + 1], e[n + 2], k[n], k[n + 1], k[n + 2]);
    }
    return uses;
  }

  private boolean near(LoadCase load, int node) {
    return load.patch() == 0
        && load.forces().stream().anyMatch(f -> distance(node, f.at()) < nearForce());
  }

  private double nearForce() {
    return NEAR_FORCE * section.thickness();
  }

  private double distance(int node, Point p) {
    return Math.hypot(mesh.x(node) - p.x(), mesh.y(node) - p.y());
  }

  private CaseField field(
      LoadCase load,
      List<LoadSpread> spreads,
      double[] bent,
      double[] moved,
      Forces given,
      double[] e,
      double[] k,
      double[] uses) {
    double[] deflections = new double[mesh.nodes()];
    double[] slides = new double[mesh.nodes()];
    int peak = 0;
    double peakMove = -1;
    int worst = 0;
    for (int i = 0; i < mesh.nodes(); i++) {
      deflections[i] = bent[3 * i];
      slides[i] = Math.hypot(moved[2 * i], moved[2 * i + 1]);
      double move = Math.hypot(bent[3 * i], slides[i]);
      if (move > peakMove) {
        peakMove = move;
        peak = i;
      }
      if (judged.get(i) && (!judged.get(worst) || uses[i] > uses[worst])) {
        worst = i;
      }
    }
    int n = 3 * worst;
    List<Double> atLoads = new ArrayList<>();
    for (int f = 0; f < spreads.size(); f++) {
      atLoads.add(along(load.forces().get(f), spreads.get(f), bent, moved));
    }
    HubReaction reaction = new HubReaction(mesh, support, held);
    return new CaseField(
        load,
        deflections,
        slides,
        e,
        k,
        uses,
        atLoads,
        peakMove,
        mesh.point(peak),
        section.strength().worst(e[n], e[n + 1], e[n + 2], k[n], k[n + 1], k[n + 2]),
        mesh.point(worst),
        reaction.bolts(given.out(), given.flat()),
        HubReaction.balancing(load),
        bending.shearShare(bent),
        judged);
  }

  /** How far the patch of a force moves along it, mm. */
  private static double along(HandForce force, LoadSpread spread, double[] bent, double[] moved) {
    double sum = 0;
    for (int i = 0; i < spread.nodes().length; i++) {
      int node = spread.nodes()[i];
      double work =
          force.z() * bent[3 * node]
              + force.x() * moved[2 * node]
              + force.y() * moved[2 * node + 1];
      sum += spread.shares()[i] * work;
    }
    return sum / force.size();
  }
}
