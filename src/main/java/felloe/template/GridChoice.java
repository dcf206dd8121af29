package felloe.template;

import felloe.drawing.Outlines;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Chooses the page, the turn of the plate where that is asked for, and the seams: the hub pattern
 * and the bore whole on one page whenever that can be; then no seam within a hole; then the fewest
 * pages; then pages with a frame rather than open ones, each with all words rather than in brief,
 * the plate as it stands rather than turned, and seams farthest from hole centres.
 *
 * @param frame the chosen page
 * @param grid the tiles
 * @param turn turn of the plate, radians counter-clockwise
 * @param split whether a seam runs through the hub pattern or the bore
 * @param cut number of times that a seam runs through a hole
 * @param distance least distance of a seam from a hole's centre, mm; infinite without seams
 * @param pieces on open pages, what stands where on each tile that is printed, row by row
 */
record GridChoice(
    PageFrame frame,
    Grid grid,
    double turn,
    boolean split,
    int cut,
    double distance,
    List<PagePieces> pieces) {

  /** Room left round whatever is drawn, mm. */
  static final double EASE = 2;

  /**
   * Round openings up to this diameter are kept off seams like holes, mm: half of what an A5 page
   * with usual margins leaves across (common practice). A wider one would leave no place for a
   * seam.
   */
  private static final double WIDEST_OFF_SEAMS = 60;

  private static final double TURN_STEP = Math.PI / 12;

  private static final Comparator<GridChoice> ORDER =
      Comparator.comparing(GridChoice::split)
          .thenComparing(choice -> choice.cut > 0)
          .thenComparingInt(choice -> choice.grid.count())
          .thenComparingInt(GridChoice::cut)
          .thenComparing(choice -> choice.frame.kind() == PageFrame.Kind.OPEN)
          .thenComparing(GridChoice::brief)
          .thenComparing(choice -> choice.turn != 0)
          .thenComparing(choice -> -Math.rint(choice.distance * 1e6));

  GridChoice {
    pieces = List.copyOf(pieces);
  }

  /** Whether some page says the least only. */
  boolean brief() {
    return pieces.stream().anyMatch(PagePieces::brief);
  }

  /**
   * The best choice.
   *
   * @param laid the plate as it stands, already mirrored where it must be
   * @param frames the pages to try, framed ones before open ones, upright ones first
   * @param text what open pages have to find room for
   * @param turning whether the plate may be turned
   * @param below pages that take as many by the plate's size alone are not looked at
   * @return empty where none takes fewer
   */
  static Optional<GridChoice> of(
      LaidShape laid,
      List<PageFrame> frames,
      TileText text,
      double overlap,
      boolean turning,
      long below) {
    GridChoice best = null;
    for (double turn : turns(turning)) {
      Shape shape = new Shape(laid, text, turn);
      for (PageFrame frame : frames) {
        best = shape.pages(frame, overlap) < below ? shape.choose(frame, overlap, best) : best;
      }
    }
    return Optional.ofNullable(best);
  }

  /** The ways to turn the plate on the pages, radians, as it stands first. */
  static List<Double> turns(boolean turning) {
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
    return spanned(box.grown(EASE), frame, overlap);
  }

  private static long spanned(Box span, PageFrame frame, double overlap) {
    return (long) SeamAxis.count(span.width(), frame.field().width(), overlap)
        * SeamAxis.count(span.height(), frame.field().height(), overlap);
  }

  /** The plate at one turn. */
  private static final class Shape {
    private final LaidShape laid;
    private final TileText text;
    private final double turn;
    private final Box span;
    private final SeamAxis.Ground across;
    private final SeamAxis.Ground down;
    private final Contour outline;
    private final RigidTransform back;
    private final List<Point> points;
    private List<FreeSpace.Free> grounds = List.of();
    private PagePieces.Sizes whole;
    private PagePieces.Sizes brief;
    private Occupancy occupancy;

    Shape(LaidShape laid, TileText text, double turn) {
      RigidTransform motion = RigidTransform.turn(turn);
      this.laid = laid;
      this.text = text;
      this.turn = turn;
      this.outline = laid.outermost();
      this.back = RigidTransform.turn(-turn);
      List<Point> all = Outlines.points(outline.segments(), 1);
      this.points = turn == 0 ? all : all.stream().map(motion::of).toList();
      this.span = laid.box(turn).grown(EASE);
      List<Hole> holes = new ArrayList<>(laid.holes());
      // A round window as wide as this is no hole that a seam must keep out of.
      laid.rounds().stream().filter(h -> h.diameter() <= WIDEST_OFF_SEAMS).forEach(holes::add);
      double[][] x = new double[holes.size()][];
      double[][] y = new double[x.length][];
      Box hub = null;
      for (int i = 0; i < x.length; i++) {
        Hole hole = holes.get(i).moved(motion);
        Box box = hole.contour().box().grown(SeamAxis.CLEAR);
        x[i] = new double[] {hole.centre().x(), box.width() / 2};
        // Down the page, since row 0 is on top.
        y[i] = new double[] {-hole.centre().y(), box.height() / 2};
        if (hole.role() == HoleRole.BOLT || hole.role() == HoleRole.BORE) {
          hub = hub == null ? box : hub.union(box);
        }
      }
      Grid.Span none = new Grid.Span(1, -1);
      Grid.Span wide = hub == null ? none : new Grid.Span(hub.minX(), hub.maxX());
      Grid.Span high = hub == null ? none : new Grid.Span(-hub.maxY(), -hub.minY());
      this.across = new SeamAxis.Ground(x, wide);
      this.down = new SeamAxis.Ground(y, high);
    }

    long pages(PageFrame frame, double overlap) {
      return spanned(span, frame, overlap);
    }

    /** The better of the best so far and what this page gives. */
    GridChoice choose(PageFrame frame, double overlap, GridChoice sofar) {
      double w = frame.field().width();
      double h = frame.field().height();
      int columns = SeamAxis.count(span.width(), w, overlap);
      int rows = SeamAxis.count(span.height(), h, overlap);
      GridChoice best = sofar;
      // A column or a row more can keep the hub whole or a seam out of a hole.
      for (int more = 0; more < 4; more++) {
        if (more > 0 && best != null && !best.split && best.cut == 0) {
          break;
        }
        List<SeamAxis> xs = axis(span.minX(), span.maxX(), columns + more % 2, w, overlap, across);
        List<SeamAxis> ys = axis(-span.maxY(), -span.minY(), rows + more / 2, h, overlap, down);
        List<GridChoice> better = new ArrayList<>();
        for (SeamAxis x : xs) {
          for (SeamAxis y : ys) {
            GridChoice next = choice(frame, x, y, overlap);
            if (best == null || ORDER.compare(next, best) < 0) {
              better.add(next);
            }
          }
        }
        best = furnished(better, best);
      }
      return best;
    }

    /** The best that has room for bars and words; what there was before where none is better. */
    private GridChoice furnished(List<GridChoice> choices, GridChoice sofar) {
      // The best first: to find room for bars and words takes longer than all else here.
      choices.sort(ORDER);
      GridChoice best = sofar;
      for (GridChoice next : choices) {
        if (best != null && ORDER.compare(next, best) >= 0) {
          break;
        }
        best = furnished(next, best);
      }
      return best;
    }

    private static List<SeamAxis> axis(
        double low, double high, int count, double tile, double overlap, SeamAxis.Ground ground) {
      return SeamAxis.best(low, high, count, tile, overlap, ground);
    }

    private GridChoice choice(PageFrame frame, SeamAxis x, SeamAxis y, double overlap) {
      List<Grid.Span> rows =
          y.tiles().stream().map(s -> new Grid.Span(-s.to(), -s.from())).toList();
      Grid grid = new Grid(x.tiles(), rows, overlap, List.of());
      if (grid.columns() > 1 && grid.rows() > 1) {
        grid = grid.without(empty(grid));
      }
      return new GridChoice(
          frame,
          grid,
          turn,
          x.split() || y.split(),
          x.cut() + y.cut(),
          Math.min(x.distance(), y.distance()),
          List.of());
    }

    /** With bars and words on each open page, in full or else in brief, where that is better. */
    private GridChoice furnished(GridChoice choice, GridChoice sofar) {
      if (choice.frame.kind() != PageFrame.Kind.OPEN) {
        return choice;
      }
      if (grounds.isEmpty()) {
        grounds = TemplateDrawing.room(laid.moved(RigidTransform.turn(turn)));
        whole = PagePieces.Sizes.of(text.whole(), false);
        brief = PagePieces.Sizes.of(text.brief(), true);
      }
      List<PagePieces> all = new ArrayList<>();
      for (int row = 0; row < choice.grid.rows(); row++) {
        for (int column = 0; column < choice.grid.columns(); column++) {
          if (choice.grid.has(row, column)) {
            Optional<PagePieces> pieces = pieces(choice, row, column);
            if (pieces.isEmpty()) {
              return sofar;
            }
            all.add(pieces.get());
          }
        }
      }
      GridChoice furnished =
          new GridChoice(
              choice.frame,
              choice.grid,
              choice.turn,
              choice.split,
              choice.cut,
              choice.distance,
              all);
      return sofar == null || ORDER.compare(furnished, sofar) < 0 ? furnished : sofar;
    }

    /** In full where that finds room; clear of the marks on the seams where that does. */
    private Optional<PagePieces> pieces(GridChoice choice, int row, int column) {
      return pieces(choice, row, column, whole).or(() -> pieces(choice, row, column, brief));
    }

    private Optional<PagePieces> pieces(
        GridChoice choice, int row, int column, PagePieces.Sizes sizes) {
      double bar = choice.frame.bar();
      return PagePieces.on(choice.grid.clear(row, column, Seams.REACH), grounds, bar, sizes)
          .or(() -> PagePieces.on(choice.grid.seen(row, column), grounds, bar, sizes));
    }

    /** Tiles on which nothing is drawn; none when the others would fall apart without them. */
    private List<Integer> empty(Grid grid) {
      if (occupancy == null) {
        occupancy = new Occupancy(points, span);
      }
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
