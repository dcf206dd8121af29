package felloe.document;

import felloe.drawing.Anchor;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Paragraph;
import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** A table of the bench's pages, its columns fitted to a width. */
final class BenchTable {

  private static final double TEXT = BenchPiece.TEXT;
  private static final double PITCH = 3.8;
  private static final double PAD = 1.4;
  private static final double SPACE = 0.9;
  private static final double BLANK = 17;

  /** Between parts of a table that stand side by side, mm. */
  static final double BETWEEN = 5;

  /** A table with fewer rows than this stays in one part. */
  static final int SHORT = 7;

  private static final double LEAST_WRAPPED = 30;

  /** The same where the column is all that there is to read, mm. */
  private static final double LIST = 45;

  /** What sums of widths may be off by, mm. */
  private static final double HAIR = 0.01;

  /** Height of a row that is written in. */
  private static final double WRITE = 6.6;

  /** A box to tick takes one line. */
  private static final String TICK = new Cell.Tick().text("");

  /** Height of a row with a box to tick. */
  private static final double TICKED = 5;

  private final String caption;
  private final List<Block.Column> columns;
  private final boolean abreast;
  private final double[] widths;
  private final List<List<String>> heads;
  private final List<List<List<String>>> cells = new ArrayList<>();
  private final double least;

  /**
   * @param width that it may take, mm; a table with wrapped words whose parts may stand side by
   *     side takes a third or half of it where that is enough
   * @param most height that it may take on a page, mm; a row that is higher goes on in another
   */
  BenchTable(Block.Table rows, double width, double most) {
    this.columns = rows.columns();
    this.abreast = rows.abreast();
    this.widths =
        IntStream.of(3, 2)
            .filter(parts -> abreast && rows.rows().size() >= SHORT && has(Block.Fill.WRAPPED))
            .mapToObj(parts -> widths(rows, (width - (parts - 1) * BETWEEN) / parts))
            .filter(this::roomy)
            .findFirst()
            .orElseGet(() -> widths(rows, width));
    this.caption = rows.caption().isEmpty() ? "" : Paragraph.fit(rows.caption(), TEXT, width - PAD);
    this.least = has(Block.Fill.BLANK) ? WRITE : has(Block.Fill.TICK) ? TICKED : 0;
    int headLines = lines(most / 3);
    List<List<String>> wrapped = cells(columns.stream().map(Block.Column::heading).toList());
    this.heads = wrapped.stream().map(c -> c.subList(0, Math.min(headLines, c.size()))).toList();
    int highest = lines(most - headHeight() - HAIR);
    for (List<String> row : texts(rows)) {
      List<List<String>> texts = cells(row);
      int high = lines(texts);
      for (int from = 0; from < high; from += highest) {
        cells.add(lines(texts, from, from + highest));
      }
    }
  }

  /** Whether no column that wraps is too narrow; one that stands alone wants more. */
  private boolean roomy(double[] widths) {
    int[] wrapped =
        IntStream.range(0, widths.length)
            .filter(i -> columns.get(i).fill() == Block.Fill.WRAPPED)
            .toArray();
    double least = wrapped.length > 1 || wrapped.length < widths.length - 1 ? LEAST_WRAPPED : LIST;
    return IntStream.of(wrapped).allMatch(i -> widths[i] >= least);
  }

  private static List<List<String>> texts(Block.Table table) {
    List<List<String>> texts = new ArrayList<>();
    for (List<Cell> row : table.rows()) {
      List<String> line = new ArrayList<>();
      for (int i = 0; i < row.size(); i++) {
        line.add(row.get(i).text(table.columns().get(i).unit()));
      }
      texts.add(line);
    }
    return texts;
  }

  private boolean has(Block.Fill fill) {
    return columns.stream().anyMatch(column -> column.fill() == fill);
  }

  /** How many lines have room in a row of some height. */
  private static int lines(double height) {
    return (int) Math.max(1, Math.min(1_000_000, Math.floor((height - SPACE) / PITCH)));
  }

  private static int lines(List<List<String>> texts) {
    return texts.stream().mapToInt(List::size).max().orElse(1);
  }

  private static List<List<String>> lines(List<List<String>> texts, int from, int to) {
    return texts.stream()
        .map(c -> c.subList(Math.min(from, c.size()), Math.min(to, c.size())))
        .toList();
  }

