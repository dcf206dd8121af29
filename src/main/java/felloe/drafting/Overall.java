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
    Point bottom = views.scaled().point(outline.extreme(new Point(0, -1), new Point(-1, 0)));
    Point top = views.scaled().point(outline.extreme(UP, new Point(-1, 0)));
    Linear linear = new Linear(UP, Board.figure(box.height()), board.text());
    Linear.End a = linear.at(bottom, DimensionStyle.GAP);
    Linear.End b = linear.at(top, DimensionStyle.GAP);
    for (int i = 0; i < 4; i++) {
      linear.line(a, b, -(views.front().minX() - Views.FIRST - i), i);
    }
    return board.place(linear.options());
  }

  /** From the hub axis to the left or lower end of the plate, on the side that has no overall. */
  private boolean toAxis(Point along) {
    boolean up = along.equals(UP);
    Point far = along.times(-1);
    Point end = outline.extreme(far, up ? RIGHT : UP);
    double length = end.dot(far);
    if (length <= Tolerances.SAME_LENGTH) {
      return false;
    }
    Line axis = up ? views.level() : views.upright();
    Linear linear = new Linear(along, Board.figure(length), board.text());
    Linear.End a = linear.at(views.scaled().point(end), DimensionStyle.GAP);
    Linear.End b = linear.at(axis.from(), axis.to(), 0);
    double near = up ? views.front().maxX() : views.front().maxY();
    for (int i = 0; i < 4; i++) {
      double at = near + Views.FIRST + i;
      linear.line(a, b, up ? -at : at, i);
    }
    return board.place(linear.options());
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
      linear.line(a, b, a.low() - away, i);
      linear.line(a, b, a.high() + away, i);
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
