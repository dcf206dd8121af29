package felloe.plate;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.util.List;

/**
 * What a shape file draws when its features clash, so that it is no plate: contours and marks, to
 * be looked at and for nothing else.
 *
 * @param name short name, as the plate's would be
 * @param title its name in words
 * @param revision of the shape file
 * @param place the shape file
 * @param outline its outer edge
 * @param windows as they are written
 * @param holes as they are written
 * @param clashes what is wrong, and where; at least one
 */
public record Sketch(
    String name,
    String title,
    String revision,
    Place place,
    Contour outline,
    List<Window> windows,
    List<Hole> holes,
    List<Clash> clashes) {

  public Sketch {
    windows = List.copyOf(windows);
    holes = List.copyOf(holes);
    clashes = List.copyOf(clashes);
  }

  /**
   * Features that have no room beside each other.
   *
   * @param problem what is wrong, and how to cure it
   * @param at where
   */
  public record Clash(Problem problem, Point at) {}
}
