package felloe.mesh;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import java.util.ArrayList;
import java.util.List;

/**
 * Limits the edges where the material is narrow or its edge tightly curved. How wide the material
 * is behind a point of its edge is told by the largest circle that touches the edge there and lies
 * in the material (found by shrinking a large one until nothing reaches into it).
 */
final class NarrowPlaces {

  private static final int SHRINKS = 30;

  private final List<ArcLengthIndex> courses;
  private final List<Segment> segments = new ArrayList<>();
  private final SegmentIndex index;

  NarrowPlaces(Region region) {
    courses = region.contours().stream().map(ArcLengthIndex::new).toList();
    region.contours().forEach(c -> segments.addAll(c.segments()));
    index = new SegmentIndex(segments);
  }

  List<ArcLengthIndex> courses() {
    return courses;
  }

  SegmentIndex index() {
    return index;
  }

  /**
   * Writes the limits into a field.
   *
   * @param least no limit is shorter than this, mm
   */
  void limit(Fineness fineness, double least, SizeField sizes) {
    double step = Math.min(fineness.edge() / 2, 4);
    for (int c = 0; c < courses.size(); c++) {
      ArcLengthIndex course = courses.get(c);
      int samples = (int) Math.min(20_000, Math.max(24, Math.ceil(course.length() / step)));
      List<Double> corners = course.corners(NodeRing.SMOOTH);
      for (int i = 0; i < samples; i++) {
        double along = course.length() * (i + 0.5) / samples;
        Point at = course.at(along);
        double curved = Math.abs(course.curvature(along));
        double edge = fineness.edge();
        if (curved > 0) {
          edge = Math.min(edge, 2 * Math.PI / curved / fineness.round());
        }
        if (corners.stream().noneMatch(k -> near(k, along, course, fineness.edge()))) {
          // Contours run with the material on their left, holes with it on their right.
          Point normal = c == 0 ? course.tangent(along).left() : course.tangent(along).right();
          double radius = touchingCircle(at, normal, fineness.edge() * fineness.across());
          edge = Math.min(edge, 2 * radius / fineness.across());
        }
        sizes.limit(at, Math.max(least, edge));
      }
    }
  }

  /** Beside a sharp corner the circle shrinks to nothing, though nothing is narrow there. */
  private static boolean near(double corner, double along, ArcLengthIndex course, double reach) {
    double apart = Math.abs(corner - along);
    return Math.min(apart, course.length() - apart) < reach;
  }

  private double touchingCircle(Point at, Point normal, double most) {
    double radius = most;
    for (int i = 0; i < SHRINKS; i++) {
      Point centre = at.plus(normal, radius);
      Point touched = index.get(index.nearest(centre)).nearest(centre);
      if (touched.distance(centre) >= radius * (1 - 1e-4)) {
        break;
      }
      Point way = touched.minus(at);
      double ahead = way.dot(normal);
      if (!(ahead > 1e-9)) {
        break;
      }
      radius = way.dot(way) / (2 * ahead);
    }
    return radius;
  }
}
