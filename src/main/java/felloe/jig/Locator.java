package felloe.jig;

import felloe.geometry.Point;
import felloe.plate.Hole;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;

/**
 * What locates the jig on the plate.
 *
 * @param holes the bore that its spigot enters, or the two holes for pins; none where it has a rim
 *     round the plate's outline
 * @param size diameter of the spigot, or of the jig's holes for the pins, mm; of a rim its gap to
 *     the outline as drawn
 * @param play how far the jig may shift on it, one way, mm
 * @param nest how the plate moves in a rim; empty for spigot and pins
 * @param middle from which the printer's scale counts
 */
public record Locator(
    List<Hole> holes, double size, double play, Optional<Nest> nest, Point middle) {

  public Locator {
    holes = List.copyOf(holes);
  }

  /** A spigot in one hole, or pins in two. */
  static Locator in(List<Hole> holes, double size, double play) {
    Point first = holes.get(0).centre();
    Point middle = holes.size() == 1 ? first : first.middle(holes.get(1).centre());
    return new Locator(holes, size, play, Optional.empty(), middle);
  }

  /** A rim round the outline. */
  static Locator round(Plate plate, double gap, double play) {
    Nest nest = new Nest(plate.outline(), play);
    Point middle = plate.outline().properties().centroid();
    return new Locator(List.of(), gap, play, Optional.of(nest), middle);
  }

  /** Whether it is a spigot in the bore. */
  public boolean spigot() {
    return holes.size() == 1;
  }

  /** Whether it is a rim round the plate's outline. */
  public boolean rim() {
    return holes.isEmpty();
  }

  /** How far a place may be off by its play: pins let it turn as well, mm. */
  double off(Point at) {
    if (rim()) {
      return nest.orElseThrow().off(at);
    }
    if (spigot()) {
      return play;
    }
    double span = holes.get(0).centre().distance(holes.get(1).centre());
    return play * (1 + 2 * at.distance(middle()) / span);
  }
}
