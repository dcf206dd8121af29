package felloe.template;

import felloe.drawing.Outlines;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Chooses portrait or landscape, the turn of the plate where that is asked for, and the shift of
 * the grid: fewest pages; then fewest holes cut by a seam; then the plate as it stands rather than
 * turned; then seams farthest from hole centres.
 *
 * @param frame the chosen page with its furniture
 * @param grid the tiles
 * @param turn turn of the plate, radians counter-clockwise
 * @param cut number of holes that a seam runs through
 * @param distance least distance of a seam from a hole's centre, mm; infinite without seams
 */
record GridChoice(PageFrame frame, Grid grid, double turn, int cut, double distance) {

  /** Room left round whatever is drawn, mm. */
  static final double EASE = 2;

  private static final int TRIED = 8;
  private static final double TURN_STEP = Math.PI / 12;

  private static final Comparator<GridChoice> ORDER =
      Comparator.comparingInt((GridChoice choice) -> choice.grid.count())
          .thenComparingInt(GridChoice::cut)
          .thenComparing(choice -> choice.turn != 0)
          .thenComparing(choice -> -Math.rint(choice.distance * 1e6));

  /**
   * The best choice.
   *
   * @param outline the outermost line that is drawn, already mirrored where it must be
   * @param holes the holes, likewise
   * @param frames the pages to try, upright first
   */
  static GridChoice of(
      Contour outline, List<Hole> holes, List<PageFrame> frames, double overlap, boolean turning) {
    List<Point> points = Outlines.points(outline.segments(), 1);
    GridChoice best = null;
    for (double turn : turns(turning)) {
      Shape shape = new Shape(outline, points, holes, turn);
      for (PageFrame frame : frames) {
        GridChoice next = shape.choose(frame, overlap);
        if (best == null || ORDER.compare(next, best) < 0) {
          best = next;
        }
      }
    }
    return best;
  }

  private static List<Double> turns(boolean turning) {
    List<Double> turns = new ArrayList<>(List.of(0.0));
    if (turning) {
      turns.add(Math.PI / 2);
      for (int i = 1; i < 12; i++) {
        if (i != 6) {
          turns.add(i * TURN_STEP);
        }
      }
    }
    return turns;
  }

  /** Number of pages that the plate would need on a frame as it stands; cheap. */
  static long pages(Box box, PageFrame frame, double overlap) {
    Box span = box.grown(EASE);
    return (long) SeamAxis.count(span.width(), frame.field().width(), overlap)
        * SeamAxis.count(span.height(), frame.field().height(), overlap);
  }

  /** The plate at one turn. */
  private static final class Shape {
    private final double turn;
    private final Box span;
    private final double[][] across;
    private final double[][] up;
    private final Contour outline;
    private final RigidTransform back;
    private final List<Point> points;

    Shape(Contour outline, List<Point> points, List<Hole> holes, double turn) {
      RigidTransform motion = RigidTransform.turn(turn);
      this.turn = turn;
      this.outline = outline;
      this.back = RigidTransform.turn(-turn);
      this.points = turn == 0 ? points : points.stream().map(motion::of).toList();
      this.span =
          outline.segments().stream()
              .map(segment -> segment.moved(motion).box())
              .reduce(Box::union)
              .orElseThrow()
              .grown(EASE);
      List<Point> centres = holes.stream().map(hole -> motion.of(hole.centre())).toList();
      double[] radii = holes.stream().mapToDouble(hole -> hole.diameter() / 2).toArray();
      this.across = SeamAxis.holes(centres.stream().mapToDouble(Point::x).toArray(), radii);
      // Down the page, since row 0 is on top.
      this.up = SeamAxis.holes(centres.stream().mapToDouble(p -> -p.y()).toArray(), radii);
    }

