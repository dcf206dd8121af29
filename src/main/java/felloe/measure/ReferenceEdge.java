package felloe.measure;

import felloe.geometry.Point;

/**
 * A straight edge that distances are taken from: an edge of the plate, or of a square that it is
 * clamped against. Left and bottom stand at right angles.
 */
public enum ReferenceEdge {
  /** Distances run to the right. */
  LEFT("left edge", 1, 0),
  /** Distances run to the left. */
  RIGHT("right edge", -1, 0),
  /** Distances run up. */
  BOTTOM("bottom edge", 0, 1),
  /** Distances run down. */
  TOP("top edge", 0, -1);

  private final String words;
  private final Point inward;

  ReferenceEdge(String words, double x, double y) {
    this.words = words;
    this.inward = new Point(x, y);
  }

  /** As a measured file writes it, such as {@code left edge}. */
  public String words() {
    return words;
  }

  /** The direction, of length one, in which the distance from it grows. */
  public Point inward() {
    return inward;
  }
}
