package felloe.geometry;

import java.util.Optional;

/**
 * Where the circle that rounds a corner touches the two segments. The centre is the meeting of the
 * two curves, each moved by the radius to the corner's inner side; a foot of the centre on each
 * curve is the tangent point.
 *
 * @param start tangent point on the segment before the corner
 * @param end tangent point on the segment after it
 * @param centre centre of the rounding
 * @param left whether the path turns left at the corner
 * @param lossBefore length that the segment before loses at its end, mm; may exceed its length
 * @param lossAfter length that the segment after loses at its start, mm; may exceed its length
 */
record FilletContact(
    Point start, Point end, Point centre, boolean left, double lossBefore, double lossAfter) {

  /** Whether the path goes on without a corner. */
  static boolean smooth(Segment before, Segment after) {
    return Math.abs(turn(before, after)) < Tolerances.SAME_DIRECTION;
  }

  private static double turn(Segment before, Segment after) {
    Point in = before.tangent(1);
    Point out = after.tangent(0);
    return Math.atan2(in.cross(out), in.dot(out));
  }

  private static boolean turnsLeft(Segment before, Segment after) {
    double turn = turn(before, after);
    // In a cusp the tangents say nothing: the way back lies on the side that it curves to.
    return Math.PI - Math.abs(turn) < Tolerances.SAME_DIRECTION
        ? before.curvature() + after.curvature() < 0
        : turn > 0;
  }

  /** The touching circle nearest to the corner; none when no circle of the radius touches both. */
  static Optional<FilletContact> of(Segment before, Segment after, double radius) {
    boolean left = turnsLeft(before, after);
    Optional<Curve> a = moved(before, radius, left);
    Optional<Curve> b = moved(after, radius, left);
    if (a.isEmpty() || b.isEmpty()) {
      return Optional.empty();
    }
    FilletContact best = null;
    for (Point centre : Curve.meetings(a.get(), b.get(), Tolerances.ROUNDING)) {
      Point start = Curve.of(before).nearest(centre);
      Point end = Curve.of(after).nearest(centre);
      FilletContact touch =
          new FilletContact(
              start, end, centre, left, travelled(before.reversed(), start), travelled(after, end));
      if (touch.lossBefore >= 0
          && touch.lossAfter >= 0
          && (best == null || touch.loss() < best.loss())) {
        best = touch;
      }
    }
    return Optional.ofNullable(best);
  }

  private double loss() {
    return lossBefore + lossAfter;
  }

  private static Optional<Curve> moved(Segment segment, double radius, boolean left) {
    if (segment instanceof Line line) {
      Point side = left ? line.direction().left() : line.direction().right();
      return Optional.of(new Curve.Straight(line.from().plus(side, radius), line.direction()));
    }
    Arc arc = (Arc) segment;
    boolean inward = arc.sweep() > 0 == left;
    double moved = inward ? arc.radius() - radius : arc.radius() + radius;
    return moved <= Tolerances.SAME_POINT
        ? Optional.empty()
        : Optional.of(new Curve.Circle(arc.centre(), moved));
  }

  /** Length from the start of a segment, along its curve, to a point of the curve. */
  private static double travelled(Segment segment, Point p) {
    double slack = Tolerances.SAME_POINT;
    if (segment instanceof Line line) {
      double along = p.minus(line.from()).dot(line.direction());
      return along < 0 && along > -slack ? 0 : along;
    }
    Arc arc = (Arc) segment;
    double along = arc.travelled(p) * arc.radius();
    return along > 2 * Math.PI * arc.radius() - slack ? 0 : along;
  }
}
