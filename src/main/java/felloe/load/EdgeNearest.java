package felloe.load;

import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.SegmentIndex;
import felloe.mesh.PlateMesh;

/**
 * The place of an edge of the material that lies nearest to each node of a mesh.
 *
 * @param off how far it is, mm; 0 of nodes on an edge
 * @param at where it is; of a node on an edge the node itself
 */
record EdgeNearest(double[] off, Point[] at) {

  /** Looks for them. */
  static EdgeNearest of(PlateMesh mesh, Region region) {
    SegmentIndex edges = SegmentIndex.of(region.contours());
    double[] off = new double[mesh.nodes()];
    Point[] at = new Point[off.length];
    for (int i = 0; i < off.length; i++) {
      Point node = mesh.point(i);
      at[i] = mesh.onEdge(i) ? node : edges.get(edges.nearest(node)).nearest(node);
      off[i] = mesh.onEdge(i) ? 0 : at[i].distance(node);
    }
    return new EdgeNearest(off, at);
  }
}
