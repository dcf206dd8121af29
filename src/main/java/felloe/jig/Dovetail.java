package felloe.jig;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.solid.PlanLine;
import java.util.List;
import java.util.Optional;

/**
 * A dovetail between two pieces: a tail on one that a socket of the other takes from above. The
 * faces beside it touch, so that the length over both stays what it was.
 *
 * @param foot middle of its root, on the cut
 * @param out direction from the piece with the tail to the other, of length one
 * @param root half its width at the cut, mm
 * @param depth how far it reaches into the other piece, mm
 */
record Dovetail(Point foot, Point out, double root, double depth) {

  /** Angle of the flanks, as a slope: 15 degrees; common practice. */
  private static final double SLOPE = 0.268;

  /** The shortest stretch of a cut that has room for one, mm. */
  static final double LEAST = 12;

  /** Depths that hold and yet print well, mm; common practice. */
  static final double DEEPEST = 7;

  private static final double SHALLOWEST = 3;
  private static final double NARROWEST = 2.5;
  private static final double WIDEST = 8;

  /** How far tail and socket reach back over the cut, so that they meet what they belong to. */
  private static final double BACK = 1;

  /** Where in a stretch a place is tried, as a part of its length. */
  private static final double[] PLACES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8};

  /**
   * A dovetail in a stretch of a cut.
   *
   * @param corners of the part's edges in chords
   * @param round what must be clear round its tail: the gap and material beyond, mm
   * @return empty when there is no room
   */
  static Optional<Dovetail> in(
      Point from, Point to, Point out, Region region, List<Point> corners, double round) {
    double length = from.distance(to);
    if (length < LEAST) {
      return Optional.empty();
    }
    double root = Math.max(NARROWEST, Math.min(WIDEST, length / 6));
    double depth = Math.max(SHALLOWEST, Math.min(DEEPEST, root));
    for (double place : PLACES) {
      Dovetail tail = new Dovetail(from.towards(to, place), out, root, depth);
      if (tail.fits(region, corners, round)) {
        return Optional.of(tail);
      }
    }
    return Optional.empty();
  }

  private Point at(double along, double beyond) {
    return foot.plus(out.left(), along).plus(out, beyond);
  }

  private boolean fits(Region region, List<Point> corners, double round) {
    PlanLine socket = PlanLine.of(shape(round), 1);
    double head = root + SLOPE * depth;
    for (Point p :
        List.of(
            at(-head - round, depth + round),
            at(head + round, depth + round),
            at(0, depth + round),
            at(-root - round, 0),
            at(root + round, 0))) {
      if (!region.contains(p)) {
        return false;
      }
    }
    double far = head + depth + 2 * round;
    return corners.stream().noneMatch(p -> p.distance(foot) < far && socket.surrounds(p));
  }

  /** Its tail. */
  Contour tail() {
    return shape(0);
  }

  /** The socket with a gap all round, but at the cut. */
  Contour socket(double gap) {
    return shape(gap);
  }

  private Contour shape(double gap) {
    double side = gap * Math.sqrt(1 + SLOPE * SLOPE);
    double foot = root + side;
    double head = root + SLOPE * (depth + gap) + side;
    return Contour.polygon(
        List.of(
            at(foot, -BACK),
            at(foot, 0),
            at(head, depth + gap),
            at(-head, depth + gap),
            at(-foot, 0),
            at(-foot, -BACK)));
  }

  /** A point of the piece with the tail. */
  Point inTail() {
    return at(0, depth / 2);
  }

  /** A point of the piece with the socket, just beyond it. */
  Point beyond(double gap) {
    return at(0, depth + gap + 0.5);
  }
}
