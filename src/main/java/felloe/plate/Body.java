package felloe.plate;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.Objects;
import java.util.Optional;

/**
 * What sits in an opening of the plate: a button, a switch, a display, a paddle. Lengths are
 * millimetres, edges are as the driver sees them where they stand on the plate. It is put in from
 * the face that its bezel lies on; what stands on the other face is called its rear.
 *
 * @param name in words
 * @param opening label of the window or hole
 * @param face that its bezel lies on
 * @param bezel edge of what lies on that face
 * @param height of it above that face
 * @param shank edge of what goes through the plate and stands behind; empty where it fills the
 *     opening
 * @param depth of the shank from the underside of the bezel
 * @param arm what reaches out on the side of the bezel, clear of the face
 * @param nut that holds it on the other face
 * @param washer under the nut
 * @param cable what leaves its rear
 * @param mass g; empty when it was not weighed
 * @param place where the maker wrote it
 */
public record Body(
    String name,
    String opening,
    Face face,
    Contour bezel,
    double height,
    Optional<Contour> shank,
    double depth,
    Optional<Arm> arm,
    Optional<Nut> nut,
    Optional<Washer> washer,
    Optional<Cable> cable,
    Optional<Double> mass,
    Place place) {

  public Body {
    Objects.requireNonNull(place, "place");
    Numbers.finite("height", height);
    Numbers.positive("depth", depth);
    mass.ifPresent(grams -> Numbers.positive("mass", grams));
  }

  /**
   * What fingers reach for, such as a paddle.
   *
   * @param edge of it
   * @param off how far off the face it begins
   * @param thickness from there on
   */
  public record Arm(Contour edge, double off, double thickness) {}

  /**
   * A hexagon nut, or a round one.
   *
   * @param flats across its flats
   */
  public record Nut(double flats, double thickness) {

    /** Across its corners, if it is a hexagon: as wide as it turns. */
    public double corners() {
      return 2 * flats / Math.sqrt(3);
    }
  }

  public record Washer(double diameter, double thickness) {}

  /**
   * A cable or plug.
   *
   * @param side to which it leaves, radians counter-clockwise from +x; empty for straight back
   * @param free how far from the shank it needs room
   * @param thickness of cable or plug
   */
  public record Cable(Optional<Double> side, double free, double thickness) {}

  /** The same in an opening of that label. */
  public Body in(String label) {
    return new Body(
        name, label, face, bezel, height, shank, depth, arm, nut, washer, cable, mass, place);
  }

  /** The face that its nut lies on. */
  public Face rear() {
    return face == Face.FRONT ? Face.BACK : Face.FRONT;
  }

  /** What findings and lists call it, such as {@code push button S1}. */
  public String title() {
    return name + " " + opening;
  }

  /** Where its mass is taken to lie, as the driver sees it: the middle of its bezel. */
  public Point centre() {
    return bezel.properties().centroid();
  }
}
