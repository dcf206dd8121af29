package felloe.mesh;

import felloe.geometry.Point;
import java.util.Optional;

/**
 * Triangles with straight sides between nodes, and the middles of their sides, which for sides on
 * an edge of the material lie on its exact contour.
 *
 * <p>Corners of a triangle run counter-clockwise. Numbers count from 0. Millimetres.
 */
public final class PlateMesh {

  private final double[] x;
  private final double[] y;
  private final int[] corners;
  private final int[] middles;
  private final int nodes;
  private final boolean[] edge;
  private final boolean[] beside;

  /**
   * Takes finished arrays, which it then owns.
   *
   * @param x nodes first, then middles of sides
   * @param y as x
   * @param nodes how many of them are nodes
   * @param corners three node numbers a triangle
   * @param middles three numbers of middles a triangle: of the sides opposite the corners
   * @param edge for each node whether it lies on an edge of the material
   * @param beside for each node whether it lies there or in a row along it
   */
  PlateMesh(
      double[] x,
      double[] y,
      int nodes,
      int[] corners,
      int[] middles,
      boolean[] edge,
      boolean[] beside) {
    this.x = x;
    this.y = y;
    this.nodes = nodes;
    this.corners = corners;
    this.middles = middles;
    this.edge = edge;
    this.beside = beside;
  }

  /** How many nodes. */
  public int nodes() {
    return nodes;
  }

  /** How many nodes and middles of sides. */
  public int points() {
    return x.length;
  }

  /** How many triangles. */
  public int triangles() {
    return corners.length / 3;
  }

  /** Abscissa of a node or middle, mm. */
  public double x(int point) {
    return x[point];
  }

  /** Ordinate of a node or middle, mm. */
  public double y(int point) {
    return y[point];
  }

  /** A node or middle as a point. */
  public Point point(int number) {
    return new Point(x[number], y[number]);
  }

  /** How far a node or middle is from a point, mm. */
  public double distance(int point, Point p) {
    double dx = x[point] - p.x();
    double dy = y[point] - p.y();
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

  /** The middle of the side opposite a corner (0 to 2) of a triangle. */
  public int middle(int triangle, int corner) {
    return middles[3 * triangle + corner];
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
    for (int i = 0; i < nodes; i++) {
      double d = distance(i, p);
      if (d < least) {
        least = d;
        best = i;
      }
    }
    return best;
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
