package felloe.mesh;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A contour travelled by its length, with the places where it has corners. */
final class ContourLength {

  /** A turn below this, radians, is no corner: free curves are made of arcs that meet so. */
  private static final double SMOOTH = Math.toRadians(10);

  private final List<Segment> segments;
  private final double[] start;

  ContourLength(Contour contour) {
    segments = contour.segments();
    start = new double[segments.size() + 1];
    for (int i = 0; i < segments.size(); i++) {
      start[i + 1] = start[i] + segments.get(i).length();
    }
  }

  double length() {
    return start[segments.size()];
  }

  /** Where the corners lie along it, mm, in order. */
  List<Double> corners() {
    List<Double> corners = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      Point before = segments.get(Math.floorMod(i - 1, segments.size())).tangent(1);
      Point after = segments.get(i).tangent(0);
      double turn = Math.abs(Math.atan2(before.cross(after), before.dot(after)));
      if (turn > SMOOTH) {
        corners.add(start[i]);
      }
    }
    return corners;
  }

  private int segment(double along) {
    int found = Arrays.binarySearch(start, along);
    int i = found >= 0 ? found : -found - 2;
    return Math.min(segments.size() - 1, Math.max(0, i));
  }

  private double fraction(int segment, double along) {
    double part = (along - start[segment]) / segments.get(segment).length();
    return Math.min(1, Math.max(0, part));
  }

  private double round(double along) {
    double rest = along % length();
    return rest < 0 ? rest + length() : rest;
  }

  /** The point at a length along it; beyond its end it begins anew. */
  Point at(double along) {
    double inside = round(along);
    int i = segment(inside);
    return segments.get(i).at(fraction(i, inside));
  }

  /** The direction of travel there. */
  Point tangent(double along) {
    double inside = round(along);
    int i = segment(inside);
    return segments.get(i).tangent(fraction(i, inside));
  }

  /** The curvature there, 1/mm. */
  double curvature(double along) {
    return segments.get(segment(round(along))).curvature();
  }

  /** How far along it the point nearest to another lies. */
  double nearest(Point p) {
    double best = Double.POSITIVE_INFINITY;
    double along = 0;
    for (int i = 0; i < segments.size(); i++) {
      Segment s = segments.get(i);
      Point on = s.nearest(p);
      double distance = on.distance(p);
      if (distance < best) {
        best = distance;
        along = start[i] + fractionOf(s, on) * s.length();
      }
    }
    return round(along);
  }

  private static double fractionOf(Segment segment, Point on) {
    return segment.curvature() == 0
        ? segment.from().distance(on) / segment.length()
        : arcFraction(segment, on);
  }

  private static double arcFraction(Segment segment, Point on) {
    Arc arc = (Arc) segment;
    double turn = 2 * Math.PI;
    double turned = on.minus(arc.centre()).angle() - arc.startAngle();
    double signed = arc.sweep() > 0 ? turned : -turned;
    double way = ((signed % turn) + turn) % turn;
    double sweep = Math.abs(arc.sweep());
    // A point before the start comes out as almost a whole turn.
    return way > (sweep + turn) / 2 ? 0 : Math.min(1, way / sweep);
  }
}
