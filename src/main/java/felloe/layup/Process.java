package felloe.layup;

/**
 * A way of wetting out and pressing.
 *
 * @param name as plans name it
 * @param title in words
 * @param fraction fibre volume fraction that it reaches
 * @param losses resin that does not stay in the part
 * @param minutes how long the work takes
 * @param together whether all plies take resin at once
 * @param pressure kPa
 * @param plates number of mould plates
 * @param ready hours of work before the first pot
 * @param finish hours of work after the cure
 * @param bases where the figures come from
 */
public record Process(
    String name,
    String title,
    Fraction fraction,
    Losses losses,
    Minutes minutes,
    boolean together,
    double pressure,
    int plates,
    double ready,
    double finish,
    Bases bases) {

  /**
   * A fibre volume fraction with its range.
   *
   * @param low the least that is usual
   * @param usual what to expect
   * @param high the most that is usual
   */
  public record Fraction(double low, double usual, double high) {}

  /**
   * Resin that does not stay in the part.
   *
   * @param brush stays in the brush, g
   * @param roller stays in the roller, g
   * @param pot stays in the pot, % of the resin in the part
   * @param squeezeOut runs out at the edges, % of the resin in the part
   * @param absorbed by peel ply, breather and lines, g for a square metre of blank
   */
  public record Losses(
      double brush, double roller, double pot, double squeezeOut, double absorbed) {}

  /**
   * How long the work takes, minutes.
   *
   * @param ply to place a ply, whatever its size
   * @param squareMetre to wet out a square metre of it
   * @param mix to mix a pot
   * @param close to close and press
   */
  public record Minutes(double ply, double squareMetre, double mix, double close) {}
}
