package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * One printed page: what lies where on it. Millimetres on the paper, origin at its lower left
 * corner, x to the right, y up.
 *
 * @param name its name, such as {@code B2}
 * @param width of the paper as fed, mm
 * @param height of the paper as fed, mm
 * @param parts what is drawn, in order
 * @param correction stretch of everything on the page about the paper's middle
 */
public record Page(
    String name, double width, double height, List<Placed> parts, Correction correction) {

  /**
   * Refuses a page of no size.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Page {
    parts = List.copyOf(parts);
    Numbers.positive("width", width);
    Numbers.positive("height", height);
  }

  /**
   * A drawing on a page.
   *
   * @param drawing what, in its own coordinates
   * @param shift where the drawing's origin lies on the page
   * @param clip nothing is drawn outside of this part of the page, when given
   */
  public record Placed(Drawing drawing, Point shift, Optional<Box> clip) {
    /** A drawing in page coordinates. */
    public static Placed of(Drawing drawing) {
      return new Placed(drawing, Point.ORIGIN, Optional.empty());
    }
  }

  /** The middle of the paper, about which it is corrected. */
  public Point centre() {
    return new Point(width / 2, height / 2);
  }
}
