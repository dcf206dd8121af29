package felloe.board;

import felloe.geometry.Point;
import java.util.List;

/**
 * What can be taken hold of on the drawing.
 *
 * @param path the value that it moves
 * @param kind how it moves
 * @param at where it is
 * @param origin where the axes of what is written lie, for a window's own corners
 * @param turn how these axes are turned, radians; of a rise, its direction
 * @param most how far a rise may go either way, mm
 * @param stops rises to which it goes by itself
 */
record Handle(
    String path, Kind kind, Point at, Point origin, double turn, double most, List<Double> stops) {

  Handle {
    stops = List.copyOf(stops);
  }

  /** What is no rise. */
  Handle(String path, Kind kind, Point at, Point origin, double turn) {
    this(path, kind, at, origin, turn, 0, List.of());
  }

  /** How a handle moves. */
  enum Kind {
    /** Anywhere: it writes a point. */
    POINT,
    /** Round the hub axis: it writes a clock position. */
    CLOCK,
    /** Out and in from the middle of an edge: it writes a rise. */
    RISE
  }

  /** A place on the plate as it is written. */
  Point written(Point place) {
    Point off = place.minus(origin);
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return new Point(off.x() * cos + off.y() * sin, off.y() * cos - off.x() * sin);
  }

  /** A written point as a place on the plate. */
  Point placed(Point written) {
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return origin.plus(
        new Point(written.x() * cos - written.y() * sin, written.x() * sin + written.y() * cos));
  }
}
