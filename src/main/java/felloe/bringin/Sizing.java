package felloe.bringin;

import java.util.OptionalDouble;

/**
 * What the maker says of a drawing's size.
 *
 * @param width of all that is drawn, mm; empty where the drawing's own units count
 * @param scale mm for each unit of the drawing; empty likewise
 */
public record Sizing(OptionalDouble width, OptionalDouble scale) {

  /** The drawing's own units. */
  public static final Sizing OWN = new Sizing(OptionalDouble.empty(), OptionalDouble.empty());

  /** So many millimetres for each unit. */
  static Sizing scaled(double scale) {
    return new Sizing(OptionalDouble.empty(), OptionalDouble.of(scale));
  }
}
