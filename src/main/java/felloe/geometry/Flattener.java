package felloe.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Contours as chords, each of which remembers the segment it came from. The only place where an arc
 * is flattened.
 */
final class Flattener {

  private static final double COARSEST = Math.PI / 8;

  private final double tolerance;
  private final List<Line> lines = new ArrayList<>();
  private final List<Integer> owners = new ArrayList<>();

  /**
   * An empty collection.
   *
   * @param tolerance greatest distance of a chord from its arc, mm
   */
  Flattener(double tolerance) {
    this.tolerance = tolerance;
  }

  /**
   * Adds a contour and gives its vertices, in order, the first not repeated at the end.
   *
   * @param firstOwner number of the contour's first segment; the others follow
   */
  List<Point> add(Contour contour, int firstOwner) {
    List<Point> ring = new ArrayList<>();
    int owner = firstOwner;
    for (Segment segment : contour.segments()) {
      Point start = segment.from();
      for (Point end : vertices(segment, tolerance)) {
        ring.add(start);
        lines.add(new Line(start, end));
        owners.add(owner);
        start = end;
      }
      owner++;
    }
    return ring;
  }

  /** The number of the segment whose chord a point lies on, or -1 when it lies on none. */
  Finder finder() {
    BoxIndex index = new BoxIndex(lines.stream().map(Line::box).toList());
    return p -> {
      int chord = index.nearest(p, i -> lines.get(i).distance(p));
      return lines.get(chord).distance(p) <= tolerance ? owners.get(chord) : -1;
    };
  }

  /** Finds the source of a point. */
  @FunctionalInterface
  interface Finder {
    /** Number of the source segment, or -1. */
    int owner(Point p);
  }

  /**
   * The ends of the chords of a segment. Inner vertices of an arc stand at fixed angles that depend
   * on its radius alone, so that arcs on one circle share their chords.
   */
  static List<Point> vertices(Segment segment, double tolerance) {
    if (!(segment instanceof Arc arc)) {
      return List.of(segment.to());
    }
    int perTurn = perTurn(arc.radius(), tolerance);
    double step = 2 * Math.PI / perTurn;
    double start = arc.startAngle();
    boolean forward = arc.sweep() > 0;
    double end = start + arc.sweep();
    List<Point> ends = new ArrayList<>();
    double margin = Math.max(step * 1e-3, 2 * Tolerances.SAME_POINT / arc.radius());
    long k = (long) (forward ? Math.floor(start / step) + 1 : Math.ceil(start / step) - 1);
    for (; forward ? k * step < end - margin : k * step > end + margin; k += forward ? 1 : -1) {
      if (Math.abs(k * step - start) > margin) {
        double angle = Math.floorMod(k, (long) perTurn) * step;
        ends.add(arc.centre().plus(Point.polar(arc.radius(), angle)));
      }
    }
    ends.add(arc.to());
    return ends;
  }

  /** Chords for a whole turn: an even number, so that a half turn is a whole number too. */
  static int perTurn(double radius, double tolerance) {
    double step = 2 * Math.acos(Math.max(0, 1 - tolerance / radius));
    return 2 * (int) Math.ceil(Math.PI / Math.min(step, COARSEST));
  }
}
