package felloe.layup;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A resin and its hardener.
 *
 * @param name as plans name it
 * @param title in words
 * @param density of the cured mix, g/cm³
 * @param resinDensity of the resin alone, g/cm³, if it is known
 * @param hardenerDensity of the hardener alone, g/cm³, if it is known
 * @param byWeight grams of hardener for 100 g of resin
 * @param byVolume millilitres of hardener for 100 ml of resin, if it is known
 * @param potLife minutes that 100 g stay workable in a cup
 * @param doubled share of it that is left when the pot is twice as heavy, since it heats itself
 * @param workingTime minutes that a thin film can still be worked
 * @param cure hours until it may be lifted off
 * @param postCure warmth after it, if there should be any
 * @param potLimit the most to mix at once, g, so that it does not overheat
 * @param bases where the figures come from
 */
public record ResinSystem(
    String name,
    String title,
    double density,
    OptionalDouble resinDensity,
    OptionalDouble hardenerDensity,
    double byWeight,
    OptionalDouble byVolume,
    TimeCurve potLife,
    double doubled,
    TimeCurve workingTime,
    TimeCurve cure,
    Optional<PostCure> postCure,
    double potLimit,
    Bases bases) {

  /** The mass that pot lives are told for, g: the habit of data sheets. */
  static final double TOLD_FOR = 100;

  /** What is left of the pot life of a pot twice as heavy: common practice, from memory. */
  static final double USUAL_DOUBLED = 0.7;

  /** Minutes that a pot of so many grams stays workable; no more than one of 100 g. */
  double potLife(double temperature, double grams) {
    double doublings = Math.log(Math.max(grams, TOLD_FOR) / TOLD_FOR) / Math.log(2);
    return potLife.at(temperature) * Math.pow(doubled, doublings);
  }

  /** Volume of parts that are not yet mixed, ml; of the cured mix where they are not known. */
  double millilitres(double resin, double hardener) {
    return resinDensity.isPresent() && hardenerDensity.isPresent()
        ? resin / resinDensity.getAsDouble() + hardener / hardenerDensity.getAsDouble()
        : (resin + hardener) / density;
  }

  /**
   * Warmth after the cure.
   *
   * @param temperature degrees Celsius
   * @param hours how long
   */
  public record PostCure(double temperature, double hours) {}
}
