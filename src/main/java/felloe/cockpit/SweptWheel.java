package felloe.cockpit;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.plate.Body;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Block;
import felloe.plate.Cockpit.Limb;
import felloe.plate.Cockpit.Room;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Face;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * All that a wheel takes up as it is turned: a region of its plane from its back to its front.
 * Distances err by no more than {@link Least#TOLERANCE}, to the far side.
 *
 * @param region in the wheel's axes
 * @param back least z, mm
 * @param front greatest z, mm
 */
record SweptWheel(Region region, double back, double front) {

  /**
   * The nearest places of wheel and thing, in the wheel's axes.
   *
   * @param distance mm; 0 where they meet
   */
  record Nearest(double distance, Spot wheel, Spot thing) {
    Nearest nearer(Nearest other) {
      return other.distance < distance ? other : this;
    }
  }

  /**
   * What sits in an opening: as if it went all round, within the ring of its farthest place, from
   * the farthest that it stands behind to the farthest before.
   */
  static SweptWheel of(Body body, Plate plate, Cockpit cockpit) {
    double ring = body.bezel().farthest(Point.ORIGIN);
    double high = body.height();
    double deep = Math.max(0, body.depth() - plate.stock().asMade());
    if (body.shank().isPresent()) {
      ring = Math.max(ring, body.shank().get().farthest(Point.ORIGIN));
    }
    if (body.arm().isPresent()) {
      Body.Arm arm = body.arm().get();
      ring = Math.max(ring, arm.edge().farthest(Point.ORIGIN));
      high = Math.max(high, arm.off() + arm.thickness());
    }
    double nuts =
        body.nut().map(Body.Nut::thickness).orElse(0.0)
            + body.washer().map(Body.Washer::thickness).orElse(0.0);
    deep = Math.max(deep, nuts);
    boolean front = body.face() == Face.FRONT;
    return new SweptWheel(
        Region.of(Contour.circle(Point.ORIGIN, ring)),
        cockpit.stack() - (front ? deep : high),
        cockpit.stack() + plate.stock().asMade() + (front ? high : deep));
  }

  /** The place of the wheel nearest to a place. */
  private Nearest to(Spot p) {
    Point flat = new Point(p.x(), p.y());
    Point on = region.contains(flat) ? flat : nearestEdge(flat);
    Spot wheel = new Spot(on.x(), on.y(), Math.max(back, Math.min(front, p.z())));
    return new Nearest(wheel.distance(p), wheel, p);
  }

  private Point nearestEdge(Point p) {
    Point best = region.outer().nearest(p);
    for (Contour hole : region.holes()) {
      Point other = hole.nearest(p);
      best = other.distance(p) < best.distance(p) ? other : best;
    }
    return best;
  }

  /** The nearest places of the wheel and a thing. */
  Nearest to(Room room, WheelAxes axes) {
    if (room instanceof Limb limb) {
      return along(axes.toWheel(limb.from()), axes.toWheel(limb.to())).nearerBy(limb.radius());
    }
    Block block = (Block) room;
    Nearest best = null;
    for (Spot[] edge : edges(block)) {
      Way way = along(axes.toWheel(edge[0]), axes.toWheel(edge[1]));
      best = best == null ? way.nearest() : best.nearer(way.nearest());
    }
    // Places of the wheel's edges that lie before a side of the box.
    for (Contour contour : region.contours()) {
      for (Segment segment : contour.segments()) {
        for (double z : new double[] {back, front}) {
          DoubleFunction<Nearest> at =
              way -> {
                Point p = segment.at(Math.min(1, way / segment.length()));
                Spot wheel = new Spot(p.x(), p.y(), z);
                Spot near = axes.toWheel(clamped(block, axes.toCar(wheel)));
                return new Nearest(near.distance(wheel), wheel, near);
              };
          Least least = Least.of(segment.length(), way -> at.apply(way).distance());
          best = best.nearer(at.apply(least.at()));
        }
      }
    }
    return best;
  }

  private static Spot clamped(Block block, Spot p) {
    return new Spot(
        Math.max(block.low().x(), Math.min(block.high().x(), p.x())),
        Math.max(block.low().y(), Math.min(block.high().y(), p.y())),
        Math.max(block.low().z(), Math.min(block.high().z(), p.z())));
  }

  /** The nearest places along a straight way. */
  private record Way(Nearest nearest) {
    Nearest nearerBy(double radius) {
      double distance = Math.max(0, nearest.distance - radius);
      double share = nearest.distance > 0 ? (nearest.distance - distance) / nearest.distance : 0;
      Spot t = nearest.thing;
      Spot w = nearest.wheel;
      Spot surface = t.plus(new Spot(w.x() - t.x(), w.y() - t.y(), w.z() - t.z()), share);
      return new Nearest(distance, w, surface);
    }
  }

  private Way along(Spot from, Spot to) {
    double length = from.distance(to);
    if (length == 0) {
      return new Way(to(from));
    }
    Spot step = from.toward(to);
    Least least = Least.of(length, way -> to(from.plus(step, way)).distance());
    return new Way(to(from.plus(step, least.at())));
  }

  /** The twelve edges of a box. */
  private static List<Spot[]> edges(Block block) {
    Spot[] ends = {block.low(), block.high()};
    List<Spot[]> edges = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      for (int k = 0; k < 2; k++) {
        Spot a = ends[i];
        Spot b = ends[k];
        edges.add(
            new Spot[] {new Spot(ends[0].x(), a.y(), b.z()), new Spot(ends[1].x(), a.y(), b.z())});
        edges.add(
            new Spot[] {new Spot(a.x(), ends[0].y(), b.z()), new Spot(a.x(), ends[1].y(), b.z())});
        edges.add(
            new Spot[] {new Spot(a.x(), b.y(), ends[0].z()), new Spot(a.x(), b.y(), ends[1].z())});
      }
    }
    return edges;
  }
}
