package felloe.load;

import felloe.laminate.PlaneStiffness;
import felloe.mesh.PlateMesh;
import java.util.BitSet;

/**
 * Curvature along a clamped edge, from the moment that the support gives. That moment is far more
 * exact than what the triangles beside the edge say, since the whole plate must balance it.
 *
 * <p>Along the edge the plate is straight, so all curvature is across it: the moment across is the
 * bending stiffness in that direction times it. Source: the consistent boundary flux of
 * finite-element texts (Hughes, The Finite Element Method, from memory). A node's moment belongs to
 * half of each side that meets there; so that uneven triangles do not show, half of what the next
 * nodes give is counted with it.
 */
final class ClampedEdge {

  private final PlateMesh mesh;
  private final PlaneStiffness d;
  private final BitSet held;
  private final boolean[] idle;

  /** Outward normal times half the length of the clamped sides at each node. */
  private final double[] nx;

  private final double[] ny;
  private final double[] length;

  /** The nodes at the other ends of those sides. */
  private final int[][] next;

  private final int[] sides;

  ClampedEdge(PlateMesh mesh, PlaneStiffness d, BitSet held, boolean[] idle) {
    this.mesh = mesh;
    this.d = d;
    this.held = held;
    this.idle = idle;
    nx = new double[mesh.nodes()];
    ny = new double[mesh.nodes()];
    length = new double[mesh.nodes()];
    next = new int[2][mesh.nodes()];
    sides = new int[mesh.nodes()];
    collect();
  }

  private void collect() {
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3 && !idle[t]; c++) {
        int a = mesh.corner(t, (c + 1) % 3);
        int b = mesh.corner(t, (c + 2) % 3);
        if (clamped(a) && clamped(b)) {
          add(a, b, mesh.x(b) - mesh.x(a), mesh.y(b) - mesh.y(a));
          add(b, a, mesh.x(b) - mesh.x(a), mesh.y(b) - mesh.y(a));
        }
      }
    }
  }

  private boolean clamped(int node) {
    return held.get(3 * node) && held.get(3 * node + 1) && held.get(3 * node + 2);
  }

  private void add(int node, int other, double dx, double dy) {
    // Corners run counter-clockwise, so the outside lies on the right of a side.
    nx[node] += dy / 2;
    ny[node] -= dx / 2;
    length[node] += Math.hypot(dx, dy) / 2;
    if (sides[node] < 2) {
      next[sides[node]][node] = other;
    }
    sides[node]++;
  }

  /** Puts better curvatures in for nodes between two clamped sides. */
  void correct(double[] forces, double[] curvatures) {
    for (int i = 0; i < mesh.nodes(); i++) {
      if (sides[i] == 2) {
        double moment = across(i, forces);
        double along = length[i];
        for (int[] end : next) {
          if (sides[end[i]] == 2) {
            moment += across(end[i], forces) / 2;
            along += length[end[i]] / 2;
          }
        }
        correct(i, moment / along, curvatures);
      }
    }
  }

  /** The moment that the support gives at a node, across the edge, N mm. */
  private double across(int node, double[] forces) {
    double norm = Math.hypot(nx[node], ny[node]);
    return -(forces[3 * node + 1] * nx[node] + forces[3 * node + 2] * ny[node]) / norm;
  }

  private void correct(int node, double moment, double[] curvatures) {
    double norm = Math.hypot(nx[node], ny[node]);
    double x = nx[node] / norm;
    double y = ny[node] / norm;
    double xx = x * x;
    double yy = y * y;
    double xy = 2 * x * y;
    double stiff = d.square(xx, yy, xy);
    double curvature = moment / stiff;
    curvatures[3 * node] = curvature * xx;
    curvatures[3 * node + 1] = curvature * yy;
    curvatures[3 * node + 2] = curvature * xy;
  }
}
