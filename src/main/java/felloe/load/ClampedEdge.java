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
 * finite-element texts (Hughes, The Finite Element Method, from memory), with the moment of a node
 * spread evenly over half of the sides that meet there.
 */
final class ClampedEdge {

  private final PlateMesh mesh;
  private final PlaneStiffness d;
  private final BitSet held;
  private final boolean[] idle;

  ClampedEdge(PlateMesh mesh, PlaneStiffness d, BitSet held, boolean[] idle) {
    this.mesh = mesh;
    this.d = d;
    this.held = held;
    this.idle = idle;
  }

  /** Puts better curvatures in for nodes between two clamped sides. */
  void correct(double[] forces, double[] curvatures) {
    double[] nx = new double[mesh.nodes()];
    double[] ny = new double[mesh.nodes()];
    double[] length = new double[mesh.nodes()];
    int[] sides = new int[mesh.nodes()];
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3 && !idle[t]; c++) {
        int a = mesh.corner(t, (c + 1) % 3);
        int b = mesh.corner(t, (c + 2) % 3);
        if (clamped(a) && clamped(b)) {
          double dx = mesh.x(b) - mesh.x(a);
          double dy = mesh.y(b) - mesh.y(a);
          for (int node : new int[] {a, b}) {
            // Corners run counter-clockwise, so the outside lies on the right of a side.
            nx[node] += dy / 2;
            ny[node] -= dx / 2;
            length[node] += Math.hypot(dx, dy) / 2;
            sides[node]++;
          }
        }
      }
    }
    for (int i = 0; i < mesh.nodes(); i++) {
      if (sides[i] == 2) {
        correct(i, nx[i], ny[i], length[i], forces, curvatures);
      }
    }
  }

  private boolean clamped(int node) {
    return held.get(3 * node) && held.get(3 * node + 1) && held.get(3 * node + 2);
  }

  private void correct(
      int node, double nx, double ny, double length, double[] forces, double[] curvatures) {
    double norm = Math.hypot(nx, ny);
    double x = nx / norm;
    double y = ny / norm;
    double moment = -(forces[3 * node + 1] * x + forces[3 * node + 2] * y) / length;
    double xx = x * x;
    double yy = y * y;
    double xy = 2 * x * y;
    double across = xx * d.x(xx, yy, xy) + yy * d.y(xx, yy, xy) + xy * d.shear(xx, yy, xy);
    double curvature = moment / across;
    curvatures[3 * node] = curvature * xx;
    curvatures[3 * node + 1] = curvature * yy;
    curvatures[3 * node + 2] = curvature * xy;
  }
}
