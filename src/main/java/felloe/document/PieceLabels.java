package felloe.document;

import felloe.drawing.Anchor;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.RollView;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Labels to cut out and tape on pieces of cloth, with an arrow to lay along the warp. */
final class PieceLabels {

  private static final double WIDTH = 42;
  private static final double HEIGHT = 16;
  private static final double GAP = 3;

  private PieceLabels() {}

  /** As many pages as the labels take; each fills the field at most. */
  static List<Drawing> set(RollView roll, Box field) {
    int columns = (int) Math.max(1, Math.floor(field.width() / WIDTH));
    BenchPiece heading = heading(roll, field.width());
    Point head = new Point(field.minX(), field.maxY() - 1);
    double top = head.y() - heading.height() - GAP;
    int rows = (int) Math.max(1, Math.floor((top - field.minY()) / HEIGHT));
    List<Drawing> pages = new ArrayList<>();
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < roll.pieces().size(); i++) {
      int onPage = i % (columns * rows);
      if (onPage == 0) {
        marks = new ArrayList<>(heading.at(head));
      }
      double x = field.minX() + onPage % columns * WIDTH;
      double y = top - (onPage / columns + 1) * HEIGHT;
      label(marks, roll.pieces().get(i), new Box(x, y, x + WIDTH, y + HEIGHT));
      if (onPage == columns * rows - 1 || i == roll.pieces().size() - 1) {
        pages.add(Drawing.of("labels", marks));
      }
    }
    return pages;
  }

  private static BenchPiece heading(RollView roll, double width) {
    String words = "Cut them out and tape one on each piece, the arrow along the warp.";
    return BenchPages.column(
        List.of(new Block.Heading("Labels: " + roll.title()), new Block.Paragraph(words)), width);
  }

  private static void label(List<Mark> marks, RollView.Piece piece, Box box) {
    marks.add(Mark.Stroke.of(Contour.rectangle(box), LineType.DASHED));
    Point left = new Point(box.minX() + 3, box.minY() + 7.5);
    marks.add(Mark.Label.of(piece.label(), left, 5, Anchor.START));
    Point right = new Point(box.maxX() - 3, box.minY() + 8.5);
    marks.add(Mark.Label.of(piece.direction(), right, 3.5, Anchor.END));
    Point from = new Point(box.minX() + 3, box.minY() + 3.5);
    Point to = new Point(box.maxX() - 3, box.minY() + 3.5);
    marks.add(Mark.Stroke.of(new Line(from, to), LineType.EDGE));
    marks.add(
        new Mark.Fill(
            List.of(
                Contour.polygon(
                    List.of(to, to.plus(new Point(-3, 0.8)), to.plus(new Point(-3, -0.8))))),
            1));
  }
}
