package felloe.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a polygon into few convex pieces: triangles, then every shared edge taken out that leaves a
 * convex piece (Hertel and Mehlhorn, 1983: at most four times the fewest).
 */
final class ConvexPieces {

  private ConvexPieces() {}

  /**
   * The pieces, each counter-clockwise.
   *
   * @throws GeometryException when the polygon cannot be cut into triangles
   */
  static List<List<Point>> of(Topology.Piece polygon) {
    List<List<Point>> pieces = new ArrayList<>(Topology.triangles(polygon));
    for (int i = 0; i < pieces.size(); i++) {
      int j = i + 1;
      while (j < pieces.size()) {
        List<Point> both = joined(pieces.get(i), pieces.get(j));
        if (both.isEmpty()) {
          j++;
        } else {
          pieces.set(i, both);
          pieces.remove(j);
          // The larger piece has new neighbours among those passed over.
          j = i + 1;
        }
      }
    }
    return List.copyOf(pieces);
  }

  /** Two pieces as one, when they share an edge and are convex together; else empty. */
  private static List<Point> joined(List<Point> a, List<Point> b) {
    for (int i = 0; i < a.size(); i++) {
      Point start = a.get(i);
      Point end = a.get((i + 1) % a.size());
      int k = b.indexOf(end);
      if (k >= 0 && b.get((k + 1) % b.size()).equals(start)) {
        List<Point> both = new ArrayList<>();
        for (int n = 0; n < a.size(); n++) {
          both.add(a.get((i + 1 + n) % a.size()));
        }
        for (int n = 2; n < b.size(); n++) {
          both.add(b.get((k + n) % b.size()));
        }
        return convex(both) ? both : List.of();
      }
    }
    return List.of();
  }

  private static boolean convex(List<Point> ring) {
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      Point in = ring.get((i + 1) % n).minus(ring.get(i));
      Point out = ring.get((i + 2) % n).minus(ring.get((i + 1) % n));
      if (in.cross(out) < 0) {
        return false;
      }
    }
    return true;
  }
}
