package felloe.mesh;

import felloe.geometry.Point;
import java.util.Optional;

/**
 * Triangles with straight sides between nodes; nodes on an edge of the material lie on its exact
 * contour.
 *
 * <p>Corners of a triangle run counter-clockwise. Numbers count from 0. Millimetres.
 */
public final class PlateMesh {

  private final double[] x;
  private final double[] y;
  private final int[] corners;
  private final boolean[] edge;
  private final boolean[] beside;

  /**
   * Takes finished arrays, which it then owns.
   *
   * @param x of the nodes, mm
   * @param y of the nodes, mm
   * @param corners three node numbers a triangle
   * @param edge for each node whether it lies on an edge of the material
   * @param beside for each node whether it lies there or in a row along it
   */
  PlateMesh(double[] x, double[] y, int[] corners, boolean[] edge, boolean[] beside) {
    this.x = x;
    this.y = y;
    this.corners = corners;
    this.edge = edge;
    this.beside = beside;
  }

  /** How many nodes. */
  public int nodes() {
    return x.length;
  }

  /** How many triangles. */
  public int triangles() {
    return corners.length / 3;
  }

  /** Abscissa of a node, mm. */
  public double x(int node) {
    return x[node];
  }

  /** Ordinate of a node, mm. */
  public double y(int node) {
    return y[node];
  }

  /** A node as a point. */
  public Point point(int number) {
    return new Point(x[number], y[number]);
  }

  /** How far a node is from a point, mm. */
  public double distance(int node, Point p) {
    double dx = x[node] - p.x();
    double dy = y[node] - p.y();
    // Math.hypot guards against figures far beyond a plate's, and takes ten times as long.
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** Whether a node lies on an edge of the material. */
  public boolean onEdge(int node) {
    return edge[node];
  }

  /** Whether a node lies on an edge of the material or in a row that follows it. */
  public boolean besideEdge(int node) {
    return beside[node];
  }

  /** The node at a corner (0 to 2) of a triangle. */
  public int corner(int triangle, int corner) {
    return corners[3 * triangle + corner];
  }

  /** Area between a triangle's corners, mm2. */
  public double area(int triangle) {
    int a = corners[3 * triangle];
    int b = corners[3 * triangle + 1];
    int c = corners[3 * triangle + 2];
    return ((x[b] - x[a]) * (y[c] - y[a]) - (x[c] - x[a]) * (y[b] - y[a])) / 2;
  }

  /** Area of all triangles, mm2. */
  public double area() {
    double sum = 0;
    for (int t = 0; t < triangles(); t++) {
      sum += area(t);
    }
    return sum;
  }

  /** The node nearest to a point. */
  public int nearest(Point p) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < nodes(); i++) {
      double d = distance(i, p);
      if (d < least) {
        least = d;
        best = i;
      }
    }
    return best;
  }

  /** The mean length of the edges of the triangles about the node nearest to a point, mm. */
  public double edgeAt(Point p) {
    int node = nearest(p);
    double sum = 0;
    int count = 0;
    for (int i = 0; i < corners.length; i++) {
      if (corners[i] == node) {
        int next = i % 3 == 2 ? i - 2 : i + 1;
        int before = i % 3 == 0 ? i + 2 : i - 1;
        sum += distance(corners[next], point(node)) + distance(corners[before], point(node));
        count += 2;
      }
    }
    return sum / count;
  }

  /** The node at a point, within a millionth of a millimetre. */
  public Optional<Integer> node(Point p) {
    int nearest = nearest(p);
    return point(nearest).near(p, 1e-6) ? Optional.of(nearest) : Optional.empty();
  }

  /** How well its triangles are shaped. */
  public MeshQuality quality() {
    return MeshQuality.of(this);
  }
}
