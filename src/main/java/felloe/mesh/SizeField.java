package felloe.mesh;

import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.Arrays;

/**
 * The longest edge wanted at each place: limits set at points, spread so that it grows no faster
 * than asked. Kept on a square grid; between its nodes it is read linearly.
 */
final class SizeField {

  /**
   * Squares of the grid along a longest edge. What is limited at a point is limited in its whole
   * square: in squares of a quarter of an edge, holes had twice as many nodes about them as asked.
   */
  private static final double CELLS = 16;

  /** The most nodes of the grid along a side. */
  private static final int SIDE = 400;

  private final double left;
  private final double low;
  private final double cell;
  private final int columns;
  private final int rows;
  private final double[] size;

  /** A field of one size over a box. */
  SizeField(Box box, double edge) {
    double longest = Math.max(box.width(), box.height());
    cell = Math.max(edge / CELLS, longest / SIDE);
    left = box.minX() - cell;
    low = box.minY() - cell;
    columns = (int) Math.ceil(box.width() / cell) + 3;
    rows = (int) Math.ceil(box.height() / cell) + 3;
    size = new double[columns * rows];
    Arrays.fill(size, edge);
  }

  /** No edge at a point is to be longer than this. */
  void limit(Point at, double edge) {
    int column = column(at.x());
    int row = row(at.y());
    for (int r = row; r <= row + 1; r++) {
      for (int c = column; c <= column + 1; c++) {
        int i = r * columns + c;
        size[i] = Math.min(size[i], edge);
      }
    }
  }

  /**
   * Spreads the limits: edges grow by at most {@code growth} for each millimetre of way. Once from
   * each end of the grid does, since every way is made of steps to neighbours; the outermost nodes,
   * which lie beyond the box, are left out.
   */
  void spread(double growth) {
    double side = growth * cell;
    double corner = side * Math.sqrt(2);
    for (int r = 1; r < rows - 1; r++) {
      for (int i = r * columns + 1; i < (r + 1) * columns - 1; i++) {
        double straight = Math.min(size[i - 1], size[i - columns]) + side;
        double across = Math.min(size[i - columns - 1], size[i - columns + 1]) + corner;
        size[i] = Math.min(size[i], Math.min(straight, across));
      }
    }
    for (int r = rows - 2; r > 0; r--) {
      for (int i = (r + 1) * columns - 2; i > r * columns; i--) {
        double straight = Math.min(size[i + 1], size[i + columns]) + side;
        double across = Math.min(size[i + columns + 1], size[i + columns - 1]) + corner;
        size[i] = Math.min(size[i], Math.min(straight, across));
      }
    }
  }

  /** The longest edge wanted at a point; outside the box as at its edge. */
  double at(double x, double y) {
    int column = column(x);
    int row = row(y);
    double fx = Math.min(1, Math.max(0, (x - left) / cell - column));
    double fy = Math.min(1, Math.max(0, (y - low) / cell - row));
    int i = row * columns + column;
    return (1 - fy) * ((1 - fx) * size[i] + fx * size[i + 1])
        + fy * ((1 - fx) * size[i + columns] + fx * size[i + columns + 1]);
  }

  private int column(double x) {
    return Math.min(columns - 2, Math.max(0, (int) Math.floor((x - left) / cell)));
  }

  private int row(double y) {
    return Math.min(rows - 2, Math.max(0, (int) Math.floor((y - low) / cell)));
  }
}
