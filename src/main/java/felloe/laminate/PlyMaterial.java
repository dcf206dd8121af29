package felloe.laminate;

import felloe.geometry.Numbers;
import java.util.Optional;

/**
 * What a ply is made of: an orthotropic sheet in plane stress, with axis 1 along the fibres (of a
 * cloth: the warp) and axis 2 across.
 *
 * <p><b>Woven cloth is one ply</b> with {@code e1} and {@code e2} near each other, not two crossed
 * half plies: in a weave warp and weft lie at the same height on average, so that crossed halves
 * would invent a coupling of stretch and bending that a sheet of cloth does not have, and would
 * find cracks across fibres at a load that cloth shrugs off. Measured figures of cloth hold its
 * crimp already.
 *
 * @param e1 modulus along axis 1, MPa
 * @param e2 modulus along axis 2, MPa
 * @param nu12 Poisson's ratio: contraction along 2 over stretch along 1 when pulled along 1
 * @param g12 shear modulus in the plane, MPa
 * @param strength strengths, where they are known
 * @param strainLimits strains that it bears, where they are known; see {@link #limits}
 * @param expansion thermal expansion, where it is known
 */
public record PlyMaterial(
    double e1,
    double e2,
    double nu12,
    double g12,
    Optional<PlyStrength> strength,
    Optional<StrainLimits> strainLimits,
    Optional<PlyExpansion> expansion) {

  /**
   * Refuses figures that are not finite, moduli that are not positive, and a Poisson's ratio by
   * which the sheet would give energy away when it is strained: |nu12| must be less than sqrt(e1 /
   * e2).
   *
   * @throws IllegalArgumentException naming the field
   */
  public PlyMaterial {
    Numbers.positive("e1", e1);
    Numbers.positive("e2", e2);
    Numbers.positive("g12", g12);
    Numbers.finite("nu12", nu12);
    if (Math.abs(nu12) >= greatestNu12(e1, e2)) {
      throw new IllegalArgumentException(
          "nu12 must be less than sqrt(e1/e2) = "
              + Numbers.brief(greatestNu12(e1, e2), 6)
              + ", not "
              + Numbers.brief(nu12, 6));
    }
  }

  /** A material of which only the elastic figures are known. */
  public PlyMaterial(double e1, double e2, double nu12, double g12) {
    this(e1, e2, nu12, g12, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** The Poisson's ratio that a sheet must stay below, sqrt(e1 / e2). */
  public static double greatestNu12(double e1, double e2) {
    return Math.sqrt(e1 / e2);
  }

  /** The same material with strengths. */
  public PlyMaterial with(PlyStrength known) {
    return new PlyMaterial(e1, e2, nu12, g12, Optional.of(known), strainLimits, expansion);
  }

  /** The same material with thermal expansion. */
  public PlyMaterial with(PlyExpansion known) {
    return new PlyMaterial(e1, e2, nu12, g12, strength, strainLimits, Optional.of(known));
  }

  /** The same material with strain limits. */
  public PlyMaterial with(StrainLimits known) {
    return new PlyMaterial(e1, e2, nu12, g12, strength, Optional.of(known), expansion);
  }

  /** Poisson's ratio the other way, nu12 e2 / e1. */
  public double nu21() {
    return nu12 * e2 / e1;
  }

  /** Reduced stiffness Q in plane stress along the ply's own axes, MPa. */
  public PlaneStiffness reduced() {
    double k = 1 - nu12 * nu21();
    return new PlaneStiffness(e1 / k, nu12 * e2 / k, e2 / k, 0, 0, g12);
  }

  /**
   * The strain limits; where only strengths are known, those of straight stress-strain lines up to
   * them.
   */
  public Optional<StrainLimits> limits() {
    return strainLimits.isPresent() ? strainLimits : strength.map(known -> known.limits(this));
  }

  /** Whether axes 1 and 2 may change places, as in a balanced cloth. */
  public boolean square() {
    return e1 == e2
        && strength.map(s -> s.xt() == s.yt() && s.xc() == s.yc()).orElse(true)
        && strainLimits.map(e -> e.e1t() == e.e2t() && e.e1c() == e.e2c()).orElse(true)
        && expansion.map(a -> a.along1() == a.along2()).orElse(true);
  }
}
