package felloe.cutting;

import felloe.geometry.Contour;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What lies round a plate on its machine, in the machine's frame.
 *
 * @param clamps edges of what the cutter must not touch
 * @param neighbours edges of the other parts on the sheet; a slot is cut along each of them too
 * @param room the sheet; empty when it is not known where the plate lies on it
 */
public record Surroundings(
    List<Contour> clamps, List<Contour> neighbours, Optional<SheetRoom> room) {

  /** Nothing round it, on a sheet without end. */
  public static final Surroundings NONE = new Surroundings(List.of(), List.of(), Optional.empty());

  /**
   * Least material that a tab holds on to, between two slots or a slot and the sheet's edge, mm.
   */
  public static final double WALL = 0.5;

  /** Copies the lists. */
  public Surroundings {
    clamps = List.copyOf(clamps);
    neighbours = List.copyOf(neighbours);
  }

  /** All edges that no cut may touch. */
  List<Contour> edges() {
    return Stream.concat(clamps.stream(), neighbours.stream()).toList();
  }
}
