package felloe.template;

import felloe.drawing.Mark;
import felloe.drawing.Outlines;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.Arrays;
import java.util.List;

/**
 * What already lies where, in small square cells, so that labels, arrows and tables find a free
 * place. It only guides the layout; nothing is drawn from it.
 */
final class FreeSpace {

  /** Outside of the part: a label there is lost when the template is cut out. */
  static final int WASTE = 1;

  /** A thin line. */
  static final int THIN = 8;

  /** A line that is cut or drilled to. */
  static final int EDGE = 40;

  /** Text or a mark that must stay legible. */
  static final int TAKEN = 1000;

  private final Box area;
  private final double cell;
  private final int columns;
  private final int rows;
  private final int[] cells;

  FreeSpace(Box area) {
    this.area = area;
    this.cell = Math.min(4, Math.max(0.5, Math.max(area.width(), area.height()) / 400));
    this.columns = (int) Math.ceil(area.width() / cell) + 1;
    this.rows = (int) Math.ceil(area.height() / cell) + 1;
    this.cells = new int[columns * rows];
  }

  /** Marks every cell outside of the region that the contours bound (even-odd) as waste. */
  void waste(List<Contour> contours) {
    double[][] crossings = new double[rows][];
    int[] count = new int[rows];
    for (Contour contour : contours) {
      List<Point> points = Outlines.points(contour.segments(), cell);
      for (int i = 0; i < points.size(); i++) {
        cross(points.get(i), points.get((i + 1) % points.size()), crossings, count);
      }
    }
    for (int row = 0; row < rows; row++) {
      Arrays.fill(cells, row * columns, (row + 1) * columns, WASTE);
      if (count[row] > 0) {
        double[] xs = Arrays.copyOf(crossings[row], count[row]);
        Arrays.sort(xs);
        for (int i = 0; i + 1 < xs.length; i += 2) {
          int from = row * columns + column(xs[i]);
          int to = row * columns + column(xs[i + 1]);
          Arrays.fill(cells, from, to + 1, 0);
        }
      }
    }
  }

  /** Takes what {@link #waste} left: the inside of the region. */
  void takeInside() {
    for (int i = 0; i < cells.length; i++) {
      cells[i] = cells[i] == 0 ? TAKEN : cells[i];
    }
  }

