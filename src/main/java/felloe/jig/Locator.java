package felloe.jig;

import felloe.geometry.Point;
import felloe.plate.Hole;
import java.util.List;

/**
 * What locates the jig on the plate.
 *
 * @param holes the bore that its spigot enters, or the two holes for pins
 * @param size diameter of the spigot, or of the jig's holes for the pins, mm
 * @param play how far the jig may shift on it, one way, mm
 */
public record Locator(List<Hole> holes, double size, double play) {

  public Locator {
    holes = List.copyOf(holes);
  }

  /** Whether it is a spigot in the bore. */
  public boolean spigot() {
    return holes.size() == 1;
  }

  /** The middle, from which the printer's scale counts. */
  Point middle() {
    Point first = holes.get(0).centre();
    return spigot() ? first : first.middle(holes.get(1).centre());
  }

  /** How far a place may be off by its play: pins let it turn as well, mm. */
  double off(Point at) {
    if (spigot()) {
      return play;
    }
    double span = holes.get(0).centre().distance(holes.get(1).centre());
    return play * (1 + 2 * at.distance(middle()) / span);
  }
}
