package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;

/**
 * Where a feature lies: turned about its own origin, then shifted.
 *
 * @param at where its origin goes, mm
 * @param turn radians counter-clockwise
 */
public record Placing(Point at, double turn) {

  /** At the hub axis, not turned. */
  public static final Placing NONE = new Placing(Point.ORIGIN, 0);

  /**
   * Refuses a turn that is not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Placing {
    Numbers.finite("turn", turn);
  }

  /** A placing with its turn in degrees, as shape files write it; quarter turns are exact. */
  public static Placing degrees(Point at, double degrees) {
    // A multiple of pi / 2 is what Motion knows to be exact.
    double turn = degrees % 90 == 0 ? degrees / 90 * (Math.PI / 2) : Math.toRadians(degrees);
    return new Placing(at, turn);
  }

  /** The motion from the feature's own frame to the plate. */
  public RigidTransform motion() {
    return new RigidTransform(false, turn, at);
  }

  /** The contour where it belongs. */
  public Contour of(Contour contour) {
    return contour.moved(motion());
  }

  /** The point where it belongs. */
  public Point of(Point point) {
    return motion().of(point);
  }

  /** The mirror image of a placed contour on the other side of the y axis: x becomes -x. */
  public static Contour mirrored(Contour placed) {
    return placed.moved(RigidTransform.MIRROR);
  }

  /** The mirror image of a placed point on the other side of the y axis: x becomes -x. */
  public static Point mirrored(Point placed) {
    return RigidTransform.MIRROR.of(placed);
  }
}
