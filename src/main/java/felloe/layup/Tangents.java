package felloe.layup;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * A polygon round a shape, of tangents to it in evenly spaced directions. Cloth is cut by hand, so
 * laying curved pieces out by a few straight lines loses nothing and is much faster.
 *
 * <p>Accuracy: it holds the whole shape and touches it with each of its edges; a circle's stands
 * out by 0.4 % of its radius at the corners.
 */
final class Tangents {

  private static final int DIRECTIONS = 36;

  private Tangents() {}

  /** A region with curved edges as tangents; one of straight lines as it is. */
  static Region of(Region region) {
    boolean curved = region.outer().segments().stream().anyMatch(Arc.class::isInstance);
    return curved ? Region.of(round(region.outer())) : region;
  }

  private static Contour round(Contour contour) {
    double step = 2 * Math.PI / DIRECTIONS;
    double[] reach = new double[DIRECTIONS];
    for (int i = 0; i < DIRECTIONS; i++) {
      RigidTransform motion = RigidTransform.turn(-i * step);
      double farthest = Double.NEGATIVE_INFINITY;
      for (Segment segment : contour.segments()) {
        farthest = Math.max(farthest, segment.moved(motion).box().maxX());
      }
      reach[i] = farthest;
    }
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < DIRECTIONS; i++) {
      double next = reach[(i + 1) % DIRECTIONS];
      // Where the tangents of this direction and the next meet.
      double along = (next - reach[i] * Math.cos(step)) / Math.sin(step);
      Point corner = RigidTransform.turn(i * step).of(new Point(reach[i], along));
      if (corners.isEmpty() || !corner.near(corners.get(corners.size() - 1), 0.01)) {
        corners.add(corner);
      }
    }
    if (corners.get(0).near(corners.get(corners.size() - 1), 0.01)) {
      corners.remove(corners.size() - 1);
    }
    return Contour.polygon(corners);
  }
}
