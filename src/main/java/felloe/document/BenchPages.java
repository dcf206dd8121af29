package felloe.document;

import felloe.drawing.Drawing;
import felloe.drawing.Mark;
import felloe.drawing.Picture;
import felloe.drawing.ScaledPicture;
import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets blocks for the bench on as many fields as it takes, from top to bottom: one layouter and one
 * look for all pages that are read and written on.
 */
public final class BenchPages {

  private static final double GAP = 3;

  /** More space above a heading. */
  private static final double ABOVE = 2;

  /** Room for half a line's width at the sides. */
  private static final double SIDE = 0.5;

  /** Room for accents above the first line and tails below the last. */
  private static final double END = 1;

  /** Lines longer than this are hard to follow, mm. */
  private static final double LONGEST = 190;

  /** Room that must be left below a heading, mm. */
  private static final double FOLLOWS = 30;

  /** A picture that would be smaller than this share of its size goes to the next page. */
  private static final double LEAST_PICTURE = 0.75;

  /** Higher than any column of words, mm. */
  private static final double ENDLESS = 1e6;

  private final Box others;
  private final double width;
  private final double measure;
  private final List<Drawing> pages = new ArrayList<>();
  private Drawing page = new Drawing(List.of());
  private List<Mark> marks = new ArrayList<>();
  private Box field;
  private double y;

  private BenchPages(Box first, Box others) {
    this.field = first;
    this.others = others;
    this.width = first.width();
    this.measure = Math.min(LONGEST, width);
    this.y = first.maxY();
  }

  /**
   * The pages, as drawings in page coordinates; none without blocks.
   *
   * @param field where they may stand on each page, mm
   */
  public static List<Drawing> of(List<? extends Block> blocks, Box field) {
    return of(blocks, field, field);
  }

  /**
   * The same where the first page has less room, as wide as the others.
   *
   * @param first where they may stand on the first page, mm
   * @param others where they may stand on all others, mm
   */
  public static List<Drawing> of(List<? extends Block> blocks, Box first, Box others) {
    BenchPages set = new BenchPages(inner(first), inner(others));
    set.blocks(onPaper(blocks));
    return List.copyOf(set.pages);
  }

  private static Box inner(Box field) {
    return new Box(
        field.minX() + SIDE, field.minY() + END, field.maxX() - SIDE, field.maxY() - END);
  }

  /**
   * Room for a picture that stands below some blocks on a page, mm: it is shown at its full size
   * there when it is no larger.
   *
   * @param field of the page
   */
  public static Box below(List<? extends Block> blocks, Box field) {
    Box inner = inner(field);
    BenchPiece piece = column(blocks, inner.width());
    return new Box(inner.minX(), inner.minY(), inner.maxX(), inner.maxY() - piece.height() - GAP);
  }

  /** The blocks one below the other without end, to stand beside something else. */
  public static BenchPiece column(List<? extends Block> blocks, double width) {
    Box endless = new Box(0, -ENDLESS, width, 0);
    BenchPages set = new BenchPages(endless, endless);
    set.blocks(onPaper(blocks));
    List<Mark> marks = set.pages.stream().flatMap(page -> page.marks().stream()).toList();
    double lower = marks.stream().mapToDouble(mark -> mark.box().minY()).min().orElse(0);
    return new BenchPiece(-lower, GAP, marks);
  }

  /** Width that a table takes where there is room. */
  public static double width(Block.Table rows) {
    return new BenchTable(rows, ENDLESS, ENDLESS).width();
  }

  /** What is meant for paper, its folds opened. */
  private static List<Block> onPaper(List<? extends Block> blocks) {
    List<Block> open = new ArrayList<>();
    for (Block block : blocks) {
      if (!(block instanceof Block.Folded folded)) {
        open.add(block);
      } else if (folded.depth() != Block.Depth.SCREEN) {
        open.addAll(onPaper(folded.blocks()));
      }
    }
    return open;
  }

  private void blocks(List<? extends Block> blocks) {
    for (int i = 0; i < blocks.size(); i++) {
      Block block = blocks.get(i);
      if (block instanceof Block.Heading) {
        heading(blocks, i);
      }
      if (block instanceof Block.PageBreak) {
        turnOver();
      } else if (block instanceof Block.Table rows) {
        rows(new BenchTable(rows, width, field.height()));
      } else if (block instanceof Block.Figure drawn) {
        pictures(drawn.pictures());
      } else {
        pieces(block).forEach(this::piece);
      }
    }
    turnOver();
  }

  private List<BenchPiece> pieces(Block block) {
    double most = field.height();
    if (block instanceof Block.Heading heading) {
      return BenchPiece.heading(heading.text(), width, most);
    } else if (block instanceof Block.Paragraph words) {
      return BenchPiece.words(words.text(), measure, most);
    } else if (block instanceof Block.Steps steps) {
      return BenchPiece.steps(steps, measure, most);
    } else if (block instanceof Block.Callout framed) {
      return BenchPiece.framed(framed.texts(), measure, most);
    }
    return List.of();
  }

  /** Height of a heading with all that stands below it, up to the next one. */
  private double section(List<? extends Block> blocks, int heading) {
    double height = 0;
    boolean told = false;
    for (int i = heading; i < blocks.size(); i++) {
      boolean ends = blocks.get(i) instanceof Block.Heading && told;
      if (ends || blocks.get(i) instanceof Block.PageBreak) {
        break;
      }
      told |= !(blocks.get(i) instanceof Block.Heading);
      height += height(blocks.get(i));
    }
    return height - GAP;
  }

