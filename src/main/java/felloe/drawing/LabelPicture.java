package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.List;

/**
 * A label to cut out and tape on a piece of cloth, at its size: what the piece is called, the
 * direction of its ply, and an arrow to lay along the warp.
 */
public final class LabelPicture {

  private static final Box EDGE = new Box(0, 0, 42, 16);

  private LabelPicture() {}

  /** The label of a piece. */
  public static Picture of(RollView.Piece piece) {
    Point from = new Point(3, 3.5);
    Point to = new Point(EDGE.maxX() - 3, 3.5);
    List<Mark> marks =
        List.of(
            Mark.Stroke.of(Contour.rectangle(EDGE), LineType.DASHED),
            Mark.Label.of(piece.label(), new Point(3, 7.5), 5, Anchor.START),
            Mark.Label.of(piece.direction(), new Point(to.x(), 8.5), 3.5, Anchor.END),
            Mark.Stroke.of(new Line(from, to), LineType.EDGE),
            new Mark.Fill(
                List.of(
                    Contour.polygon(
                        List.of(to, to.plus(new Point(-3, 0.8)), to.plus(new Point(-3, -0.8))))),
                1));
    return new Picture(Drawing.of("labels", marks), EDGE, 1);
  }
}
