package felloe.geometry;

import java.util.List;

/**
 * The plane cut up along lines: which pieces there are between lines that cross, touch, overlap or
 * lie in each other.
 */
public final class Arrangement {

  /**
   * Points of the lines nearer to each other than this are one point, mm: a tenth of what any shop
   * reads, and far above the last digit of the short numbers in files of triangles.
   */
  public static final double SNAP = 1e-4;

  private Arrangement() {}

  /**
   * Triangles, counter-clockwise, that fill every piece of the plane that lines close in. They meet
   * edge to edge, no corner of one lies on the side of another, and every line runs along their
   * sides. A piece is cut without new points, by the diagonals that keep its angles wide. What
   * hangs loose in a piece bounds nothing and is left out.
   *
   * <p>Accuracy: the points of the lines stay bit for bit what they were, but that of points nearer
   * than {@link #SNAP} the first stands for all; a line that passes a point so near goes through
   * it.
   *
   * @param lines open or closed, a closed one with its first point again at its end
   * @throws GeometryException when no sound answer is found
   */
  public static List<Triangle> triangles(List<List<Point>> lines) {
    return Topology.cells(lines, SNAP);
  }

  /** A triangle of the plane, its corners counter-clockwise. */
  public record Triangle(Point a, Point b, Point c) {

    /** A point well inside. */
    public Point centroid() {
      return new Point((a.x() + b.x() + c.x()) / 3, (a.y() + b.y() + c.y()) / 3);
    }
  }
}
