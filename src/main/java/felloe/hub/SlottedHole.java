package felloe.hub;

import felloe.geometry.Point;
import felloe.plate.Hole;
import java.util.Optional;

/**
 * A hole of the plate made long.
 *
 * @param hole its label
 * @param from centre of the hole as it is, mm
 * @param to centre of the slot's other end, where the screw stands, mm
 * @param width across the slot, mm
 */
public record SlottedHole(String hole, Point from, Point to, double width) {

  /** The hole of the plate, so made long. */
  public Hole of(Hole hole) {
    return new Hole(
        hole.label(),
        hole.role(),
        from.middle(to),
        width,
        Optional.of(new Hole.Slot(travel(), direction())),
        hole.place());
  }

  /** How far the end is moved, mm. */
  public double travel() {
    return from.distance(to);
  }

  /** Overall length, mm. */
  public double length() {
    return travel() + width;
  }

  /** Direction in which the hole is made longer, radians counter-clockwise from +x. */
  public double direction() {
    return to.minus(from).angle();
  }
}
