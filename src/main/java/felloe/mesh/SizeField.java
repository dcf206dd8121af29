package felloe.mesh;

import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.Arrays;

/**
 * The longest edge wanted at each place: limits set at points, spread so that it grows no faster
 * than asked. Kept on a square grid; between its nodes it is read linearly.
 */
final class SizeField {

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
    cell = Math.max(edge / 4, longest / SIDE);
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

  /** Spreads the limits: edges grow by at most {@code growth} for each millimetre of way. */
  void spread(double growth) {
    double side = growth * cell;
    double corner = side * Math.sqrt(2);
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int pass = 0; pass < 2; pass++) {
        int step = pass == 0 ? 1 : -1;
        for (int n = 0; n < size.length; n++) {
          int i = pass == 0 ? n : size.length - 1 - n;
          int c = i % columns;
          int r = i / columns;
          double best = size[i];
          best = Math.min(best, at(c - step, r) + side);
          best = Math.min(best, at(c, r - step) + side);
          best = Math.min(best, at(c - step, r - step) + corner);
          best = Math.min(best, at(c + step, r - step) + corner);
          if (best < size[i] - 1e-12) {
            size[i] = best;
            changed = true;
          }
        }
      }
    }
  }

  private double at(int column, int row) {
    boolean outside = column < 0 || row < 0 || column >= columns || row >= rows;
    return outside ? Double.POSITIVE_INFINITY : size[row * columns + column];
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
