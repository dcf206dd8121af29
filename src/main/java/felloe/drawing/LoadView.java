package felloe.drawing;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the picture of a plate under a load shows. Millimetres, in the plate's frame, seen by the
 * driver.
 *
 * @param title the plate's name and revision
 * @param load what the hands do
 * @param words what holds the plate, and what else belongs below the maps
 * @param region the material
 * @param held edges of what holds the plate from behind, such as the hub's face
 * @param heads edges of the heads of screws, or of their washers
 * @param hands the forces
 * @param maps one after the other
 */
public record LoadView(
    String title,
    String load,
    List<String> words,
    Region region,
    List<Contour> held,
    List<Contour> heads,
    List<Hand> hands,
    List<Map> maps) {

  /**
   * @throws IllegalArgumentException when there is no map
   */
  public LoadView {
    words = List.copyOf(words);
    held = List.copyOf(held);
    heads = List.copyOf(heads);
    hands = List.copyOf(hands);
    maps = List.copyOf(maps);
    if (maps.isEmpty()) {
      throw new IllegalArgumentException("maps must not be empty");
    }
  }

  /**
   * A force.
   *
   * @param at where
   * @param x part to the right; only its direction and whether there is any counts
   * @param y part up
   * @param z part toward the driver
   * @param words how large it is
   */
  public record Hand(Point at, double x, double y, double z, String words) {}

  /**
   * A map of a figure over the plate.
   *
   * @param title what is shown
   * @param unit of its values, such as {@code mm}
   * @param field its values
   * @param peakAt where the figure that counts stands
   * @param peak that figure in words
   * @param fails value from which the material fails, where the map has one
   */
  public record Map(
      String title,
      String unit,
      NodalField field,
      Point peakAt,
      String peak,
      OptionalDouble fails) {}
}
