package felloe.laminate;

import felloe.geometry.Numbers;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A test strip as it was measured.
 *
 * @param label what is written on it
 * @param method how it was bent
 * @param width mm
 * @param thickness mm
 * @param span between the supports, or from the jaws to the weight, mm
 * @param load the highest that it bore, N
 * @param deflection under that load, mm, where it was read
 * @param readings loads and deflections while it was bent, in order; none, or two at least
 * @param broke whether it broke under {@code load}; if not, it tells no strength
 */
public record Strip(
    String label,
    StripMethod method,
    double width,
    double thickness,
    double span,
    double load,
    OptionalDouble deflection,
    List<Reading> readings,
    boolean broke) {

  /** Beyond this share of the span, a strip slides and pulls: the plain formulas read too low. */
  static final double LARGE = 0.1;

  /**
   * @throws IllegalArgumentException when a figure is not finite and positive, when there are
   *     neither a deflection nor two readings, or when readings do not rise
   */
  public Strip {
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(method, "method");
    Numbers.positive("width", width);
    Numbers.positive("thickness", thickness);
    Numbers.positive("span", span);
    Numbers.positive("load", load);
    deflection.ifPresent(s -> Numbers.positive("deflection", s));
    readings = List.copyOf(readings);
    if (readings.size() == 1 || (readings.isEmpty() && deflection.isEmpty())) {
      throw new IllegalArgumentException("readings must be two at least, or deflection be there");
    }
    for (int i = 1; i < readings.size(); i++) {
      Reading before = readings.get(i - 1);
      Reading here = readings.get(i);
      if (!(here.deflection() > before.deflection() && here.load() > before.load())) {
        throw new IllegalArgumentException("readings must rise");
      }
    }
  }

  /**
   * A load with the deflection under it.
   *
   * @param load N, not negative
   * @param deflection mm, not negative
   */
  public record Reading(double load, double deflection) {
    /**
     * Refuses figures that are not finite, or negative.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Reading {
      Numbers.notNegative("load", load);
      Numbers.notNegative("deflection", deflection);
    }
  }

  /** Span over thickness. */
  public double spanRatio() {
    return span / thickness;
  }

  /** Whether it was bent so far that the plain formulas no longer hold. */
  public boolean bentFar() {
    return deflection.isPresent() && deflection.getAsDouble() > LARGE * span;
  }

  /**
   * Flexural strength, MPa; empty when it did not break.
   *
   * <p>A strip on two supports that is bent by more than a tenth of its span gets the factor {@code
   * 1 + 6 (s/L)² - 3 s h/L²} for its slanting ends (ISO 14125 and ASTM D790; from memory).
   */
  public OptionalDouble strength() {
    if (!broke) {
      return OptionalDouble.empty();
    }
    double stress = method.stress(load, span, width, thickness);
    if (method == StripMethod.THREE_POINT && bentFar()) {
      double s = deflection.getAsDouble();
      stress *= 1 + 6 * s * s / (span * span) - 3 * s * thickness / (span * span);
    }
    return OptionalDouble.of(stress);
  }

  /**
   * Flexural modulus, MPa: from the best straight line through the readings, or from the highest
   * load and its deflection where there are none. The latter reads low when the strip softens
   * before it breaks, or settles on its supports.
   */
  public double modulus() {
    return method.modulus(slope(), span, width, thickness);
  }

  /**
   * Strain of the outer face under the highest load; empty without a deflection. For a strip on two
   * supports bent by more than a tenth of its span it is {@code h/L (6 s/L - 24.37 (s/L)³ + 62.17
   * (s/L)⁵)} (ISO 14125; from memory).
   */
  public OptionalDouble strain() {
    if (deflection.isEmpty()) {
      return OptionalDouble.empty();
    }
    double s = deflection.getAsDouble();
    if (method == StripMethod.THREE_POINT && bentFar()) {
      double r = s / span;
      double curve = 6 * r - 24.37 * r * r * r + 62.17 * r * r * r * r * r;
      return OptionalDouble.of(thickness / span * curve);
    }
    return OptionalDouble.of(method.strain(s, span, thickness));
  }

  private double slope() {
    if (readings.isEmpty()) {
      return load / deflection.getAsDouble();
    }
    double meanX = 0;
    double meanY = 0;
    for (Reading r : readings) {
      meanX += r.deflection() / readings.size();
      meanY += r.load() / readings.size();
    }
    double sum = 0;
    double square = 0;
    for (Reading r : readings) {
      sum += (r.deflection() - meanX) * (r.load() - meanY);
      square += (r.deflection() - meanX) * (r.deflection() - meanX);
    }
    return sum / square;
  }
}
