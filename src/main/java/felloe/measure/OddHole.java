package felloe.measure;

import felloe.geometry.Point;

/**
 * A hole that is the odd one out: the others lie where they were meant, and it does not.
 *
 * @param label its label
 * @param by from its true place, which the others tell, to where it is, mm
 */
public record OddHole(String label, Point by) {

  /** How far it is off, mm. */
  public double off() {
    return by.norm();
  }
}
