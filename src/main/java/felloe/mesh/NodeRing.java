package felloe.mesh;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Where the nodes of a contour stand along it. */
final class NodeRing {

  /** A turn below this, radians, is no corner: free curves are made of arcs that meet so. */
  static final double SMOOTH = Math.toRadians(10);

  private NodeRing() {}

  /** Stations at which the wanted length of edge is read between two nodes that must be. */
  private static final int STATIONS_PER_EDGE = 4;

  /**
   * The nodes' lengths along the contour, mm, in order.
   *
   * @param course the contour
   * @param sizes the edges wanted
   * @param must lengths at which a node must stand, beside the corners
   * @param least the least number of edges of the whole
   */
  static List<Double> nodes(ArcLengthIndex course, SizeField sizes, List<Double> must, int least) {
    TreeSet<Double> stops = new TreeSet<>(course.corners(SMOOTH));
    for (double wanted : must) {
      // Rather move a corner's neighbour than make an edge of no length.
      boolean near = stops.stream().anyMatch(s -> Math.abs(s - wanted) < 1e-6);
      if (!near) {
        stops.add(wanted);
      }
    }
    if (stops.isEmpty()) {
      stops.add(0.0);
    }
    List<Double> fixed = new ArrayList<>(stops);
    List<Double> nodes = new ArrayList<>();
    double whole = course.length();
    for (int i = 0; i < fixed.size(); i++) {
      double from = fixed.get(i);
      double to = i + 1 < fixed.size() ? fixed.get(i + 1) : fixed.get(0) + whole;
      int share = (int) Math.ceil(least * (to - from) / whole);
      between(course, sizes, from, to, Math.max(1, share), nodes);
    }
    return nodes;
  }

  private static void between(
      ArcLengthIndex course,
      SizeField sizes,
      double from,
      double to,
      int least,
      List<Double> nodes) {
    double length = to - from;
    int stations = 8;
    double[] edges;
    // Read finely enough for the shortest edge on the way.
    while (true) {
      edges = new double[stations + 1];
      for (int i = 0; i < stations; i++) {
        Point p = course.at(from + length * (i + 0.5) / stations);
        edges[i + 1] = edges[i] + length / stations / sizes.at(p.x(), p.y());
      }
      if (stations >= edges[stations] * STATIONS_PER_EDGE || stations > 1 << 20) {
        break;
      }
      stations *= 2;
    }
    int count = Math.max(least, (int) Math.ceil(edges[stations] - 1e-9));
    int station = 0;
    for (int k = 0; k < count; k++) {
      double wanted = edges[stations] * k / count;
      while (station < stations && edges[station + 1] < wanted) {
        station++;
      }
      double part = (wanted - edges[station]) / (edges[station + 1] - edges[station]);
      nodes.add(from + length * (station + part) / stations);
    }
  }
}
