package felloe.hub;

import felloe.geometry.Numbers;
import felloe.plate.Basis;

/**
 * A way to make the hub holes in the plate, and how true it is.
 *
 * @param name short name, such as {@code template}
 * @param title in words
 * @param zone diameter of the circle about its true place in which a hole's centre lies, mm
 *     (position tolerance of ISO 1101)
 * @param basis where the figure comes from
 */
public record DrillingMethod(String name, String title, double zone, Basis basis) {

  /**
   * The name of holes that are drilled and measured: their zone is what the readings leave open.
   */
  public static final String MEASURED = "measured";

  /**
   * Refuses a zone below zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public DrillingMethod {
    Numbers.notNegative("zone", zone);
  }

  /** Whether the holes are drilled and measured, not drawn. */
  boolean measured() {
    return name.equals(MEASURED);
  }
}
