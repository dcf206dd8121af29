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
 * @param interval where the true mean lies with 95 % confidence (Student's t); from two figures on,
 *     and not of copies of one figure
 * @param factor k of the lower bound; from two figures on
 * @param lower the bound above which 90 % of all lie, with 95 % confidence: mean less k deviations
 *     (MIL-HDBK-17 calls it a B-basis value); empty for one figure, for copies of one, or where it
 *     is not positive
 */
public record NormalSample(
    int count,
    double mean,
    double deviation,
    double least,
    Optional<Interval> interval,
    OptionalDouble factor,
    OptionalDouble lower) {

  /** Figures that scatter less, as a part of their mean, are copies: then no bound is told. */
  private static final double LEAST_SCATTER = 0.001;

  /** Share of the population that lies above the lower bound. */
  public static final double SHARE = 0.90;

  /** The same for a single load path. */
  public static final double SINGLE_PATH = 0.99;

  /** Confidence of the bounds and of the interval. */
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
    boolean told = deviation >= LEAST_SCATTER * mean;
    return new NormalSample(
        n,
        mean,
        deviation,
        least,
        told ? Optional.of(new Interval(mean - reach, mean + reach)) : Optional.empty(),
        OptionalDouble.of(k),
        told && lower > 0 ? OptionalDouble.of(lower) : OptionalDouble.empty());
  }

  /** Standard deviation over mean. */
  public double variation() {
    return deviation / mean;
  }

  /**
   * The variation that a bound for design is reckoned with: few strips of one panel scatter less
   * than panels do. Below 4 % it counts as 6 %, to 8 % as half of it and 4 % (modified coefficient
   * of variation of CMH-17, from memory).
   */
  public double designVariation() {
    double v = variation();
    return v < 0.04 ? 0.06 : v < 0.08 ? v / 2 + 0.04 : v;
  }

  /** The factor k of {@link #design}; from two figures on. */
  public OptionalDouble designFactor() {
    return count < 2
        ? OptionalDouble.empty()
        : OptionalDouble.of(ToleranceFactor.of(count, SINGLE_PATH, CONFIDENCE));
  }

  /**
   * The bound for what breaks with a single load path: 99 % of all lie above it with 95 %
   * confidence (14 CFR 25.613(b)), by {@link #designVariation}. Empty for one figure, and where so
   * few, or so scattered ones carry none.
   */
  public OptionalDouble design() {
    OptionalDouble k = designFactor();
    if (k.isEmpty()) {
      return OptionalDouble.empty();
    }
    double bound = mean * (1 - k.getAsDouble() * designVariation());
    return bound > 0 ? OptionalDouble.of(bound) : OptionalDouble.empty();
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