    GridChoice choose(PageFrame frame, double overlap) {
      double w = frame.field().width();
      double h = frame.field().height();
      int columns = SeamAxis.count(span.width(), w, overlap);
      int rows = SeamAxis.count(span.height(), h, overlap);
      boolean mayBeEmpty = columns > 1 && rows > 1;
      int tried = mayBeEmpty ? TRIED : 1;
      List<SeamAxis> xs =
          SeamAxis.best(span.minX(), span.maxX(), columns, w, overlap, across, tried);
      List<SeamAxis> ys = SeamAxis.best(-span.maxY(), -span.minY(), rows, h, overlap, up, tried);
      Occupancy occupancy = mayBeEmpty ? new Occupancy(points, span) : null;
      GridChoice best = null;
      for (SeamAxis x : xs) {
        for (SeamAxis y : ys) {
          Grid grid =
              new Grid(columns, rows, w, h, overlap, new Point(x.start(), -y.start()), List.of());
          if (mayBeEmpty) {
            grid = grid.without(empty(grid, occupancy));
          }
          GridChoice next =
              new GridChoice(
                  frame, grid, turn, x.cut() + y.cut(), Math.min(x.distance(), y.distance()));
          if (best == null || ORDER.compare(next, best) < 0) {
            best = next;
          }
        }
      }
      return best;
    }

    /** Tiles on which nothing is drawn; none when the others would fall apart without them. */
    private List<Integer> empty(Grid grid, Occupancy occupancy) {
      List<Integer> empty = new ArrayList<>();
      for (int row = 0; row < grid.rows(); row++) {
        for (int column = 0; column < grid.columns(); column++) {
          Box tile = grid.tile(row, column);
          if (!occupancy.touches(tile.grown(1)) && !outline.contains(back.of(tile.centre()))) {
            empty.add(row * grid.columns() + column);
          }
        }
      }
      return empty.isEmpty() || holdsTogether(grid.without(empty)) ? empty : List.of();
    }

    private static boolean holdsTogether(Grid grid) {
      boolean[] seen = new boolean[grid.rows() * grid.columns()];
      List<Integer> next = new ArrayList<>();
      for (int i = 0; next.isEmpty(); i++) {
        if (grid.has(i / grid.columns(), i % grid.columns())) {
          next.add(i);
        }
      }
      int reached = 0;
      while (!next.isEmpty()) {
        int tile = next.remove(next.size() - 1);
        if (seen[tile]) {
          continue;
        }
        seen[tile] = true;
        reached++;
        int row = tile / grid.columns();
        int column = tile % grid.columns();
        int[][] sides = {
          {row - 1, column}, {row + 1, column}, {row, column - 1}, {row, column + 1}
        };
        for (int[] side : sides) {
          if (grid.has(side[0], side[1])) {
            next.add(side[0] * grid.columns() + side[1]);
          }
        }
      }
      return reached == grid.count();
    }
  }

  /** Answers whether any point lies in a box, in a fixed time, within two cells. */
  private static final class Occupancy {
    private final Box area;
    private final double cell;
    private final int columns;
    private final int[] sums;
    private final int rows;

    Occupancy(List<Point> points, Box area) {
      this.area = area;
      this.cell = Math.max(2, Math.max(area.width(), area.height()) / 200);
      this.columns = (int) (area.width() / cell) + 1;
      this.rows = (int) (area.height() / cell) + 1;
      this.sums = new int[(columns + 1) * (rows + 1)];
      for (Point p : points) {
        int column = (int) ((p.x() - area.minX()) / cell);
        int row = (int) ((p.y() - area.minY()) / cell);
        sums[(row + 1) * (columns + 1) + column + 1] = 1;
      }
      for (int row = 1; row <= rows; row++) {
        for (int column = 1; column <= columns; column++) {
          int at = row * (columns + 1) + column;
          sums[at] += sums[at - 1] + sums[at - columns - 1] - sums[at - columns - 2];
        }
      }
    }

    boolean touches(Box box) {
      int left = limit((box.minX() - area.minX()) / cell, columns);
      int right = limit((box.maxX() - area.minX()) / cell + 1, columns);
      int low = limit((box.minY() - area.minY()) / cell, rows);
      int high = limit((box.maxY() - area.minY()) / cell + 1, rows);
      int width = columns + 1;
      return sums[high * width + right]
              - sums[low * width + right]
              - sums[high * width + left]
              + sums[low * width + left]
          > 0;
    }

    private static int limit(double cells, int most) {
      return (int) Math.max(0, Math.min(most, Math.floor(cells)));
    }
  }
}
