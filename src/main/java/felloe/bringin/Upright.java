package felloe.bringin;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Which way a part on a photo stands. The photo's up is the wheel's; where the part is its own
 * mirror image nearly that way, the line of symmetry is.
 */
final class Upright {

  /** So far from the photo's up the line of symmetry is looked for, radians. */
  private static final double REACH = Math.toRadians(30);

  private static final double COARSE = Math.toRadians(1);

  private static final double FINE = Math.toRadians(0.002);

  /** A part whose halves differ by more than this in the mean is none, mm. */
  private static final double SYMMETRIC = 0.5;

  /** A place that has no image counts no more than this, mm. */
  private static final double MOST = 3;

  /** Every so many places are looked at in the coarse search. */
  private static final int FEW = 7;

  /**
   * An edge.
   *
   * @param near what lies outside of it is farther than {@link #MOST} from the edge
   */
  private record Edge(Contour contour, Box near) {}

  private final List<Edge> edges = new ArrayList<>();
  private final List<Point> places;
  private final Point middle;

  private Upright(List<EdgeChain> chains) {
    places = new ArrayList<>();
    for (EdgeChain chain : chains) {
      Contour contour = new Contour(chain.segments());
      edges.add(new Edge(contour, contour.box().grown(MOST)));
      places.addAll(chain.places());
    }
    middle = edges.get(0).contour.properties().centroid();
  }

  /**
   * How far to turn the paper, radians.
   *
   * @param up the photo's up on the paper, radians
   */
  static double turn(List<EdgeChain> chains, double up) {
    Upright upright = new Upright(chains);
    double best = up;
    double least = Double.POSITIVE_INFINITY;
    for (double d = -REACH; d <= REACH; d += COARSE) {
      // Of several the one nearest to the photo's up.
      double off = upright.off(up + d, FEW) + Math.abs(d) * FINE;
      if (off < least) {
        least = off;
        best = up + d;
      }
    }
    for (double step = COARSE / 2; step > FINE; step /= 2) {
      double left = upright.off(best - step, 1);
      double right = upright.off(best + step, 1);
      double here = upright.off(best, 1);
      if (Math.min(left, right) < here) {
        best += left < right ? -step : step;
      }
    }
    double axis = upright.off(best, 1) <= SYMMETRIC ? best : up;
    return Math.PI / 2 - axis;
  }

  /** The mean distance of the mirrored places from the edges. */
  private double off(double axis, int every) {
    Point along = Point.polar(1, axis);
    double sum = 0;
    int count = 0;
    for (int i = 0; i < places.size(); i += every) {
      Point p = places.get(i).minus(middle);
      Point image = middle.plus(along, 2 * p.dot(along)).minus(p);
      double least = MOST;
      for (Edge edge : edges) {
        if (edge.near.contains(image)) {
          least = Math.min(least, edge.contour.distance(image));
        }
      }
      sum += least;
      count++;
    }
    return sum / count;
  }
}
