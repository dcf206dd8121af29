package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.Hole;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;

/**
 * The short names of holes, beside them, and of windows, in them; where that finds no place,
 * farther away with a line to their edge.
 */
final class Labels {

  private static final double NEAR = 0.9;
  private static final double FAR = 4;
  private static final double STEP = 0.75;
  private static final double DISTANCE_COST = 2;
  private static final int WAYS = 16;
  private static final int GRID = 14;

  /** A window's label so far from the edge stands well, mm. */
  private static final double ROOMY = 12;

  private static final double SMALLER = 6;

  /** Lengths of lines to labels, mm, and what they cost. */
  private static final double SHORTEST = 4;

  private static final double LONGEST = 16;
  private static final double LED_STEP = 2;
  private static final double LED_COST = 12;

  /** White between a label and its line, mm. */
  private static final double OFF = 0.8;

  /** A label is no clearer for a line that crosses more than an edge or two, mm of leader. */
  private static final double MOST = 42;

  private final Board board;
  private final Views views;

  Labels(Board board) {
    this.board = board;
    this.views = board.views();
  }

  /** Draws the labels of holes; those that find no place are left out. */
  void holes(List<Hole> holes) {
    holes.forEach(hole -> hole(hole, holes));
  }

  private void hole(Hole hole, List<Hole> all) {
    double text = Math.min(board.text(), DimensionStyle.SMALL);
    double half = TextWidth.of(hole.label(), text) / 2;
    List<Option> options = new ArrayList<>();
    double outward = hole.centre().norm() > hole.diameter() / 2 ? hole.centre().angle() : 0.8;
    for (Point end : hole.ends()) {
      Point centre = views.scaled().point(end);
      double radius = views.factor() * hole.diameter() / 2;
      for (int i = 0; i < WAYS; i++) {
        double aside = Math.min(i, WAYS - i);
        Point way = Point.polar(1, outward + Math.PI * 2 * i / WAYS);
        for (double gap = NEAR; gap <= FAR; gap += STEP) {
          // From the edge of the hole to the nearest point of the rectangle that the label takes.
          double reach = radius + gap + support(way, half, text);
          Point middle = centre.plus(way, reach);
          if (isNearest(middle, hole, reach, all)) {
            options.add(
                new Option(DISTANCE_COST * gap + aside, () -> label(hole.label(), middle, text)));
          }
        }
        if (way.dot(end.minus(hole.centre())) >= 0) {
          led(options, hole.label(), centre.plus(way, radius), way, aside, text);
        }
      }
    }
    board.place(options, MOST);
  }

  /** How far a rectangle about a point reaches in a direction. */
  private static double support(Point way, double half, double text) {
    return Math.abs(way.x()) * half + Math.abs(way.y()) * text / 2;
  }

  /** Whether nobody takes a label for that of another hole. */
  private boolean isNearest(Point middle, Hole hole, double reach, List<Hole> all) {
    double own = reach - views.factor() * hole.diameter() / 2;
    for (Hole other : all) {
      if (other != hole) {
        for (Point end : other.ends()) {
          double away = middle.distance(views.scaled().point(end));
          if (away - views.factor() * other.diameter() / 2 < own) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** Draws the label of a window. */
  void window(Window window) {
    Contour contour = views.scaled().contour(window.contour());
    List<Option> options = new ArrayList<>();
    double text = board.text();
    double small = Math.min(text, DimensionStyle.SMALL);
    Box box = contour.box();
    for (int i = 1; i < GRID; i++) {
      for (int j = 1; j < GRID; j++) {
        Point p =
            new Point(box.minX() + i * box.width() / GRID, box.minY() + j * box.height() / GRID);
        if (contour.contains(p)) {
          double cost = Math.max(0, ROOMY - contour.distance(p));
          options.add(new Option(cost, () -> label(window.label(), p, text)));
          options.add(new Option(cost + SMALLER, () -> label(window.label(), p, small)));
        }
      }
    }
    for (Segment segment : contour.segments()) {
      Point tip = segment.at(0.5);
      led(options, window.label(), tip, segment.tangent(0.5).right(), ROOMY, small);
    }
    board.place(options, MOST);
  }

  private static Piece label(String words, Point middle, double text) {
    return new Piece.Maker(text).text(words, middle.plus(new Point(0, -text / 2)), 0).made();
  }

  /** Adds the ways to write a label farther away, with a line to a point of an edge. */
  private static void led(
      List<Option> options, String words, Point tip, Point out, double cost, double text) {
    double support = support(out, TextWidth.of(words, text) / 2, text);
    for (double length = SHORTEST; length <= LONGEST; length += LED_STEP) {
      Point end = tip.plus(out, length);
      Point middle = end.plus(out, OFF + support);
      options.add(
          new Option(
              LED_COST + cost + length,
              () ->
                  new Piece.Maker(text)
                      .line(tip, end, Ink.LEADER)
                      .text(words, middle.plus(new Point(0, -text / 2)), 0)
                      .made()));
    }
  }
}
