package felloe.laminate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What tested strips of one laminate tell of it.
 *
 * @param strips in the order of the file
 * @param strength of those that broke, MPa; empty when none did
 * @param modulus of all, MPa
 */
public record TestedStrips(
    List<Strip> strips, Optional<NormalSample> strength, NormalSample modulus) {

  private static final double LEAST_SCATTER = 0.01;

  public TestedStrips {
    strips = List.copyOf(strips);
  }

  /**
   * The result of some strips.
   *
   * @throws IllegalArgumentException when there are none
   */
  public static TestedStrips of(List<Strip> strips) {
    List<Double> broken = strengths(strips);
    return new TestedStrips(
        strips,
        broken.isEmpty() ? Optional.empty() : Optional.of(NormalSample.of(broken)),
        NormalSample.of(moduli(strips)));
  }

  /**
   * Strength to design by, MPa: the bound of {@link NormalSample#design}, since a wheel has a
   * single load path. Empty when too few strips broke, or when they scatter too much.
   */
  public OptionalDouble designStrength() {
    return strength.map(NormalSample::design).orElse(OptionalDouble.empty());
  }

  /** How many strips a design strength should rest on: five or more (common practice). */
  public static final int ENOUGH = 5;

  /** What these strips are worth, where that is less than it looks; empty where it is well. */
  public List<String> worth() {
    List<String> words = new ArrayList<>();
    int broken = strength.map(NormalSample::count).orElse(0);
    if (broken > 0 && broken < ENOUGH) {
      words.add(
          broken
              + (broken == 1 ? " broken strip tells" : " broken strips tell")
              + " little: five are the least to design by, and the bound is lowered for it");
    }
    if (broken > 1 && strength.orElseThrow().variation() < LEAST_SCATTER) {
      words.add(
          "strips that scatter by less than 1 % are copies of one figure or of one panel: their"
              + " scatter is counted as 6 %, as other panels would show; of mere copies no bound is"
              + " told");
    }
    return words;
  }

  /** Mean thickness of the strips, mm: that of the panel. */
  public double thickness() {
    return strips.stream().mapToDouble(Strip::thickness).average().orElseThrow();
  }

  /** Strain of the outer face at {@link #designStrength}, by the mean modulus. */
  public OptionalDouble designStrain() {
    OptionalDouble design = designStrength();
    return design.isPresent()
        ? OptionalDouble.of(design.getAsDouble() / modulus.mean())
        : OptionalDouble.empty();
  }

  /** The strip whose strength stands far off the others; see {@link NormalSample#outlier}. */
  public Optional<Strip> oddStrength() {
    List<Strip> broken = strips.stream().filter(Strip::broke).toList();
    OptionalInt odd = strength.map(s -> s.outlier(strengths(strips))).orElse(OptionalInt.empty());
    return odd.isPresent() ? Optional.of(broken.get(odd.getAsInt())) : Optional.empty();
  }

  /** The strip whose modulus stands far off the others; see {@link NormalSample#outlier}. */
  public Optional<Strip> oddModulus() {
    OptionalInt odd = modulus.outlier(moduli(strips));
    return odd.isPresent() ? Optional.of(strips.get(odd.getAsInt())) : Optional.empty();
  }

  private static List<Double> strengths(List<Strip> strips) {
    return strips.stream()
        .filter(Strip::broke)
        .map(strip -> strip.strength().getAsDouble())
        .toList();
  }

  private static List<Double> moduli(List<Strip> strips) {
    return strips.stream().map(Strip::modulus).toList();
  }
}
