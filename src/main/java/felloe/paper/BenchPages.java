package felloe.paper;

import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.paper.BenchText.Block;
import java.util.ArrayList;
import java.util.List;

/** Sets the text for the bench on as many fields as it takes, from top to bottom. */
final class BenchPages {

  /** Height of its letters, after ISO 3098, mm. */
  static final double TEXT = 2.5;

  private static final double PITCH = 4;
  private static final double HEAD = 3.5;
  private static final double HEAD_PITCH = 5.5;
  private static final double GAP = 3;
  private static final double INSET = 3;

  /** Between parts of a table that stand side by side. */
  private static final double ABREAST = 5;

  /** Lines longer than this are hard to follow, mm. */
  private static final double LONGEST = 190;

  /** Room that must be left below a heading, mm. */
  private static final double FOLLOWS = 30;

  private final Box field;
  private final double width;
  private final double measure;
  private final List<Drawing> pages = new ArrayList<>();
  private List<Mark> marks = new ArrayList<>();
  private double y;

  /**
   * @param field where the text may stand on each page, mm
   */
  BenchPages(Box field) {
    this.field = field.grown(-1);
    this.width = this.field.width();
    this.measure = Math.min(LONGEST, width);
    this.y = this.field.maxY();
  }

  /** The pages, as drawings in page coordinates. */
  List<Drawing> of(BenchText text) {
    List<Block> blocks = text.blocks();
    for (int i = 0; i < blocks.size(); i++) {
      Block block = blocks.get(i);
      if (block instanceof BenchText.Heading heading) {
        heading(heading.text(), section(blocks, i));
      } else if (block instanceof BenchText.Words words) {
        lines(words.text(), 0, GAP);
      } else if (block instanceof BenchText.Steps steps) {
        steps(steps.texts());
      } else if (block instanceof BenchText.Framed framed) {
        framed(framed.texts());
      } else if (block instanceof BenchText.Rows rows) {
        rows(new BenchTable(rows, width));
      }
    }
    turnOver();
    return List.copyOf(pages);
  }

  /** Height of a heading with all that stands below it, up to the next one. */
  private double section(List<Block> blocks, int heading) {
    double height = 0;
    for (int i = heading; i < blocks.size(); i++) {
      Block block = blocks.get(i);
      if (i > heading && block instanceof BenchText.Heading) {
        break;
      }
      height += height(block);
    }
    return height;
  }

  private double height(Block block) {
    if (block instanceof BenchText.Heading heading) {
      return Paragraph.wrap(heading.text(), HEAD, width).size() * HEAD_PITCH + GAP;
    } else if (block instanceof BenchText.Words words) {
      return textHeight(words.text(), 0) + GAP;
    } else if (block instanceof BenchText.Steps steps) {
      double indent = indent(steps.texts());
      return steps.texts().stream().mapToDouble(t -> textHeight(t, indent) + 1).sum() + GAP;
    } else if (block instanceof BenchText.Framed framed) {
      return frameHeight(framed.texts()) + GAP;
    } else if (block instanceof BenchText.Rows rows) {
      BenchTable table = new BenchTable(rows, width);
      int abreast = abreast(table);
      return table.height(0, (table.size() + abreast - 1) / abreast) + GAP;
    }
    return 0;
  }

  private double textHeight(String text, double indent) {
    return Paragraph.wrap(text, TEXT, measure - indent).size() * PITCH;
  }

  private double frameHeight(List<String> texts) {
    return 3 + texts.stream().mapToDouble(t -> textHeight(t, 2 * INSET) + 1).sum();
  }

  private static double indent(List<String> steps) {
    return TextWidth.of(steps.size() + ". ", TEXT) + 1.5;
  }

  private void turnOver() {
    if (!marks.isEmpty()) {
      pages.add(Drawing.of("work", marks));
      marks = new ArrayList<>();
    }
    y = field.maxY();
  }

  /** Goes to the next page when less than a height is left, unless this one is still blank. */
  private void need(double height) {
    if (y - height < field.minY() && !marks.isEmpty()) {
      turnOver();
    }
  }

  private void heading(String text, double section) {
    List<String> lines = Paragraph.wrap(text, HEAD, width);
    double height = lines.size() * HEAD_PITCH;
    boolean together = section <= field.height();
    need(together ? section : height + FOLLOWS);
    if (!marks.isEmpty()) {
      y -= 2;
    }
    marks.addAll(Paragraph.labels(lines, field.minX(), y, HEAD, HEAD_PITCH));
    y -= height + 1;
  }

  /** Lines of text set in by some width, with a gap below. */
  private void lines(String text, double indent, double gap) {
    List<String> lines = Paragraph.wrap(text, TEXT, measure - indent);
    double height = lines.size() * PITCH;
    need(height);
    marks.addAll(Paragraph.labels(lines, field.minX() + indent, y, TEXT, PITCH));
    y -= height + gap;
  }

  private void steps(List<String> texts) {
    double indent = indent(texts);
    for (int i = 0; i < texts.size(); i++) {
      need(textHeight(texts.get(i), indent));
      Point at = new Point(field.minX(), y - TEXT);
      marks.add(Mark.Label.of(i + 1 + ".", at, TEXT, Anchor.START));
      lines(texts.get(i), indent, 1);
    }
    y -= GAP - 1;
  }

  private void framed(List<String> texts) {
    double height = frameHeight(texts);
    need(height);
    Box box = new Box(field.minX(), y - height, field.minX() + measure, y);
    marks.add(Mark.Stroke.of(PageMap.rectangle(box), LineType.EDGE));
    y -= 2.4;
    for (String text : texts) {
      List<String> lines = Paragraph.wrap(text, TEXT, measure - 2 * INSET);
      marks.addAll(Paragraph.labels(lines, field.minX() + INSET, y, TEXT, PITCH));
      y -= lines.size() * PITCH + 1;
    }
    y = box.minY() - GAP;
  }

  /** How many parts of a table stand side by side. */
  private int abreast(BenchTable table) {
    double each = table.width() + ABREAST;
    return table.narrow() && table.size() > 6
        ? (int) Math.max(1, Math.min(2, Math.floor((width + ABREAST) / each)))
        : 1;
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
        int to = Math.min(table.size(), from + each);
        Point corner = new Point(field.minX() + i * (table.width() + ABREAST), y);
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
