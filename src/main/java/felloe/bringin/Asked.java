package felloe.bringin;

/**
 * What the maker calls what may be said of a drawing, for cures.
 *
 * @param width of all that is drawn
 * @param scale millimetres for each unit
 * @param gap within which ends are one
 */
public record Asked(String width, String scale, String gap) {

  String size() {
    return "give the width of the part with "
        + width
        + " 280, or mm for each unit with "
        + scale
        + " (1 for mm, 25.4 for inches)";
  }
}
