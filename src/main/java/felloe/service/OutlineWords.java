package felloe.service;

import felloe.yaml.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What makers call outlines, and which family of the shape file makes each. */
final class OutlineWords {

  /**
   * How some outlines are made.
   *
   * @param family that makes them
   * @param how with which keys
   * @param words what they are called, in small letters with hyphens
   */
  record Advice(String family, String how, List<String> words) {

    private static Advice of(String family, String words, String how) {
      return new Advice(family, how, List.of(words.split(" ")));
    }
  }

  /** All advice; no word stands in two. */
  static final List<Advice> ALL =
      List.of(
          Advice.of(
              "round",
              "circle circular disc disk ring hoop o classic full-round kart rally",
              "its 'diameter' alone makes a whole circle, so take 'bottom' out"),
          Advice.of(
              "round",
              "d d-type half-round flat-bottom flat-bottomed bottom-flat flat segment",
              "'bottom' cuts it off flat, 'distance' below the hub axis"),
          Advice.of(
              "round",
              "flat-top flat-topped top-flat double-d double-flat two-flats",
              "'top' cuts it off flat as 'bottom' does; give one or both"),
          Advice.of(
              "round",
              "spoke spokes spoked two-spoke three-spoke four-spoke 2-spoke 3-spoke 4-spoke",
              "spokes are windows that are left out: 'spokes' of 'derived' tell where each points"),
          Advice.of(
              "four-sided",
              "square rectangle rectangular rect oblong box quad quadrilateral four-corners"
                  + " rounded-square rounded-rectangle squircle stadium capsule pill racetrack",
              "'width' and 'height', 'radius' of the corners, and 'rise' bows the edges outward"),
          Advice.of(
              "path",
              "oval ellipse elliptical elliptic egg superellipse",
              "an ellipse is two arcs of path data: M -150,0 A 150,100 0 0 1 150,0 A 150,100 0 0 1"
                  + " -150,0 Z is 300 mm wide and 200 mm high"),
          Advice.of(
              "path",
              "curve curved spline bezier svg drawing drawn sketch freehand freeform free custom"
                  + " vector dxf cad photo image picture scan trace bean kidney heart",
              "draw one closed curve in mm with the hub axis at 0, 0, save it as SVG, and copy its"
                  + " path data"),
          Advice.of(
              "points",
              "polygon triangle triangular pentagon pentagonal hexagon hexagonal hex heptagon"
                  + " octagon octagonal decagon diamond rhombus kite star trapezoid trapezium"
                  + " trapezoidal parallelogram shield",
              "each of its 'corners' has its own 'radius'; with 'half: true' you give one side"
                  + " alone"),
          Advice.of(
              "points",
              "butterfly yoke u open open-top open-topped bow-tie bowtie wing wings horn horns"
                  + " formula single-seater aircraft plane glider handlebar horseshoe",
              "with 'half: true' you give one side alone; corners that lie inward open it at the"
                  + " top or the bottom, and 'rise' bows an edge"),
          Advice.of(
              "points",
              "corner corners point coordinates coordinate vertices vertex polyline list csv xy",
              "list them as 'corners', in order"));

  private static final int LONG_ENOUGH = 4;

  private OutlineWords() {}

  /** What to do for an outline that is called so. */
  static Optional<String> named(String word) {
    return find(plain(word)).map(OutlineWords::take);
  }

  /** What to do for an outline whose name is near; short names are near to everything. */
  static Optional<String> near(String word) {
    List<String> words = new ArrayList<>();
    ALL.forEach(advice -> words.addAll(advice.words()));
    words.removeIf(one -> one.length() < LONG_ENOUGH);
    return Nearest.to(plain(word), words)
        .map(near -> "did you mean " + near + "? " + take(find(near).orElseThrow()));
  }

  private static String take(Advice advice) {
    return "take " + advice.family() + ": " + advice.how() + ";";
  }

  private static Optional<Advice> find(String plain) {
    return ALL.stream().filter(advice -> advice.words().contains(plain)).findFirst();
  }

  /** Small letters, hyphens for blanks and underscores, without an end that tells nothing. */
  static String plain(String word) {
    String hyphens = word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
    return hyphens.replaceFirst("(?<=.)-?(shape|shaped|outline|wheel)$", "");
  }
}
