package felloe.cockpit;

import felloe.geometry.Arc;
import felloe.geometry.Combine;
import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.GeometryException;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * What an outline sweeps as it is turned about the origin, exact in lines and arcs.
 *
 * <p>Its edges are parted where they come nearest to the origin or go farthest from it. Between two
 * such distances the outline holds the same stretches of every circle about the origin; each of
 * them sweeps what lies from its clockwise end turned back to its other end turned on, and all of
 * these together are swept. Within the circle below which they leave no gap all is swept.
 */
final class SweptOutline {

  /** Circles between two distances on which gaps are looked for. */
  private static final int CIRCLES = 9;

  /** What is swept so far round might meet itself between two circles, radians. */
  private static final double WIDE = 1.5 * Math.PI;

  /** A stretch of an edge along which the distance from the origin only grows. */
  private record Climb(List<Segment> outward) {
    double inner() {
      return outward.get(0).from().norm();
    }

    double outer() {
      return outward.get(outward.size() - 1).to().norm();
    }

    boolean spans(double inner, double outer) {
      return inner() <= inner + Tolerances.SAME_POINT && outer() >= outer - Tolerances.SAME_POINT;
    }

    /** Where it goes through a circle about the origin. */
    Point at(double distance) {
      for (Segment segment : outward) {
        if (segment.to().norm() >= distance - Tolerances.SAME_POINT) {
          return through(segment, distance);
        }
      }
      return outward.get(outward.size() - 1).to();
    }

    private static Point through(Segment segment, double distance) {
      for (Point end : List.of(segment.from(), segment.to())) {
        if (Math.abs(end.norm() - distance) <= Tolerances.SAME_POINT) {
          return end;
        }
      }
      List<Point> meetings = Gap.meetings(segment, Arc.circle(Point.ORIGIN, distance));
      return meetings.isEmpty() ? segment.from() : meetings.get(0);
    }

    /** Its part between two circles. */
    List<Segment> between(double inner, double outer) {
      List<Segment> part = new ArrayList<>();
      for (Segment segment : outward) {
        double from = segment.from().norm();
        double to = segment.to().norm();
        if (to > inner + Tolerances.SAME_POINT && from < outer - Tolerances.SAME_POINT) {
          Point start = from < inner - Tolerances.SAME_POINT ? at(inner) : segment.from();
          Point end = to > outer + Tolerances.SAME_POINT ? at(outer) : segment.to();
          part.add(part(segment, start, end));
        }
      }
      return part;
    }
  }

  /** A stretch of circles that the outline holds, between the edges at its two ends. */
  private record Held(Climb clockwise, Climb other) {}

  private SweptOutline() {}

  /**
   * The region.
   *
   * @param outline has the origin in it
   * @param lock how far it is turned either way, radians
   * @throws GeometryException when there is no sound result
   */
  static Region of(Contour outline, double lock) {
    double farthest = outline.farthest(Point.ORIGIN);
    if (lock >= Math.PI - Tolerances.SAME_DIRECTION) {
      return Region.of(Contour.circle(Point.ORIGIN, farthest));
    }
    List<Climb> climbs = climbs(outline);
    List<Double> distances = distances(climbs);
    if (distances.isEmpty()) {
      return Region.of(outline);
    }
    double whole = distances.get(0);
    List<Region> swept = new ArrayList<>();
    for (int i = 1; i < distances.size(); i++) {
      double inner = distances.get(i - 1);
      double outer = distances.get(i);
      List<Climb> here = climbs.stream().filter(climb -> climb.spans(inner, outer)).toList();
      if (inner == whole && closed(outline, here, inner, outer, lock)) {
        whole = outer;
      } else {
        for (Held held : held(outline, here, (inner + outer) / 2)) {
          swept.addAll(swept(held, inner, outer, lock));
        }
      }
    }
    swept.add(Region.of(Contour.circle(Point.ORIGIN, whole)));
    return Combine.union(swept).stream()
        .max(Comparator.comparingDouble(region -> region.properties().area()))
        .orElseThrow();
  }

  /** The distances at which edges turn back, in order; those of mirror images are one. */
  private static List<Double> distances(List<Climb> climbs) {
    TreeSet<Double> all = new TreeSet<>();
    for (Climb climb : climbs) {
      all.add(climb.inner());
      all.add(climb.outer());
    }
    List<Double> apart = new ArrayList<>();
    for (double distance : all) {
      if (apart.isEmpty() || distance > apart.get(apart.size() - 1) + Tolerances.CHORD) {
        apart.add(distance);
      }
    }
    return apart;
  }

  /** Whether no circle between two distances has a gap that turning does not close. */
  private static boolean closed(
      Contour outline, List<Climb> here, double inner, double outer, double lock) {
    for (int i = 0; i < CIRCLES; i++) {
      double distance = inner + (outer - inner) * (i + 0.5) / CIRCLES;
      List<Held> held = held(outline, here, distance);
      for (int k = 0; k < held.size(); k++) {
        Point from = held.get(k).other().at(distance);
        Point to = held.get((k + 1) % held.size()).clockwise().at(distance);
        if (turned(from.angle(), to.angle()) > 2 * lock) {
          return false;
        }
      }
      if (held.isEmpty() && !outline.contains(new Point(distance, 0))) {
        return false;
      }
    }
    return true;
  }

