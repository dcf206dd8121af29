package felloe.load;

import felloe.geometry.Point;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
import java.util.List;

/**
 * The nodes that a hand's force is spread over, with their shares, which sum to 1.
 *
 * @param nodes the nodes
 * @param shares their shares
 */
record LoadSpread(int[] nodes, double[] shares) {

  /**
   * Over a round patch, by area and most in the middle, none at its rim, so that it hardly matters
   * which nodes lie just inside it; at the nearest node when it is a point or holds no node.
   */
  static LoadSpread over(PlateMesh mesh, double[] areas, Point at, double diameter) {
    List<Integer> within = new ArrayList<>();
    for (int i = 0; i < mesh.nodes() && diameter > 0; i++) {
      if (mesh.distance(i, at) <= diameter / 2) {
        within.add(i);
      }
    }
    if (within.isEmpty()) {
      return new LoadSpread(new int[] {mesh.nearest(at)}, new double[] {1});
    }
    int[] nodes = within.stream().mapToInt(Integer::intValue).toArray();
    double[] shares = new double[nodes.length];
    double sum = 0;
    for (int i = 0; i < nodes.length; i++) {
      double dx = 2 * (mesh.x(nodes[i]) - at.x()) / diameter;
      double dy = 2 * (mesh.y(nodes[i]) - at.y()) / diameter;
      shares[i] = areas[nodes[i]] * Math.max(1e-9, 1 - dx * dx - dy * dy);
      sum += shares[i];
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= sum;
    }
    return new LoadSpread(nodes, shares);
  }

  /** A third of each triangle's area to each of its nodes, mm2. */
  static double[] areas(PlateMesh mesh) {
    double[] areas = new double[mesh.nodes()];
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3; c++) {
        areas[mesh.corner(t, c)] += mesh.area(t) / 3;
      }
    }
    return areas;
  }
}
