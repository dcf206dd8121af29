package felloe.template;

import felloe.drawing.Anchor;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** What is drawn along the seams of a grid: registration marks, trim lines, glue lines. */
final class Seams {

  private static final double CIRCLE = 2;
  private static final double ARM = 4;

  /** How far marks reach beside their seam, mm. */
  static final double REACH = CIRCLE + StripText.SMALL + 1;

  private static final double SMALL = StripText.SMALL;
  private static final double QUARTER = Math.PI / 2;
  private static final double FREE = 40;
  private static final List<String> TRIM = List.of("trim here");

  private final Grid grid;
  private final FreeSpace ground;
  private final List<Registration> marks = new ArrayList<>();

  /** Places the marks and puts seams and marks on the ground. */
  Seams(Grid grid, FreeSpace ground) {
    this.grid = grid;
    this.ground = ground;
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        if (grid.has(row, column) && grid.has(row, column + 1)) {
          sideways(row, column);
        }
        if (grid.has(row, column) && grid.has(row + 1, column)) {
          downward(row, column);
        }
      }
    }
    for (Registration mark : marks) {
      ground.block(box(mark.at()), FreeSpace.TAKEN);
    }
  }

  List<Registration> marks() {
    return List.copyOf(marks);
  }

  private static Box box(Point at) {
    return Box.of(at, at).grown(REACH);
  }

  private void sideways(int row, int column) {
    double x = grid.seamAfterColumn(column);
    Box tile = grid.tile(row, column);
    double keep = grid.overlap();
    double low = tile.minY() + (row + 1 < grid.rows() ? keep : 0);
    double high = tile.maxY() - (row > 0 ? keep : 0);
    ground.line(new Line(new Point(x, tile.minY()), new Point(x, tile.maxY())), FreeSpace.EDGE);
    for (double y : places(low, high, t -> new Point(x, t))) {
      add(new Point(x, y), Grid.name(row, column), Grid.name(row, column + 1));
    }
  }

  private void downward(int row, int column) {
    double y = grid.seamAfterRow(row);
    Box tile = grid.tile(row, column);
    double keep = grid.overlap();
    double low = tile.minX() + (column > 0 ? keep : 0);
    double high = tile.maxX() - (column + 1 < grid.columns() ? keep : 0);
    ground.line(new Line(new Point(tile.minX(), y), new Point(tile.maxX(), y)), FreeSpace.EDGE);
    for (double x : places(low, high, t -> new Point(t, y))) {
      add(new Point(x, y), Grid.name(row, column), Grid.name(row + 1, column));
    }
  }

  private void add(Point at, String first, String second) {
    marks.add(new Registration(Integer.toString(marks.size() + 1), at, first, second));
  }

  /** Two places near the ends and, on a long seam, one in the middle, off the lines if possible. */
  private List<Double> places(
      double low, double high, java.util.function.DoubleFunction<Point> point) {
    double length = high - low;
    double[] shares = length > 120 ? new double[] {0.1, 0.5, 0.9} : new double[] {0.15, 0.85};
    List<Double> places = new ArrayList<>();
    for (double share : shares) {
      double wanted = low + share * length;
      double best = wanted;
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i <= 20; i++) {
        double t = wanted + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * 2.0;
        if (t < low + ARM + 1 || t > high - ARM - 1) {
          continue;
        }
        double cost = lineCost(point.apply(t)) + 0.3 * i;
        if (cost < least) {
          least = cost;
          best = t;
        }
      }
      places.add(best);
    }
    return places;
  }

  /** Lines near a mark; the seam's own line counts alike everywhere. */
  private double lineCost(Point at) {
    return ground.cost(Box.of(at, at).grown(ARM));
  }

  /** What a page shows along its seams, in the drawing's coordinates. */
  Drawing of(int row, int column) {
    List<Mark> lines = new ArrayList<>();
    Box tile = grid.tile(row, column);
    if (grid.has(row, column - 1)) {
      double x = grid.seamAfterColumn(column - 1);
      lines.add(line(x, tile.minY(), x, tile.maxY(), LineType.THIN));
      lines.add(words(TRIM, new Point(x - 1.4, tile.minY()), QUARTER, tile.height()));
    }
    if (grid.has(row - 1, column)) {
      double y = grid.seamAfterRow(row - 1);
      lines.add(line(tile.minX(), y, tile.maxX(), y, LineType.THIN));
      lines.add(words(TRIM, new Point(tile.minX(), y + 1.4), 0, tile.width()));
    }
    if (grid.has(row, column + 1)) {
      double x = grid.seamAfterColumn(column);
      lines.add(line(x, tile.minY(), x, tile.maxY(), LineType.DASHED));
      Point start = new Point(x + 1.4 + SMALL, tile.minY());
      lines.add(words(glue(Grid.name(row, column + 1)), start, QUARTER, tile.height()));
    }
    if (grid.has(row + 1, column)) {
      double y = grid.seamAfterRow(row);
      lines.add(line(tile.minX(), y, tile.maxX(), y, LineType.DASHED));
      Point start = new Point(tile.minX(), y - 1.4 - SMALL);
      lines.add(words(glue(Grid.name(row + 1, column)), start, 0, tile.width()));
    }
    List<Mark> signs = new ArrayList<>();
    String name = Grid.name(row, column);
    for (Registration mark : marks) {
      if (mark.first().equals(name) || mark.second().equals(name)) {
        draw(mark, signs);
      }
    }
    return new Drawing(
        List.of(new Drawing.Layer("seams", lines), new Drawing.Layer("registration", signs)));
  }

  private static List<String> glue(String page) {
    return List.of("glue: trimmed edge of " + page + " lies here", "glue: " + page + " here");
  }

  private static void draw(Registration mark, List<Mark> signs) {
    Point at = mark.at();
    signs.add(Mark.Stroke.of(Contour.circle(at, CIRCLE), LineType.THIN));
    Lettering.cross(at, ARM).forEach(arm -> signs.add(Mark.Stroke.of(arm, LineType.THIN)));
    // In all quarters, so that each half of a cut mark still has its number.
    for (double[] to :
        new double[][] {{2.9, 2}, {-2.9, 2}, {2.9, -2 - SMALL}, {-2.9, -2 - SMALL}}) {
      Point base = at.plus(new Point(to[0], to[1]));
      signs.add(Mark.Label.of(mark.label(), base, SMALL, Anchor.MIDDLE));
    }
  }

  private static Mark line(double x1, double y1, double x2, double y2, LineType type) {
    return Mark.Stroke.of(new Line(new Point(x1, y1), new Point(x2, y2)), type);
  }

  /**
   * Words along a seam where they cover least: the longer ones where there is a free place.
   *
   * @param start of the way along which they may stand
   * @param turn of the way, a quarter turn or none
   * @param length of the way
   */
  private Mark words(List<String> texts, Point start, double turn, double length) {
    Point along = turn == 0 ? new Point(1, 0) : new Point(0, 1);
    Mark best = null;
    double least = Double.POSITIVE_INFINITY;
    for (String text : texts) {
      double half = TextWidth.of(text, SMALL) / 2;
      for (double t = half + 3; t <= length - half - 3; t += 4) {
        Mark label = new Mark.Label(text, start.plus(along, t), SMALL, turn, Anchor.MIDDLE);
        double cost = ground.cost(label.box()) + 0.02 * Math.abs(t - length / 2);
        if (cost < least) {
          least = cost;
          best = label;
        }
      }
      if (least < FREE) {
        break;
      }
    }
    return best;
  }
}
