package felloe.laminate;

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

  /** Copies the list. */
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
   * Strength to design by, MPa: the lower bound of {@link NormalSample#lower}. Empty when too few
   * strips broke, or when they scatter too much.
   */
  public OptionalDouble designStrength() {
    return strength.map(NormalSample::lower).orElse(OptionalDouble.empty());
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
