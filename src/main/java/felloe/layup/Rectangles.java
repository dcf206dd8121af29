package felloe.layup;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.util.List;

/** Upright rectangles as contours. */
final class Rectangles {

  private Rectangles() {}

  static Contour of(Box box) {
    return Contour.polygon(
        List.of(
            new Point(box.minX(), box.minY()),
            new Point(box.maxX(), box.minY()),
            new Point(box.maxX(), box.maxY()),
            new Point(box.minX(), box.maxY())));
  }
}
