package felloe.drafting;

import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The sign of first-angle projection of ISO 5456-2: a cut cone from the side, and to its right its
 * two circles as they are seen from its left. Sizes are multiples of the letters' height, from
 * memory.
 */
final class ProjectionSymbol {

  private static final double HEIGHT = 2.5;
  private static final double BEYOND = 1.2;

  private ProjectionSymbol() {}

  /** Its width with the ends of the axes, mm. */
  static double width() {
    return 5 * HEIGHT + 2 * BEYOND;
  }

  /** Its height with the ends of the axes, mm. */
  static double height() {
    return 2 * HEIGHT + 2 * BEYOND;
  }

  /** The box it takes when its middle is at a point. */
  static Box box(Point middle) {
    return new Box(
        middle.x() - width() / 2,
        middle.y() - height() / 2,
        middle.x() + width() / 2,
        middle.y() + height() / 2);
  }

  /** Its lines about a middle. */
  static List<Piece.Stroke> at(Point middle) {
    double h = HEIGHT;
    double left = middle.x() - 2.5 * h;
    Point[] cone = {
      new Point(left, middle.y() - h / 2),
      new Point(left + 2 * h, middle.y() - h),
      new Point(left + 2 * h, middle.y() + h),
      new Point(left, middle.y() + h / 2)
    };
    List<Piece.Stroke> lines = new ArrayList<>();
    for (int i = 0; i < cone.length; i++) {
      lines.add(new Piece.Stroke(new Line(cone[i], cone[(i + 1) % cone.length]), Ink.EDGE));
    }
    Point circles = new Point(left + 4 * h, middle.y());
    lines.add(new Piece.Stroke(Arc.circle(circles, h), Ink.EDGE));
    lines.add(new Piece.Stroke(Arc.circle(circles, h / 2), Ink.EDGE));
    lines.add(
        axis(new Point(left - BEYOND, middle.y()), new Point(left + 2 * h + BEYOND, middle.y())));
    lines.add(
        axis(circles.plus(new Point(-h - BEYOND, 0)), circles.plus(new Point(h + BEYOND, 0))));
    lines.add(
        axis(circles.plus(new Point(0, -h - BEYOND)), circles.plus(new Point(0, h + BEYOND))));
    return lines;
  }

  private static Piece.Stroke axis(Point from, Point to) {
    return new Piece.Stroke(new Line(from, to), Ink.CROSS);
  }
}
