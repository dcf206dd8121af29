package felloe.geometry;

import java.util.List;
import java.util.Optional;

/**
 * Two arcs that join each other tangentially and lead from one point and direction to another; one
 * arc or line where that is enough.
 */
final class Biarc {

  /** An arc that turns less than this is drawn as a line: the joints stay tangent to 1e-9. */
  private static final double STRAIGHT = 4e-10;

  /** Two arcs whose turn differs less than this from that of one arc are one. */
  private static final double ONE_ARC = 1e-12;

  private Biarc() {}

  /** The ends of a stretch of curve: points and directions of length one. */
  record Ends(Point from, Point leaving, Point to, Point arriving) {

    private double chordTurn() {
      return wrapped(turn(leaving, to.minus(from)) - turn(to.minus(from), arriving));
    }
  }

  private static double turn(Point a, Point b) {
    return Math.atan2(a.cross(b), a.dot(b));
  }

  private static double wrapped(double angle) {
    return Math.IEEEremainder(angle, 2 * Math.PI);
  }

  /** Both arcs with equal tangent lengths; none when they would be too short or too curled. */
  static Optional<List<Segment>> balanced(Ends ends) {
    Point chord = ends.to.minus(ends.from);
    double square = chord.dot(chord);
    if (square <= 4 * Tolerances.SAME_POINT * Tolerances.SAME_POINT) {
      return Optional.empty();
    }
    if (Math.abs(ends.chordTurn()) < ONE_ARC) {
      return single(ends);
    }
    Point sum = ends.leaving.plus(ends.arriving);
    double along = chord.dot(sum);
    Point difference = ends.leaving.minus(ends.arriving);
    // 2 (1 - cos) between the directions, without loss of digits.
    double spread = difference.dot(difference);
    double below = along + Math.sqrt(along * along + spread * square);
    if (!(below > 0)) {
      return Optional.empty();
    }
    double length = square / below;
    Point joint = ends.from.plus(ends.leaving, length).middle(ends.to.plus(ends.arriving, -length));
    return through(ends, joint);
  }

  /** Both arcs with their joint on the curve, between two parameters. */
  static Optional<List<Segment>> jointOn(FreeCurve curve, double start, double end, Ends ends) {
    if (ends.from.near(ends.to, 2 * Tolerances.SAME_POINT)) {
      return Optional.empty();
    }
    double low = start;
    double high = end;
    double atEnd = ends.chordTurn();
    if (Math.abs(atEnd) < ONE_ARC) {
      return single(ends);
    }
    // The mismatch of the directions at the joint has opposite signs at both ends.
    for (int i = 0; i < 52; i++) {
      double middle = (low + high) / 2;
      if (mismatch(ends, curve.at(middle)) * atEnd > 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return through(ends, curve.at((low + high) / 2));
  }

  private static double mismatch(Ends ends, Point joint) {
    Point one = joint.minus(ends.from);
    Point two = ends.to.minus(joint);
    return wrapped(turn(ends.leaving, one) + turn(two, one) + turn(two, ends.arriving));
  }

  private static Optional<List<Segment>> through(Ends ends, Point joint) {
    Optional<Segment> one = arc(ends.from, ends.leaving, joint);
    Optional<Segment> two = arc(ends.to, ends.arriving.times(-1), joint).map(Segment::reversed);
    return one.isPresent() && two.isPresent()
        ? Optional.of(ArcMerge.open(List.of(one.get(), two.get())))
        : Optional.empty();
  }

  private static Optional<List<Segment>> single(Ends ends) {
    return arc(ends.from, ends.leaving, ends.to).map(List::of);
  }

  /** The arc that leaves a point in a direction and ends in another point. */
  private static Optional<Segment> arc(Point from, Point direction, Point to) {
    Point chord = to.minus(from);
    double length = chord.norm();
    if (length <= 2 * Tolerances.SAME_POINT) {
      return Optional.empty();
    }
    double half = turn(direction, chord);
    if (Math.abs(half) > 3) {
      return Optional.empty();
    }
    if (Math.abs(half) < STRAIGHT) {
      return Optional.of(new Line(from, to));
    }
    double radius = length / (2 * Math.sin(half));
    if (Math.abs(radius) > Tolerances.FLATTEST) {
      return Optional.of(new Line(from, to));
    }
    Point centre = from.plus(direction.left(), radius);
    if (Math.abs(radius) <= 2 * Tolerances.SAME_POINT) {
      return Optional.empty();
    }
    return Optional.of(new Arc(from, to, centre, Math.abs(radius), 2 * half));
  }
}
