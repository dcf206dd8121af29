package felloe.plate;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;

/**
 * A round hole.
 *
 * @param label short name printed beside it, unique on the plate, such as {@code H3}
 * @param role what it is for
 * @param centre its centre, mm
 * @param diameter mm, above zero
 * @param place where the maker wrote it
 */
public record Hole(String label, HoleRole role, Point centre, double diameter, Place place) {

  /**
   * Refuses a diameter that is not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Hole {
    Numbers.positive("diameter", diameter);
  }

  /** Its edge. */
  public Contour contour() {
    return Contour.circle(centre, diameter / 2);
  }
}
