package felloe.plate;

import felloe.geometry.Numbers;
import java.util.Optional;

/**
 * What the plate is cut from.
 *
 * @param material the sheet material
 * @param thickness mm, above zero
 * @param sheet size of the sheet, when the maker gave one
 * @param templateFace the face that the template is stuck to or traced on
 * @param layup how the maker wants to lay it up
 * @param place where the maker wrote it
 */
public record Stock(
    Material material,
    double thickness,
    Optional<Sheet> sheet,
    Face templateFace,
    LayupWish layup,
    Place place) {

  /** Stock for which nothing is asked of a lay-up. */
  public Stock(
      Material material, double thickness, Optional<Sheet> sheet, Face templateFace, Place place) {
    this(material, thickness, sheet, templateFace, LayupWish.NONE, place);
  }

  /**
   * Refuses a thickness that is not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Stock {
    Numbers.positive("thickness", thickness);
  }
}
