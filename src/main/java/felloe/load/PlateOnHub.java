package felloe.load;

import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;

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
  private final SectionZones zones;
  private final Support support;
  private final HeldPoints held;
  private final BendingModel bending;
  private final MembraneModel membrane;

  /** How many times as stiff in its plane this plate is as that of the membrane model. */
  private final double stiffer;

  private final double[] areas;

  /** The nearest edges of the nodes. */
  private final EdgeNearest edge;

  private final Optional<EdgeTwist> twist;

  private final Region region;
  private final JudgingBook book = JudgingBook.builtIn();
  private final JudgedPlaces judged;

  /** How the places beside what is rigid or sharp are told. */
  private final NodalRecovery.Told beside;

  /** The zones of nodes and those places. */
  private final int[] zone;

  /**
   * Builds.
   *
   * @param inPlane whether any case has forces in the plane
   */
  PlateOnHub(
      PlateMesh mesh, Region region, PlateSection section, Support support, boolean inPlane) {
    this.mesh = mesh;
    this.region = region;
    this.section = section;
    this.support = support;
    held = held();
    zones = SectionZones.of(mesh, section);
    HeldMesh on = new HeldMesh(mesh, held.nodes(), held.face(), zones.triangles());
    // The two know nothing of each other, and factoring is most of the work.
    CompletableFuture<MembraneModel> flat =
        inPlane
            ? CompletableFuture.supplyAsync(() -> new MembraneModel(on.inPlane(), zones))
            : CompletableFuture.completedFuture(null);
    bending = new BendingModel(on, zones);
    areas = LoadSpread.areas(mesh);
    edge = EdgeNearest.of(mesh, region);
    judged = JudgedPlaces.of(mesh, region, section, support, book, edge);
    beside = on.at(judged.beside());
    zone = zones.places(beside);
    twist = twist();
    membrane = flat.join();
    stiffer = 1;
    refuseLoose();
  }

  /** The same mesh, held in the same way, of another plate. */
  private PlateOnHub(PlateOnHub like, PlateSection section) {
    mesh = like.mesh;
    region = like.region;
    this.section = section;
    support = like.support;
    areas = like.areas;
    edge = like.edge;
    held = held();
    zones = SectionZones.of(mesh, section);
    HeldMesh on = like.bending.on().asking(held.face());
    judged = JudgedPlaces.of(mesh, region, section, support, book, edge);
    beside = on.at(judged.beside());
    zone = zones.places(beside);
    twist = twist();
    bending = new BendingModel(on, zones);
    OptionalDouble multiple =
        zones.even() ? section.a().multipleOf(like.section.a()) : OptionalDouble.empty();
    boolean shared = like.membrane == null || multiple.isPresent();
    membrane = shared ? like.membrane : new MembraneModel(like.membrane.on(), zones);
    stiffer = shared ? like.stiffer * multiple.orElse(1) : 1;
    refuseLoose();
  }

  /** Another plate on the same mesh, held in the same way. */
  PlateOnHub of(PlateSection other) {
    return new PlateOnHub(this, other);
  }

  private HeldPoints held() {
    return HeldPoints.of(mesh, support, book.faceBesideHead() * section.thickness());
  }

  /**
   * Of a plate whose edge layer is too thin to be seen there is nothing to tell. In a laminate the
   * plies share the twist in their own ways.
   */
  private Optional<EdgeTwist> twist() {
    if (section.edgeRows().isEmpty() || section.strength().plies() > 0) {
      return Optional.empty();
    }
    EdgeNearest all = edge.and(judged.beside(), region);
    return Optional.of(
        new EdgeTwist(
            all,
            section.edgeLayer(),
            place -> support.holds(all.at()[place]) || (zone.length > 0 && zone[place] > 0)));
  }

  private void refuseLoose() {
    if (!bending.isHeld() || (membrane != null && !membrane.isHeld())) {
      throw new LoadException(
          "support", "the plate can move freely on it, or gives way in itself without end");
    }
  }

  int unknowns() {
    return bending.unknowns() + (membrane == null ? 0 : membrane.unknowns());
  }

  /**
   * What each case does, in their order. A force at a point has a node of its own and its image has
   * none, so that images are left out where there is one.
   */
  List<CaseField> solve(List<LoadCase> cases) {
    PlateSymmetry symmetry = PlateSymmetry.of(region, section, support);
    boolean points = cases.stream().anyMatch(one -> one.patch() == 0);
    boolean images = !points && !symmetry.isNone();
    List<LoadCase> all = images ? symmetry.all(cases) : cases;
    double[][] out = new double[all.size()][3 * mesh.nodes()];
    double[][] along = new double[all.size()][3 * mesh.nodes()];
    List<List<LoadSpread>> spreads = new ArrayList<>();
    for (int c = 0; c < all.size(); c++) {
      spreads.add(spread(all.get(c), out[c], along[c]));
    }
    CompletableFuture<Stretched> flat =
        CompletableFuture.supplyAsync(() -> stretched(all, along, cases.size()));
    UnilateralContact face = new UnilateralContact(bending::underPush);
    double[][] bent = bending.solve(out, face::against);
    double[][] given = Arrays.stream(bent).map(bending::reactions).toArray(double[][]::new);
    List<BendingModel.Bent> told = told(out, bent, given, cases.size());
    Stretched moved = flat.join();
    HubReaction reaction = new HubReaction(support, held);
    List<Movement> movements = new ArrayList<>();
    for (int c = 0; c < all.size(); c++) {
      List<Double> atLoads = new ArrayList<>();
      for (int f = 0; f < spreads.get(c).size(); f++) {
        HandForce force = all.get(c).forces().get(f);
        atLoads.add(along(force, spreads.get(c).get(f), bent[c], moved.moves()[c]));
      }
      List<CaseField.BoltForce> bolts = reaction.bolts(given[c], moved.forces()[c]);
      movements.add(new Movement(all.get(c), atLoads, bolts));
    }
    List<Movement> means = images ? symmetry.means(movements, cases.size()) : movements;
    return IntStream.range(0, cases.size())
        .parallel()
        .mapToObj(
            c -> field(means.get(c), bent[c], moved.moves()[c], moved.strains()[c], told.get(c)))
        .toList();
  }

  /** What bends in the first cases; of images nobody asks it. */
  private List<BendingModel.Bent> told(
      double[][] out, double[][] bent, double[][] given, int cases) {
    double[] work = new double[cases];
    for (int c = 0; c < cases; c++) {
      for (int i = 0; i < out[c].length; i++) {
        // Where the hub's face pushes nothing moves.
        work[c] += out[c][i] * bent[c][i];
      }
    }
    List<BendingModel.Bent> told =
        bending.bent(Arrays.copyOf(bent, cases), Arrays.copyOf(given, cases), work, beside);
    twist.ifPresent(faces -> told.forEach(one -> faces.correct(one.curvatures())));
    return told;
  }

  /** Puts a case's forces on the nodes, and tells over which they are spread. */
  private List<LoadSpread> spread(LoadCase load, double[] out, double[] along) {
    List<LoadSpread> spreads = new ArrayList<>();
    for (HandForce force : load.forces()) {
      LoadSpread spread = LoadSpread.over(mesh, areas, force.at(), load.patch());
      spreads.add(spread);
      for (int i = 0; i < spread.nodes().length; i++) {
        out[3 * spread.nodes()[i]] += force.z() * spread.shares()[i];
        along[3 * spread.nodes()[i]] += force.x() * spread.shares()[i];
        along[3 * spread.nodes()[i] + 1] += force.y() * spread.shares()[i];
      }
    }
    return spreads;
  }

  /** What happens in the plane, case by case; 0 in cases without forces in it. */
  private record Stretched(double[][] moves, double[][] forces, double[][] strains) {}

  private Stretched stretched(List<LoadCase> cases, double[][] along, int told) {
    int[] flat =
        IntStream.range(0, cases.size())
            .filter(c -> cases.get(c).forces().stream().anyMatch(f -> f.x() != 0 || f.y() != 0))
            .toArray();
    double[][] moves = new double[cases.size()][3 * mesh.nodes()];
    double[][] forces = new double[cases.size()][3 * mesh.nodes()];
    double[][] strains = new double[told][3 * places()];
    if (flat.length > 0) {
      double[][] solved =
          membrane.solve(IntStream.of(flat).mapToObj(c -> along[c]).toArray(double[][]::new));
      int asked = (int) IntStream.of(flat).filter(c -> c < told).count();
      double[][] strained = membrane.strains(Arrays.copyOf(solved, asked), beside);
      for (int i = 0; i < flat.length; i++) {
        forces[flat[i]] = membrane.reactions(solved[i]);
        moves[flat[i]] = softer(solved[i]);
        if (i < asked) {
          strains[flat[i]] = softer(strained[i]);
        }
      }
    }
    return new Stretched(moves, forces, strains);
  }

  private double[] softer(double[] values) {
    return stiffer == 1 ? values : Arrays.stream(values).map(v -> v / stiffer).toArray();
  }

  private double[] uses(LoadCase load, double[] e, double[] k) {
    double[] uses = new double[places()];
    for (int i = 0; i < uses.length; i++) {
      int n = 3 * i;
      uses[i] =
          near(load, i)
              ? 0
              : section.strength().use(e[n], e[n + 1], e[n + 2], k[n], k[n + 1], k[n + 2]);
    }
    return uses;
  }

  /** Nodes, and places beside what is rigid or sharp. */
  private int places() {
    return mesh.nodes() + judged.beside().size();
  }

  private Point place(int number) {
    return CaseField.place(mesh, judged.beside(), number);
  }

  private boolean near(LoadCase load, int place) {
    return load.patch() == 0
        && load.forces().stream().anyMatch(f -> place(place).distance(f.at()) < nearForce());
  }

  private double nearForce() {
    return NEAR_FORCE * section.thickness();
  }

  private CaseField field(
      Movement movement, double[] bent, double[] moved, double[] flat, BendingModel.Bent told) {
    LoadCase load = movement.load();
    double[] k = told.curvatures();
    double[] e = zones.stretched(flat, k, zone);
    BitSet counts = (BitSet) judged.nodes().clone();
    counts.set(mesh.nodes(), places());
    double[] uses = uses(load, e, k);
    double[] deflections = new double[mesh.nodes()];
    double[] slides = new double[mesh.nodes()];
    int peak = 0;
    double peakMove = -1;
    int worst = 0;
    for (int i = 0; i < mesh.nodes(); i++) {
      deflections[i] = bent[3 * i];
      double square = moved[3 * i] * moved[3 * i] + moved[3 * i + 1] * moved[3 * i + 1];
      slides[i] = Math.sqrt(square);
      double move = Math.sqrt(bent[3 * i] * bent[3 * i] + square);
      if (move > peakMove) {
        peakMove = move;
        peak = i;
      }
    }
    for (int i = 0; i < places(); i++) {
      if (counts.get(i) && (!counts.get(worst) || uses[i] > uses[worst])) {
        worst = i;
      }
    }
    int n = 3 * worst;
    return new CaseField(
        load,
        deflections,
        slides,
        judged.beside(),
        e,
        k,
        uses,
        movement.atLoads(),
        peakMove,
        mesh.point(peak),
        section.strength().worst(e[n], e[n + 1], e[n + 2], k[n], k[n + 1], k[n + 2]),
        place(worst),
        movement.bolts(),
        HubReaction.balancing(load),
        told.shearShare(),
        counts);
  }

  /** How far the patch of a force moves along it, mm. */
  private static double along(HandForce force, LoadSpread spread, double[] bent, double[] moved) {
    double sum = 0;
    for (int i = 0; i < spread.nodes().length; i++) {
      int node = spread.nodes()[i];
      double work =
          force.z() * bent[3 * node]
              + force.x() * moved[3 * node]
              + force.y() * moved[3 * node + 1];
      sum += spread.shares()[i] * work;
    }
    return sum / force.size();
  }
}
