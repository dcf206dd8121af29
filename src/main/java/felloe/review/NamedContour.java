package felloe.review;

import felloe.geometry.Contour;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;

/**
 * A contour of the plate with the name that findings give it.
 *
 * @param label the window's or hole's label, or {@code outline}
 * @param contour its line
 * @param place where the maker wrote it; the file as a whole for the outline
 * @param isHubHole whether it stands where the hub has it
 */
record NamedContour(String label, Contour contour, Place place, boolean isHubHole) {

  static NamedContour outline(Plate plate) {
    return new NamedContour("outline", plate.outline(), wholeFile(plate), false);
  }

  static NamedContour of(Window window) {
    return new NamedContour(window.label(), window.contour(), window.place(), false);
  }

  static NamedContour of(Hole hole) {
    return new NamedContour(
        hole.label(), hole.contour(), hole.place(), hole.role() == HoleRole.BOLT);
  }

  /** All edges in the order of the region's contours: outline, windows, holes. */
  static List<NamedContour> all(Plate plate) {
    List<NamedContour> edges = new ArrayList<>();
    edges.add(outline(plate));
    plate.windows().forEach(window -> edges.add(of(window)));
    plate.holes().forEach(hole -> edges.add(of(hole)));
    return edges;
  }

  /**
   * What two edges lack that are too near each other. A hub hole stands where the hub has it.
   *
   * @param lacks how much that is, in words
   */
  static String apart(NamedContour first, NamedContour second, String lacks) {
    if (first.isHubHole() && second.isHubHole()) {
      return lacks
          + "; hub holes stay where the hub has them: another hub has a wider circle, fewer or"
          + " smaller screws";
    }
    if (first.isHubHole() || second.isHubHole()) {
      return lacks + "; hub holes stay where the hub has them";
    }
    return lacks;
  }

  /** What is to be said of the plate as a whole points at its file. */
  static Place wholeFile(Plate plate) {
    Place stock = plate.stock().place();
    return stock.line() == 0 ? stock : Place.ofFile(stock.file());
  }

  /** Whether a hole takes a fastener, so that its edge distance and pitch matter. */
  static boolean takesFastener(Hole hole, Limits limits) {
    return switch (hole.role()) {
      case BORE, WINDOW -> false;
      case BOLT, GRIP -> true;
      case OTHER -> hole.diameter() <= limits.figure("fastener-hole");
    };
  }

  /** The row of limits for a hole: those of the material for hub bolts, light duty for others. */
  static String row(Plate plate, HoleRole role) {
    return role == HoleRole.BOLT ? kind(plate) : "light";
  }

  /** The material's kind as rows of limits name it. */
  static String kind(Plate plate) {
    return switch (plate.stock().material().kind()) {
      case LAMINATE -> "laminate";
      case METAL -> "metal";
      case WOOD -> "wood";
      case PLASTIC -> "plastic";
    };
  }
}