  private double height(Block block) {
    if (block instanceof Block.Table rows) {
      BenchTable table = new BenchTable(rows, width, field.height());
      int abreast = abreast(table);
      int high = (table.size() + abreast - 1) / abreast;
      return table.size() == 0 ? 0 : table.height(0, high) + GAP;
    } else if (block instanceof Block.Figure drawn) {
      List<Picture> row = row(drawn.pictures(), 0);
      return row.isEmpty() ? 0 : LEAST_PICTURE * high(row) + GAP;
    }
    return pieces(block).stream().mapToDouble(piece -> piece.height() + piece.gap()).sum();
  }

  private boolean blank() {
    return marks.isEmpty() && page.layers().isEmpty();
  }

  private void turnOver() {
    if (!blank()) {
      pages.add(marks.isEmpty() ? page : Drawing.of("work", marks).and(page));
      marks = new ArrayList<>();
      page = new Drawing(List.of());
      field = others;
    }
    y = field.maxY();
  }

  /** Goes to the next page when less than a height is left, unless this one is still blank. */
  private void need(double height) {
    if (y - height < field.minY() - Tolerances.ROUNDING && !blank()) {
      turnOver();
    }
  }

  /** Finds the page for a heading, with its section or at least the beginning of that. */
  private void heading(List<? extends Block> blocks, int heading) {
    if (heading > 0 && blocks.get(heading - 1) instanceof Block.Heading) {
      return;
    }
    double section = section(blocks, heading);
    double left = y - field.minY() - ABOVE;
    boolean together = section <= field.height() / 3 || left <= field.height() / 4;
    double least = Math.min(section, beginning(blocks, heading));
    need(ABOVE + (together && section <= field.height() ? section : least));
    y -= blank() ? 0 : ABOVE;
  }

  /** Height of headings with so much of what follows as must not be parted from them. */
  private double beginning(List<? extends Block> blocks, int heading) {
    int next = heading;
    double height = 0;
    while (next < blocks.size() && blocks.get(next) instanceof Block.Heading) {
      height += height(blocks.get(next++));
    }
    double first = 0;
    while (next < blocks.size() && first == 0) {
      first = first(blocks.get(next++));
    }
    return Math.min(field.height(), height + Math.max(FOLLOWS, first));
  }

  /** Height of what cannot be parted at the beginning of a block. */
  private double first(Block block) {
    if (block instanceof Block.Table rows) {
      BenchTable table = new BenchTable(rows, width, field.height());
      return table.size() == 0 ? 0 : table.height(0, Math.min(2, table.size()));
    } else if (block instanceof Block.Figure) {
      return height(block);
    }
    return pieces(block).stream().mapToDouble(BenchPiece::height).findFirst().orElse(0);
  }

  private void piece(BenchPiece piece) {
    need(piece.height());
    marks.addAll(piece.at(new Point(field.minX(), y)));
    y -= piece.height() + piece.gap();
  }

  /** Height of pictures side by side on a page of their own. */
  private double high(List<Picture> row) {
    double high = 0;
    for (Picture picture : row) {
      Box box = picture.page();
      double scale = Math.min(1, Math.min(width / box.width(), field.height() / box.height()));
      high = Math.max(high, scale * box.height());
    }
    return high;
  }

  /** The pictures from one on that stand side by side at full size; at least that one. */
  private List<Picture> row(List<Picture> pictures, int from) {
    double wide = 0;
    int to = from;
    while (to < pictures.size()
        && (to == from || wide + pictures.get(to).page().width() <= width)) {
      wide += pictures.get(to++).page().width();
    }
    return pictures.subList(from, to);
  }

  /** Rows of pictures, close to each other; one that stands alone may be made somewhat smaller. */
  private void pictures(List<Picture> pictures) {
    for (int from = 0; from < pictures.size(); ) {
      List<Picture> row = row(pictures, from);
      double high = high(row);
      need(pictures.size() == 1 ? LEAST_PICTURE * high : high);
      double low = Math.max(field.minY(), y - high);
      double left = field.minX();
      for (Picture picture : row) {
        double right = row.size() == 1 ? field.maxX() : left + picture.page().width();
        page = page.and(ScaledPicture.in(picture, new Box(left, low, right, y)));
        left = right;
      }
      y = low;
      from += row.size();
    }
    y -= pictures.isEmpty() ? 0 : GAP;
  }

  /** How many parts of a table stand side by side. */
  private int abreast(BenchTable table) {
    if (!table.abreast() || table.size() < BenchTable.SHORT) {
      return 1;
    }
    return (int)
        Math.max(
            1, Math.floor((width + BenchTable.BETWEEN) / (table.width() + BenchTable.BETWEEN)));
  }

  private void rows(BenchTable table) {
    int abreast = abreast(table);
    int from = 0;
    while (from < table.size()) {
      need(table.height(from, Math.min(from + 2, table.size())));
      int left = table.size() - from;
      int high = Math.max(1, table.room(from, y - field.minY()));
      // The last page's parts are of even height.
      int each = Math.min(high, (left + abreast - 1) / abreast);
      double lowest = y;
      for (int i = 0; i < abreast && from < table.size(); i++) {
        int to = from + Math.min(each, Math.max(1, table.room(from, y - field.minY())));
        Point corner = new Point(field.minX() + i * (table.width() + BenchTable.BETWEEN), y);
        marks.addAll(table.marks(corner, from, to));
        lowest = Math.min(lowest, y - table.height(from, to));
        from = to;
      }
      y = lowest - GAP;
      if (from < table.size()) {
        turnOver();
      }
    }
  }
}
