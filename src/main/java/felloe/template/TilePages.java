package felloe.template;

import felloe.document.BenchPages;
import felloe.document.BenchPiece;
import felloe.document.Block;
import felloe.document.Report;
import felloe.drawing.Correction;
import felloe.drawing.Drawing;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Stamp;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Draws the pages once it is settled which part of the template each one carries. */
final class TilePages {

  static final String NOTES = "Notes";
  private static final String WORK = "Work";
  private static final String STAMP = "stamp";
  private static final double STEP = 3;
  private static final double CLEAR = 2.5;
  private static final double STEPS_WIDTH = 110;

  private final Plate plate;
  private final LaidShape shape;
  private final GridChoice choice;
  private final StripText text;
  private final Correction correction;
  private final String paper;
  private final Optional<Report> work;
  private final BarWords bars;
  private final Stamp stamp;
  private final List<Page> pages = new ArrayList<>();

  TilePages(
      LaidShape shape,
      GridChoice choice,
      StripText text,
      Correction correction,
      String paper,
      BarWords bars,
      Optional<Report> work,
      Stamp stamp) {
    this.bars = bars;
    this.stamp = stamp;
    this.plate = shape.plate();
    this.shape = shape;
    this.choice = choice;
    this.text = text;
    this.correction = correction;
    this.paper = paper;
    this.work = work;
  }

  /**
   * Heights that steps and table of the full-size page take side by side, and one above the other.
   */
  static List<Double> notesHeights(
      LaidShape shape, Grid grid, BarWords bars, double bar, Stamp stamp) {
    List<Block> steps = steps(shape, grid, PageSet.FULL_SIZE, bar, bars, stamp);
    double words = BenchPages.column(steps, stepsWidth(grid)).height();
    double table = BenchPages.column(table(shape), tableWidth(shape.plate())).height();
    double space = 3 * CLEAR + STEP;
    return List.of(Math.max(words, table) + space, words + table + 2 * space);
  }

