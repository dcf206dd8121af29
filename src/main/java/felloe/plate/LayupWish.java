package felloe.plate;

import java.util.List;
import java.util.Optional;

/**
 * How the maker wants to lay the stock up; what is left out is for the program to choose.
 *
 * @param cloth name of the cloth
 * @param process name of the way of wetting out and pressing
 * @param resin name of the resin system
 * @param plies number of plies; empty when they are to follow from the thickness
 * @param angles direction of the warp of each ply, degrees, ply 1 at the back face; empty for the
 *     usual stack
 * @param fraction share of fibre in the volume of the laminate, as the maker knows it
 * @param panel a panel of the past that says what fraction the maker reaches
 * @param temperature of the workshop, degrees Celsius
 * @param rollWidth width of the roll of cloth, mm
 * @param margin what the blank is wider than the plate on each side, mm
 * @param pieces whether plies are cut as rectangles or along the outline
 * @param strips number of test strips
 * @param scale smallest step of the scale that resin is weighed on, g
 * @param prices what things cost
 */
public record LayupWish(
    Optional<Requested<String>> cloth,
    Optional<Requested<String>> process,
    Optional<Requested<String>> resin,
    Optional<Requested<Integer>> plies,
    Optional<Requested<List<Double>>> angles,
    Optional<Requested<Double>> fraction,
    Optional<Requested<Panel>> panel,
    Optional<Requested<Double>> temperature,
    Optional<Requested<Double>> rollWidth,
    Optional<Requested<Double>> margin,
    Optional<Requested<Pieces>> pieces,
    Optional<Requested<Integer>> strips,
    Optional<Requested<Double>> scale,
    Prices prices) {

  /** The least fibre volume fraction that is believed. */
  public static final double LEAST_FRACTION = 0.2;

  /** The greatest fibre volume fraction that is believed. */
  public static final double MOST_FRACTION = 0.7;

  /** The greatest number of plies. */
  public static final int MOST_PLIES = 200;

  /** Nothing is asked for. */
  public static final LayupWish NONE =
      new LayupWish(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Prices.NONE);

  /** How plies are cut. */
  public enum Pieces {
    /** A rectangle round the plate. */
    RECTANGLE,
    /** The outline grown by the margin. */
    OUTLINE
  }

  /**
   * A panel that was made and measured.
   *
   * @param thickness mm
   * @param plies how many plies it has, of the cloth that is planned with
   */
  public record Panel(double thickness, int plies) {}

  /**
   * This wish, and another's where this says nothing. A number of plies and a list of directions
   * are one question, and so are a fraction and a panel: the answer here stands for both.
   *
   * @param other what stands behind this one
   */
  public LayupWish over(LayupWish other) {
    boolean stack = plies.isPresent() || angles.isPresent();
    boolean share = fraction.isPresent() || panel.isPresent();
    return new LayupWish(
        first(cloth, other.cloth),
        first(process, other.process),
        first(resin, other.resin),
        stack ? plies : other.plies,
        stack ? angles : other.angles,
        share ? fraction : other.fraction,
        share ? panel : other.panel,
        first(temperature, other.temperature),
        first(rollWidth, other.rollWidth),
        first(margin, other.margin),
        first(pieces, other.pieces),
        first(strips, other.strips),
        first(scale, other.scale),
        prices.over(other.prices));
  }

  private static <T> Optional<T> first(Optional<T> one, Optional<T> other) {
    return one.isPresent() ? one : other;
  }
}