  private List<List<String>> cells(List<String> row) {
    List<List<String>> texts = new ArrayList<>();
    for (int i = 0; i < widths.length; i++) {
      boolean tick = columns.get(i).fill() == Block.Fill.TICK && row.get(i).equals(TICK);
      texts.add(
          tick ? List.of(TICK) : Paragraph.wrap(row.get(i), TEXT, widths[i] - 2 * PAD + HAIR));
    }
    return texts;
  }

  private double[] widths(Block.Table rows, double width) {
    double[] fixed = new double[columns.size()];
    List<Integer> wrapped = new ArrayList<>();
    for (int i = 0; i < fixed.length; i++) {
      if (columns.get(i).fill() == Block.Fill.WRAPPED) {
        wrapped.add(i);
      } else {
        fixed[i] = natural(rows, i);
      }
    }
    double sum = Arrays.stream(fixed).sum();
    // Where there are too many columns, those with long words keep a like share.
    double share = wrapped.isEmpty() ? 0 : Math.min(LEAST_WRAPPED, width / columns.size());
    if (sum > width - share * wrapped.size() + HAIR) {
      fixed = narrowed(fixed, words(rows, fixed), width - share * wrapped.size());
      sum = Arrays.stream(fixed).sum();
    }
    shared(rows, fixed, wrapped, width - sum);
    return fixed;
  }

  /** Parts what is left among columns that wrap; one takes more than its share for a long word. */
  private void shared(Block.Table rows, double[] widths, List<Integer> wrapped, double left) {
    if (wrapped.isEmpty()) {
      return;
    }
    double[] endless = new double[widths.length];
    Arrays.fill(endless, Double.POSITIVE_INFINITY);
    double[] longest = words(rows, endless);
    List<Integer> open = new ArrayList<>(wrapped);
    double most = left / wrapped.size();
    double room = left;
    boolean changed = true;
    while (changed) {
      changed = false;
      int shares = open.stream().mapToInt(i -> columns.get(i).share()).sum();
      for (int i : List.copyOf(open)) {
        widths[i] = columns.get(i).share() * room / shares;
        double needed = Math.min(longest[i], most);
        if (!changed && widths[i] < needed - HAIR) {
          widths[i] = needed;
          room -= needed;
          open.remove((Integer) i);
          changed = true;
        }
      }
    }
  }

  private double natural(Block.Table rows, int column) {
    Block.Column kind = columns.get(column);
    double natural = TextWidth.of(kind.heading(), TEXT);
    if (kind.fill() == Block.Fill.TICK) {
      return Math.max(natural, BenchPiece.TICK) + 2 * PAD;
    }
    for (List<String> row : texts(rows)) {
      natural = Math.max(natural, TextWidth.of(row.get(column), TEXT));
    }
    double written = kind.fill() == Block.Fill.BLANK ? kind.share() * BLANK : 0;
    return Math.max(written, natural + 2 * PAD);
  }

  /** What the longest word of each column takes; no column is made wider for it. */
  private double[] words(Block.Table rows, double[] natural) {
    double[] words = new double[natural.length];
    for (int i = 0; i < words.length; i++) {
      double longest = TextWidth.widest(List.of(columns.get(i).heading().split(" +")), TEXT);
      for (List<String> row : texts(rows)) {
        longest = Math.max(longest, TextWidth.widest(List.of(row.get(i).split(" +")), TEXT));
      }
      words[i] = Math.min(natural[i], longest + 2 * PAD);
    }
    return words;
  }

  /** Columns cut to a room, the widest first; words are only broken where they must be. */
  private static double[] narrowed(double[] natural, double[] words, double room) {
    double spare = room - Arrays.stream(words).sum();
    if (spare < 0) {
      double level = level(words, room);
      return Arrays.stream(words).map(word -> Math.min(word, level)).toArray();
    }
    double[] more = new double[natural.length];
    for (int i = 0; i < more.length; i++) {
      more[i] = natural[i] - words[i];
    }
    double level = level(more, spare);
    for (int i = 0; i < more.length; i++) {
      more[i] = words[i] + Math.min(more[i], level);
    }
    return more;
  }

  /** The width at which the widest columns are cut, so that all of them fill a room. */
  private static double level(double[] widths, double room) {
    double[] sorted = Arrays.stream(widths).sorted().toArray();
    double left = room;
    for (int i = 0; i < sorted.length; i++) {
      double level = left / (sorted.length - i);
      if (sorted[i] >= level) {
        return level;
      }
      left -= sorted[i];
    }
    return sorted[sorted.length - 1];
  }

