package felloe.shape;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;

/**
 * A slot: two parallel edges with half circles at the ends, about the origin. Its area is (L - W) W
 * + pi W² / 4.
 *
 * @param length overall length, mm
 * @param width overall width, mm, at most the length; a circle when equal
 * @param turn direction of its length, radians counter-clockwise from +x
 */
public record Slot(double length, double width, double turn) implements Family {

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Slot {
    Numbers.finite("length", length);
    Numbers.finite("width", width);
    Numbers.finite("turn", turn);
  }

  /**
   * {@inheritDoc}
   *
   * <p>Faults name {@code length} and {@code width}.
   */
  @Override
  public Contour contour() {
    Faults faults = new Faults();
    faults.size("length", length);
    faults.size("width", width);
    if (faults.isEmpty() && width > length) {
      faults.add(
          ShapeFault.length(
              "width",
              width,
              "must be at most the length, " + ShapeFault.mm(length),
              "swap the two and add a quarter turn"));
    }
    faults.refuse();
    double r = width / 2;
    double half = length / 2 - r;
    if (half <= Tolerances.SAME_POINT) {
      return Contour.circle(Point.ORIGIN, r);
    }
    Point lowLeft = new Point(-half, -r);
    Point lowRight = new Point(half, -r);
    Point highRight = new Point(half, r);
    Point highLeft = new Point(-half, r);
    return Contour.of(
            new Line(lowLeft, lowRight),
            Arc.about(new Point(half, 0), lowRight, highRight, true),
            new Line(highRight, highLeft),
            Arc.about(new Point(-half, 0), highLeft, lowLeft, true))
        .moved(RigidTransform.turn(turn));
  }
}
