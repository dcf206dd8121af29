package felloe.bringin;

/**
 * What the maker calls what may be said of a drawing, for cures.
 *
 * @param width of all that is drawn
 * @param scale millimetres for each unit
 * @param gap within which ends are one
 * @param thickness of a part on a photo
 * @param cameraHeight over the paper, when a photo was taken
 * @param frame how the sheets for a photo are printed
 */
public record Asked(
    String width, String scale, String gap, String thickness, String cameraHeight, String frame) {

  String size() {
    return "give the width of the part with "
        + width
        + " 280, or mm for each unit with "
        + scale
        + " (1 for mm, 25.4 for inches)";
  }
}
