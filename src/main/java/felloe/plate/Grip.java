package felloe.plate;

import felloe.geometry.Numbers;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A grip along a stretch of the rim, as the maker describes it. Lengths are millimetres, over the
 * wrap where there is one; distances from the plate's edge are inward.
 *
 * @param label short name, unique on the plate, such as {@code GR1}
 * @param path its way in the shape file, such as {@code grips[0]}
 * @param along the stretch of the outline that it lies on
 * @param form how it is made
 * @param faces the faces of the plate that it lies on
 * @param profile its section where nothing changes it
 * @param swell where it is thicker
 * @param thumbRest where a flat for the thumb is sunk into its front
 * @param taper how its ends run out
 * @param wrap thickness of the leather, tape or tube that is put round it; 0 for none
 * @param material what it is made of
 * @param bonded whether it is glued to the plate over its whole face; else only screws hold it
 * @param place where the maker wrote it
 * @param places where each key was written, by its way in the grip, such as {@code swell.at}
 */
public record Grip(
    String label,
    String path,
    Stretch along,
    Form form,
    Faces faces,
    Profile profile,
    Optional<Swell> swell,
    Optional<ThumbRest> thumbRest,
    Optional<Taper> taper,
    double wrap,
    GripMaterial material,
    boolean bonded,
    Place place,
    Map<String, Place> places) {

  /**
   * Copies the places.
   *
   * @throws IllegalArgumentException naming a field that is not finite or below zero
   */
  public Grip {
    Objects.requireNonNull(along, "along");
    Objects.requireNonNull(profile, "profile");
    Objects.requireNonNull(material, "material");
    notNegative("wrap", wrap);
    SortedMap<String, Place> sorted = new TreeMap<>(places);
    places = Collections.unmodifiableSortedMap(sorted);
  }

  /** How a grip is made. */
  public enum Form {
    /** Flat: sawn or milled of sheet, its edges rounded afterwards. */
    SCALE,
    /** Of any form, printed or carved; past the plate's edge it also covers that edge. */
    SHELL
  }

  /** Which faces of the plate it lies on. */
  public enum Faces {
    /** The one that the driver sees. */
    FRONT,
    /** The one toward the hub. */
    BACK,
    /** Both. */
    BOTH;

    /** Whether a face is among them. */
    public boolean has(Face face) {
      return this == BOTH || name().equals(face.name());
    }
  }

  /** The stretch of the outline that a grip lies on. */
  public sealed interface Stretch permits AllRound, BetweenClocks, BetweenHoles {}

  /** All round the outline. */
  public record AllRound() implements Stretch {}

  /**
   * Clockwise from one direction to another, as seen from the hub axis.
   *
   * @param from radians counter-clockwise from +x
   * @param to radians counter-clockwise from +x
   */
  public record BetweenClocks(double from, double to) implements Stretch {}

  /**
   * From beside one hole clockwise to beside another.
   *
   * @param from label of the first hole
   * @param to label of the last
   * @param beyond how far the grip goes on past each along the outline, mm
   */
  public record BetweenHoles(String from, String to, double beyond) implements Stretch {}

  /**
   * The section of a grip.
   *
   * @param pastEdge how far it stands out past the plate's edge
   * @param over how far in over the plate it reaches from the edge
   * @param front its height above the front face, where it lies on it
   * @param back its height above the back face, where it lies on it
   * @param round radius of the rounding along its outer edge
   * @param innerRound radius of the rounding along its inner edge
   */
  public record Profile(
      double pastEdge, double over, double front, double back, double round, double innerRound) {

    /**
     * Refuses what has no breadth and figures below zero.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Profile {
      Numbers.finite("pastEdge", pastEdge);
      Numbers.positive("over", over);
      notNegative("front", front);
      notNegative("back", back);
      notNegative("round", round);
      notNegative("innerRound", innerRound);
    }

    /** Its height above a face. */
    public double height(Face face) {
      return face == Face.FRONT ? front : back;
    }
  }

  /**
   * A place where a grip is thicker: a smooth hump, a full wave of the cosine from foot to foot.
   *
   * @param at direction of its middle from the hub axis, radians counter-clockwise from +x
   * @param length from foot to foot along the outline, mm
   * @param front what it adds to the height in front
   * @param back what it adds to the height behind, where the fingers lie
   * @param edge what it adds past the edge
   */
  public record Swell(double at, double length, double front, double back, double edge) {}

  /**
   * A flat for the thumb, sunk into the front.
   *
   * @param at direction of its middle from the hub axis, radians counter-clockwise from +x
   * @param length along the outline, mm, its two slopes counted in
   * @param depth how far it is sunk, mm
   */
  public record ThumbRest(double at, double length, double depth) {}

  /**
   * How the ends run out.
   *
   * @param length over which the height falls, mm along the outline
   * @param to height that is left at the very end, mm
   */
  public record Taper(double length, double to) {}

  /**
   * What a grip is made of.
   *
   * @param name the key used in shape files
   * @param title its name in words
   * @param kind its family
   * @param density g/cm³
   * @param modulus Young's modulus that a bonded grip is counted with, MPa
   * @param basis where density and modulus come from
   */
  public record GripMaterial(
      String name, String title, MaterialKind kind, double density, double modulus, String basis) {

    /**
     * Refuses figures that are not above zero.
     *
     * @throws IllegalArgumentException naming the field
     */
    public GripMaterial {
      Numbers.positive("density", density);
      Numbers.positive("modulus", modulus);
    }

    /** As the material of a sheet. */
    public Material sheet() {
      return new Material(name, title, kind, density, basis);
    }
  }

  private static void notNegative(String name, double value) {
    if (Numbers.finite(name, value) < 0) {
      throw new IllegalArgumentException(name + " must not be below zero");
    }
  }

  /** The faces it lies on, the front first. */
  public List<Face> on() {
    return List.of(Face.values()).stream().filter(faces::has).toList();
  }

  /** Where a key was written; the grip's place when it was left out. */
  public Place place(String key) {
    return places.getOrDefault(key, place);
  }
}
