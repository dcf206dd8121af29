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

  /** A lay-up is told of when it is so much thinner or thicker than was asked for, mm. */
  private static final double TOLD = 0.01;

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

  /** What the stack comes to, mm, where that is another thickness than was asked for. */
  public Optional<Double> madeOtherwise() {
    return laid.map(LaidSheet::thickness).filter(made -> Math.abs(made - thickness) >= TOLD);
  }

  /** The thickness that was asked for and, where it is another, what the stack comes to. */
  public String thicknessWords() {
    return mm(thickness) + laidUpWords();
  }

  /** What the stack comes to, behind a comma; empty where it is as thick as was asked for. */
  public String laidUpWords() {
    return madeOtherwise().map(made -> ", laid up " + mm(made)).orElse("");
  }

  private static String mm(double length) {
    return Numbers.brief(length, 2) + " mm";
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
