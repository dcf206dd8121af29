package felloe.shape;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Fillet;
import felloe.geometry.FilletException;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A circle, cut off flat at the top, at the bottom or at both. The chord of a flat at distance d
 * from the axis of a circle of radius R is 2 sqrt(R² - d²) long before its corners are rounded.
 *
 * @param diameter diameter of the circle, mm
 * @param top the flat at the top, if any
 * @param bottom the flat at the bottom, if any
 */
public record Round(double diameter, Optional<Flat> top, Optional<Flat> bottom) implements Family {

  /**
   * A flat.
   *
   * @param distance distance of the flat from the axis of the circle, mm
   * @param radius radius of the corners between flat and circle, mm; 0 leaves them sharp
   */
  public record Flat(double distance, double radius) {

    /**
     * Refuses figures that are not finite.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Flat {
      Numbers.finite("distance", distance);
      Numbers.finite("radius", radius);
    }
  }

  /**
   * Refuses a figure that is not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Round {
    Numbers.finite("diameter", diameter);
  }

  /** A whole circle. */
  public static Round circle(double diameter) {
    return new Round(diameter, Optional.empty(), Optional.empty());
  }

  /**
   * {@inheritDoc}
   *
   * <p>Faults name {@code diameter}, {@code top.distance}, {@code top.radius} and the like.
   */
  @Override
  public Contour contour() {
    Faults faults = new Faults();
    faults.size("diameter", diameter);
    if (faults.isEmpty()) {
      top.ifPresent(flat -> check("top", flat, faults));
      bottom.ifPresent(flat -> check("bottom", flat, faults));
    }
    return faults.make(this::make, this::crowded);
  }

  private void check(String name, Flat flat, Faults faults) {
    double radius = diameter / 2;
    if (!(flat.distance > 0 && flat.distance < radius)) {
      faults.add(
          ShapeFault.length(
              name + ".distance",
              flat.distance,
              "must be above 0 and below " + ShapeFault.mm(radius) + " (half the diameter)",
              "leave the flat out for a whole circle"));
    }
    faults.radius(name + ".radius", flat.radius);
  }

  private Contour make() {
    if (top.isEmpty() && bottom.isEmpty()) {
      return Contour.circle(Point.ORIGIN, diameter / 2);
    }
    return Fillet.chain(chain(), radii(cornerRadius(top), cornerRadius(bottom)));
  }

  private static double cornerRadius(Optional<Flat> flat) {
    return flat.map(Flat::radius).orElse(0.0);
  }

  /** Right arc, top flat, left arc, bottom flat; with one flat its arc and the flat. */
  private List<Segment> chain() {
    List<Segment> chain = new ArrayList<>();
    Point lowRight = end(bottom, 1, -1);
    Point lowLeft = end(bottom, -1, -1);
    Point highRight = end(top, 1, 1);
    Point highLeft = end(top, -1, 1);
    if (top.isPresent() && bottom.isPresent()) {
      chain.add(Arc.about(Point.ORIGIN, lowRight, highRight, true));
      chain.add(new Line(highRight, highLeft));
      chain.add(Arc.about(Point.ORIGIN, highLeft, lowLeft, true));
      chain.add(new Line(lowLeft, lowRight));
    } else if (top.isPresent()) {
      chain.add(Arc.about(Point.ORIGIN, highLeft, highRight, true));
      chain.add(new Line(highRight, highLeft));
    } else {
      chain.add(Arc.about(Point.ORIGIN, lowRight, lowLeft, true));
      chain.add(new Line(lowLeft, lowRight));
    }
    return chain;
  }

  private Point end(Optional<Flat> flat, int sideX, int sideY) {
    double r = diameter / 2;
    double d = flat.map(Flat::distance).orElse(r);
    return new Point(sideX * Math.sqrt((r - d) * (r + d)), sideY * d);
  }

  private double[] radii(double atTop, double atBottom) {
    if (top.isPresent() && bottom.isPresent()) {
      return new double[] {atBottom, atTop, atTop, atBottom};
    }
    double one = top.isPresent() ? atTop : atBottom;
    return new double[] {one, one};
  }

  private List<ShapeFault> crowded(FilletException e) {
    return new SharedRadii("top.radius", cornerRadius(top), "bottom.radius", cornerRadius(bottom))
        .faults(e, (a, b) -> Fillet.faults(chain(), radii(a, b)).isEmpty());
  }
}
