package felloe.mesh;

import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.Arrays;

/**
 * Nodes as they are found, and a search among them, on squares of a grid over the material. Not
 * shared between threads.
 */
final class NodeList {

  /** Squares along a longest edge: where edges are short, few nodes share a square. */
  private static final int SQUARES = 4;

  /** The most squares along a side of the grid. */
  private static final int SIDE = 1000;

  private final int most;
  private final double cell;
  private final double left;
  private final double low;
  private final int columns;
  private final int rows;

  /** The node that was put last into each square, and for each node the one before it there. */
  private final int[] latest;

  private int[] before = new int[256];
  private double[] x = new double[256];
  private double[] y = new double[256];
  private int count;

  /**
   * No nodes yet.
   *
   * @param most how many there may be
   * @param box in which they lie
   * @param edge the longest distance between neighbours, mm
   */
  NodeList(int most, Box box, double edge) {
    this.most = most;
    double longest = Math.max(box.width(), box.height());
    cell = Math.max(edge / SQUARES, longest / SIDE);
    left = box.minX();
    low = box.minY();
    columns = (int) (box.width() / cell) + 1;
    rows = (int) (box.height() / cell) + 1;
    latest = new int[columns * rows];
    Arrays.fill(latest, -1);
  }

  int add(Point p) {
    if (count == most) {
      throw new MeshException("the mesh has more than " + most + " nodes", p);
    }
    if (count == x.length) {
      x = Arrays.copyOf(x, 2 * count);
      y = Arrays.copyOf(y, 2 * count);
      before = Arrays.copyOf(before, 2 * count);
    }
    x[count] = p.x();
    y[count] = p.y();
    int square = row(p.y()) * columns + column(p.x());
    before[count] = latest[square];
    latest[square] = count;
    return count++;
  }

  int count() {
    return count;
  }

  double[] x() {
    return x;
  }

  double[] y() {
    return y;
  }

  /** The column of a place; outside the grid the nearest. */
  private int column(double px) {
    return Math.min(columns - 1, Math.max(0, (int) Math.floor((px - left) / cell)));
  }

  private int row(double py) {
    return Math.min(rows - 1, Math.max(0, (int) Math.floor((py - low) / cell)));
  }

  /** Whether any node lies nearer to a point than that. */
  boolean anyWithin(Point p, double distance) {
    double px = p.x();
    double py = p.y();
    int toColumn = column(px + distance);
    int toRow = row(py + distance);
    for (int row = row(py - distance); row <= toRow; row++) {
      for (int column = column(px - distance); column <= toColumn; column++) {
        for (int i = latest[row * columns + column]; i >= 0; i = before[i]) {
          double dx = x[i] - px;
          double dy = y[i] - py;
          if (dx * dx + dy * dy < distance * distance) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
