package felloe.load;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a hand holds the rim: found on the exact contours. */
final class HandPlace {

  private HandPlace() {}

  /**
   * The middle of the outermost material along a ray from the hub axis, or of its outer part where
   * it is wider than a rim; empty where the ray meets none.
   *
   * @param angle of the ray, radians counter-clockwise from +x
   * @param rim the widest that a hand closes about, mm
   */
  static Optional<Point> on(Region region, double angle, double rim) {
    Point along = Point.polar(1, angle);
    List<Double> cuts = new ArrayList<>(List.of(0.0));
    for (Contour contour : region.contours()) {
      for (Segment segment : contour.segments()) {
        cuts(segment, along, cuts);
      }
    }
    cuts.sort(Double::compare);
    for (int i = cuts.size() - 2; i >= 0; i--) {
      double from = cuts.get(i);
      double to = cuts.get(i + 1);
      Point middle = along.times((from + to) / 2);
      if (to - from > Tolerances.SAME_POINT && region.contains(middle)) {
        // Neighbouring stretches that only a touch parts are one.
        double start = from;
        for (int k = i - 1; k >= 0; k--) {
          double before = cuts.get(k);
          boolean solid = region.contains(along.times((before + start) / 2));
          if (start - before > Tolerances.SAME_POINT && !solid) {
            break;
          }
          start = before;
        }
        return Optional.of(along.times((Math.max(start, to - rim) + to) / 2));
      }
    }
    return Optional.empty();
  }

  private static void cuts(Segment segment, Point along, List<Double> cuts) {
    if (segment instanceof Line line) {
      double from = along.cross(line.from());
      double to = along.cross(line.to());
      if (from == to) {
        return;
      }
      double part = from / (from - to);
      if (part >= 0 && part <= 1) {
        add(line.from().towards(line.to(), part), along, cuts);
      }
      return;
    }
    Arc arc = (Arc) segment;
    double off = along.cross(arc.centre());
    double half2 = arc.radius() * arc.radius() - off * off;
    if (half2 < 0) {
      return;
    }
    double middle = along.dot(arc.centre());
    for (double way : new double[] {-Math.sqrt(half2), Math.sqrt(half2)}) {
      Point p = along.times(middle + way);
      if (arc.isCircle() || arc.nearest(p).near(p, Tolerances.SAME_POINT)) {
        add(p, along, cuts);
      }
    }
  }

  private static void add(Point p, Point along, List<Double> cuts) {
    double distance = p.dot(along);
    if (distance > 0) {
      cuts.add(distance);
    }
  }
}
