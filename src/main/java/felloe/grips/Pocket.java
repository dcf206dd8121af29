package felloe.grips;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Face;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is let into a grip for a screw, from its outside or from the face on the plate.
 *
 * @param hole label of the plate's hole below it
 * @param face the face of the plate that the grip lies on
 * @param centre its middle, mm
 * @param form round or a hexagon
 * @param size diameter, or width across flats, mm
 * @param depth mm, its cone counted in; from the outside measured at the middle
 * @param cone how it ends for a countersunk head; empty for a flat floor
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
    Optional<Cone> cone,
    boolean fromPlate,
    String what) {

  /**
   * Whether what is let in from the plate's side ends in the grip, so that no hole goes through.
   */
  static boolean closes(List<Pocket> pockets, Hole hole, Face face) {
    return pockets.stream()
        .anyMatch(p -> p.fromPlate && p.face == face && p.hole.equals(hole.label()));
  }

  /**
   * The cone at the bottom of a round pocket.
   *
   * @param depth of it, mm
   * @param to diameter that it narrows to, that of the hole below it, mm
   */
  public record Cone(double depth, double to) {}

  /** With a flat floor. */
  public Pocket(
      String hole,
      Face face,
      Point centre,
      Form form,
      double size,
      double depth,
      boolean fromPlate,
      String what) {
    this(hole, face, centre, form, size, depth, Optional.empty(), fromPlate, what);
  }

  /** Height of its floor above its deepest, mm. */
  double rise(Point p) {
    if (cone.isEmpty()) {
      return 0;
    }
    double out = 2 * p.distance(centre) - cone.get().to();
    return cone.get().depth() * Math.max(0, Math.min(1, out / (size - cone.get().to())));
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
