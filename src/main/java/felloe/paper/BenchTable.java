package felloe.paper;

import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.paper.BenchText.Column;
import felloe.paper.BenchText.Fill;
import felloe.paper.BenchText.Rows;
import java.util.ArrayList;
import java.util.List;

/** A table of the bench's pages, its columns fitted to a width. */
final class BenchTable {

  private static final double TEXT = BenchPages.TEXT;
  private static final double PITCH = 3.8;
  private static final double PAD = 1.4;
  private static final double BLANK = 17;
  private static final double LEAST_WRAPPED = 30;

  /** A column as narrow as this never gives way, mm. */
  private static final double NARROW = 17;

  /** What sums of widths may be off by, mm. */
  private static final double HAIR = 0.01;

  /** Height of a row that is written in. */
  private static final double WRITE = 7;

  private final List<Column> columns;
  private final double[] widths;
  private final List<List<List<String>>> cells = new ArrayList<>();
  private final boolean written;

  /**
   * @param width that it may take, mm
   */
  BenchTable(Rows rows, double width) {
    this.columns = rows.columns();
    this.written = columns.stream().anyMatch(c -> c.fill() == Fill.BLANK);
    this.widths = widths(rows, width);
    for (List<String> row : rows.rows()) {
      List<List<String>> texts = new ArrayList<>();
      for (int i = 0; i < widths.length; i++) {
        double inner = widths[i] - 2 * PAD + HAIR;
        texts.add(
            columns.get(i).fill() == Fill.WRAPPED
                ? Paragraph.wrap(row.get(i), TEXT, inner)
                : List.of(Paragraph.fit(row.get(i), TEXT, inner)));
      }
      cells.add(texts);
    }
  }

  private double[] widths(Rows rows, double width) {
    double[] natural = new double[columns.size()];
    double fixed = 0;
    int wrapped = 0;
    for (int i = 0; i < natural.length; i++) {
      Fill fill = columns.get(i).fill();
      double head = TextWidth.of(columns.get(i).head(), TEXT) + 2 * PAD;
      if (fill == Fill.WRAPPED) {
        wrapped++;
        continue;
      }
      natural[i] = fill == Fill.BLANK ? Math.max(BLANK, head) : head;
      for (List<String> row : rows.rows()) {
        natural[i] = Math.max(natural[i], TextWidth.of(row.get(i), TEXT) + 2 * PAD);
      }
      fixed += natural[i];
    }
    double share = wrapped == 0 ? 0 : Math.max(LEAST_WRAPPED, (width - fixed) / wrapped);
    double left = width - share * wrapped;
    for (int i = 0; i < natural.length; i++) {
      natural[i] = columns.get(i).fill() == Fill.WRAPPED ? share : natural[i];
    }
    if (fixed > left + HAIR) {
      shrink(natural, fixed, left);
    }
    return natural;
  }

  /** Long labels must not push the others off the paper: only what is wide gives way. */
  private void shrink(double[] widths, double fixed, double left) {
    double kept = 0;
    for (int i = 0; i < widths.length; i++) {
      kept += columns.get(i).fill() == Fill.WRAPPED ? 0 : Math.min(NARROW, widths[i]);
    }
    double share = Math.max(0, (left - kept) / (fixed - kept));
    for (int i = 0; i < widths.length; i++) {
      if (columns.get(i).fill() != Fill.WRAPPED && widths[i] > NARROW) {
        widths[i] = NARROW + share * (widths[i] - NARROW);
      }
    }
  }

  int size() {
    return cells.size();
  }

  /** Its width, mm. */
  double width() {
    double sum = 0;
    for (double width : widths) {
      sum += width;
    }
    return sum;
  }

  /** Whether it may stand beside another part of itself. */
  boolean narrow() {
    return columns.stream().noneMatch(c -> c.fill() == Fill.WRAPPED);
  }

  /** Height of the line with the heads. */
  double headHeight() {
    return PITCH + 1.2;
  }

  /** Height of a row. */
  double height(int row) {
    int lines = cells.get(row).stream().mapToInt(List::size).max().orElse(1);
    double height = lines * PITCH + 1.2;
    return written ? Math.max(WRITE, height) : height;
  }

  /** Height of some rows with their heads. */
  double height(int from, int to) {
    double height = headHeight();
    for (int row = from; row < to; row++) {
      height += height(row);
    }
    return height;
  }

  /** How many rows from one on have room in a height, the line with the heads included. */
  int room(int from, double height) {
    double used = headHeight();
    int row = from;
    while (row < cells.size() && used + height(row) <= height + 1e-9) {
      used += height(row++);
    }
    return row - from;
  }

  /** Rows {@code from} to {@code to} (exclusive) with their heads, hanging from a point. */
  List<Mark> marks(Point corner, int from, int to) {
    List<Mark> marks = new ArrayList<>();
    double right = corner.x() + width();
    double y = corner.y();
    marks.add(rule(corner.x(), right, y, LineType.EDGE));
    double x = corner.x();
    for (int i = 0; i < widths.length; i++) {
      text(columns.get(i).head(), i, x, y, marks);
      x += widths[i];
    }
    y -= headHeight();
    marks.add(rule(corner.x(), right, y, LineType.THIN));
    for (int row = from; row < to; row++) {
      double height = height(row);
      x = corner.x();
      for (int i = 0; i < widths.length; i++) {
        List<String> lines = cells.get(row).get(i);
        if (columns.get(i).fill() == Fill.BLANK) {
          marks.add(upright(x, y, y - height));
          marks.add(upright(x + widths[i], y, y - height));
        }
        double drop = written ? (height - 1.2 - lines.size() * PITCH) / 2 : 0;
        for (int k = 0; k < lines.size(); k++) {
          text(lines.get(k), i, x, y - drop - k * PITCH, marks);
        }
        x += widths[i];
      }
      y -= height;
      marks.add(rule(corner.x(), right, y, row == to - 1 ? LineType.EDGE : LineType.THIN));
    }
    return marks;
  }

  private void text(String text, int column, double left, double top, List<Mark> marks) {
    if (text.isEmpty()) {
      return;
    }
    boolean figures = columns.get(column).fill() == Fill.FIGURES;
    Point at = new Point(figures ? left + widths[column] - PAD : left + PAD, top - TEXT - 1);
    marks.add(Mark.Label.of(text, at, TEXT, figures ? Anchor.END : Anchor.START));
  }

  private static Mark upright(double x, double from, double to) {
    return Mark.Stroke.of(new Line(new Point(x, from), new Point(x, to)), LineType.THIN);
  }

  private static Mark rule(double from, double to, double y, LineType type) {
    return Mark.Stroke.of(new Line(new Point(from, y), new Point(to, y)), type);
  }
}
