package felloe.cockpit;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Cockpit.Thing;

/**
 * How near the wheel comes to a thing.
 *
 * @param thing the thing
 * @param distance least at any turn of the wheel, mm; 0 where they meet
 * @param at place of the wheel that comes nearest, in the wheel's axes before it is turned, mm
 * @param turn of the wheel then, radians, to the left above zero, as seen by the driver; the one
 *     nearest to straight ahead where there are several
 * @param wheel that place in the car
 * @param near the nearest place of the thing in the car
 */
public record Clearance(
    Thing thing, double distance, Point at, double turn, Spot wheel, Spot near) {

  public Clearance {
    Numbers.finite("distance", distance);
    Numbers.finite("turn", turn);
  }

  /** Whether they meet. */
  public boolean meets() {
    return distance <= Least.TOLERANCE;
  }

  /** How far from the hub axis the wheel comes nearest, mm: the ring that the thing sees. */
  public double radius() {
    return at.norm();
  }
}
