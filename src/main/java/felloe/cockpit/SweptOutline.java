package felloe.cockpit;

import felloe.geometry.Arc;
import felloe.geometry.Combine;
import felloe.geometry.Contour;
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

/**
 * What an outline sweeps as it is turned about the origin, exact in lines and arcs.
 *
 * <p>Its edges are parted where they come nearest to the origin or go farthest from it. Between
 * such points a stretch sweeps what lies between its two last positions and the two arcs of its
 * ends; all of these and the outline itself together are swept.
 */
final class SweptOutline {

  /** Where edges lie so that they cannot be united, so often others are tried. */
  private static final int HALVINGS = 4;

  private SweptOutline() {}

  /**
   * The region.
   *
   * @param outline has the origin in it
   * @param lock how far it is turned either way, radians
   * @throws GeometryException when there is no sound result
   */
  static Region of(Contour outline, double lock) {
    return of(outline, lock, HALVINGS);
  }

  private static Region of(Contour outline, double lock, int halvings) {
    if (lock >= Math.PI - Tolerances.SAME_DIRECTION) {
      return Region.of(Contour.circle(Point.ORIGIN, outline.farthest(Point.ORIGIN)));
    }
    List<Region> swept = new ArrayList<>();
    for (double turn : new double[] {-lock, 0, lock}) {
      swept.add(Region.of(outline.moved(RigidTransform.turn(turn))));
    }
    for (Segment segment : outline.segments()) {
      for (Segment stretch : stretches(segment)) {
        double inner = stretch.from().norm();
        double outer = stretch.to().norm();
        if (Math.abs(outer - inner) > Tolerances.CHORD) {
          swept.add(between(inner < outer ? stretch : stretch.reversed(), lock));
        }
      }
    }
    try {
      return united(swept);
    } catch (GeometryException unsound) {
      if (halvings == 0) {
        throw unsound;
      }
      // Half the lock to one side and half to the other sweep the same.
      Region half = of(outline, lock / 2, halvings - 1);
      return united(
          List.of(
              half.moved(RigidTransform.turn(-lock / 2)),
              half.moved(RigidTransform.turn(lock / 2))));
    }
  }

  private static Region united(List<Region> regions) {
    return Combine.union(regions).stream()
        .max(Comparator.comparingDouble(region -> region.properties().area()))
        .orElseThrow();
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

  /** What a stretch sweeps that goes outward. */
  private static Region between(Segment outward, double lock) {
    Segment first = outward.moved(RigidTransform.turn(-lock));
    Segment last = outward.moved(RigidTransform.turn(lock)).reversed();
    return Region.of(
        Contour.of(
            first,
            Arc.about(Point.ORIGIN, first.to(), last.from(), true),
            last,
            Arc.about(Point.ORIGIN, last.to(), first.from(), false)));
  }
}
