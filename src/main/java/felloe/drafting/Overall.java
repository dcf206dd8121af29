package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/** Width, height and thickness of the plate, and where the hub axis is in it. */
final class Overall {

  private static final Point RIGHT = new Point(1, 0);
  private static final Point UP = new Point(0, 1);

  /** What it costs to draw an overall dimension over the view, mm of leader. */
  private static final double OVER_COST = 10;

  private final Board board;
  private final Views views;
  private final Contour outline;
  private final Box box;

  Overall(Board board) {
    this.board = board;
    this.views = board.views();
    this.outline = views.plate().outline();
    this.box = outline.box();
  }

  /** Draws width, height and thickness; false when one of them finds no place. */
  boolean draw() {
    return thickness() & width() & (Views.isRound(outline) || height());
  }

  /** Draws where the hub axis is, where that is not the middle; false where it finds no place. */
  boolean axis() {
    boolean told = !isAside(box.minX(), box.maxX()) || toAxis(RIGHT);
    return told & (!isAside(box.minY(), box.maxY()) || isRoundTo(UP) || toAxis(UP));
  }

  /** Whether an arc is told by the overall width, which is its circle's diameter. */
  boolean tells(Arc arc) {
    return isHubArc(RIGHT)
        && isHubArc(RIGHT.times(-1))
        && arc.centre().norm() < Tolerances.SAME_LENGTH
        && Math.abs(2 * arc.radius() - box.width()) < Tolerances.SAME_LENGTH;
  }

  /** Whether every straight side of the outline is one of its four ends. */
  boolean endsIn(Form form) {
    return form.chain().stream()
        .filter(Line.class::isInstance)
        .allMatch(
            line -> {
              Point p = line.at(0.5);
              return near(p.x(), box.minX())
                  || near(p.x(), box.maxX())
                  || near(p.y(), box.minY())
                  || near(p.y(), box.maxY());
            });
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) < Tolerances.SAME_LENGTH;
  }

  /** Whether the hub axis is not in the middle. */
  private static boolean isAside(double from, double to) {
    return Math.abs(from + to) > Tolerances.SAME_LENGTH;
  }

  /** Whether the outline is round about the hub axis on both sides of the plate. */
  private boolean isRoundTo(Point way) {
    return isHubArc(way) || isHubArc(way.times(-1));
  }

  /** Whether the outline's extreme in a direction lies on a circle about the hub axis. */
  private boolean isHubArc(Point way) {
    double far = outline.extreme(way, way.left()).dot(way);
    return outline.segments().stream()
        .anyMatch(
            s ->
                s instanceof Arc arc
                    && arc.centre().norm() < Tolerances.SAME_LENGTH
                    && Math.abs(arc.radius() - far) < Tolerances.SAME_LENGTH
                    && arc.passes(way));
  }

  private boolean width() {
    Point left = views.scaled().point(outline.extreme(new Point(-1, 0), new Point(0, -1)));
    Point right = views.scaled().point(outline.extreme(RIGHT, new Point(0, -1)));
    boolean round = isHubArc(RIGHT) && isHubArc(new Point(-1, 0));
    String figure = (round ? "\u00d8" : "") + Board.figure(box.width());
    Linear linear = new Linear(RIGHT, figure, board.text());
    Linear.End a = linear.at(left, DimensionStyle.GAP);
    Linear.End b = linear.at(right, DimensionStyle.GAP);
    for (int i = 0; i < 4; i++) {
      linear.line(a, b, views.front().minY() - Views.FIRST - i, i);
    }
    return board.place(linear.options());
  }

  private boolean height() {
    Linear linear = new Linear(UP, Board.figure(box.height()), board.text());
    Linear.End a = end(linear, new Point(0, -1), new Point(-1, 0));
    Linear.End b = end(linear, UP, new Point(-1, 0));
    double beside = views.front().minX() - Views.FIRST;
    for (int i = 0; i < 4; i++) {
      linear.line(a, b, i - beside, i);
    }
    // Where there is no room beside the view, over it.
    for (double x = views.front().minX() + 2; x < views.front().maxX(); x += 2) {
      linear.line(a, b, -x, OVER_COST + (x - beside) / 4);
    }
    return board.place(linear.options());
  }

  /** An end of the plate: its straight side where it has one, else its outermost point. */
  private Linear.End end(Linear linear, Point far, Point side) {
    Point one = outline.extreme(far, side);
    Point other = outline.extreme(far, side.times(-1));
    return linear.at(
        views.scaled().point(one),
        views.scaled().point(isSide(one, other) ? other : one),
        DimensionStyle.GAP);
  }

  /** Whether two ends of the plate are those of one straight side. */
  private boolean isSide(Point one, Point other) {
    return outline.segments().stream()
        .anyMatch(s -> s instanceof Line && isEnd(s, one) && isEnd(s, other));
  }

  /**
   * From the hub axis to the left or lower end of the plate: on the side that has no overall
   * dimension, or over the plate.
   */
  private boolean toAxis(Point along) {
    boolean up = along.equals(UP);
    Point far = along.times(-1);
    Point end = outline.extreme(far, up ? RIGHT : UP);
    Point other = outline.extreme(far, up ? RIGHT.times(-1) : UP.times(-1));
    if (end.dot(far) <= Tolerances.SAME_LENGTH) {
      return false;
    }
    Point from = isSide(end, other) ? other : end;
    Point beside =
        new Point(views.front().maxX() + Views.FIRST, views.front().maxY() + Views.FIRST);
    return board.place(
        new Places(board).fromAxis(along, from, end, DimensionStyle.GAP, "", beside));
  }

  private static boolean isEnd(Segment side, Point p) {
    return side.from().near(p, Tolerances.SAME_POINT) || side.to().near(p, Tolerances.SAME_POINT);
  }

  private boolean thickness() {
    Box edge = views.edge();
    Point along = views.below() ? UP : RIGHT;
    String figure = Board.figure(views.plate().stock().thickness());
    Linear linear = new Linear(along, figure, board.text());
    List<Segment> faces = faces(edge);
    Linear.End a = linear.at(faces.get(0).from(), faces.get(0).to(), DimensionStyle.GAP);
    Linear.End b = linear.at(faces.get(1).from(), faces.get(1).to(), DimensionStyle.GAP);
    for (int i = 0; i < 4; i++) {
      double away = Views.FIRST - 2 + 2 * i;
      linear.line(a, b, a.low() - away, i).farther(a, b, a.low() - away, i);
      linear.line(a, b, a.high() + away, i).farther(a, b, a.high() + away, i);
    }
    // Where there is no room beside the view, from above and below it.
    for (double v = a.low() + Views.FIRST; v < a.high() - Views.FIRST; v += Views.FIRST) {
      linear.line(a, b, v, OVER_COST).farther(a, b, v, OVER_COST);
    }
    return board.place(linear.options());
  }

  /** The two faces of the plate in the edge view, the one with the lesser coordinate first. */
  private List<Segment> faces(Box edge) {
    List<Segment> faces = new ArrayList<>();
    Point low = new Point(edge.minX(), edge.minY());
    Point high = new Point(edge.maxX(), edge.maxY());
    Point across =
        views.below() ? new Point(edge.maxX(), edge.minY()) : new Point(edge.minX(), edge.maxY());
    Point back = low.plus(high).minus(across);
    faces.add(new Line(low, across));
    faces.add(new Line(back, high));
    return faces;
  }
}
