package felloe.geometry;

/**
 * A rigid motion of the plane: an optional mirroring at the y axis (x becomes -x), then a turn
 * about the origin, then a shift.
 *
 * @param mirrored whether x changes sign first
 * @param turn angle of the turn, radians, counter-clockwise
 * @param shift the shift, millimetres
 */
public record RigidTransform(boolean mirrored, double turn, Point shift) {

  /** The motion that leaves everything where it is. */
  public static final RigidTransform NONE = new RigidTransform(false, 0, Point.ORIGIN);

  /** Mirroring left and right: x becomes -x. */
  public static final RigidTransform MIRROR = new RigidTransform(true, 0, Point.ORIGIN);

  /**
   * Refuses a turn that is not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public RigidTransform {
    Numbers.finite("turn", turn);
  }

  /** A turn about the origin, radians counter-clockwise. */
  public static RigidTransform turn(double angle) {
    return new RigidTransform(false, angle, Point.ORIGIN);
  }

  /** A turn about a point, radians counter-clockwise. */
  public static RigidTransform turnAbout(Point pivot, double angle) {
    Point moved = turn(angle).of(pivot);
    return new RigidTransform(false, angle, pivot.minus(moved));
  }

  public static RigidTransform shift(double dx, double dy) {
    return new RigidTransform(false, 0, new Point(dx, dy));
  }

  /** Where a point goes. Quarter turns are exact. */
  public Point of(Point p) {
    double x = mirrored ? -p.x() : p.x();
    double cos = cos();
    double sin = sin();
    return new Point(cos * x - sin * p.y() + shift.x(), sin * x + cos * p.y() + shift.y());
  }

  /** The motion that does this one first and then {@code next}. */
  public RigidTransform then(RigidTransform next) {
    double both = next.mirrored ? next.turn - turn : next.turn + turn;
    return new RigidTransform(mirrored != next.mirrored, both, next.of(shift));
  }

  private double cos() {
    double quarters = turn / (Math.PI / 2);
    return quarters == Math.rint(quarters) ? exact((long) quarters + 1) : Math.cos(turn);
  }

  private double sin() {
    double quarters = turn / (Math.PI / 2);
    return quarters == Math.rint(quarters) ? exact((long) quarters) : Math.sin(turn);
  }

  private static double exact(long quarters) {
    return switch ((int) Math.floorMod(quarters, 4L)) {
      case 1 -> 1;
      case 3 -> -1;
      default -> 0;
    };
  }
}
