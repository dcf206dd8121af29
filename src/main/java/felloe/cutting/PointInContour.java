package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;

/** Tells inside from outside by how often a ray meets the edges: odd is inside. */
final class PointInContour {

  /** The ray is moved by this where it hits an end or only grazes, mm. */
  private static final double STEP = 1.7e-6;

  private static final double NEAR = 1e-9;
  private static final int TRIES = 40;

  private final SegmentIndex edges;
  private final double farthest;

  PointInContour(SegmentIndex edges, double farthest) {
    this.edges = edges;
    this.farthest = farthest;
  }

  /** Whether a point that does not lie on an edge lies in the material. */
  boolean material(Point p) {
    if (p.x() >= farthest) {
      return false;
    }
    for (int k = 0; k < TRIES; k++) {
      int crossings = crossings(new Point(p.x(), p.y() + k * STEP));
      if (crossings >= 0) {
        return crossings % 2 == 1;
      }
    }
    throw new IllegalStateException("no clear ray at " + p);
  }

  /** How many edges lie to the right at this height; -1 where the ray hits an end or grazes. */
  private int crossings(Point p) {
    int[] count = {0};
    edges.touching(
        new Box(p.x(), p.y() - NEAR, farthest, p.y() + NEAR),
        number -> {
          int here = crossings(edges.get(number), p);
          count[0] = count[0] < 0 || here < 0 ? -1 : count[0] + here;
        });
    return count[0];
  }

  private static int crossings(Segment edge, Point p) {
    boolean circle = edge instanceof Arc whole && whole.isCircle();
    if (!circle
        && (Math.abs(edge.from().y() - p.y()) < NEAR || Math.abs(edge.to().y() - p.y()) < NEAR)) {
      return -1;
    }
    if (edge instanceof Arc arc) {
      double dy = p.y() - arc.centre().y();
      double under = arc.radius() * arc.radius() - dy * dy;
      if (Math.abs(Math.abs(dy) - arc.radius()) < NEAR) {
        return -1;
      }
      if (under < 0) {
        return 0;
      }
      double dx = Math.sqrt(under);
      return meets(arc, arc.centre().x() + dx, p) + meets(arc, arc.centre().x() - dx, p);
    }
    boolean across = edge.from().y() > p.y() != edge.to().y() > p.y();
    if (!across) {
      return 0;
    }
    double part = (p.y() - edge.from().y()) / (edge.to().y() - edge.from().y());
    double x = edge.from().x() + part * (edge.to().x() - edge.from().x());
    return x > p.x() ? 1 : 0;
  }

  private static int meets(Arc arc, double x, Point p) {
    return x > p.x() && (arc.isCircle() || arc.passes(new Point(x, p.y()))) ? 1 : 0;
  }
}
