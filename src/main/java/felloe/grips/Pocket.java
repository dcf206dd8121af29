package felloe.grips;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Face;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;

/**
 * What is let into a grip for a screw, from its outside or from the face on the plate.
 *
 * @param hole label of the plate's hole below it
 * @param face the face of the plate that the grip lies on
 * @param centre its middle, mm
 * @param form round or a hexagon
 * @param size diameter, or width across flats, mm
 * @param depth mm; from the outside measured at the middle
 * @param fromPlate whether it opens toward the plate; else outward
 * @param what it is for, such as {@code nut}
 */
public record Pocket(
    String hole,
    Face face,
    Point centre,
    Form form,
    double size,
    double depth,
    boolean fromPlate,
    String what) {

  /**
   * Whether what is let in from the plate's side ends in the grip, so that no hole goes through.
   */
  static boolean closes(List<Pocket> pockets, Hole hole, Face face) {
    return pockets.stream()
        .anyMatch(p -> p.fromPlate && p.face == face && p.hole.equals(hole.label()));
  }

  /** Its form as seen from outside. */
  public enum Form {
    /** A circle. */
    ROUND,
    /** A hexagon that keeps a nut from turning. */
    HEXAGON
  }

  /**
   * Refuses sizes that are not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Pocket {
    Numbers.positive("size", size);
    Numbers.positive("depth", depth);
  }

  /** Half of its greatest width, mm. */
  public double reach() {
    return form == Form.ROUND ? size / 2 : size / Math.sqrt(3);
  }

  /** Its area, mm²: of a hexagon across flats s that is s² times half the root of 3. */
  public double area() {
    return form == Form.ROUND ? Math.PI * size * size / 4 : Math.sqrt(3) / 2 * size * size;
  }

  /** Its edge; two corners of a hexagon lie left and right. */
  public Contour edge() {
    if (form == Form.ROUND) {
      return Contour.circle(centre, size / 2);
    }
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      corners.add(centre.plus(Point.polar(reach(), i * Math.PI / 3)));
    }
    return Contour.polygon(corners);
  }
}
