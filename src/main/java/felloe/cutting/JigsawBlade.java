package felloe.cutting;

import felloe.geometry.Numbers;

/**
 * The blade of a jigsaw, mm.
 *
 * @param width from its teeth to its back, above zero
 * @param kerf how wide it cuts, above zero
 * @param turn the least radius that it can follow, above zero
 */
public record JigsawBlade(double width, double kerf, double turn) {

  /** Room between blade and hole, mm; common practice. */
  private static final double PLAY = 1;

  /**
   * Refuses figures that are not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public JigsawBlade {
    if (Numbers.finite("width", width) <= 0
        || Numbers.finite("kerf", kerf) <= 0
        || Numbers.finite("turn", turn) <= 0) {
      throw new IllegalArgumentException("blade width, kerf and turn must be above zero");
    }
  }

  /** Diameter of the least hole that the blade turns in: its width and room to spare, mm. */
  double room() {
    return width + PLAY;
  }
}
