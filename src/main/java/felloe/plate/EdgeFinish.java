package felloe.plate;

import felloe.geometry.Numbers;

/**
 * What is done to the edges of outline and windows, on both faces. At most one is above zero.
 *
 * @param edgeBreak how much is taken off a sharp edge, mm (ISO 13715, an outside edge without
 *     defined shape); 0 when nothing is said
 * @param chamfer leg of a chamfer of 45 degrees, mm; 0 for none
 */
public record EdgeFinish(double edgeBreak, double chamfer) {

  /** Nothing is said of the edges. */
  public static final EdgeFinish NONE = new EdgeFinish(0, 0);

  /**
   * Refuses figures below zero, and both at once.
   *
   * @throws IllegalArgumentException naming the field
   */
  public EdgeFinish {
    if (Numbers.finite("edgeBreak", edgeBreak) < 0 || Numbers.finite("chamfer", chamfer) < 0) {
      throw new IllegalArgumentException("edge figures must not be below zero");
    }
    if (edgeBreak > 0 && chamfer > 0) {
      throw new IllegalArgumentException("an edge is broken or chamfered, not both");
    }
  }
}
