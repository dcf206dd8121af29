package felloe.laminate;

import felloe.geometry.Numbers;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Handbook figures of a stack brought to what test strips of it showed. The pattern of the handbook
 * (how much stiffer along than across, how much stronger pulled than pressed) is kept; all moduli
 * are multiplied by one factor and all strengths by another, so that the theory gives the strips
 * back: their mean modulus in bending, and their design strength at the first ply failure by
 * maximum strain.
 *
 * <p>It holds for loads that bend the plate as the strips were bent. What strips cannot show (shear
 * in the plane, say) is only scaled along with the rest.
 *
 * @param stiffness measured over predicted modulus
 * @param strength design strength over predicted strength; empty where the strips carry no design
 *     strength, or the plies' limits are not known
 */
public record StripCalibration(double stiffness, OptionalDouble strength) {

  /**
   * Refuses factors that are not positive.
   *
   * @throws IllegalArgumentException naming the field
   */
  public StripCalibration {
    Numbers.positive("stiffness", stiffness);
    strength.ifPresent(s -> Numbers.positive("strength", s));
  }

  /**
   * The factors of a stack.
   *
   * @param direction of the strips' length from the plate's x, degrees
   */
  public static StripCalibration of(Stack stack, TestedStrips tested, double direction) {
    Laminate along =
        Laminate.of(
            new Stack(
                stack.plies().stream()
                    .map(p -> new Ply(p.material(), p.thickness(), p.angle() - direction))
                    .toList()));
    double stiffness = tested.modulus().mean() / along.moduli().bending().ex();
    OptionalDouble design = tested.designStrength();
    OptionalDouble predicted = predicted(along);
    return new StripCalibration(
        stiffness,
        design.isPresent() && predicted.isPresent()
            ? OptionalDouble.of(design.getAsDouble() / predicted.getAsDouble())
            : OptionalDouble.empty());
  }

  /** Stress 6 M/h² of a strip at its first ply failure, MPa, bent the way that is worse. */
  private static OptionalDouble predicted(Laminate along) {
    double least = Double.POSITIVE_INFINITY;
    for (int sign = -1; sign <= 1; sign += 2) {
      LaminateResponse bent = along.response(new LaminateLoad(0, 0, 0, sign, 0, 0));
      Optional<FirstFailure> first =
          FirstFailure.of(FailureCriterion.MAXIMUM_STRAIN, bent, Optional.empty());
      if (first.isPresent()) {
        least = Math.min(least, first.get().reserve());
      }
    }
    double h = along.thickness();
    return Double.isFinite(least) ? OptionalDouble.of(6 * least / (h * h)) : OptionalDouble.empty();
  }

  /** The stack with its figures multiplied; strengths stay where there is no factor for them. */
  public Stack apply(Stack stack) {
    return new Stack(
        stack.plies().stream()
            .map(p -> new Ply(apply(p.material()), p.thickness(), p.angle()))
            .toList());
  }

  private PlyMaterial apply(PlyMaterial m) {
    // Without a factor the strengths stay, so strains at failure go down as moduli go up.
    double stress = strength.orElse(1);
    double strain = stress / stiffness;
    return new PlyMaterial(
        m.e1() * stiffness,
        m.e2() * stiffness,
        m.nu12(),
        m.g12() * stiffness,
        m.strength()
            .map(
                s ->
                    new PlyStrength(
                        s.xt() * stress,
                        s.xc() * stress,
                        s.yt() * stress,
                        s.yc() * stress,
                        s.s() * stress)),
        m.strainLimits()
            .map(
                e ->
                    new StrainLimits(
                        e.e1t() * strain,
                        e.e1c() * strain,
                        e.e2t() * strain,
                        e.e2c() * strain,
                        e.g12() * strain)),
        m.expansion());
  }
}
