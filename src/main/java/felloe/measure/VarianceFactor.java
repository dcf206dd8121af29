package felloe.measure;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How wide the bounds are. The plus and minus of the readings is taken for true unless their
 * scatter speaks against it at one chance in a hundred; then the scatter itself is taken, with
 * Student's t for the few readings that it comes from.
 *
 * @param large whether the scatter speaks against the plus and minus
 * @param factor by which standard errors grow
 * @param quantile how many standard errors hold 95 of 100 cases
 */
record VarianceFactor(boolean large, double factor, double quantile) {

  private static final double RARE = 0.01;
  private static final double UPPER = 0.975;

  static VarianceFactor of(Adjustment adjustment) {
    int freedom = adjustment.freedom();
    if (freedom > 0) {
      double chance =
          1 - new ChiSquaredDistribution(freedom).cumulativeProbability(adjustment.cost());
      if (chance < RARE) {
        double factor = Math.sqrt(adjustment.cost() / freedom);
        double t = new TDistribution(freedom).inverseCumulativeProbability(UPPER);
        return new VarianceFactor(true, factor, t);
      }
    }
    double normal = new NormalDistribution().inverseCumulativeProbability(UPPER);
    return new VarianceFactor(false, 1, normal);
  }

  /** Half the width of the bounds for a standard error. */
  double half(double error) {
    return quantile * factor * error;
  }
}
