package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.drawing.Mark;
import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.Point;

/**
 * A rectangle at any angle that a text or an arrowhead takes, mm on the sheet.
 *
 * @param middle its centre
 * @param along direction of its length, a vector of length one
 * @param halfLength half its length
 * @param halfHeight half its height
 */
record Slab(Point middle, Point along, double halfLength, double halfHeight) {

  /** The room of a text: over its whole width, from the tails of letters to above the capitals. */
  static Slab of(Mark.Label label) {
    double tails = TextWidth.TAILS * TextWidth.fontSize(label.height());
    double top = 1.1 * label.height();
    Point along = Point.polar(1, label.turn());
    double half = TextWidth.of(label.text(), label.height()) / 2;
    Point middle = label.start().plus(along, half).plus(along.left(), (top - tails) / 2);
    return new Slab(middle, along, half, (top + tails) / 2);
  }

  /** The room of an arrowhead but for its very tip, which touches what it points to. */
  static Slab of(Piece.Arrow arrow) {
    Point back = Point.polar(1, arrow.from());
    double length = DimensionStyle.ARROW * arrow.unit();
    double tip = 0.2 * length;
    return new Slab(
        arrow.tip().plus(back, (length + tip) / 2),
        back,
        (length - tip) / 2,
        DimensionStyle.ARROW_HALF * arrow.unit());
  }

  static Slab of(Box box) {
    return new Slab(box.centre(), new Point(1, 0), box.width() / 2, box.height() / 2);
  }

  Slab grown(double by) {
    return new Slab(middle, along, halfLength + by, halfHeight + by);
  }

  Slab longer(double by) {
    return new Slab(middle, along, halfLength + by, halfHeight);
  }

  /** The smallest upright box round it. */
  Box box() {
    double x = halfLength * Math.abs(along.x()) + halfHeight * Math.abs(along.y());
    double y = halfLength * Math.abs(along.y()) + halfHeight * Math.abs(along.x());
    return new Box(middle.x() - x, middle.y() - y, middle.x() + x, middle.y() + y);
  }

  /** Whether a straight line has a point in it. */
  boolean meets(Point from, Point to) {
    double u = lengthwise(from);
    double du = lengthwise(to) - u;
    if (isBeyond(u, u + du, halfLength)) {
      return false;
    }
    double v = crosswise(from);
    double dv = crosswise(to) - v;
    double[] part = {0, 1};
    return !isBeyond(v, v + dv, halfHeight)
        && clip(u, du, halfLength, part)
        && clip(v, dv, halfHeight, part);
  }

  private double lengthwise(Point p) {
    return (p.x() - middle.x()) * along.x() + (p.y() - middle.y()) * along.y();
  }

  private double crosswise(Point p) {
    return (p.y() - middle.y()) * along.x() - (p.x() - middle.x()) * along.y();
  }

  /** Whether both ends of a line lie on the same side outside, as nearly all that is asked do. */
  private static boolean isBeyond(double from, double to, double half) {
    return from > half && to > half || from < -half && to < -half;
  }

  /** Narrows the part of a line that lies between two parallels; false when nothing is left. */
  private static boolean clip(double start, double way, double half, double[] part) {
    if (way == 0) {
      return Math.abs(start) <= half;
    }
    double in = (-half - start) / way;
    double out = (half - start) / way;
    part[0] = Math.max(part[0], Math.min(in, out));
    part[1] = Math.min(part[1], Math.max(in, out));
    return part[0] <= part[1];
  }

  /** Whether two share a point: no line along a side of either parts them. */
  boolean meets(Slab other) {
    return !isBeside(other) && !other.isBeside(this);
  }

  private boolean isBeside(Slab other) {
    Point way = other.middle.minus(middle);
    double cos = Math.abs(along.dot(other.along));
    double sin = Math.abs(along.cross(other.along));
    double long2 = other.halfLength * cos + other.halfHeight * sin;
    double high2 = other.halfLength * sin + other.halfHeight * cos;
    return Math.abs(way.dot(along)) > halfLength + long2
        || Math.abs(along.cross(way)) > halfHeight + high2;
  }
}
