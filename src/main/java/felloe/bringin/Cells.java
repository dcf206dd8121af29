package felloe.bringin;

import felloe.geometry.Point;

/** Square cells of the plane, by number, to find what lies near a point. */
final class Cells {

  /** Parts the rows: a large prime, so that cells of one number lie far apart. */
  private static final long ROW = 31_000_093L;

  private Cells() {}

  /** The cell of a point. */
  static long of(Point p, double size) {
    return number(p, size, 0, 0);
  }

  /** That cell and the eight about it: all that lies within a cell's size is in them. */
  static long[] around(Point p, double size) {
    long[] cells = new long[9];
    for (int i = 0; i < 9; i++) {
      cells[i] = number(p, size, i % 3 - 1, i / 3 - 1);
    }
    return cells;
  }

  private static long number(Point p, double size, int dx, int dy) {
    long x = (long) Math.floor(p.x() / size) + dx;
    long y = (long) Math.floor(p.y() / size) + dy;
    return x * ROW + y;
  }
}
