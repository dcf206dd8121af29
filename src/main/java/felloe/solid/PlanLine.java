package felloe.solid;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A line in the plan of a relief, along which its heights may bend or step.
 *
 * @param points its corners in order, at least two, mm
 * @param closed whether it runs on from the last to the first
 */
public record PlanLine(List<Point> points, boolean closed) {

  /**
   * Refuses fewer than two corners.
   *
   * @throws IllegalArgumentException when there are fewer
   */
  public PlanLine {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a line needs two corners");
    }
  }

  /** A line that ends where it ends. */
  public static PlanLine open(List<Point> points) {
    return new PlanLine(points, false);
  }

  /** A line that comes back to its start. */
  public static PlanLine closed(List<Point> points) {
    return new PlanLine(points, true);
  }

  /**
   * A contour in chords whose corners lie on it.
   *
   * @param chord greatest distance of a chord from its arc, mm
   */
  public static PlanLine of(Contour contour, double chord) {
    return closed(contour.chords(chord));
  }

  /** A circle in chords. */
  public static PlanLine circle(Point centre, double radius, double chord) {
    return of(Contour.circle(centre, radius), chord);
  }

  /**
   * Whether a point lies inside a closed line; on the line itself the answer may be either. The
   * chords count, not the curve that they stand for: so ask for a point inside a piece of a plan.
   */
  public boolean surrounds(Point p) {
    boolean inside = false;
    Point a = points.get(points.size() - 1);
    for (Point b : points) {
      if (a.y() > p.y() != b.y() > p.y()) {
        double side = b.minus(a).cross(p.minus(a));
        inside ^= b.y() > a.y() ? side > 0 : side < 0;
      }
      a = b;
    }
    return inside;
  }

  /** Its corners, the first again at the end when it is closed. */
  List<Point> path() {
    if (!closed) {
      return points;
    }
    List<Point> path = new ArrayList<>(points);
    path.add(points.get(0));
    return path;
  }
}
