package felloe.paper;

import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;

/**
 * The hole table as it is drawn: label, x, y, radius and angle from the hub axis, diameter, role.
 * Figures are the plate's own, as the driver sees it, whatever face the template is for.
 */
final class HoleTable {

  private static final double TEXT = 2.5;
  private static final double PITCH = 4.5;
  private static final double PAD = 2;
  private static final List<String> HEAD =
      List.of("hole", "x", "y", "radius", "angle \u00b0", "\u00d8", "for");

  private final List<List<String>> rows;
  private final double[] widths;

  HoleTable(List<Hole> holes) {
    this.rows = holes.stream().map(HoleTable::row).toList();
    this.widths = new double[HEAD.size()];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = TextWidth.of(HEAD.get(i), TEXT);
      for (List<String> row : rows) {
        widths[i] = Math.max(widths[i], TextWidth.of(row.get(i), TEXT));
      }
      widths[i] += 2 * PAD;
    }
  }

  private static List<String> row(Hole hole) {
    Point c = hole.centre();
    double angle = c.norm() < 1e-9 ? 0 : Math.toDegrees(c.angle());
    return List.of(
        hole.label(),
        Numbers.fixed(c.x(), 2),
        Numbers.fixed(c.y(), 2),
        Numbers.fixed(c.norm(), 2),
        Numbers.fixed(angle < -1e-9 ? angle + 360 : Math.abs(angle), 2),
        Numbers.brief(hole.diameter(), 2),
        hole.role().words());
  }

  int size() {
    return rows.size();
  }

  double width() {
    double sum = 0;
    for (double width : widths) {
      sum += width;
    }
    return sum;
  }

  /** Height of a table with some number of holes. */
  static double height(int count) {
    return (count + 2) * PITCH + 1;
  }

  /** How many holes a table of some height has room for. */
  static int room(double height) {
    return (int) Math.max(0, Math.floor((height - 1) / PITCH) - 2);
  }

  /**
   * Holes {@code from} to {@code to} (exclusive), with the table's upper left corner at a point.
   */
  List<Mark> marks(Point corner, int from, int to) {
    List<Mark> marks = new ArrayList<>();
    double right = corner.x() + width();
    double y = corner.y();
    String title = "Holes, mm and degrees, from the hub axis, front face";
    marks.add(Mark.Label.of(title, new Point(corner.x() + PAD, y - 3.4), TEXT, Anchor.START));
    y -= PITCH;
    marks.add(rule(corner.x(), right, y, LineType.EDGE));
    cells(HEAD, corner.x(), y, marks);
    y -= PITCH;
    marks.add(rule(corner.x(), right, y, LineType.THIN));
    for (int i = from; i < to; i++) {
      cells(rows.get(i), corner.x(), y, marks);
      y -= PITCH;
    }
    marks.add(rule(corner.x(), right, y, LineType.EDGE));
    return marks;
  }

  /** The box that such a table covers. */
  Box box(Point corner, int count) {
    return new Box(corner.x(), corner.y() - height(count), corner.x() + width(), corner.y());
  }

  private void cells(List<String> texts, double left, double top, List<Mark> marks) {
    double x = left;
    for (int i = 0; i < texts.size(); i++) {
      boolean words = i == 0 || i == texts.size() - 1;
      Point at = new Point(words ? x + PAD : x + widths[i] - PAD, top - 3.5);
      marks.add(Mark.Label.of(texts.get(i), at, TEXT, words ? Anchor.START : Anchor.END));
      x += widths[i];
    }
  }

  private static Mark rule(double from, double to, double y, LineType type) {
    return Mark.Stroke.of(new Line(new Point(from, y), new Point(to, y)), type);
  }
}
