package felloe.template;

import felloe.drawing.Anchor;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Outlines;
import felloe.drawing.Paragraph;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** The small map of a page set: where each page lies on the part, and which one this is. */
final class PageMap {

  private static final double THIS = 0.25;

  private final Grid grid;
  private final List<Contour> contours;
  private final Box all;

  PageMap(Grid grid, List<Contour> contours) {
    this.grid = grid;
    this.contours = contours;
    this.all = grid.tile(0, 0).union(grid.tile(grid.rows() - 1, grid.columns() - 1));
  }

  /**
   * The map inside a box of the page.
   *
   * @param row of the page it is printed on; negative when that page carries no tile
   */
  List<Mark> in(Box box, int row, int column) {
    List<String> words =
        grid.leftOut().isEmpty()
            ? List.of()
            : Paragraph.wrap("crossed pages are not printed", StripText.SMALL, box.width());
    double above = box.minY() + words.size() * StripText.PITCH;
    Box free = new Box(box.minX(), above, box.maxX(), box.maxY());
    double scale = Math.min(free.width() / all.width(), free.height() / all.height());
    Point shift = free.centre().plus(all.centre(), -scale);
    List<Mark> marks = new ArrayList<>();
    if (grid.has(row, column)) {
      marks.add(
          new Mark.Fill(
              List.of(Contour.rectangle(moved(grid.seen(row, column), scale, shift))), THIS));
    }
    for (int r = 0; r < grid.rows(); r++) {
      for (int c = 0; c < grid.columns(); c++) {
        cell(moved(grid.seen(r, c), scale, shift), grid.has(r, c), marks);
      }
    }
    for (Contour contour : contours) {
      var small = Outlines.small(contour.segments(), scale, shift);
      if (small.size() > 2) {
        marks.add(new Mark.Stroke(small, true, LineType.THIN));
      }
    }
    for (int r = 0; r < grid.rows(); r++) {
      for (int c = 0; c < grid.columns(); c++) {
        if (grid.has(r, c) && grid.count() > 1) {
          boolean here = r == row && c == column;
          name(moved(grid.seen(r, c), scale, shift), Grid.name(r, c), here ? THIS : 0, marks);
        }
      }
    }
    marks.addAll(
        Paragraph.labels(words, box.minX(), above - 0.5, StripText.SMALL, StripText.PITCH));
    return marks;
  }

  private static void cell(Box cell, boolean printed, List<Mark> marks) {
    marks.add(Mark.Stroke.of(Contour.rectangle(cell), printed ? LineType.THIN : LineType.DASHED));
    if (!printed) {
      marks.add(
          Mark.Stroke.of(
              new Line(new Point(cell.minX(), cell.minY()), new Point(cell.maxX(), cell.maxY())),
              LineType.THIN));
      marks.add(
          Mark.Stroke.of(
              new Line(new Point(cell.minX(), cell.maxY()), new Point(cell.maxX(), cell.minY())),
              LineType.THIN));
    }
  }

  /** A page's name, where its cell has room; the plate's lines break off round it. */
  private static void name(Box cell, String name, double ground, List<Mark> marks) {
    Point at = cell.centre().plus(new Point(0, -StripText.SMALL / 2));
    Mark.Label label = Mark.Label.of(name, at, StripText.SMALL, Anchor.MIDDLE);
    if (cell.height() >= StripText.SMALL + 0.4 && cell.width() >= label.box().width()) {
      marks.add(new Mark.Fill(List.of(Contour.rectangle(label.box())), ground));
      marks.add(label);
    }
  }

  private static Box moved(Box box, double scale, Point shift) {
    return new Box(
        scale * box.minX() + shift.x(),
        scale * box.minY() + shift.y(),
        scale * box.maxX() + shift.x(),
        scale * box.maxY() + shift.y());
  }
}
