package felloe.measure;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.plate.Hole;

/**
 * A hole of the plate as it was drilled.
 *
 * @param meant the hole of the shape file
 * @param at where it is, mm: all hub holes together laid on their places so that the worst is off
 *     least, as a pattern is by ISO 5458
 * @param diameter as measured, or as drawn where it was not measured, mm
 * @param sized whether the diameter was measured
 * @param position its position deviation: the diameter of the zone about its true place that its
 *     centre just keeps (ISO 1101), which is twice its distance, mm
 * @param unsure half-width of the 95 % bounds of its place, mm
 * @param tolerance the zone that it may have, with the bonus where that is asked for, mm; below
 *     zero when nothing is left; not a number when it takes no hub screw
 * @param bonus part of that which comes from its being larger than drawn, mm (ISO 2692, maximum
 *     material condition)
 */
public record DrilledHole(
    Hole meant,
    Point at,
    double diameter,
    boolean sized,
    double position,
    double unsure,
    double tolerance,
    double bonus) {

  private static final double ROUNDING = 1e-6;

  /** Whether it takes a hub screw, so that its tolerance matters. */
  public boolean counts() {
    return !Double.isNaN(tolerance);
  }

  /** Whether it keeps its zone; a hole that takes no hub screw always does. */
  public boolean keeps() {
    return !counts() || position <= tolerance + ROUNDING;
  }

  /** Whether it misses a zone that the drawing leaves it; where none is left the screws decide. */
  public boolean misses() {
    return tolerance >= 0 && !keeps();
  }

  /** The hole as drilled. */
  Hole hole() {
    RigidTransform shift = new RigidTransform(false, 0, at.minus(meant.centre()));
    return meant.moved(shift).withDiameter(diameter);
  }
}
