package felloe.geometry;

import java.util.ArrayList;
import java.util.List;

/** Joins arcs of one circle that follow each other into one arc. */
public final class ArcMerge {

  private static final double TURN = 2 * Math.PI;

  private ArcMerge() {}

  /** The pieces of an open chain, joined. */
  static List<Segment> open(List<Segment> chain) {
    List<Segment> joined = new ArrayList<>();
    for (Segment segment : chain) {
      int last = joined.size() - 1;
      if (last >= 0 && one(joined.get(last), segment)) {
        joined.set(last, join((Arc) joined.get(last), (Arc) segment));
      } else {
        joined.add(segment);
      }
    }
    return joined;
  }

  /** The pieces of a closed chain, joined, across its start as well. */
  public static List<Segment> closed(List<Segment> chain) {
    List<Segment> joined = open(chain);
    int last = joined.size() - 1;
    if (last > 0 && one(joined.get(last), joined.get(0))) {
      joined.set(0, join((Arc) joined.get(last), (Arc) joined.get(0)));
      joined.remove(last);
    }
    return joined;
  }

  private static boolean one(Segment a, Segment b) {
    return a instanceof Arc p
        && b instanceof Arc q
        && p.sweep() > 0 == q.sweep() > 0
        && p.centre().near(q.centre(), Tolerances.ROUNDING)
        && Math.abs(p.radius() - q.radius()) <= Tolerances.ROUNDING
        && Math.abs(p.sweep() + q.sweep()) <= TURN + Tolerances.SAME_DIRECTION;
  }

  private static Arc join(Arc a, Arc b) {
    if (a.from().equals(b.to())) {
      return new Arc(a.from(), a.from(), a.centre(), a.radius(), Math.copySign(TURN, a.sweep()));
    }
    return new Arc(a.from(), b.to(), a.centre(), a.radius(), a.sweep() + b.sweep());
  }
}
