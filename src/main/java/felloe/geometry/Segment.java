package felloe.geometry;

import java.util.List;

/**
 * A piece of a contour: a straight line or a circular arc, with a direction of travel. Millimetres
 * and radians.
 */
public sealed interface Segment permits Line, Arc {

  /** Where it starts. */
  Point from();

  /** Where it ends. */
  Point to();

  /** Length along the segment. */
  double length();

  /**
   * The point at a fraction of the length.
   *
   * @param fraction 0 at the start, 1 at the end
   */
  Point at(double fraction);

  /** The direction of travel at a fraction of the length, as a vector of length one. */
  Point tangent(double fraction);

  /** Curvature, 1/mm: positive where it turns left, 0 for a line. */
  double curvature();

  /** The same points, travelled the other way. */
  Segment reversed();

  /** The segment after a rigid motion. */
  Segment moved(RigidTransform motion);

  /** The smallest upright box round it. */
  Box box();

  /** The point of the segment that lies nearest to {@code p}. */
  Point nearest(Point p);

  /**
   * The ends of its chords, in order; all lie on the segment, and the last is its end.
   *
   * @param tolerance greatest distance of a chord from it, mm
   */
  default List<Point> chords(double tolerance) {
    return Flattener.vertices(this, tolerance);
  }

  /** The distance from {@code p} to the nearest point of the segment. */
  default double distance(Point p) {
    return nearest(p).distance(p);
  }

  /** The same curve between other ends, which must be points of it, travelled the same way. */
  Segment between(Point newFrom, Point newTo);
}