  private void cross(Point a, Point b, double[][] crossings, int[] count) {
    Point low = a.y() <= b.y() ? a : b;
    Point high = low == a ? b : a;
    int first = Math.max(0, (int) Math.ceil((low.y() - area.minY()) / cell - 0.5));
    for (int row = first; row < rows; row++) {
      double y = area.minY() + (row + 0.5) * cell;
      if (y >= high.y()) {
        return;
      }
      if (y < low.y()) {
        continue;
      }
      double x = low.x() + (y - low.y()) / (high.y() - low.y()) * (high.x() - low.x());
      if (crossings[row] == null) {
        crossings[row] = new double[8];
      } else if (count[row] == crossings[row].length) {
        crossings[row] = Arrays.copyOf(crossings[row], 2 * count[row]);
      }
      crossings[row][count[row]++] = x;
    }
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) Math.floor((x - area.minX()) / cell)));
  }

  private int row(double y) {
    return Math.max(0, Math.min(rows - 1, (int) Math.floor((y - area.minY()) / cell)));
  }

  /** Adds a line. */
  void line(Segment segment, int weight) {
    int steps = (int) Math.ceil(segment.length() / (0.7 * cell));
    for (int i = 0; i <= steps; i++) {
      Point p = segment.at((double) i / steps);
      if (area.contains(p)) {
        raise(row(p.y()) * columns + column(p.x()), weight);
      }
    }
  }

  /** How much of a straight line runs over text and marks that must stay legible, mm. */
  double taken(Line line) {
    int steps = (int) Math.ceil(line.length() / (0.7 * cell));
    int taken = 0;
    for (int i = 0; i <= steps; i++) {
      Point p = line.at((double) i / steps);
      taken += area.contains(p) && cells[row(p.y()) * columns + column(p.x())] >= TAKEN ? 1 : 0;
    }
    return taken * cell;
  }

  /** Adds the lines of a mark, or the box of a text. */
  void mark(Mark mark, int weight) {
    if (mark instanceof Mark.Stroke stroke) {
      stroke.segments().forEach(segment -> line(segment, weight));
    } else {
      block(mark.box(), weight);
    }
  }

  /** Takes a whole box. */
  void block(Box box, int weight) {
    if (!box.touches(area)) {
      return;
    }
    for (int row = row(box.minY()); row <= row(box.maxY()); row++) {
      for (int column = column(box.minX()); column <= column(box.maxX()); column++) {
        raise(row * columns + column, weight);
      }
    }
  }

  private void raise(int index, int weight) {
    cells[index] = Math.max(cells[index], weight);
  }

  /**
   * What a box would cover: weight times millimetres of line, a little for each square millimetre
   * of waste, and much for a box that leaves the area.
   */
  double cost(Box box) {
    long lines = 0;
    int waste = 0;
    for (int row = row(box.minY()); row <= row(box.maxY()); row++) {
      for (int column = column(box.minX()); column <= column(box.maxX()); column++) {
        int here = cells[row * columns + column];
        if (here == WASTE) {
          waste++;
        } else {
          lines += here;
        }
      }
    }
    return lines * cell + 0.3 * waste * cell * cell + (area.contains(box) ? 0 : 10 * TAKEN);
  }

  /** What a box would cover of lines and texts alone, weight times millimetres of line. */
  double covered(Box box) {
    if (!box.touches(area)) {
      return 0;
    }
    long lines = 0;
    for (int row = row(box.minY()); row <= row(box.maxY()); row++) {
      for (int column = column(box.minX()); column <= column(box.maxX()); column++) {
        int here = cells[row * columns + column];
        lines += here > WASTE ? here : 0;
      }
    }
    return lines * cell;
  }

  /** Whether a box would cover a line or a text. */
  boolean covers(Box box) {
    return covered(box) > 0;
  }

  /** Answers in a fixed time whether a box is free, as the ground is now. */
  Free free() {
    return new Free(false);
  }

  /** As {@link #free}, but what reaches out of the area is free there. */
  Free freeBeyond() {
    return new Free(true);
  }

  /** Where boxes lie free, by sums over all cells below and left of each. */
  final class Free {

    private final boolean beyond;
    private final int[] sums = new int[(columns + 1) * (rows + 1)];

    private Free(boolean beyond) {
      this.beyond = beyond;
      for (int row = 0; row < rows; row++) {
        for (int column = 0; column < columns; column++) {
          int at = (row + 1) * (columns + 1) + column + 1;
          int here = cells[row * columns + column] > WASTE ? 1 : 0;
          sums[at] = here + sums[at - 1] + sums[at - columns - 1] - sums[at - columns - 2];
        }
      }
    }

    /** Whether a box covers neither line nor text, and lies in the area where it must. */
    boolean is(Box box) {
      return strip(box.minY(), box.maxY()).is(box.minX(), box.maxX());
    }

    /** What boxes of one lower and one upper edge cover. */
    Strip strip(double minY, double maxY) {
      return new Strip(minY, maxY);
    }

    /** Boxes that lie side by side. */
    final class Strip {

      private final int low;
      private final int high;
      private final boolean within;
      private final boolean outside;

      private Strip(double minY, double maxY) {
        this.low = row(minY);
        this.high = row(maxY) + 1;
        this.within = minY >= area.minY() && maxY <= area.maxY();
        this.outside = maxY < area.minY() || minY > area.maxY();
      }

      /** As {@link Free#is} of the box from one side to another. */
      boolean is(double minX, double maxX) {
        if (beyond && (outside || maxX < area.minX() || minX > area.maxX())) {
          return true;
        }
        boolean inside = within && minX >= area.minX() && maxX <= area.maxX();
        return (beyond || inside) && taken(column(minX), column(maxX) + 1, low, high) == 0;
      }

      /**
       * The right end of what a box covers that is not free: clear of it is only what lies beyond.
       */
      double end(double minX, double maxX) {
        int from = column(minX);
        int to = column(maxX) + 1;
        while (to - from > 1) {
          int middle = (from + to) / 2;
          if (taken(middle, to, low, high) > 0) {
            from = middle;
          } else {
            to = middle;
          }
        }
        return area.minX() + to * cell;
      }
    }

    private int taken(int from, int to, int low, int high) {
      int below = low * (columns + 1);
      int above = high * (columns + 1);
      return sums[above + to] - sums[below + to] - sums[above + from] + sums[below + from];
    }
  }
}
