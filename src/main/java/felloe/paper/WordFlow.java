package felloe.paper;

import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets blocks of words one below the other, and begins a new page where one is full. Tables repeat
 * their heading on the next page; cells are wrapped when a table is too wide.
 */
final class WordFlow {

  private static final double HEAD = 3.5;
  private static final double TEXT = 2.5;
  private static final double PITCH = 4.2;
  private static final double GAP = 3;
  private static final double BLOCK = 4;
  private static final double NARROWEST = 8;

  private final Box field;
  private final List<List<Mark>> pages = new ArrayList<>();
  private double y;

  private WordFlow(Box field) {
    this.field = field;
    turn();
  }

  /** The pages that blocks take; each fills the field at most. */
  static List<Drawing> set(List<WordBlock> blocks, Box field) {
    WordFlow flow = new WordFlow(field);
    blocks.forEach(flow::block);
    return flow.pages.stream().map(marks -> Drawing.of("words", marks)).toList();
  }

  private void turn() {
    pages.add(new ArrayList<>());
    y = field.maxY();
  }

  private List<Mark> marks() {
    return pages.get(pages.size() - 1);
  }

  /** Makes sure of room; says whether a new page was begun. */
  private boolean room(double height) {
    boolean full = y - height < field.minY() && y < field.maxY();
    if (full) {
      turn();
    }
    return full;
  }

  private void block(WordBlock block) {
    double whole = height(block);
    // What fits on a page is not parted; else a heading never stands alone at the foot.
    room(whole <= field.height() ? whole : HEAD + 5 * PITCH);
    if (!block.title().isEmpty()) {
      y -= HEAD;
      marks().add(Mark.Label.of(block.title(), new Point(field.minX(), y), HEAD, Anchor.START));
      y -= 2.5;
    }
    if (!block.rows().isEmpty()) {
      table(block);
      y -= 1;
    }
    for (String line : block.lines()) {
      List<String> wrapped = Paragraph.wrap(line, TEXT, field.width());
      room(wrapped.size() * PITCH);
      marks().addAll(Paragraph.labels(wrapped, field.minX(), y, TEXT, PITCH));
      y -= wrapped.size() * PITCH + 0.6;
    }
    y -= BLOCK;
  }

  private double height(WordBlock block) {
    double height = block.title().isEmpty() ? 0 : HEAD + 2.5;
    if (!block.rows().isEmpty()) {
      double[] widths = widths(block);
      for (List<String> row : block.rows()) {
        height += height(row, widths);
      }
      height += 1.6;
    }
    for (String line : block.lines()) {
      height += Paragraph.wrap(line, TEXT, field.width()).size() * PITCH + 0.6;
    }
    return height;
  }

  /** Widths of a table's columns; the widest give way when the field is too narrow. */
  private double[] widths(WordBlock block) {
    int columns = block.sides().length();
    double[] widths = new double[columns];
    double all = (columns - 1) * GAP;
    for (int i = 0; i < columns; i++) {
      for (List<String> row : block.rows()) {
        widths[i] = Math.max(widths[i], width(row.get(i)));
      }
      all += widths[i];
    }
    // What is too wide is taken from the widest column, again and again.
    while (all > field.width()) {
      int widest = 0;
      for (int i = 1; i < columns; i++) {
        widest = widths[i] > widths[widest] ? i : widest;
      }
      if (widths[widest] <= NARROWEST) {
        break;
      }
      double less = Math.min(all - field.width(), 0.5);
      widths[widest] -= less;
      all -= less;
    }
    return widths;
  }

  private void table(WordBlock block) {
    double[] widths = widths(block);
    List<String> head = block.rows().get(0);
    row(block, head, widths, true);
    for (List<String> row : block.rows().subList(1, block.rows().size())) {
      double height = height(row, widths);
      if (room(height)) {
        row(block, head, widths, true);
      }
      row(block, row, widths, false);
    }
  }

  private static double width(String cell) {
    return cell.equals(WordBlock.BOX) ? TEXT + 1 : TextWidth.of(cell, TEXT);
  }

  private static double height(List<String> row, double[] widths) {
    int lines = 1;
    for (int i = 0; i < widths.length; i++) {
      lines = Math.max(lines, Paragraph.wrap(row.get(i), TEXT, widths[i] + 0.01).size());
    }
    return lines * PITCH;
  }

  private void row(WordBlock block, List<String> row, double[] widths, boolean head) {
    double x = field.minX();
    for (int i = 0; i < widths.length; i++) {
      cell(row.get(i), x, widths[i], block.sides().charAt(i) == 'r');
      x += widths[i] + GAP;
    }
    y -= height(row, widths);
    if (head) {
      Point from = new Point(field.minX(), y + 0.8);
      marks().add(Mark.Stroke.of(new Line(from, new Point(x - GAP, y + 0.8)), LineType.THIN));
      y -= 0.6;
    }
  }

  private void cell(String text, double x, double width, boolean right) {
    if (text.equals(WordBlock.BOX)) {
      Box box = new Box(x, y - TEXT - 0.5, x + TEXT + 0.5, y);
      marks().add(Mark.Stroke.of(PageMap.rectangle(box), LineType.THIN));
      return;
    }
    List<String> lines = Paragraph.wrap(text, TEXT, width + 0.01);
    for (int i = 0; i < lines.size(); i++) {
      Point at = new Point(right ? x + width : x, y - TEXT - i * PITCH);
      if (!lines.get(i).isEmpty()) {
        marks().add(Mark.Label.of(lines.get(i), at, TEXT, right ? Anchor.END : Anchor.START));
      }
    }
  }
}