  int size() {
    return cells.size();
  }

  /** Whether parts of it may stand side by side. */
  boolean abreast() {
    return abreast;
  }

  /** Its width, mm. */
  double width() {
    double caption = this.caption.isEmpty() ? 0 : TextWidth.of(this.caption, TEXT) + PAD;
    return Math.max(caption, Arrays.stream(widths).sum());
  }

  private double captionHeight() {
    return caption.isEmpty() ? 0 : PITCH + SPACE;
  }

  private double headHeight() {
    return captionHeight() + lines(heads) * PITCH + SPACE;
  }

  private double height(int row) {
    return Math.max(least, lines(cells.get(row)) * PITCH + SPACE);
  }

  /** Height of rows {@code from} to {@code to} (exclusive) with their heads. */
  double height(int from, int to) {
    double height = headHeight();
    for (int row = from; row < to; row++) {
      height += height(row);
    }
    return height;
  }

  /** How many rows from one on have room in a height, the heads included. */
  int room(int from, double height) {
    double used = headHeight();
    int row = from;
    while (row < cells.size() && used + height(row) <= height + Tolerances.ROUNDING) {
      used += height(row++);
    }
    return row - from;
  }

  /** Block.Table {@code from} to {@code to} (exclusive) with their heads, hanging from a point. */
  List<Mark> marks(Point corner, int from, int to) {
    List<Mark> marks = new ArrayList<>();
    double right = corner.x() + width();
    double y = corner.y();
    if (!caption.isEmpty()) {
      Point at = new Point(corner.x() + PAD, y - TEXT);
      marks.add(Mark.Label.of(caption, at, TEXT, Anchor.START));
      y -= captionHeight();
    }
    marks.add(rule(corner.x(), right, y, LineType.EDGE));
    double x = corner.x();
    for (int i = 0; i < widths.length; i++) {
      text(heads.get(i), i, x, y, marks);
      x += widths[i];
    }
    y = corner.y() - headHeight();
    marks.add(rule(corner.x(), right, y, LineType.THIN));
    for (int row = from; row < to; row++) {
      double height = height(row);
      row(cells.get(row), corner.x(), y, height, marks);
      y -= height;
      marks.add(rule(corner.x(), right, y, row == to - 1 ? LineType.EDGE : LineType.THIN));
    }
    return marks;
  }

  private void row(List<List<String>> row, double left, double y, double height, List<Mark> marks) {
    double x = left;
    // Short words stand in the middle of a row that is made high for the hand.
    double drop = Math.max(0, height - lines(row) * PITCH - SPACE) / 2;
    for (int i = 0; i < widths.length; i++) {
      Block.Fill fill = columns.get(i).fill();
      if (fill == Block.Fill.BLANK) {
        marks.add(upright(x, y, y - height));
        marks.add(upright(x + widths[i], y, y - height));
      }
      if (fill != Block.Fill.TICK) {
        text(row.get(i), i, x, y - drop, marks);
      } else if (row.get(i).stream().anyMatch(text -> !text.isEmpty())) {
        double top = y - drop - SPACE - (TEXT - BenchPiece.TICK) / 2;
        Box box = new Box(x + PAD, top - BenchPiece.TICK, x + PAD + BenchPiece.TICK, top);
        marks.add(Mark.Stroke.of(Contour.rectangle(box), LineType.THIN));
      }
      x += widths[i];
    }
  }

  private void text(List<String> lines, int column, double left, double top, List<Mark> marks) {
    boolean figures = columns.get(column).fill() == Block.Fill.FIGURES;
    double x = figures ? left + widths[column] - PAD : left + PAD;
    for (int i = 0; i < lines.size(); i++) {
      if (!lines.get(i).isEmpty()) {
        Point at = new Point(x, top - i * PITCH - TEXT - SPACE);
        marks.add(Mark.Label.of(lines.get(i), at, TEXT, figures ? Anchor.END : Anchor.START));
      }
    }
  }

  private static Mark upright(double x, double from, double to) {
    return Mark.Stroke.of(new Line(new Point(x, from), new Point(x, to)), LineType.THIN);
  }

  private static Mark rule(double from, double to, double y, LineType type) {
    return Mark.Stroke.of(new Line(new Point(from, y), new Point(to, y)), type);
  }
}
