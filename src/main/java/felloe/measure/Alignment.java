package felloe.measure;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.hub.RigidFit;
import felloe.hub.RigidFit.Round;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Lays measured places on the places that were meant, each on its own, so that the worst is off
 * least. First by least squares, which settles which way round they lie, then by the fit that the
 * hub is laid with. Where zones differ, the one is worst that reaches farthest beyond its zone: so
 * all keep their zones if they can all do so at once, which is what a gauge with fixed pins tells
 * (ISO 2692).
 *
 * @param first by least squares
 * @param second what the fit adds
 * @param worst how far the worst is then off, mm
 */
record Alignment(RigidTransform first, RigidTransform second, double worst) {

  static Alignment of(List<Point> found, List<Point> meant, boolean mayMirror) {
    return of(found, meant, Collections.nCopies(found.size(), 0.0), mayMirror);
  }

  /**
   * Lays them so.
   *
   * @param more by how much each one's zone is wider than the narrowest, at least 0, mm
   */
  static Alignment of(List<Point> found, List<Point> meant, List<Double> more, boolean mayMirror) {
    Alignment straight = one(found, meant, more, false);
    if (!mayMirror) {
      return straight;
    }
    Alignment mirrored = one(found, meant, more, true);
    return mirrored.worst < straight.worst ? mirrored : straight;
  }

  /** Lays them so, seen mirrored or not as told. */
  static Alignment laid(List<Point> found, List<Point> meant, List<Double> more, boolean mirrored) {
    return one(found, meant, more, mirrored);
  }

  boolean mirrored() {
    return first.mirrored();
  }

  /** How far the worst place is off when they are laid on each other by least squares, mm. */
  static double bySquares(List<Point> found, List<Point> meant) {
    RigidTransform motion = squares(found, meant, false);
    double worst = 0;
    for (int i = 0; i < found.size(); i++) {
      worst = Math.max(worst, motion.of(found.get(i)).distance(meant.get(i)));
    }
    return worst;
  }

  Point of(Point p) {
    return second.of(first.of(p));
  }

  private static Alignment one(
      List<Point> found, List<Point> meant, List<Double> more, boolean mirror) {
    RigidTransform first = squares(found, meant, mirror);
    List<Round> from = new ArrayList<>();
    List<Round> to = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      from.add(new Round(first.of(found.get(i)), more.get(i)));
      to.add(new Round(meant.get(i), 0));
    }
    // The meant places go first: of the turns of an even ring onto itself the least is then taken.
    RigidFit fit = RigidFit.of(to, from);
    boolean own = true;
    for (int i = 0; i < found.size(); i++) {
      own &= fit.holes().get(i) == i;
    }
    RigidTransform second = own ? back(fit.placement()) : RigidTransform.NONE;
    double worst = 0;
    for (int i = 0; i < found.size(); i++) {
      worst = Math.max(worst, second.of(from.get(i).centre()).distance(meant.get(i)));
    }
    return new Alignment(first, second, worst);
  }

  private static RigidTransform back(RigidTransform there) {
    RigidTransform turn = RigidTransform.turn(-there.turn());
    return new RigidTransform(false, -there.turn(), turn.of(there.shift()).times(-1));
  }

  static RigidTransform squares(List<Point> found, List<Point> meant, boolean mirror) {
    Point a = Point.ORIGIN;
    Point b = Point.ORIGIN;
    int n = found.size();
    for (int i = 0; i < n; i++) {
      a = a.plus(flip(found.get(i), mirror), 1.0 / n);
      b = b.plus(meant.get(i), 1.0 / n);
    }
    double dot = 0;
    double cross = 0;
    for (int i = 0; i < n; i++) {
      Point p = flip(found.get(i), mirror).minus(a);
      Point q = meant.get(i).minus(b);
      dot += p.dot(q);
      cross += p.cross(q);
    }
    RigidTransform turn = new RigidTransform(mirror, Math.atan2(cross, dot), Point.ORIGIN);
    Point moved = RigidTransform.turn(turn.turn()).of(a);
    return new RigidTransform(mirror, turn.turn(), b.minus(moved));
  }

  private static Point flip(Point p, boolean mirror) {
    return mirror ? new Point(-p.x(), p.y()) : p;
  }
}
