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
 * @param potLife minutes that some 100 g stay workable in a cup
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
    TimeCurve workingTime,
    TimeCurve cure,
    Optional<PostCure> postCure,
    double potLimit,
    Bases bases) {

  /**
   * Warmth after the cure.
   *
   * @param temperature degrees Celsius
   * @param hours how long
   */
  public record PostCure(double temperature, double hours) {}
}
