package felloe.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The shortest way between two segments, in closed form.
 *
 * @param from its end on the first segment
 * @param to its end on the second segment
 * @param distance its length, millimetres; 0 where the segments meet
 */
public record Gap(Point from, Point to, double distance) {

  /** The shortest way between two segments; where several are equally short, one of them. */
  public static Gap between(Segment a, Segment b) {
    List<Point> meetings = meetings(a, b);
    if (!meetings.isEmpty()) {
      return new Gap(meetings.get(0), meetings.get(0), 0);
    }
    Gap best = of(a.from(), b.nearest(a.from()));
    best = best.shorter(of(a.to(), b.nearest(a.to())));
    best = best.shorter(of(a.nearest(b.from()), b.from()));
    best = best.shorter(of(a.nearest(b.to()), b.to()));
    for (Point p : facing(a, b)) {
      best = best.shorter(of(p, b.nearest(p)));
    }
    for (Point p : facing(b, a)) {
      best = best.shorter(of(a.nearest(p), p));
    }
    return best;
  }

  /** The same way the other way round. */
  public Gap reversed() {
    return new Gap(to, from, distance);
  }

  private static Gap of(Point from, Point to) {
    return new Gap(from, to, from.distance(to));
  }

  /** The shorter of the two, this one where they are equally short. */
  public Gap shorter(Gap other) {
    return other.distance < distance ? other : this;
  }

  /** Inner points of an arc where its normal may be a shortest way to the other segment. */
  private static List<Point> facing(Segment segment, Segment other) {
    if (!(segment instanceof Arc arc)) {
      return List.of();
    }
    Point axis =
        other instanceof Line line
            ? line.direction().left()
            : ((Arc) other).centre().minus(arc.centre());
    return axis.norm() == 0 ? List.of(arc.at(0.5)) : Square.onAxis(arc, axis);
  }

  /**
   * The points that two segments share: crossings and touchings within {@link
   * Tolerances#SAME_POINT}. Segments on one and the same curve that share a stretch give the ends
   * of the stretch.
   */
  public static List<Point> meetings(Segment a, Segment b) {
    Curve onA = Curve.of(a);
    Curve onB = Curve.of(b);
    List<Point> shared = new ArrayList<>(2);
    if (onA.same(onB, Tolerances.SAME_POINT)) {
      addIfOn(a.from(), b, shared);
      addIfOn(a.to(), b, shared);
      addIfOn(b.from(), a, shared);
      addIfOn(b.to(), a, shared);
      return shared;
    }
    for (Point p : Curve.meetings(onA, onB, Tolerances.SAME_POINT)) {
      if (a.distance(p) <= Tolerances.SAME_POINT && b.distance(p) <= Tolerances.SAME_POINT) {
        shared.add(p);
      }
    }
    return shared;
  }

  private static void addIfOn(Point p, Segment segment, List<Point> shared) {
    if (segment.distance(p) <= Tolerances.SAME_POINT) {
      shared.add(p);
    }
  }
}
