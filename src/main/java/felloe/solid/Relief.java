package felloe.solid;

import felloe.geometry.Arrangement;
import felloe.geometry.GeometryException;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Bodies with an upper and a lower face over a plan. Lines cut the plan into pieces; each piece has
 * a storey or none. Where neighbours differ in height an upright wall stands; each wall is cut at
 * all heights that occur at its ends, so that the skin is closed by construction. A piece whose
 * faces lie on each other has no body.
 *
 * <p>Accuracy: corners of the lines and heights stay bit for bit what they were, but that points
 * nearer to each other than {@link Arrangement#SNAP} are one, and so are heights at one point.
 */
public final class Relief {

  private Relief() {}

  /**
   * The body over a plan.
   *
   * @param lines rims of holes, edges of steps, rows and stations of a loft: wherever a face bends
   *     or ends
   * @throws GeometryException when nothing stands there, a top lies below its bottom, or the body
   *     would touch itself along an edge, with the place in plan
   */
  public static Solid of(List<PlanLine> lines, Plan plan) {
    ReliefMesh mesh = new ReliefMesh();
    for (Arrangement.Triangle piece :
        Arrangement.triangles(lines.stream().map(PlanLine::path).toList())) {
      Optional<Storey> storey = plan.at(piece.centroid());
      if (storey.isPresent()) {
        mesh.add(
            corner(piece.a(), storey.get()),
            corner(piece.b(), storey.get()),
            corner(piece.c(), storey.get()));
      }
    }
    return Solid.of(mesh.skin());
  }

  private static Corner corner(Point p, Storey storey) {
    double bottom = Numbers.finite("bottom", storey.bottom(p));
    double top = Numbers.finite("top", storey.top(p));
    if (top < bottom - Arrangement.SNAP) {
      throw new GeometryException(
          "a top at "
              + Numbers.brief(top, 3)
              + " mm lies below its bottom at "
              + Numbers.brief(bottom, 3)
              + " mm",
          p);
    }
    return new Corner(p, bottom, Math.max(bottom, top));
  }

  /** A corner of a piece with the heights of its faces there. */
  record Corner(Point at, double bottom, double top) {}

  /**
   * A slab with upright edges.
   *
   * @param chord greatest distance of a chord from its arc, mm
   */
  public static Solid slab(Region region, double bottom, double top, double chord) {
    PlanLine outer = PlanLine.of(region.outer(), chord);
    List<PlanLine> holes = region.holes().stream().map(hole -> PlanLine.of(hole, chord)).toList();
    List<PlanLine> all = new ArrayList<>(holes);
    all.add(outer);
    Optional<Storey> slab = Optional.of(Storey.level(bottom, top));
    return of(
        all,
        p ->
            outer.surrounds(p) && holes.stream().noneMatch(hole -> hole.surrounds(p))
                ? slab
                : Optional.empty());
  }
}
