package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Lengths along x and y that are measured from the hub axis, or across an opening. */
final class Places {

  static final Point RIGHT = new Point(1, 0);
  static final Point UP = new Point(0, 1);

  private static final double STEP = 2;
  private static final double FAR_COST = 0.15;

  private final Board board;
  private final Views views;

  Places(Board board) {
    this.board = board;
    this.views = board.views();
  }

  /**
   * The distance of an edge or a point from the hub axis.
   *
   * @param along {@link #RIGHT} or {@link #UP}
   * @param from one end of the edge across, in the plate
   * @param to the other end; the same for a point
   * @param gap white between it and an extension line, mm
   * @param prefix how often it is there
   */
  List<Option> fromAxis(Point along, Point from, Point to, double gap, String prefix) {
    return fromAxis(along, from, to, gap, prefix, views.scaled().point(from.middle(to)));
  }

  /** The same, its line best near a point of the sheet. */
  List<Option> fromAxis(Point along, Point from, Point to, double gap, String prefix, Point near) {
    boolean up = along.equals(UP);
    double length = from.dot(along);
    Linear linear = new Linear(along, prefix + Board.figure(Math.abs(length)), board.text());
    Line line = up ? views.level() : views.upright();
    Linear.End axis = linear.at(line.from(), line.to(), 0);
    Linear.End end = linear.at(views.scaled().point(from), views.scaled().point(to), gap);
    return length > 0 ? across(linear, axis, end, near) : across(linear, end, axis, near);
  }

  /** The distance of two opposite sides of an opening. */
  List<Option> between(Point along, Line low, Line high, String prefix) {
    double length = high.from().dot(along) - low.from().dot(along);
    Linear linear = new Linear(along, prefix + Board.figure(length), board.text());
    Linear.End a = edge(linear, low);
    Linear.End b = edge(linear, high);
    return across(linear, a, b, views.scaled().point(low.at(0.5)));
  }

  private Linear.End edge(Linear linear, Line line) {
    return linear.at(
        views.scaled().point(line.from()), views.scaled().point(line.to()), DimensionStyle.GAP);
  }

  /** Ways with the line at any distance over the front view, best near to a point. */
  private List<Option> across(Linear linear, Linear.End a, Linear.End b, Point near) {
    Box front = views.front().grown(Views.FIRST);
    List<Option> options = new ArrayList<>();
    boolean up = linear.along().equals(UP);
    double least = up ? -front.maxX() : front.minY();
    double most = up ? -front.minX() : front.maxY();
    double middle = linear.along().cross(near);
    for (double v = least; v <= most; v += STEP) {
      linear.line(a, b, v, FAR_COST * Math.abs(v - middle));
    }
    options.addAll(linear.options());
    return options;
  }
}
