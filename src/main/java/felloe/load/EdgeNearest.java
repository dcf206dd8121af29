package felloe.load;

import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.SegmentIndex;
import felloe.mesh.PlateMesh;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The place of an edge of the material that lies nearest to each of some places, mostly nodes.
 *
 * @param from the places
 * @param off how far it is, mm; 0 of nodes on an edge
 * @param at where it is; of a node on an edge the node itself
 */
record EdgeNearest(Point[] from, double[] off, Point[] at) {

  /** Looks for those of a mesh's nodes. */
  static EdgeNearest of(PlateMesh mesh, Region region) {
    Point[] from = IntStream.range(0, mesh.nodes()).mapToObj(mesh::point).toArray(Point[]::new);
    return of(from, mesh::onEdge, region);
  }

  private static EdgeNearest of(Point[] from, IntPredicate onEdge, Region region) {
    SegmentIndex edges = SegmentIndex.of(region.contours());
    double[] off = new double[from.length];
    Point[] at = new Point[from.length];
    for (int i = 0; i < off.length; i++) {
      boolean on = onEdge.test(i);
      at[i] = on ? from[i] : edges.get(edges.nearest(from[i])).nearest(from[i]);
      off[i] = on ? 0 : at[i].distance(from[i]);
    }
    return new EdgeNearest(from, off, at);
  }

  /** The same, and then those of other places. */
  EdgeNearest and(List<Point> others, Region region) {
    EdgeNearest more = of(others.toArray(Point[]::new), i -> false, region);
    int all = off.length + more.off.length;
    Point[] places = Arrays.copyOf(from, all);
    double[] distances = Arrays.copyOf(off, all);
    Point[] nearest = Arrays.copyOf(at, all);
    System.arraycopy(more.from, 0, places, off.length, more.off.length);
    System.arraycopy(more.off, 0, distances, off.length, more.off.length);
    System.arraycopy(more.at, 0, nearest, off.length, more.off.length);
    return new EdgeNearest(places, distances, nearest);
  }
}
