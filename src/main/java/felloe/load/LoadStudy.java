package felloe.load;

import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Tolerances;
import felloe.mesh.Fineness;
import felloe.mesh.MeshException;
import felloe.mesh.PlateMesh;
import felloe.mesh.PlateMesher;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * Reckons a plate under load cases, on finer and finer meshes until the figures no longer change.
 *
 * <p>Each mesh is finer everywhere, and finer still about the places of highest use. The last
 * change tells how sure the figures are.
 *
 * @param region the material, mm
 * @param section the plate through its thickness
 * @param support how the hub holds it
 * @param cases the load cases
 */
public record LoadStudy(
    Region region, PlateSection section, Support support, List<LoadCase> cases) {

  /** The longest edge of the first mesh, as a part of the plate's longer side. */
  private static final double FIRST = 1.0 / 28;

  /** Each mesh's edges as a part of the last one's. */
  private static final double FINER = 0.6;

  /** The error that is left, as a part of the last change, where edges are so much shorter. */
  private static final double LEFT = left(FINER);

  /**
   * By so much highest uses differ from one fine mesh to another as their nodes happen to stand, as
   * a part of them: up to 1.7 percent on the demo plates. No estimate is better than that.
   */
  private static final double SCATTER = 0.02;

  /** How much longer the edges of a mesh are that only shows where to look. */
  private static final double COARSE = 1.5;

  /** Edges on a circle of the first mesh. */
  private static final int ROUND = 24;

  /** Edges round the rim of the hub's face, of the first mesh. */
  private static final int FACE_EDGES = 54;

  /** Edges across the narrowest material of the first mesh. */
  private static final int ACROSS = 3;

  /** How much an edge may be longer than another, for each millimetre between them. */
  private static final double GROWTH = 0.33;

  /** Error of a bolt's tension that no longer matters, as a part of the largest. */
  private static final double TENSION = 0.05;

  /** Uses below this part of the highest need not settle. */
  static final double MATTERS = 0.7;

  /** Refuses a study without cases. */
  public LoadStudy {
    cases = List.copyOf(cases);
    if (cases.isEmpty()) {
      throw new IllegalArgumentException("a study needs load cases");
    }
  }

  /**
   * How long to go on.
   *
   * @param deflection error of a deflection that no longer matters, as a part of it
   * @param use error of a highest use that no longer matters, as a part of it
   * @param meshes the most meshes to try, at least 1
   * @param nodes the most nodes of a mesh
   */
  public record Patience(double deflection, double use, int meshes, int nodes) {

    /** The usual: 1 % of deflections, 4 % of uses, four meshes. */
    public static final Patience USUAL = new Patience(0.01, 0.04, 4, 60_000);
  }

  /**
   * Reckons.
   *
   * @throws LoadException when nothing holds the plate, or a force is not on it
   * @throws MeshException when the material is too narrow for a mesh of the size allowed
   * @throws CancellationException when its thread was interrupted
   */
  public LoadResult reckon(Patience patience) {
    return settled(patience, Optional.empty()).own().result();
  }

  /**
   * A plate held in one way, and on the same mesh in another.
   *
   * @param own settled
   * @param other where another way was asked for
   */
  record Settled(Reckoned own, Optional<Reckoned> other) {}

  /**
   * The same, with the factored plate.
   *
   * @param otherwise another way to be held, to be reckoned on the last mesh too
   */
  Settled settled(Patience patience, Optional<Support> otherwise) {
    Optional<LoadStudy> other = otherwise.map(way -> new LoadStudy(region, section, way, cases));
    refuseOffThePlate();
    double side = Math.max(region.outer().box().width(), region.outer().box().height());
    double edge = FIRST * side;
    List<Fineness.Spot> spots = new ArrayList<>(face(1));
    spots.addAll(scouted(edge, patience));
    Reckoned last = null;
    Optional<CompletableFuture<Reckoned>> beside = Optional.empty();
    for (int i = 0; i < patience.meshes(); i++) {
      stopIfTold();
      double across = ACROSS / Math.pow(FINER, i);
      int round = (int) Math.round(ROUND / Math.pow(FINER, i));
      Fineness fineness =
          new Fineness(edge, across, round, GROWTH, spots, patience.nodes(), section.edgeRows());
      PlateMesh mesh;
      try {
        mesh = PlateMesher.mesh(region, fineness, points(), circles());
      } catch (MeshException tooMany) {
        if (last == null) {
          throw tooMany;
        }
        break;
      }
      if (i > 0 || patience.meshes() == 1) {
        // Mostly the last mesh: the other way is reckoned at the same time.
        beside = other.map(study -> CompletableFuture.supplyAsync(() -> study.on(mesh)));
      }
      last = on(mesh, last == null ? null : last.result(), patience);
      if (last.result().settled() || i == patience.meshes() - 1) {
        break;
      }
      edge *= FINER;
      spots = new ArrayList<>(spots(last.result(), edge));
      spots.addAll(face(edge / FIRST / side));
    }
    PlateMesh mesh = last.result().mesh();
    return new Settled(
        last, beside.map(LoadStudy::joined).or(() -> other.map(study -> study.on(mesh))));
  }

  /**
   * Ends work whose thread was interrupted: what it is for has changed meanwhile.
   *
   * @throws CancellationException then
   */
  static void stopIfTold() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("told to stop");
    }
  }

  private static Reckoned joined(CompletableFuture<Reckoned> beside) {
    try {
      return beside.join();
    } catch (CompletionException failed) {
      if (failed.getCause() instanceof RuntimeException known) {
        throw known;
      }
      throw failed;
    }
  }

  /** The same plate and cases on a mesh that is there already. */
  private Reckoned on(PlateMesh mesh) {
    return on(mesh, null, Patience.USUAL);
  }

  /**
   * What was reckoned, and the factored plate that it was reckoned with.
   *
   * @param plate for other sections on the same mesh
   */
  record Reckoned(LoadResult result, PlateOnHub plate) {}

  private Reckoned on(PlateMesh mesh, LoadResult before, Patience patience) {
    boolean inPlane =
        cases.stream().flatMap(c -> c.forces().stream()).anyMatch(f -> f.x() != 0 || f.y() != 0);
    PlateOnHub plate = new PlateOnHub(mesh, region, section, support, inPlane);
    stopIfTold();
    List<CaseField> fields = plate.solve(cases);
    List<LoadResult.Change> changes = new ArrayList<>();
    boolean settled = before != null;
    double most = fields.stream().mapToDouble(f -> f.worst().use()).max().orElse(0);
    for (int i = 0; i < fields.size() && before != null; i++) {
      CaseField now = fields.get(i);
      CaseField then = before.cases().get(i);
      double deflection = change(then.atLoad(), now.atLoad());
      double use = change(then.worst().use(), now.worst().use());
      double left = Math.max(SCATTER, use * left(finer(before.mesh(), mesh, now.worstAt())));
      changes.add(new LoadResult.Change(deflection, use, left));
      boolean matters = now.worst().use() >= MATTERS * most;
      boolean well = LEFT * deflection <= patience.deflection();
      settled &= well && (!matters || left <= patience.use());
      settled &= LEFT * tensionChange(then, now) <= TENSION;
    }
    return new Reckoned(
        new LoadResult(section, support, mesh, fields, changes, plate.unknowns(), settled), plate);
  }

  /** How long the edges of a mesh are about a place, as a part of those of the mesh before. */
  private static double finer(PlateMesh before, PlateMesh mesh, Point at) {
    return mesh.edgeAt(at) / before.edgeAt(at);
  }

  /**
   * The error that is left, as a part of the last change: the method's error falls with the square
   * of the edge. Source: Richardson's extrapolation. About places of high use edges become shorter
   * than elsewhere; where they do not become shorter as all do, the change tells what it tells.
   */
  private static double left(double finer) {
    double part = Math.min(FINER, finer);
    return part * part / (1 - part * part);
  }

  /** The largest change of a bolt's tension, as a part of the largest tension. */
  private static double tensionChange(CaseField then, CaseField now) {
    double most = 0;
    double change = 0;
    for (int i = 0; i < now.bolts().size(); i++) {
      most = Math.max(most, now.bolts().get(i).tension());
      double apart = now.bolts().get(i).tension() - then.bolts().get(i).tension();
      change = Math.max(change, Math.abs(apart));
    }
    return most == 0 ? 0 : change / most;
  }

  private static double change(double then, double now) {
    return now == 0 ? 0 : Math.abs(now - then) / Math.abs(now);
  }

  /**
   * Where sheet that is judged at its very edge is likely to be used most, found on a coarse mesh:
   * its fillets and holes were told 6 to 35 percent too low by a first mesh that did not know.
   */
  private List<Fineness.Spot> scouted(double edge, Patience patience) {
    if (section.strength().plies() > 0) {
      // Laminates are judged a little farther in, and told well enough without.
      return List.of();
    }
    Fineness coarse =
        new Fineness(
            COARSE * edge,
            ACROSS / COARSE,
            (int) (ROUND / COARSE),
            GROWTH,
            List.of(),
            patience.nodes());
    try {
      PlateMesh mesh = PlateMesher.mesh(region, coarse, points(), circles());
      return spots(on(mesh).result(), edge);
    } catch (MeshException | LoadException tooCoarse) {
      // A finer mesh may do, or tells what is wrong.
      return List.of();
    }
  }

  /** Round the rim of the hub's face, or of each spacer, about which the plate rocks. */
  private List<Fineness.Spot> face(double finer) {
    List<Fineness.Spot> spots = new ArrayList<>();
    if (support instanceof Support.Bolted bolted) {
      for (Support.Disc disc : bolted.bearing()) {
        double edge = finer * Math.PI * disc.diameter() / FACE_EDGES;
        for (int i = 0; i < 2 * FACE_EDGES; i++) {
          Point off = Point.polar(disc.diameter() / 2, Math.PI * i / FACE_EDGES);
          spots.add(new Fineness.Spot(disc.at().plus(off), edge));
        }
      }
    }
    return spots;
  }

  private List<Fineness.Spot> spots(LoadResult last, double edge) {
    return new WorstSpots(region, section).about(last, edge);
  }

  private List<Point> points() {
    return cases.stream()
        .filter(c -> c.patch() == 0)
        .flatMap(c -> c.forces().stream())
        .map(HandForce::at)
        .distinct()
        .toList();
  }

  private List<PlateMesher.Circle> circles() {
    if (support instanceof Support.Clamped clamped) {
      return List.of(new PlateMesher.Circle(Point.ORIGIN, clamped.diameter() / 2));
    }
    Support.Bolted bolted = (Support.Bolted) support;
    List<PlateMesher.Circle> circles = new ArrayList<>();
    bolted.bolts().forEach(b -> circles.add(new PlateMesher.Circle(b.at(), b.head() / 2)));
    for (Support.Disc disc : bolted.bearing()) {
      circles.add(new PlateMesher.Circle(disc.at(), disc.diameter() / 2));
    }
    return circles;
  }

  private void refuseOffThePlate() {
    for (LoadCase load : cases) {
      for (HandForce force : load.forces()) {
        boolean on =
            region.contains(force.at())
                || region.contours().stream()
                    .anyMatch(c -> c.distance(force.at()) <= Tolerances.SAME_POINT);
        if (!on) {
          throw new LoadException(
              load.name(), "its force at " + force.at() + " is not on the plate; move it there");
        }
      }
    }
  }
}
