package felloe.geometry;

import java.util.List;
import java.util.Optional;

/**
 * Where a closed chain of lines and arcs meets itself, judged on the exact curves: where two of its
 * segments share a point, within {@link Tolerances#SAME_POINT}, that is no joint of theirs.
 *
 * <p>Neighbours share a joint J. The curves that carry them meet in at most one other point, and
 * that is J's mirror image in the line of symmetry of the two: through both centres, or through the
 * centre square to the line. So the other meeting is known without solving for it, also where the
 * two curves all but touch.
 */
final class SelfMeeting {

  private final List<Segment> chain;

  private SelfMeeting(List<Segment> chain) {
    this.chain = chain;
  }

  /**
   * The first pair of segments, by their numbers, that meet where they should not.
   *
   * @param chain a closed chain: each segment starts at the very point where the one before ends
   */
  static Optional<SegmentIndex.Clash> first(List<Segment> chain) {
    if (chain.size() == 1) {
      return Optional.empty();
    }
    return new SegmentIndex(chain).firstClash(new SelfMeeting(chain)::clash);
  }

  private Optional<Point> clash(int i, int j) {
    int n = chain.size();
    Segment a = chain.get(i);
    Segment b = chain.get(j);
    if (n == 2) {
      return pair(a, b);
    }
    if (j == i + 1) {
      return neighbours(a, b);
    }
    if (i == 0 && j == n - 1) {
      return neighbours(b, a);
    }
    Gap gap = Gap.between(a, b);
    return gap.distance() <= Tolerances.SAME_POINT ? Optional.of(gap.from()) : Optional.empty();
  }

  /** Two segments that share both ends: different curves through two points meet nowhere else. */
  private static Optional<Point> pair(Segment a, Segment b) {
    if (a.from().equals(a.to())) {
      return Optional.of(a.from());
    }
    Point middle = a.at(0.5);
    return b.distance(middle) <= Tolerances.SAME_POINT ? Optional.of(middle) : Optional.empty();
  }

  /** A point other than their joint that one segment shares with the next. */
  private static Optional<Point> neighbours(Segment a, Segment b) {
    boolean sameCurve = Curve.of(a).same(Curve.of(b), Tolerances.SAME_POINT);
    // Segments of one curve that share a stretch share a free end; the two curves may part by a
    // little.
    double near = (sameCurve ? 4 : 1) * Tolerances.SAME_POINT;
    if (b.distance(a.from()) <= near) {
      return Optional.of(a.from());
    }
    if (a.distance(b.to()) <= near) {
      return Optional.of(b.to());
    }
    return (sameCurve ? Optional.<Point>empty() : otherMeeting(a, b))
        .filter(
            p ->
                !p.near(a.to(), 2 * Tolerances.SAME_POINT)
                    && a.distance(p) <= Tolerances.SAME_POINT
                    && b.distance(p) <= Tolerances.SAME_POINT);
  }

  /** Where the curves that carry two neighbours meet besides their joint, if they do. */
  private static Optional<Point> otherMeeting(Segment a, Segment b) {
    Point joint = a.to();
    Curve onA = Curve.of(a);
    Curve onB = Curve.of(b);
    if (onA instanceof Curve.Circle c && onB instanceof Curve.Circle d) {
      Point across = d.centre().minus(c.centre()).unit().left();
      return Optional.of(joint.plus(across, 2 * c.centre().minus(joint).dot(across)));
    }
    if (onA instanceof Curve.Straight line && onB instanceof Curve.Circle circle) {
      return Optional.of(mirrored(joint, line, circle));
    }
    if (onA instanceof Curve.Circle circle && onB instanceof Curve.Straight line) {
      return Optional.of(mirrored(joint, line, circle));
    }
    return Optional.empty();
  }

  private static Point mirrored(Point joint, Curve.Straight line, Curve.Circle circle) {
    Point along = line.direction();
    return joint.plus(along, 2 * circle.centre().minus(joint).dot(along));
  }
}
