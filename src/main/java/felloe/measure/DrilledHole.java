package felloe.measure;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;
import felloe.plate.Hole;
import java.util.Optional;

/**
 * A hole of the plate as it was drilled.
 *
 * @param meant the hole of the shape file
 * @param at where it is, mm: the hub holes laid on their places so that the worst is off least, as
 *     a pattern is by ISO 5458; without the odd ones, if there are such
 * @param diameter as measured, or as drawn where it was not measured, mm
 * @param sizeUnsure half-width of the 95 % bounds of its diameter, mm; empty where it was not
 *     measured
 * @param position its position deviation: the diameter of the zone about its true place that its
 *     centre just keeps (ISO 1101), which is twice its distance, mm
 * @param unsure half-width of the 95 % bounds of its place, mm
 * @param tolerance the zone that it may have beside its own screw, with the bonus where that is
 *     asked for, mm; below zero when nothing is left; empty when it takes no hub screw
 * @param bonus part of that which comes from its being larger than drawn, mm (ISO 2692, maximum
 *     material condition)
 */
public record DrilledHole(
    Hole meant,
    Point at,
    double diameter,
    Optional<Double> sizeUnsure,
    double position,
    double unsure,
    Optional<Double> tolerance,
    double bonus) {

  /** Whether its diameter was measured. */
  public boolean sized() {
    return sizeUnsure.isPresent();
  }

  /** How much larger than drawn it is, mm; below zero where it is smaller. */
  public double over() {
    return diameter - meant.diameter();
  }

  /** Whether it takes a hub screw, so that its tolerance matters. */
  public boolean counts() {
    return tolerance.isPresent();
  }

  /** Whether it keeps its zone; a hole that takes no hub screw always does. */
  public boolean keeps() {
    return tolerance.map(zone -> position <= zone + Tolerances.SAME_LENGTH).orElse(true);
  }

  /** Whether it misses a zone that the drawing leaves it; where none is left the screws decide. */
  public boolean misses() {
    return tolerance.filter(zone -> zone >= 0).isPresent() && !keeps();
  }

  /** The hole as drilled. */
  Hole hole() {
    RigidTransform shift = new RigidTransform(false, 0, at.minus(meant.centre()));
    return meant.moved(shift).withDiameter(diameter);
  }
}
