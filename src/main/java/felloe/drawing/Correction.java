package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.Point;

/**
 * The stretch of a page about its middle that undoes a printer's error, each axis for itself.
 *
 * @param x factor across the page
 * @param y factor up the page
 */
public record Correction(double x, double y) {

  /** No stretch. */
  public static final Correction NONE = new Correction(1, 1);

  /**
   * Refuses factors beyond what a reading may ask for.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Correction {
    if (Math.abs(Numbers.finite("x", x) - 1) > 0.06
        || Math.abs(Numbers.finite("y", y) - 1) > 0.06) {
      throw new IllegalArgumentException("a correction must lie within 6 % of 1");
    }
  }

  /** Whether it stretches anything. */
  public boolean isNone() {
    return x == 1 && y == 1;
  }

  /** Where a point of the page goes, the page's middle being {@code centre}. */
  public Point of(Point p, Point centre) {
    return new Point(centre.x() + x * (p.x() - centre.x()), centre.y() + y * (p.y() - centre.y()));
  }

  /**
   * The part of a printable area that may be drawn on so that nothing leaves the area, neither
   * before nor after the stretch.
   */
  public Box room(Box printable) {
    Point c = printable.centre();
    double halfWidth = printable.width() / 2 / Math.max(1, x);
    double halfHeight = printable.height() / 2 / Math.max(1, y);
    return new Box(c.x() - halfWidth, c.y() - halfHeight, c.x() + halfWidth, c.y() + halfHeight);
  }
}
