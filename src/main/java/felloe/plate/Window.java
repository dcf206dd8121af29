package felloe.plate;

import felloe.geometry.Contour;
import java.util.Optional;

/**
 * An opening cut through the plate.
 *
 * @param label short name, unique on the plate, such as {@code W1}
 * @param use what it is for
 * @param contour its edge
 * @param place where the maker wrote it
 */
public record Window(String label, WindowUse use, Contour contour, Place place) {

  /** The window as a hole of the role {@link HoleRole#WINDOW}, if it is one whole circle. */
  public Optional<Hole> asHole() {
    return contour
        .asCircle()
        .map(
            circle ->
                new Hole(label, HoleRole.WINDOW, circle.centre(), 2 * circle.radius(), place));
  }
}
