package felloe.laminate;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.special.Gamma;

/**
 * The factor k of a one-sided tolerance limit: of a normal population, at least a share lies above
 * mean less k standard deviations, with a confidence. Mean and deviation are those of the sample.
 *
 * <p>k is the quantile of a noncentral t distribution over sqrt(n). It is found from {@code
 * E[Phi(sqrt(n) (k S - z))] = confidence}, with S the sample's deviation over the true one and z
 * the normal quantile of the share. Accuracy: 1e-6 of k.
 *
 * <p>Source: Natrella, Experimental Statistics (NBS Handbook 91); MIL-HDBK-17 calls the bound for
 * 90 % with 95 % confidence a B-basis value.
 */
public final class ToleranceFactor {

  /** Where integral and search stop: a tenth of the accuracy that is told, and far below. */
  private static final double FOUND = 1e-7;

  private static final double RELATIVE = 1e-9;
  private static final double ABSOLUTE = 1e-11;

  private static final NormalDistribution NORMAL = new NormalDistribution();

  /** Deviations of S beyond which nothing is left. */
  private static final double REACH = 12;

  private static final int CALLS = 1_000_000;
  private static final double GREATEST = 100_000;

  private ToleranceFactor() {}

  /**
   * The factor.
   *
   * @param count size of the sample, 2 at least
   * @param share of the population, above 0.5 and below 1
   * @param confidence above 0.5 and below 1
   * @throws IllegalArgumentException when a figure is out of range
   */
  public static double of(int count, double share, double confidence) {
    if (count < 2) {
      throw new IllegalArgumentException("count must be 2 at least, not " + count);
    }
    if (!(share > 0.5 && share < 1 && confidence > 0.5 && confidence < 1)) {
      throw new IllegalArgumentException("share and confidence must be between 0.5 and 1");
    }
    double z = NORMAL.inverseCumulativeProbability(share);
    double freedom = count - 1;
    double half = freedom / 2;
    double logScale = Math.log(2) + half * Math.log(half) - Gamma.logGamma(half);
    double spread = REACH / Math.sqrt(2 * freedom);
    double low = Math.max(0, 1 - spread);
    double high = 1 + spread;
    IterativeLegendreGaussIntegrator integrator =
        new IterativeLegendreGaussIntegrator(16, RELATIVE, ABSOLUTE);
    UnivariateFunction excess =
        k ->
            integrator.integrate(
                    CALLS,
                    s ->
                        density(s, freedom, logScale)
                            * NORMAL.cumulativeProbability(Math.sqrt(count) * (k * s - z)),
                    low,
                    high)
                - confidence;
    double below = 0;
    double above = 2;
    while (excess.value(above) < 0 && above < GREATEST) {
      below = above;
      above *= 2;
    }
    return new BracketingNthOrderBrentSolver(RELATIVE, FOUND, 5).solve(CALLS, excess, below, above);
  }

  /** Density of the square root of chi squared over its freedom. */
  private static double density(double s, double freedom, double logScale) {
    return s <= 0 ? 0 : Math.exp(logScale + (freedom - 1) * Math.log(s) - freedom * s * s / 2);
  }
}
