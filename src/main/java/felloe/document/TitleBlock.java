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
import java.util.ArrayList;
import java.util.List;

/**
 * The title block of a drawing: its data fields after ISO 7200, side by side in as many rows as
 * they take. The number of the sheet is put behind them.
 *
 * @param fields in order
 */
public record TitleBlock(List<Field> fields) {

  private static final double ROW = 10;
  private static final double PAD = 1.4;

  /** Height of the letters of names and values after ISO 3098, mm: read at arm's length. */
  private static final double NAME = 2.5;

  private static final double VALUE = 2.5;

  /** Room to write a name or a day, mm. */
  private static final double WRITE = 24;

  public TitleBlock {
    fields = List.copyOf(fields);
  }

  /**
   * A field.
   *
   * @param name what it tells
   * @param value what it says; empty where it is written in by hand
   */
  public record Field(String name, String value) {

    private double width() {
      double words = Math.max(TextWidth.of(name, NAME), TextWidth.of(value, VALUE));
      return 2 * PAD + Math.max(value.isEmpty() ? WRITE : 0, words);
    }
  }

  /** Height of the block, mm. */
  public double height(double width) {
    return ROW * rows(all("0 of 00"), width).size();
  }

  private List<Field> all(String sheet) {
    List<Field> all = new ArrayList<>(fields);
    all.add(new Field("sheet", sheet));
    return all;
  }

  /** Fields row by row. */
  private static List<List<Field>> rows(List<Field> all, double width) {
    List<List<Field>> rows = new ArrayList<>();
    List<Field> row = new ArrayList<>();
    double used = 0;
    for (Field field : all) {
      if (!row.isEmpty() && used + field.width() > width) {
        rows.add(row);
        row = new ArrayList<>();
        used = 0;
      }
      row.add(field);
      used += field.width();
    }
    rows.add(row);
    return rows;
  }

  /** The block, standing on a point. */
  List<Mark> marks(Point corner, double width, int number, int sheets) {
    List<Mark> marks = new ArrayList<>();
    List<List<Field>> rows = rows(all(number + " of " + sheets), width);
    double top = corner.y() + ROW * rows.size();
    Box frame = new Box(corner.x(), corner.y(), corner.x() + width, top);
    marks.add(Mark.Stroke.of(Contour.rectangle(frame), LineType.EDGE));
    for (int i = 0; i < rows.size(); i++) {
      row(rows.get(i), new Box(frame.minX(), top - ROW, frame.maxX(), top), marks);
      top -= ROW;
    }
    return marks;
  }

  /** What is left of a row goes to all of its fields alike. */
  private static void row(List<Field> fields, Box box, List<Mark> marks) {
    double spare = box.width() - fields.stream().mapToDouble(Field::width).sum();
    double x = box.minX();
    for (Field field : fields) {
      double wide = field.width() + Math.max(0, spare) / fields.size();
      double left = x + PAD;
      double right = Math.min(x + wide, box.maxX());
      Point name = new Point(left, box.maxY() - PAD - NAME + 0.4);
      marks.add(Mark.Label.of(field.name(), name, NAME, Anchor.START));
      String value = Paragraph.fit(field.value(), VALUE, right - PAD / 2 - left);
      Point at = new Point(left, box.minY() + PAD + 0.3);
      if (!value.isEmpty()) {
        marks.add(Mark.Label.of(value, at, VALUE, Anchor.START));
      }
      if (x > box.minX()) {
        Line line = new Line(new Point(x, box.minY()), new Point(x, box.maxY()));
        marks.add(Mark.Stroke.of(line, LineType.THIN));
      }
      x += wide;
    }
    Line below = new Line(new Point(box.minX(), box.minY()), new Point(box.maxX(), box.minY()));
    marks.add(Mark.Stroke.of(below, LineType.THIN));
  }
}
