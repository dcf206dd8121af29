package felloe.drawing;

import felloe.geometry.Arc;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/** Points along contours, for layout and for small pictures; never for a line that is cut to. */
public final class Outlines {

  /** Chords shorter than this are left out, mm: nobody sees them. */
  private static final double SHORT = 1e-3;

  private Outlines() {}

  /** Points in order of travel at most a step apart, each segment's start among them. */
  public static List<Point> points(List<Segment> segments, double step) {
    List<Point> points = new ArrayList<>();
    for (Segment segment : segments) {
      int n = (int) Math.max(1, Math.ceil(segment.length() / step));
      for (int i = 0; i < n; i++) {
        points.add(segment.at((double) i / n));
      }
    }
    return points;
  }

  /**
   * A closed chain made smaller for a map, with steps that the eye does not see.
   *
   * @param scale size of the picture to the true size
   * @param shift where the true origin goes
   */
  public static List<Segment> small(List<Segment> segments, double scale, Point shift) {
    List<Point> kept = new ArrayList<>();
    double least = 0.25;
    for (Segment segment : segments) {
      int n = segment instanceof Arc arc ? pieces(arc, scale) : 1;
      for (int i = 0; i < n; i++) {
        Point p = shift.plus(segment.at((double) i / n), scale);
        if (kept.isEmpty() || kept.get(kept.size() - 1).distance(p) >= least) {
          kept.add(p);
        }
      }
    }
    List<Segment> chain = new ArrayList<>();
    for (int i = 0; i < kept.size(); i++) {
      Point next = kept.get((i + 1) % kept.size());
      if (!kept.get(i).near(next, SHORT)) {
        chain.add(new Line(kept.get(i), next));
      }
    }
    return chain;
  }

  /** Chords that stay within 0.03 mm of the small arc. */
  private static int pieces(Arc arc, double scale) {
    double radius = arc.radius() * scale;
    double step = radius < 0.06 ? Math.PI / 2 : 2 * Math.acos(1 - 0.03 / radius);
    return (int) Math.max(1, Math.ceil(Math.abs(arc.sweep()) / step));
  }
}
