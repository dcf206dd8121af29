package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.Fillet;
import felloe.geometry.FilletException;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import java.util.List;

/**
 * A rectangle with rounded corners whose edges may be crowned. The corners are the rectangle's; a
 * crowned edge is an arc from corner to corner, so that an outward crown adds to the size. The
 * corner roundings are tangent to both edges. With straight edges and one radius r the area is WH -
 * (4 - pi) r².
 *
 * @param width distance between the left and the right corners, mm
 * @param height distance between the lower and the upper corners, mm
 * @param radiusTop radius of the upper corners, mm; 0 leaves them sharp
 * @param radiusBottom radius of the lower corners, mm; 0 leaves them sharp
 * @param rise how far each edge is crowned
 * @param centre middle of the rectangle, mm
 */
public record FourSided(
    double width, double height, double radiusTop, double radiusBottom, Rise rise, Point centre)
    implements Family {

  /**
   * Heights of the crowned edges over their chords, mm: positive outward, negative hollow, 0
   * straight.
   *
   * @param top of the top edge
   * @param bottom of the bottom edge
   * @param left of the left edge
   * @param right of the right edge
   */
  public record Rise(double top, double bottom, double left, double right) {

    /** Four straight edges. */
    public static final Rise NONE = new Rise(0, 0, 0, 0);

    /**
     * Refuses figures that are not finite.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Rise {
      Numbers.finite("top", top);
      Numbers.finite("bottom", bottom);
      Numbers.finite("left", left);
      Numbers.finite("right", right);
    }
  }

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public FourSided {
    Numbers.finite("width", width);
    Numbers.finite("height", height);
    Numbers.finite("radiusTop", radiusTop);
    Numbers.finite("radiusBottom", radiusBottom);
  }

  /** A rectangle about the origin with straight edges and one corner radius. */
  public static FourSided rectangle(double width, double height, double radius) {
    return new FourSided(width, height, radius, radius, Rise.NONE, Point.ORIGIN);
  }

  /**
   * {@inheritDoc}
   *
   * <p>Faults name {@code width}, {@code height}, {@code radius} (of all corners), {@code
   * radius.top}, {@code radius.bottom}, {@code rise.top} and so on, {@code centre}.
   */
  @Override
  public Contour contour() {
    Faults faults = new Faults();
    faults.size("width", width);
    faults.size("height", height);
    faults.radius("radius.top", radiusTop);
    faults.radius("radius.bottom", radiusBottom);
    faults.coordinate("centre", centre.x());
    faults.coordinate("centre", centre.y());
    Edges.checkRise("rise.top", rise.top, width, faults);
    Edges.checkRise("rise.bottom", rise.bottom, width, faults);
    Edges.checkRise("rise.left", rise.left, height, faults);
    Edges.checkRise("rise.right", rise.right, height, faults);
    hollows("rise.left", rise.left, "rise.right", rise.right, width, faults);
    hollows("rise.bottom", rise.bottom, "rise.top", rise.top, height, faults);
    return faults.make(
        () ->
            Fillet.chain(chain(), radii(radiusTop, radiusBottom))
                .moved(RigidTransform.shift(centre.x(), centre.y())),
        this::crowded);
  }

  private static void hollows(
      String first, double a, String second, double b, double size, Faults faults) {
    double both = Math.max(0, -a) + Math.max(0, -b);
    if (faults.isEmpty() && both >= size) {
      faults.add(
          ShapeFault.length(
              a <= b ? first : second,
              Math.min(a, b),
              "makes the hollow edges meet: "
                  + first
                  + " and "
                  + second
                  + " together must be less than "
                  + ShapeFault.mm(size)
                  + " deep",
              "lower one of them"));
    }
  }

  /** Bottom, right, top, left: counter-clockwise from the lower left corner. */
  private List<Segment> chain() {
    Point lowLeft = new Point(-width / 2, -height / 2);
    Point lowRight = new Point(width / 2, -height / 2);
    Point highRight = new Point(width / 2, height / 2);
    Point highLeft = new Point(-width / 2, height / 2);
    return List.of(
        Edges.edge(lowLeft, lowRight, rise.bottom),
        Edges.edge(lowRight, highRight, rise.right),
        Edges.edge(highRight, highLeft, rise.top),
        Edges.edge(highLeft, lowLeft, rise.left));
  }

  private static double[] radii(double top, double bottom) {
    return new double[] {bottom, bottom, top, top};
  }

  /** Equal radii were written as one figure, or may be. */
  private List<ShapeFault> crowded(FilletException e) {
    if (radiusTop == radiusBottom) {
      double most = SharedRadii.largest(radiusTop, r -> fits(r, r));
      String wanted = "must be at most " + Faults.limit(most) + " here: " + e.faults().get(0).why();
      return List.of(ShapeFault.length("radius", radiusTop, wanted, "lower it"));
    }
    return new SharedRadii("radius.top", radiusTop, "radius.bottom", radiusBottom)
        .faults(e, this::fits);
  }

  private boolean fits(double top, double bottom) {
    return Fillet.faults(chain(), radii(top, bottom)).isEmpty();
  }
}
