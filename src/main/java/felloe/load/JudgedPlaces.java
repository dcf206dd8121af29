package felloe.load;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Which nodes of a mesh are judged: all but those beside what is rigid or sharp, where stresses
 * have no bound, and of laminates those nearer to an edge than the point-stress criterion looks.
 */
final class JudgedPlaces {

  private static final double ON = 1e-6;

  /** A turn below this, radians, is no corner. */
  private static final double SMOOTH = Math.toRadians(10);

  private JudgedPlaces() {}

  /**
   * The nodes.
   *
   * @param off how far each is from an edge of the material, mm
   */
  static BitSet of(
      PlateMesh mesh,
      Region region,
      PlateSection section,
      Support support,
      JudgingBook book,
      double[] off) {
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
    boolean laminate = section.strength().plies() > 0;
    BitSet judged = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      Point p = mesh.point(i);
      boolean inside = rings.stream().anyMatch(r -> r.at().distance(p) < r.radius() - ON);
      boolean near = laminate && off[i] < 0.97 * book.pointStress();
      judged.set(i, !inside && !near);
    }
    return judged;
  }

  private record Ring(Point at, double radius) {}

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
