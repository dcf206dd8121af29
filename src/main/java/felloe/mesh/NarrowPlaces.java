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
    curved(fineness, least, sizes);
    double step = Math.min(fineness.edge() / 2, 4);
    for (int c = 0; c < courses.size(); c++) {
      ArcLengthIndex course = courses.get(c);
      int samples = (int) Math.min(20_000, Math.max(24, Math.ceil(course.length() / step)));
      List<Double> corners = course.corners(NodeRing.SMOOTH);
      for (int i = 0; i < samples; i++) {
        double along = course.length() * (i + 0.5) / samples;
        Point at = course.at(along);
        double edge = fineness.edge();
        if (corners.stream().noneMatch(k -> near(k, along, course, fineness.edge()))) {
          // Contours run with the material on their left, holes with it on their right.
          Point normal = c == 0 ? course.tangent(along).left() : course.tangent(along).right();
          double radius = touchingCircle(at, normal, fineness.edge() * fineness.across());
          edge = Math.min(edge, 2 * radius / fineness.across());
        }
        limit(course, along, course.length() / samples, Math.max(least, edge), sizes);
      }
    }
  }

  /** Limits the edges along so long a piece of a course. */
  private static void limit(
      ArcLengthIndex course, double middle, double piece, double edge, SizeField sizes) {
    int places = (int) Math.ceil(piece / edge);
    for (int i = 0; i < places; i++) {
      sizes.limit(course.at(middle + piece * ((i + 0.5) / places - 0.5)), edge);
    }
  }

  /** Limits the edges along arcs, all the way. */
  private void curved(Fineness fineness, double least, SizeField sizes) {
    for (Segment segment : segments) {
      double edge = 2 * Math.PI / Math.abs(segment.curvature()) / fineness.round();
      if (edge < fineness.edge()) {
        double limit = Math.max(least, edge);
        int count = (int) Math.ceil(segment.length() / limit);
        for (int i = 0; i <= count; i++) {
          sizes.limit(segment.at((double) i / count), limit);
        }
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
