package felloe.drafting;

import felloe.drawing.Anchor;
import felloe.drawing.DimensionStyle;
import felloe.drawing.TextWidth;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Words with a leader after ISO 128-22: an arrow on what they are about, a slanted line, and a
 * level shelf with the first line of words above it and the second below.
 */
final class Leader {

  private static final double SHORTEST = 6;
  private static final double LONGEST = 70;
  private static final double STEP = 2.5;
  private static final double LENGTH_COST = 0.5;

  /** A leader steeper or flatter than 30 or 60 degrees looks less well. */
  private static final double SLOPE_COST = 3;

  private static final double SHELF = 1;

  /** Slanted lines steeper than this may turn to either side. */
  private static final double STEEP = 0.3;

  private final List<String> lines;
  private final double text;
  private final double width;
  private final List<Option> options = new ArrayList<>();

  /**
   * @param lines one or two
   * @param text height of letters, mm
   */
  Leader(List<String> lines, double text) {
    this.lines = List.copyOf(lines);
    this.text = text;
    this.width = TextWidth.widest(this.lines, text) + SHELF;
  }

  List<Option> options() {
    return options;
  }

  /**
   * Adds the ways to lead to one point.
   *
   * @param tip what the arrow points to
   * @param out direction of the leader from there, a vector of length one
   * @param cost of that point and direction
   */
  Leader to(Point tip, Point out, double cost) {
    double slope = Math.max(0, Math.max(Math.abs(out.x()), Math.abs(out.y())) - 0.87) * SLOPE_COST;
    for (double length = SHORTEST; length <= LONGEST; length += STEP) {
      double all = cost + slope / 0.13 + LENGTH_COST * length;
      double reach = length;
      if (out.x() > -STEEP) {
        options.add(new Option(all, () -> piece(tip, out, reach, 1)));
      }
      if (out.x() < STEEP) {
        options.add(new Option(all, () -> piece(tip, out, reach, -1)));
      }
    }
    return this;
  }

  /**
   * Adds the ways to lead to the edge of a circle, from any side but along its cross.
   *
   * @param open whether the circle's edge is there in a direction
   */
  void toCircle(Point centre, double radius, Predicate<Point> open) {
    for (int degrees = 15; degrees < 360; degrees += 15) {
      Point out = Point.polar(1, Math.toRadians(degrees));
      if (degrees % 90 != 0 && open.test(out)) {
        to(centre.plus(out, radius), out, 0);
      }
    }
  }

  private Piece piece(Point tip, Point out, double length, int side) {
    Piece.Maker maker = new Piece.Maker(text);
    Point knee = tip.plus(out, length);
    Point end = knee.plus(new Point(side * width, 0));
    maker.line(tip, knee, Ink.LEADER).line(knee, end, Ink.LEADER).arrow(tip, out.angle());
    double left = Math.min(knee.x(), end.x()) + SHELF / 2;
    double y = knee.y() + DimensionStyle.OVER;
    maker.text(lines.get(0), new Point(left, y), 0, Anchor.START);
    if (lines.size() > 1) {
      double below = knee.y() - DimensionStyle.OVER - text;
      maker.text(lines.get(1), new Point(left, below), 0, Anchor.START);
    }
    return maker.made();
  }
}
