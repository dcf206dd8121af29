package felloe.layup;

import felloe.laminate.PlyStrength;
import java.util.Optional;

/**
 * A cloth on a roll.
 *
 * @param name as plans name it
 * @param title in words
 * @param fibre what it is woven of
 * @param arealWeight g/m²
 * @param weave how its yarns run
 * @param rollWidth mm
 * @param stiffness of one cured ply
 * @param strength of one cured ply at the fraction of its stiffness, where it is known
 * @param stripClass class of specimen of ISO 14125, 1 to 4
 * @param bases where the figures come from
 */
public record Cloth(
    String name,
    String title,
    Fibre fibre,
    double arealWeight,
    Weave weave,
    double rollWidth,
    Stiffness stiffness,
    Optional<PlyStrength> strength,
    int stripClass,
    Bases bases) {

  /** A cloth whose strength is not known. */
  public Cloth(
      String name,
      String title,
      Fibre fibre,
      double arealWeight,
      Weave weave,
      double rollWidth,
      Stiffness stiffness,
      int stripClass,
      Bases bases) {
    this(
        name,
        title,
        fibre,
        arealWeight,
        weave,
        rollWidth,
        stiffness,
        Optional.empty(),
        stripClass,
        bases);
  }

  /**
   * The strength at another fraction: what fibres carry goes with their share, so that a ply bears
   * the same strain; shear is left as it is.
   */
  Optional<PlyStrength> strengthAt(double fraction) {
    double factor = fraction / stiffness.fraction();
    return strength.map(
        s ->
            new PlyStrength(
                s.xt() * factor, s.xc() * factor, s.yt() * factor, s.yc() * factor, s.s()));
  }

  /**
   * Stiffness of a cured ply in its plane.
   *
   * @param e1 modulus along the warp, GPa
   * @param e2 modulus along the weft, GPa
   * @param g12 shear modulus, GPa
   * @param nu12 Poisson's ratio
   * @param fraction fibre volume fraction that the figures are for
   */
  public record Stiffness(double e1, double e2, double g12, double nu12, double fraction) {

    /**
     * The stiffness at another fraction. What fibres carry goes with their share; shear, which the
     * resin carries, is left as it is. Good to some 10 % between 0.3 and 0.6.
     */
    public Stiffness at(double other) {
      double factor = other / fraction;
      return new Stiffness(e1 * factor, e2 * factor, g12, nu12, other);
    }
  }

  /**
   * Thickness of a ply, mm: areal weight over fibre density and fraction.
   *
   * @param fraction fibre volume fraction
   */
  public double plyThickness(double fraction) {
    return arealWeight / (1000 * fibre.density() * fraction);
  }

  /**
   * Fibre volume fraction of a laminate of this cloth.
   *
   * @param plies their number
   * @param thickness of all, mm
   */
  public double fraction(int plies, double thickness) {
    return plies * arealWeight / (1000 * fibre.density() * thickness);
  }
}