  PageSet set() {
    Grid grid = choice.grid();
    PageFrame frame = choice.frame();
    TemplateDrawing template = TemplateDrawing.on(shape, wordsArea(grid));
    for (int tile : grid.leftOut()) {
      Box box = grid.tile(tile / grid.columns(), tile % grid.columns());
      template.ground().block(box.grown(-grid.overlap()), FreeSpace.TAKEN);
    }
    choice.pieces().stream()
        .flatMap(pieces -> pieces.boxes().stream())
        .forEach(box -> template.ground().block(box, FreeSpace.TAKEN));
    Seams seams = new Seams(grid, template.ground());
    Drawing drawing = template.lines().and(template.notes());
    List<Block> words = steps(shape, grid, paper, frame.bar(), bars, stamp);
    BenchPiece steps = BenchPages.column(words, stepsWidth(grid));
    BenchPiece table = BenchPages.column(table(shape), tableWidth(plate));
    boolean bare = bench(plate).isEmpty();
    Map<Integer, List<Mark>> large = large(grid, template.ground());
    List<Mark> taken = large.values().stream().flatMap(List::stream).toList();
    Free free = new Free(grid, drawing.and(Drawing.of(STAMP, taken)), shape, choice.pieces());
    Optional<FreeCorner> tableBlock =
        bare ? Optional.empty() : free.find(tableWidth(plate), table.height());
    Optional<FreeCorner> stepsBlock = free.find(stepsWidth(grid), steps.height());
    boolean onTiles =
        stepsBlock.isPresent() && (tableBlock.isPresent() || bare) && cautions().isPresent();
    Box field = wordsFrame().field();
    List<Block> both = new ArrayList<>(words);
    both.addAll(table(shape));
    Box below = LargeWords.below(field, stamp);
    List<Drawing> notes = onTiles ? List.of() : BenchPages.of(both, below);
    List<Drawing> bench = work.map(text -> bench(text, below)).orElse(List.of());
    Drawing head = Drawing.of(STAMP, stamp.isNone() ? List.of() : LargeWords.head(field, stamp));
    int total = grid.count() + notes.size() + bench.size();
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        if (grid.has(row, column)) {
          List<Mark> extra = new ArrayList<>();
          if (onTiles) {
            if (tableBlock.isPresent() && tableBlock.get().on(row, column)) {
              extra.addAll(table.at(tableBlock.get().corner()));
            }
            if (stepsBlock.get().on(row, column)) {
              extra.addAll(steps.at(stepsBlock.get().corner()));
            }
          }
          tile(
              row,
              column,
              drawing
                  .only(legible(grid, grid.tile(row, column)))
                  .and(seams.of(row, column))
                  .and(Drawing.of("table", extra))
                  .and(Drawing.of(STAMP, large.get(row * grid.columns() + column))),
              total);
        }
      }
    }
    for (int i = 0; i < notes.size(); i++) {
      String name = notes.size() == 1 ? NOTES : NOTES + " " + (i + 1);
      words(name, total, List.of(Page.Placed.of(notes.get(i).and(head))));
    }
    for (int i = 0; i < bench.size(); i++) {
      String name = WORK + " " + (i + 1);
      words(name, total, List.of(Page.Placed.of(bench.get(i).and(head))));
    }
    return new PageSet(
        work.map(Report::title).orElse(plate.title() + " - template") + " " + paper,
        paper,
        pages,
        grid,
        shape.motion(),
        drawing,
        seams.marks(),
        frame.bar(),
        choice.cut(),
        choice.distance());
  }

  /** No word is cut off by a tile's edge that stands whole on another tile. */
  private static Predicate<Mark> legible(Grid grid, Box tile) {
    List<Box> tiles =
        printed(grid).map(i -> grid.tile(i / grid.columns(), i % grid.columns())).toList();
    return mark ->
        !(mark instanceof Mark.Label)
            || tile.contains(mark.box())
            || tiles.stream().noneMatch(other -> other.contains(mark.box()));
  }

  /** A report under its title. */
  private static List<Drawing> bench(Report report, Box field) {
    List<Block> blocks = new ArrayList<>(List.of(new Block.Heading(report.title())));
    blocks.addAll(report.blocks());
    return BenchPages.of(blocks, field);
  }

  /** What each page says in large letters, by its place in the grid. */
  private Map<Integer, List<Mark>> large(Grid grid, FreeSpace ground) {
    Map<Integer, List<Mark>> large = new TreeMap<>();
    List<Box> pieces = choice.pieces().stream().flatMap(piece -> piece.boxes().stream()).toList();
    LargeWords words = new LargeWords(ground, pieces);
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        if (grid.has(row, column)) {
          List<Mark> marks = words.in(grid.seen(row, column), shape.outline(), shape.face(), stamp);
          large.put(row * grid.columns() + column, marks);
        }
      }
    }
    return large;
  }

  /** The tile on which the cautions stand in full. */
  private Optional<String> cautions() {
    List<String> names = printed(choice.grid()).map(i -> name(choice.grid(), i)).toList();
    return IntStream.range(0, names.size())
        .filter(i -> choice.pieces().isEmpty() || !choice.pieces().get(i).brief())
        .mapToObj(names::get)
        .findFirst();
  }

  private static Stream<Integer> printed(Grid grid) {
    return IntStream.range(0, grid.rows() * grid.columns())
        .filter(i -> grid.has(i / grid.columns(), i % grid.columns()))
        .boxed();
  }

  private static String name(Grid grid, int tile) {
    return Grid.name(tile / grid.columns(), tile % grid.columns());
  }

  /** Where words may stand: round the part, and on paper. */
  private Box wordsArea(Grid grid) {
    Box round = shape.box().grown(20);
    Box paper = grid.tile(0, 0).union(grid.tile(grid.rows() - 1, grid.columns() - 1));
    return new Box(
        Math.max(round.minX(), paper.minX()),
        Math.max(round.minY(), paper.minY()),
        Math.min(round.maxX(), paper.maxX()),
        Math.min(round.maxY(), paper.maxY()));
  }

  private static List<Block> steps(
      LaidShape shape, Grid grid, String paper, double bar, BarWords bars, Stamp stamp) {
    String title = grid.count() > 1 ? "Print, join, check" : "Print and check";
    return List.of(
        new Block.Heading(title),
        Block.Steps.of(TemplateWords.steps(shape, grid, paper, bar, bars, stamp)));
  }

  private static double stepsWidth(Grid grid) {
    return Math.min(STEPS_WIDTH, grid.tile(0, 0).width() - 6);
  }

  private static List<Block> table(LaidShape shape) {
    return List.of(HoleTable.of(bench(shape.plate()), shape.face()));
  }

  private static List<Hole> bench(Plate plate) {
    return plate.benchHoles(Double.POSITIVE_INFINITY);
  }

  /** Width of a plate's hole table, mm. */
  static double tableWidth(Plate plate) {
    return BenchPages.width(HoleTable.of(bench(plate), Face.BACK));
  }

  private void tile(int row, int column, Drawing all, int total) {
    Box tile = choice.grid().tile(row, column);
    Box field = choice.frame().field();
    Point shift = new Point(field.minX() - tile.minX(), field.maxY() - tile.maxY());
    Box clip =
        new Box(
            field.minX(), field.maxY() - tile.height(), field.minX() + tile.width(), field.maxY());
    Page.Placed part = new Page.Placed(all.within(tile), shift, Optional.of(clip));
    String name = Grid.name(row, column);
    Function<Box, List<Mark>> map = box -> map().in(box, row, column);
    Drawing round =
        choice.pieces().isEmpty()
            ? new Furniture(choice.frame(), text).draw(name, count(total), map)
            : placed(name, count(total), map, choice.pieces().get(pages.size()).moved(shift));
    page(name, List.of(part, Page.Placed.of(round)));
  }

  private Drawing placed(
      String name, String count, Function<Box, List<Mark>> map, PagePieces pieces) {
    StripText words =
        pieces.brief() ? TemplateWords.brief(text, shape, stamp, cautions().orElse(NOTES)) : text;
    return new Furniture(choice.frame(), words).draw(name, count, map, pieces);
  }

  /** A page without a part of the drawing: no check bars, no scale. */
  private void words(String name, int total, List<Page.Placed> parts) {
    Furniture furniture = new Furniture(wordsFrame(), text);
    List<Page.Placed> all = new ArrayList<>(parts);
    all.add(Page.Placed.of(furniture.draw(name, count(total), box -> map().in(box, -1, -1))));
    page(name, all);
  }

  private PageFrame wordsFrame() {
    PageFrame frame = choice.frame();
    Box room = frame.room();
    double bottom = room.minY() + text.height(room.width());
    Box strip = new Box(room.minX(), room.minY(), room.maxX(), bottom);
    Box field = new Box(room.minX(), bottom + PageFrame.SPACE, room.maxX(), room.maxY());
    return new PageFrame(
        PageFrame.Kind.WORDS,
        frame.width(),
        frame.height(),
        room,
        strip,
        strip,
        field,
        frame.bar());
  }

  private String count(int total) {
    return "page " + (pages.size() + 1) + " of " + total;
  }

  private PageMap map() {
    List<Contour> contours = new ArrayList<>();
    contours.add(shape.outline());
    contours.addAll(shape.windows());
    return new PageMap(choice.grid(), contours);
  }

  private void page(String name, List<Page.Placed> parts) {
    pages.add(new Page(name, choice.frame().width(), choice.frame().height(), parts, correction));
  }

  /** Where a table or text hangs: on one tile, from its upper left corner. */
  private record FreeCorner(int row, int column, Point corner) {
    boolean on(int r, int c) {
      return r == row && c == column;
    }

    Box box(double width, double height) {
      return new Box(corner.x(), corner.y() - height, corner.x() + width, corner.y());
    }
  }

  /** Room on the tiles outside of the part. */
  private static final class Free {
    private final Grid grid;
    private final LaidShape shape;
    private final List<FreeSpace.Free> frees = new ArrayList<>();
    private final List<Box> taken = new ArrayList<>();

    Free(Grid grid, Drawing drawing, LaidShape shape, List<PagePieces> pieces) {
      this.grid = grid;
      this.shape = shape;
      for (int i = 0; i < grid.rows() * grid.columns(); i++) {
        Box seen = inner(grid, i / grid.columns(), i % grid.columns());
        FreeSpace ground = new FreeSpace(seen);
        drawing.within(seen).marks().forEach(mark -> ground.mark(mark, FreeSpace.EDGE));
        for (PagePieces piece : pieces) {
          piece.boxes().forEach(box -> ground.block(box.grown(1), FreeSpace.TAKEN));
        }
        frees.add(ground.free());
      }
    }

    /** The part of a tile that no neighbour shares. */
    private static Box inner(Grid grid, int row, int column) {
      Box tile = grid.tile(row, column);
      double keep = grid.overlap() + 1;
      return new Box(
          tile.minX() + (grid.has(row, column - 1) ? keep : 0),
          tile.minY() + (grid.has(row + 1, column) ? keep : 0),
          tile.maxX() - (grid.has(row, column + 1) ? keep : 0),
          tile.maxY() - (grid.has(row - 1, column) ? keep : 0));
    }

    Optional<FreeCorner> find(double width, double height) {
      for (int i = 0; i < frees.size(); i++) {
        int row = i / grid.columns();
        int column = i % grid.columns();
        if (grid.has(row, column)) {
          Optional<FreeCorner> found = find(width, height, row, column, frees.get(i));
          if (found.isPresent()) {
            taken.add(found.get().box(width, height).grown(4));
            return found;
          }
        }
      }
      return Optional.empty();
    }

    private boolean onPart(Point at) {
      return shape.outline().contains(at)
          && shape.windows().stream().noneMatch(window -> window.contains(at));
    }

    private Optional<FreeCorner> find(
        double width, double height, int row, int column, FreeSpace.Free free) {
      Box area = inner(grid, row, column);
      for (double y = area.maxY() - CLEAR; y - height >= area.minY() + CLEAR; y -= STEP) {
        for (double x = area.minX() + CLEAR; x + width <= area.maxX() - CLEAR; x += STEP) {
          Box box = new Box(x, y - height, x + width, y);
          if (free.is(box.grown(CLEAR))
              && taken.stream().noneMatch(box::touches)
              && !onPart(box.centre())) {
            return Optional.of(new FreeCorner(row, column, new Point(x, y)));
          }
        }
      }
      return Optional.empty();
    }
  }
}
