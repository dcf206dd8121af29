package felloe.plate;

import felloe.geometry.Numbers;

/**
 * A sheet material.
 *
 * @param name the key used in shape files, such as {@code carbon-laminate}
 * @param title its name in words
 * @param kind its family
 * @param density g/cm³
 * @param basis where the density comes from
 * @param laidUp whether the maker lays it up of cloth and resin; else it is bought as a sheet
 */
public record Material(
    String name, String title, MaterialKind kind, double density, String basis, boolean laidUp) {

  /** The basis of a density that the maker wrote. */
  public static final String OWN = "the shape file";

  /** Whether the density is the maker's own. */
  public boolean own() {
    return basis.equals(OWN);
  }

  /**
   * Refuses a density that is not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Material {
    Numbers.positive("density", density);
  }

  /** A material that is bought as a sheet. */
  public Material(String name, String title, MaterialKind kind, double density, String basis) {
    this(name, title, kind, density, basis, false);
  }
}
