package felloe.plate;

import felloe.geometry.Numbers;
import java.util.Optional;

/**
 * A sheet material.
 *
 * @param name the key used in shape files, such as {@code carbon-laminate}
 * @param title its name in words
 * @param kind its family
 * @param density g/cm³
 * @param basis where the density comes from
 * @param fibre of a laminate; empty for all else
 * @param laidUp whether the maker lays it up of cloth and resin; else it is bought as a sheet
 */
public record Material(
    String name,
    String title,
    MaterialKind kind,
    double density,
    String basis,
    Optional<FibreKind> fibre,
    boolean laidUp) {

  /** The basis of a density that the maker wrote. */
  public static final String OWN = "the shape file";

  /** Whether the density is the maker's own. */
  public boolean own() {
    return basis.equals(OWN);
  }

  /**
   * Refuses a density that is not above zero, and a fibre where there is none or none where there
   * is one.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Material {
    Numbers.positive("density", density);
    if (fibre.isPresent() != (kind == MaterialKind.LAMINATE)) {
      throw new IllegalArgumentException("fibre: a laminate has one, " + kind + " has none");
    }
  }

  /** A material that is bought as a sheet; of a laminate the fibre is not told. */
  public Material(String name, String title, MaterialKind kind, double density, String basis) {
    this(
        name,
        title,
        kind,
        density,
        basis,
        kind == MaterialKind.LAMINATE ? Optional.of(FibreKind.OTHER) : Optional.empty(),
        false);
  }

  /** The same with a density that the maker weighed. */
  public Material weighed(double own) {
    return new Material(name, title, kind, own, OWN, fibre, laidUp);
  }
}
