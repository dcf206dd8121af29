package felloe.bringin;

import felloe.geometry.Point;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Holes in the order of their labels that stand evenly about an axis, round and slotted ones. */
final class OwnRing {

  /** Places are found from figures that are each written so exactly (a margin for feel). */
  private static final double SLACK = 4;

  private OwnRing() {}

  /**
   * The ring of them all, counter-clockwise from the first.
   *
   * @return empty where they are no ring in this order
   */
  static Optional<PlateOutline.Ring> of(List<PlateOutline.Drilled> holes, Point axis) {
    double diameter = holes.get(0).diameter();
    boolean equal =
        holes.stream().allMatch(h -> Math.abs(h.diameter() - diameter) <= OwnFeatures.DIGITS);
    if (!equal) {
      return Optional.empty();
    }
    for (Point first : places(holes.get(0))) {
      Optional<PlateOutline.Ring> ring = from(first, holes, axis);
      if (ring.isPresent()) {
        return ring;
      }
    }
    return Optional.empty();
  }

  /** Where a hole stands on a ring: a slotted one is made longer both ways or one way. */
  private static List<Point> places(PlateOutline.Drilled hole) {
    List<Point> places = new ArrayList<>(List.of(hole.centre()));
    hole.slot()
        .ifPresent(
            slot -> {
              Point half = Point.polar(slot.travel() / 2, slot.direction());
              places.add(hole.centre().minus(half));
              places.add(hole.centre().plus(half));
            });
    return places;
  }

  private static Optional<PlateOutline.Ring> from(
      Point first, List<PlateOutline.Drilled> holes, Point axis) {
    double radius = first.distance(axis);
    if (radius <= holes.get(0).diameter() / 2) {
      return Optional.empty();
    }
    double start = first.minus(axis).angle();
    List<PlateOutline.Slotted> slots = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      PlateOutline.Drilled hole = holes.get(i);
      Point due = axis.plus(Point.polar(radius, start + 2 * Math.PI * i / holes.size()));
      Optional<Point> stands =
          places(hole).stream().filter(p -> p.near(due, SLACK * OwnFeatures.DIGITS)).findFirst();
      if (stands.isEmpty()) {
        return Optional.empty();
      }
      int number = i + 1;
      hole.slot().ifPresent(s -> slots.add(slotted(number, s, hole, stands.get())));
    }
    return Optional.of(
        new PlateOutline.Ring(
            holes.size(),
            2 * radius,
            holes.get(0).diameter(),
            start,
            slots,
            holes.stream().map(PlateOutline.Drilled::label).toList()));
  }

  private static PlateOutline.Slotted slotted(
      int number, Hole.Slot slot, PlateOutline.Drilled hole, Point stands) {
    boolean bothWays = stands.equals(hole.centre());
    double direction = bothWays ? slot.direction() : hole.centre().minus(stands).angle();
    return new PlateOutline.Slotted(number, hole.diameter() + slot.travel(), direction, !bothWays);
  }
}
