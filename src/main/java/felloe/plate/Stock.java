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
 * @param laid what the stack comes to, when it is laid up and planned
 */
public record Stock(
    Material material,
    double thickness,
    Optional<Sheet> sheet,
    Face templateFace,
    LayupWish layup,
    Place place,
    Optional<LaidSheet> laid) {

  /** Stock for which nothing is asked of a lay-up. */
  public Stock(
      Material material, double thickness, Optional<Sheet> sheet, Face templateFace, Place place) {
    this(material, thickness, sheet, templateFace, LayupWish.NONE, place);
  }

  /** Stock whose stack was not planned. */
  public Stock(
      Material material,
      double thickness,
      Optional<Sheet> sheet,
      Face templateFace,
      LayupWish layup,
      Place place) {
    this(material, thickness, sheet, templateFace, layup, place, Optional.empty());
  }

  /** The same with its stack planned. */
  public Stock laid(LaidSheet sheet) {
    return new Stock(
        material, thickness, this.sheet, templateFace, layup, place, Optional.of(sheet));
  }

  /** The same as thick as said, its stack not planned. */
  public Stock thick(double other) {
    return new Stock(material, other, sheet, templateFace, layup, place);
  }

  /** What it measures when it is made, mm: what the stack comes to where one is planned. */
  public double asMade() {
    return laid.map(LaidSheet::thickness).orElse(thickness);
  }

  /** Mass of a piece of it, g: of the stack as planned where there is one. */
  public double mass(double area) {
    return laid.map(l -> Weights.sheet(area, l.thickness(), l.density()))
        .orElseGet(() -> Weights.sheet(area, thickness, material.density()));
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
