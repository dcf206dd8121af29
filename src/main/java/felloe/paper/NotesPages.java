package felloe.paper;

import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Pages of words: the steps, the cautions and the hole table. */
final class NotesPages {

  private static final double TEXT = 2.5;
  private static final double PITCH = 4.2;
  private static final double GAP = 5;

  private NotesPages() {}

  /** Numbered steps in lines, hanging from the upper left corner of a box. */
  static List<Mark> steps(String title, List<String> steps, Box box) {
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Label.of(title, new Point(box.minX() + 2, box.maxY() - 3.5), 3.5, Anchor.START));
    double y = box.maxY() - 7;
    for (int i = 0; i < steps.size(); i++) {
      List<String> lines = Paragraph.wrap(steps.get(i), TEXT, box.width() - 9);
      marks.add(
          Mark.Label.of(i + 1 + ".", new Point(box.minX() + 2, y - TEXT), TEXT, Anchor.START));
      marks.addAll(Paragraph.labels(lines, box.minX() + 7, y, TEXT, PITCH));
      y -= lines.size() * PITCH + 1;
    }
    return marks;
  }

  /** Height of {@link #steps}. */
  static double height(List<String> steps, double width) {
    double height = 7;
    for (String step : steps) {
      height += Paragraph.wrap(step, TEXT, width - 9).size() * PITCH + 1;
    }
    return height;
  }

  /** Drawings for fields of notes, one a page: steps first, then as many tables as it takes. */
  static List<Drawing> of(String title, List<String> steps, HoleTable table, Box field) {
    List<Drawing> pages = new ArrayList<>();
    List<Mark> marks = new ArrayList<>(steps(title, steps, field));
    double top = field.maxY() - height(steps, field.width()) - GAP;
    int from = 0;
    double left = field.minX() + 1;
    while (from < table.size()) {
      int room = HoleTable.room(top - field.minY());
      if (left + table.width() > field.maxX() + 0.01 || room < 1) {
        pages.add(Drawing.of("notes", marks));
        marks = new ArrayList<>();
        top = field.maxY() - 1;
        left = field.minX() + 1;
        room = Math.max(1, HoleTable.room(top - field.minY()));
      }
      int to = Math.min(table.size(), from + room);
      marks.addAll(table.marks(new Point(left, top), from, to));
      from = to;
      left += table.width() + GAP;
    }
    pages.add(Drawing.of("notes", marks));
    return pages;
  }
}
