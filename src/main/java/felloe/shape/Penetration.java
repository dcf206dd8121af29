package felloe.shape;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.Optional;

/**
 * How far one contour reaches into or out of another.
 *
 * @param at the point that lies deepest
 * @param by its distance to the other contour's line, mm, or for two circles how far they would
 *     have to be moved apart; 0 when no point lies there
 */
record Penetration(Point at, double by) {

  /** Part of a segment at which the search for its deepest place stops. */
  private static final double FOUND = 1e-9;

  private static final int SAMPLES = 480;
  private static final int FEWEST_ON_A_SEGMENT = 2;
  private static final int MOST_ON_A_SEGMENT = 24;
  private static final int MOST_SEGMENTS = SAMPLES / FEWEST_ON_A_SEGMENT;
  private static final int HALVINGS = 40;

  /** How many distances from a point to a segment {@link #deepest} works out, at most. */
  static long work(Contour a, Contour b) {
    return 2L * (SAMPLES + 2 * HALVINGS) * b.segments().size();
  }

  /**
   * The point of {@code a} that lies deepest inside, or farthest outside, of {@code b}. It is found
   * by samples and then narrowed down, so that its depth is a local maximum to about a thousandth
   * of a millimetre; of long contours only some segments are looked at.
   *
   * @param inside whether points inside {@code b} are meant, or those outside
   */
  static Penetration deepest(Contour a, Contour b, boolean inside) {
    Optional<Penetration> circles =
        a.asCircle().flatMap(one -> b.asCircle().flatMap(two -> ofCircles(one, two)));
    if (inside && circles.isPresent()) {
      return circles.get();
    }
    int count = a.segments().size();
    int stride = Math.max(1, count / MOST_SEGMENTS);
    int on = Math.max(FEWEST_ON_A_SEGMENT, Math.min(MOST_ON_A_SEGMENT, SAMPLES / count));
    Penetration deepest = new Penetration(a.segments().get(0).from(), 0);
    Segment segment = null;
    double middle = 0;
    for (int i = 0; i < count; i += stride) {
      for (int k = 0; k < on; k++) {
        double t = (double) k / on;
        Penetration depth = depth(a.segments().get(i).at(t), b, inside);
        if (depth.by > deepest.by) {
          deepest = depth;
          segment = a.segments().get(i);
          middle = t;
        }
      }
    }
    return segment == null ? deepest : narrowed(deepest, segment, middle, 1.0 / on, b, inside);
  }

  /** Two circles reach into each other by the sum of their radii less the distance. */
  private static Optional<Penetration> ofCircles(Arc a, Arc b) {
    double distance = a.centre().distance(b.centre());
    if (distance <= Tolerances.SAME_POINT) {
      return Optional.empty();
    }
    Point at = a.centre().towards(b.centre(), a.radius() / distance);
    return Optional.of(new Penetration(at, Math.max(0, a.radius() + b.radius() - distance)));
  }

  private static Penetration narrowed(
      Penetration start, Segment segment, double middle, double step, Contour b, boolean inside) {
    Penetration deepest = start;
    double at = middle;
    double reach = step / 2;
    for (int i = 0; i < HALVINGS && reach > FOUND; i++) {
      Penetration before = depth(segment.at(Math.max(0, at - reach)), b, inside);
      Penetration after = depth(segment.at(Math.min(1, at + reach)), b, inside);
      if (before.by > deepest.by && before.by >= after.by) {
        deepest = before;
        at = Math.max(0, at - reach);
      } else if (after.by > deepest.by) {
        deepest = after;
        at = Math.min(1, at + reach);
      } else {
        reach /= 2;
      }
    }
    return deepest;
  }

  private static Penetration depth(Point p, Contour b, boolean inside) {
    return new Penetration(p, b.contains(p) == inside ? b.distance(p) : 0);
  }
}
