package felloe.plate;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import java.util.List;
import java.util.Optional;

/**
 * A round hole, or a slotted one: two half circles and two straight sides.
 *
 * @param label short name printed beside it, unique on the plate, such as {@code H3}
 * @param role what it is for
 * @param centre its centre, mm; of a slotted hole the middle of its length
 * @param diameter mm, above zero; of a slotted hole its width
 * @param slot how it is slotted; empty for a round hole
 * @param place where the maker wrote it
 */
public record Hole(
    String label, HoleRole role, Point centre, double diameter, Optional<Slot> slot, Place place) {

  /**
   * How a hole is slotted.
   *
   * @param travel distance of the centres of its two half circles, mm, above zero
   * @param direction of its length, radians counter-clockwise from +x
   */
  public record Slot(double travel, double direction) {

    /**
     * Refuses a slot without length.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Slot {
      Numbers.positive("travel", travel);
      Numbers.finite("direction", direction);
    }
  }

  /**
   * Refuses a diameter that is not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Hole {
    Numbers.positive("diameter", diameter);
  }

  /** A round hole. */
  public Hole(String label, HoleRole role, Point centre, double diameter, Place place) {
    this(label, role, centre, diameter, Optional.empty(), place);
  }

  /** Whether it is longer than it is wide. */
  public boolean isSlotted() {
    return slot.isPresent();
  }

  /** Length over all, mm; the diameter of a round hole. */
  public double length() {
    return diameter + slot.map(Slot::travel).orElse(0.0);
  }

  /** Its size in words: {@code \u00d84.3}, or {@code slot 3.2 \u00d7 7}, width by length, mm. */
  public String size() {
    return size(diameter, length());
  }

  /**
   * A hole's size in words.
   *
   * @param diameter mm; of a slotted hole its width
   * @param length over all, mm; the diameter of a round hole
   */
  public static String size(double diameter, double length) {
    return length > diameter
        ? "slot " + Numbers.brief(diameter, 2) + " \u00d7 " + Numbers.brief(length, 2)
        : "\u00d8" + Numbers.brief(diameter, 2);
  }

  /** Where a drill goes: the centre of a round hole, the centres of both ends of a slotted one. */
  public List<Point> ends() {
    return slot.map(
            s -> {
              Point half = Point.polar(s.travel() / 2, s.direction());
              return List.of(centre.minus(half), centre.plus(half));
            })
        .orElse(List.of(centre));
  }

  /** The place nearest to a point at which a screw can stand in the middle of the width. */
  public Point nearest(Point p) {
    List<Point> ends = ends();
    return isSlotted() ? new Line(ends.get(0), ends.get(1)).nearest(p) : centre;
  }

  /** Its edge. */
  public Contour contour() {
    double radius = diameter / 2;
    if (slot.isEmpty()) {
      return Contour.circle(centre, radius);
    }
    List<Point> ends = ends();
    Point side = Point.polar(radius, slot.get().direction() + Math.PI / 2);
    Point a = ends.get(0).minus(side);
    Point b = ends.get(1).minus(side);
    Point c = ends.get(1).plus(side);
    Point d = ends.get(0).plus(side);
    return Contour.of(
        new Line(a, b),
        Arc.about(ends.get(1), b, c, true),
        new Line(c, d),
        Arc.about(ends.get(0), d, a, true));
  }

  /** The same hole under another label. */
  public Hole named(String name) {
    return new Hole(name, role, centre, diameter, slot, place);
  }

  /** The same hole, as wide as said. */
  public Hole withDiameter(double width) {
    return new Hole(label, role, centre, width, slot, place);
  }

  /** The hole after a rigid motion. */
  public Hole moved(RigidTransform motion) {
    Point to = motion.of(centre);
    return new Hole(
        label,
        role,
        to,
        diameter,
        slot.map(
            s ->
                new Slot(
                    s.travel(),
                    motion.of(centre.plus(Point.polar(1, s.direction()))).minus(to).angle())),
        place);
  }
}
