package felloe.geometry;

/**
 * An upright rectangle, in millimetres.
 *
 * @param minX left side
 * @param minY lower side
 * @param maxX right side, not left of {@code minX}
 * @param maxY upper side, not below {@code minY}
 */
public record Box(double minX, double minY, double maxX, double maxY) {

  /**
   * Refuses sides that are not finite or swapped.
   *
   * @throws IllegalArgumentException naming the side
   */
  public Box {
    Numbers.finite("minX", minX);
    Numbers.finite("minY", minY);
    Numbers.finite("maxX", maxX);
    Numbers.finite("maxY", maxY);
    if (minX > maxX || minY > maxY) {
      throw new IllegalArgumentException("box sides are swapped");
    }
  }

  /** The smallest box round two points. */
  public static Box of(Point a, Point b) {
    return new Box(
        Math.min(a.x(), b.x()), Math.min(a.y(), b.y()),
        Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
  }

  /** The smallest box round both. */
  public Box union(Box other) {
    return new Box(
        Math.min(minX, other.minX), Math.min(minY, other.minY),
        Math.max(maxX, other.maxX), Math.max(maxY, other.maxY));
  }

  /** The box with every side moved outward. */
  public Box grown(double by) {
    return new Box(minX - by, minY - by, maxX + by, maxY + by);
  }

  /** Whether the boxes share a point. */
  public boolean touches(Box other) {
    return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
  }

  /** Whether another box lies in this one, sides counted. */
  public boolean contains(Box other) {
    return minX <= other.minX && minY <= other.minY && maxX >= other.maxX && maxY >= other.maxY;
  }

  /** Whether a point lies in the box or on its side. */
  public boolean contains(Point p) {
    return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
  }

  /** Width in x. */
  public double width() {
    return maxX - minX;
  }

  /** Height in y. */
  public double height() {
    return maxY - minY;
  }

  /** The middle. */
  public Point centre() {
    return new Point((minX + maxX) / 2, (minY + maxY) / 2);
  }
}