  private static double turned(double from, double to) {
    double turned = to - from;
    return turned - 2 * Math.PI * Math.floor(turned / (2 * Math.PI));
  }

  /** What the outline holds of a circle, counter-clockwise. */
  private static List<Held> held(Contour outline, List<Climb> here, double distance) {
    List<Climb> around =
        here.stream().sorted(Comparator.comparingDouble(c -> c.at(distance).angle())).toList();
    List<Held> held = new ArrayList<>();
    for (int i = 0; i < around.size(); i++) {
      Climb from = around.get(i);
      Climb to = around.get((i + 1) % around.size());
      double start = from.at(distance).angle();
      double half = turned(start, to.at(distance).angle()) / 2;
      if (outline.contains(Point.polar(distance, start + half))) {
        held.add(new Held(from, to));
      }
    }
    return held;
  }

  /** What a stretch of circles sweeps: in one, or in three where that might meet itself. */
  private static List<Region> swept(Held held, double inner, double outer, double lock) {
    Climb clockwise = held.clockwise();
    Climb other = held.other();
    double middle = (inner + outer) / 2;
    double wide = turned(clockwise.at(middle).angle(), other.at(middle).angle()) + 2 * lock;
    return wide < WIDE
        ? List.of(between(clockwise, -lock, other, lock, inner, outer))
        : List.of(
            between(clockwise, -lock, clockwise, lock, inner, outer),
            between(clockwise, 0, other, 0, inner, outer),
            between(other, -lock, other, lock, inner, outer));
  }

  private static Region between(
      Climb first, double firstTurn, Climb last, double lastTurn, double inner, double outer) {
    List<Segment> edge = new ArrayList<>();
    for (Segment segment : first.between(inner, outer)) {
      edge.add(segment.moved(RigidTransform.turn(firstTurn)));
    }
    List<Segment> back = new ArrayList<>();
    for (Segment segment : last.between(inner, outer)) {
      back.add(0, segment.moved(RigidTransform.turn(lastTurn)).reversed());
    }
    Point from = edge.get(0).from();
    Point to = edge.get(edge.size() - 1).to();
    Point backFrom = back.get(0).from();
    Point backTo = back.get(back.size() - 1).to();
    if (!to.near(backFrom, Tolerances.SAME_POINT)) {
      edge.add(Arc.about(Point.ORIGIN, to, backFrom, true));
    }
    edge.addAll(back);
    if (!backTo.near(from, Tolerances.SAME_POINT)) {
      edge.add(Arc.about(Point.ORIGIN, backTo, from, false));
    }
    return Region.of(new Contour(edge));
  }

  /** Stretches of the outline, as long as they come, along which the distance only grows. */
  private static List<Climb> climbs(Contour outline) {
    List<List<Segment>> chains = new ArrayList<>();
    int way = 0;
    for (Segment segment : outline.segments()) {
      for (Segment stretch : stretches(segment)) {
        double grows = stretch.to().norm() - stretch.from().norm();
        int now = Math.abs(grows) <= Tolerances.CHORD ? 0 : grows > 0 ? 1 : -1;
        if (now != 0 && now == way) {
          chains.get(chains.size() - 1).add(stretch);
        } else if (now != 0) {
          chains.add(new ArrayList<>(List.of(stretch)));
        }
        way = now;
      }
    }
    return chains.stream().map(SweptOutline::outward).toList();
  }

  private static Climb outward(List<Segment> chain) {
    if (chain.get(0).from().norm() < chain.get(chain.size() - 1).to().norm()) {
      return new Climb(chain);
    }
    List<Segment> reversed = new ArrayList<>();
    chain.forEach(segment -> reversed.add(0, segment.reversed()));
    return new Climb(reversed);
  }

  /** The stretches of an edge along which the distance from the origin only grows or falls. */
  private static List<Segment> stretches(Segment segment) {
    List<Point> cuts = new ArrayList<>();
    if (segment instanceof Arc arc) {
      Point away = arc.centre();
      if (away.norm() > Tolerances.SAME_POINT) {
        for (double side : new double[] {-1, 1}) {
          Point p = arc.centre().plus(away, side * arc.radius() / away.norm());
          if (arc.passes(p)) {
            cuts.add(p);
          }
        }
      }
    } else {
      cuts.add(segment.nearest(Point.ORIGIN));
    }
    cuts.removeIf(
        p -> p.near(segment.from(), Tolerances.CHORD) || p.near(segment.to(), Tolerances.CHORD));
    cuts.sort(Comparator.comparingDouble(p -> along(segment, p)));
    List<Segment> stretches = new ArrayList<>();
    Point from = segment.from();
    for (Point p : cuts) {
      stretches.add(part(segment, from, p));
      from = p;
    }
    stretches.add(cuts.isEmpty() ? segment : part(segment, from, segment.to()));
    return stretches;
  }

  private static double along(Segment segment, Point p) {
    if (segment instanceof Arc arc) {
      double turned = p.minus(arc.centre()).angle() - arc.startAngle();
      double way = arc.sweep() > 0 ? turned : -turned;
      return way < 0 ? way + 2 * Math.PI : way;
    }
    return segment.from().distance(p);
  }

  private static Segment part(Segment segment, Point from, Point to) {
    return segment instanceof Arc arc ? arc.between(from, to) : new Line(from, to);
  }
}
