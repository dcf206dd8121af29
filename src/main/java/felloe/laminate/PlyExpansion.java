package felloe.laminate;

import felloe.geometry.Numbers;

/**
 * How much longer a ply gets with each degree, 1/K.
 *
 * @param along1 along axis 1; carbon fibres make it slightly negative
 * @param along2 along axis 2
 */
public record PlyExpansion(double along1, double along2) {

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public PlyExpansion {
    Numbers.finite("along1", along1);
    Numbers.finite("along2", along2);
  }
}
