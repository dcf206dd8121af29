package felloe.plate;

import felloe.geometry.Numbers;
import java.util.OptionalDouble;

/**
 * The blade that a plate is sawn with by hand.
 *
 * @param width from its teeth to its back, mm
 * @param turn the least radius that it follows, mm; empty where nothing is said
 */
public record SawBlade(double width, OptionalDouble turn) {

  /**
   * Refuses figures that are not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public SawBlade {
    Numbers.positive("width", width);
    turn.ifPresent(radius -> Numbers.positive("turn", radius));
  }
}
