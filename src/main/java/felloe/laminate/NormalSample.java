package felloe.laminate;

import felloe.geometry.Numbers;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * What a few figures tell of all that are made the same way, if they scatter normally.
 *
 * @param count of figures
 * @param mean of them
 * @param deviation standard deviation of the sample (n - 1); 0 for one figure
 * @param least the lowest
 * @param interval where the true mean lies with 95 % confidence (Student's t); from two figures on
 * @param factor k of the lower bound; from two figures on
 * @param lower the bound above which 90 % of all lie, with 95 % confidence: mean less k deviations
 *     (MIL-HDBK-17 calls it a B-basis value); empty for one figure, or where it is not positive
 */
public record NormalSample(
    int count,
    double mean,
    double deviation,
    double least,
    Optional<Interval> interval,
    OptionalDouble factor,
    OptionalDouble lower) {

  /** Share of the population that lies above the lower bound. */
  public static final double SHARE = 0.90;

  /** Confidence of the bound and of the interval. */
  public static final double CONFIDENCE = 0.95;

  /**
   * An interval.
   *
   * @param from its lower end
   * @param to its upper end
   */
  public record Interval(double from, double to) {}

  /**
   * The sample of some figures.
   *
   * @throws IllegalArgumentException when there are none, or one is not finite and positive
   */
  public static NormalSample of(List<Double> figures) {
    if (figures.isEmpty()) {
      throw new IllegalArgumentException("figures must be one at least");
    }
    figures.forEach(figure -> Numbers.positive("figure", figure));
    int n = figures.size();
    double mean = figures.stream().mapToDouble(Double::doubleValue).sum() / n;
    double least = figures.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    if (n == 1) {
      return new NormalSample(
          1, mean, 0, least, Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
    double squares = figures.stream().mapToDouble(f -> (f - mean) * (f - mean)).sum();
    double deviation = Math.sqrt(squares / (n - 1));
    double t = new TDistribution(n - 1).inverseCumulativeProbability((1 + CONFIDENCE) / 2);
    double reach = t * deviation / Math.sqrt(n);
    double k = ToleranceFactor.of(n, SHARE, CONFIDENCE);
    double lower = mean - k * deviation;
    return new NormalSample(
        n,
        mean,
        deviation,
        least,
        Optional.of(new Interval(mean - reach, mean + reach)),
        OptionalDouble.of(k),
        lower > 0 ? OptionalDouble.of(lower) : OptionalDouble.empty());
  }

  /** Standard deviation over mean. */
  public double variation() {
    return deviation / mean;
  }

  /**
   * The figure that stands so far off the others that chance makes it do so once in twenty samples
   * at most; by Grubbs' test (MIL-HDBK-17: the maximum normed residual).
   *
   * @param figures those that the sample was made of
   * @return its index; empty when there is none, or for fewer than three figures
   */
  public OptionalInt outlier(List<Double> figures) {
    if (count < 3 || deviation == 0) {
      return OptionalInt.empty();
    }
    int farthest = 0;
    for (int i = 1; i < count; i++) {
      if (Math.abs(figures.get(i) - mean) > Math.abs(figures.get(farthest) - mean)) {
        farthest = i;
      }
    }
    double t =
        new TDistribution(count - 2)
            .inverseCumulativeProbability(1 - (1 - CONFIDENCE) / (2 * count));
    double limit = (count - 1) / Math.sqrt(count) * Math.sqrt(t * t / (count - 2 + t * t));
    return Math.abs(figures.get(farthest) - mean) / deviation > limit
        ? OptionalInt.of(farthest)
        : OptionalInt.empty();
  }
}
