package felloe.cutting;

import felloe.geometry.Contour;

/**
 * The path of the middle of the cutter or beam along one edge. A window that the cutter can enter
 * only in parts has several; so has an outline with a hollow whose mouth is narrower than the
 * cutter.
 *
 * @param feature the edge
 * @param finish where the edge ends up, exact
 * @param path where the middle of the cutter goes; the same as {@code finish} without compensation
 */
public record CutLine(CutFeature feature, Contour finish, Contour path) {

  /**
   * Whether the cutter runs inside a closed edge, with the waste inside its path: in every window
   * and hole, and in a closed hollow of the outline.
   */
  public boolean inside() {
    return feature.kind() != CutFeature.Kind.OUTLINE
        || !(path.equals(finish) || path.contains(finish.segments().get(0).from()));
  }
}
