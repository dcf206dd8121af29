package felloe.board;

import felloe.board.Handle.Kind;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a handle that is moved comes to lie, and what that writes. */
final class Snap {

  /** Nearer than this to an axis, or to what stands level or upright with it, it goes there, mm. */
  private static final double NEAR = 2.5;

  private static final int PLACES = 2;

  private Snap() {}

  /**
   * What to write for a new place of a handle.
   *
   * @param to where it was moved to
   * @param fine whether it goes by tenths of a millimetre and minutes, and nowhere by itself
   * @param others all handles, level with which it may go
   */
  static String written(Handle handle, Point to, boolean fine, List<Handle> others) {
    if (handle.kind() == Kind.CLOCK) {
      double hours = 3 - Math.toDegrees(Math.atan2(to.y(), to.x())) / 30;
      double grain = fine ? 1 : 5;
      return Nudge.time((int) (Math.rint(hours * 60 / grain) * grain));
    }
    if (handle.kind() == Kind.RISE) {
      return Numbers.brief(rise(handle, to, fine), PLACES);
    }
    Point place = fine ? to : toward(handle, to, others);
    Point written = handle.written(place);
    double grain = fine ? 0.1 : 1;
    // What lies level with something goes there exactly, be it a whole millimetre or not.
    Optional<Double> x = fine ? Optional.empty() : exact(to.x(), handle, others, true);
    Optional<Double> y = fine ? Optional.empty() : exact(to.y(), handle, others, false);
    boolean straight = handle.turn() == 0;
    double atX = straight && x.isPresent() ? written.x() : Math.rint(written.x() / grain) * grain;
    double atY = straight && y.isPresent() ? written.y() : Math.rint(written.y() / grain) * grain;
    return "[" + Numbers.brief(atX, PLACES) + ", " + Numbers.brief(atY, PLACES) + "]";
  }

  /** Whole millimetres, or where the edge runs on from its neighbour. */
  private static double rise(Handle handle, Point to, boolean fine) {
    double raw = to.minus(handle.origin()).dot(Point.polar(1, handle.turn()));
    double within = Math.max(-handle.most(), Math.min(handle.most(), raw));
    double grain = fine ? 0.1 : 1;
    double whole = Math.rint(within / grain) * grain;
    return handle.stops().stream()
        .filter(stop -> !fine && Math.abs(stop - within) <= NEAR && Math.abs(stop) <= handle.most())
        .min((a, b) -> Double.compare(Math.abs(a - within), Math.abs(b - within)))
        .orElse(Math.abs(whole) > handle.most() ? within : whole);
  }

  private static Point toward(Handle handle, Point to, List<Handle> others) {
    return new Point(
        exact(to.x(), handle, others, true).orElse(to.x()),
        exact(to.y(), handle, others, false).orElse(to.y()));
  }

  /** The line near a place that it goes to: an axis, or what mirrors or is level with another. */
  private static Optional<Double> exact(
      double to, Handle handle, List<Handle> others, boolean across) {
    List<Double> lines = new ArrayList<>(List.of(0.0));
    for (Handle one : others) {
      if (one.kind() == Kind.POINT && !one.path().equals(handle.path())) {
        double at = across ? one.at().x() : one.at().y();
        lines.add(at);
        if (across) {
          lines.add(-at);
        }
      }
    }
    return lines.stream()
        .filter(line -> Math.abs(line - to) <= NEAR)
        .min((a, b) -> Double.compare(Math.abs(a - to), Math.abs(b - to)));
  }
}
