package felloe.cutting;

import felloe.geometry.Numbers;
import felloe.geometry.Region;
import java.util.List;

/**
 * Something to be placed on the sheet.
 *
 * @param name as printed on the layout
 * @param region what is cut, about its own origin
 * @param turns the turns that it may be placed at, radians counter-clockwise; at least one
 */
public record NestedPart(String name, Region region, List<Double> turns) {

  /** As drawn or upside down: the grain or the 0 degree fibres keep their direction. */
  public static final List<Double> HELD = List.of(0.0, Math.PI);

  /** Every quarter and eighth turn: the grain may lie anyhow. */
  public static final List<Double> FREE =
      List.of(
          0.0,
          Math.PI / 2,
          Math.PI,
          3 * Math.PI / 2,
          Math.PI / 4,
          3 * Math.PI / 4,
          5 * Math.PI / 4,
          7 * Math.PI / 4);

  /**
   * Refuses an empty list of turns.
   *
   * @throws IllegalArgumentException naming the field
   */
  public NestedPart {
    turns = List.copyOf(turns);
    turns.forEach(turn -> Numbers.finite("turns", turn));
    if (turns.isEmpty()) {
      throw new IllegalArgumentException("turns must not be empty");
    }
  }
}
