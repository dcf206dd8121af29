package felloe.mesh;

import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.SegmentIndex;

/**
 * Fills the material with nodes from its edges inwards: round each node in turn, new ones about as
 * far off as the place wants, where no other is too near.
 */
final class Filling {

  /** Places tried round each node. */
  private static final int TRIES = 12;

  /** How near another node may be, as a part of the edge wanted. */
  private static final double NEAREST = 0.72;

  /** How near an edge of the material may be: a row of even triangles stands 0.87 off. */
  private static final double FROM_EDGE = 0.55;

  private final Region region;
  private final SegmentIndex edges;
  private final SizeField sizes;
  private final NodeList nodes;

  Filling(Region region, SegmentIndex edges, SizeField sizes, NodeList nodes) {
    this.region = region;
    this.edges = edges;
    this.sizes = sizes;
    this.nodes = nodes;
  }

  void fill() {
    // The ways to look, those of every other node between those of the others.
    Point[] ways = new Point[2 * TRIES];
    for (int k = 0; k < ways.length; k++) {
      ways[k] = Point.polar(1, Math.PI * k / TRIES);
    }
    // New nodes join the end of the list, and their turn comes too.
    for (int i = 0; i < nodes.count(); i++) {
      double size = sizes.at(nodes.x()[i], nodes.y()[i]);
      Point at = new Point(nodes.x()[i], nodes.y()[i]);
      for (int k = 0; k < TRIES; k++) {
        Point p = at.plus(ways[2 * k + i % 2], size);
        double wanted = sizes.at(p.x(), p.y());
        if (!nodes.anyWithin(p, NEAREST * wanted)
            && region.contains(p)
            && edges.distance(p) > FROM_EDGE * wanted) {
          nodes.add(p);
        }
      }
    }
  }
}
