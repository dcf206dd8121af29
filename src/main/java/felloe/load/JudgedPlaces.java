package felloe.load;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Where a meshed plate is judged: everywhere but beside what is rigid or sharp, where stresses have
 * no bound, and of laminates nearer to an edge than the point-stress criterion looks.
 *
 * <p>Stresses are highest right where judging begins, and beside a head they fall by a tenth within
 * a millimetre. Nodes stand there only by chance: from the nearest ones alone laminates were told 2
 * to 7 percent less used than they are. So they are joined by places on the rings about what is
 * rigid or sharp.
 *
 * @param nodes the nodes
 * @param beside places on those rings
 */
record JudgedPlaces(BitSet nodes, List<Point> beside) {

  private static final double ON = 1e-6;

  /** A turn below this, radians, is no corner. */
  private static final double SMOOTH = Math.toRadians(10);

  /** Places on a ring: a stress that goes twice up and down on it is told within 0.4 percent. */
  private static final int ROUND = 72;

  /**
   * What lies a little nearer to an edge than laminates are judged: rows of nodes are not exact.
   */
  private static final double ABOUT = 0.97;

  /**
   * The places.
   *
   * @param edge the nearest edge of each node
   */
  static JudgedPlaces of(
      PlateMesh mesh,
      Region region,
      PlateSection section,
      Support support,
      JudgingBook book,
      EdgeNearest edge) {
    double away = book.besideRigid() * section.thickness();
    List<Ring> rings = new ArrayList<>();
    if (support instanceof Support.Bolted bolted) {
      bolted.bolts().forEach(b -> rings.add(new Ring(b.at(), b.head() / 2 + away)));
    } else {
      clampEnds(mesh, ((Support.Clamped) support).diameter() / 2, away, rings);
    }
    for (int c = 0; c < region.contours().size(); c++) {
      corners(region.contours().get(c), c == 0, away, rings);
    }
    double least = section.strength().plies() > 0 ? ABOUT * book.pointStress() : 0;
    BitSet judged = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      judged.set(i, edge.off()[i] >= least && clear(mesh.point(i), rings));
    }
    return new JudgedPlaces(judged, beside(rings, region, least));
  }

  private static boolean clear(Point p, List<Ring> rings) {
    return rings.stream().noneMatch(r -> r.at().distance(p) < r.radius() - ON);
  }

  private record Ring(Point at, double radius) {}

  private static List<Point> beside(List<Ring> rings, Region region, double least) {
    SegmentIndex edges = SegmentIndex.of(region.contours());
    List<Point> beside = new ArrayList<>();
    for (Ring ring : rings) {
      for (int i = 0; i < ROUND; i++) {
        Point p = ring.at().plus(Point.polar(ring.radius(), 2 * Math.PI * i / ROUND));
        if (clear(p, rings) && region.contains(p) && edges.distance(p) >= least) {
          beside.add(p);
        }
      }
    }
    return beside;
  }

  /** Where the clamped circle ends at a free edge: a held node of an edge beside a free one. */
  private static void clampEnds(PlateMesh mesh, double radius, double away, List<Ring> rings) {
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3; c++) {
        int a = mesh.corner(t, c);
        int b = mesh.corner(t, (c + 1) % 3);
        if (mesh.onEdge(a) && mesh.onEdge(b)) {
          boolean holdsA = mesh.point(a).norm() <= radius + ON;
          boolean holdsB = mesh.point(b).norm() <= radius + ON;
          if (holdsA != holdsB) {
            rings.add(new Ring(mesh.point(holdsA ? a : b), away));
          }
        }
      }
    }
  }

  /** Corners that point into the material. */
  private static void corners(Contour contour, boolean outer, double away, List<Ring> rings) {
    List<Segment> segments = contour.segments();
    for (int i = 0; i < segments.size(); i++) {
      Point before = segments.get(Math.floorMod(i - 1, segments.size())).tangent(1);
      Point after = segments.get(i).tangent(0);
      double turn = Math.atan2(before.cross(after), before.dot(after));
      // The outline runs with the material on its left, holes with it on their right.
      if ((outer ? -turn : turn) > SMOOTH) {
        rings.add(new Ring(segments.get(i).from(), away));
      }
    }
  }
}
