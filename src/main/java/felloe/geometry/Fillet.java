package felloe.geometry;

import java.util.List;
import java.util.Optional;

/**
 * A rounded corner: an arc tangent to both of two segments that met in it, in closed form. Works
 * between lines and arcs in any pairing, for corners that turn left or right. Tangent to 1e-9
 * radians.
 *
 * @param before what is left of the segment before the corner; none when the arc takes all of it
 * @param arc the rounding
 * @param after what is left of the segment after the corner; none when the arc takes all of it
 */
public record Fillet(Optional<Segment> before, Arc arc, Optional<Segment> after) {

  /**
   * Rounds the corner between two segments.
   *
   * @param before the segment that ends in the corner
   * @param after the segment that starts in the corner
   * @param radius mm, above zero
   * @throws FilletException when the radius has no room, with the largest that has
   * @throws GeometryException when the segments do not share the corner, or there is none because
   *     one runs on into the other
   * @throws IllegalArgumentException when the radius is not finite and above zero
   */
  public static Fillet between(Segment before, Segment after, double radius) {
    Numbers.positive("radius", radius);
    if (!before.to().equals(after.from())) {
      throw new GeometryException("the segments do not meet in a corner", before.to());
    }
    if (FilletContact.smooth(before, after)) {
      throw new GeometryException("the segments run on without a corner", before.to());
    }
    Corners corners = Corners.open(before, after, radius);
    corners.refuseCrowded();
    FilletContact touch = FilletContact.of(before, after, radius).orElseThrow();
    return new Fillet(
        rest(before, before.from(), touch.start()),
        Arc.about(touch.centre(), touch.start(), touch.end(), touch.left()),
        rest(after, touch.end(), after.to()));
  }

  private static Optional<Segment> rest(Segment segment, Point from, Point to) {
    return from.near(to, Tolerances.SAME_POINT)
        ? Optional.empty()
        : Optional.of(segment.between(from, to));
  }

  /**
   * Rounds every corner of a closed chain.
   *
   * @param chain segments in order, each starting where the one before ends, the first where the
   *     last ends
   * @param radii one radius a segment, mm: the rounding of the corner in which it starts; 0 leaves
   *     the corner sharp, and a place where the chain runs on without a corner stays as it is
   * @throws FilletException with every radius that has no room
   * @throws GeometryException when the chain is open or the rounded chain crosses itself
   * @throws IllegalArgumentException when a radius is negative or not finite, or there is not one
   *     for each corner
   */
  public static Contour chain(List<Segment> chain, double... radii) {
    Corners corners = new Corners(chain, radii);
    corners.refuseCrowded();
    return new Contour(corners.rounded());
  }

  /**
   * Every radius of a closed chain that has no room; empty when {@link #chain} can round it.
   *
   * @throws IllegalArgumentException as {@link #chain}
   */
  public static List<FilletFault> faults(List<Segment> chain, double... radii) {
    return new Corners(chain, radii).faults();
  }
}
