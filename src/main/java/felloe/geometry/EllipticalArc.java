package felloe.geometry;

import java.util.Optional;

/**
 * A piece of an ellipse. A point of it is {@code centre + turned(rx cos a, ry sin a)}, where the
 * angle a runs from {@code start} through {@code sweep}.
 *
 * @param from where it starts
 * @param to where it ends
 * @param centre centre of the ellipse
 * @param rx half axis along the turned x axis, mm, above zero
 * @param ry half axis along the turned y axis, mm, above zero
 * @param turn angle of the turned x axis, radians counter-clockwise
 * @param start angle at the start, radians
 * @param sweep angle travelled, radians, positive counter-clockwise, not 0, at most a full turn
 */
public record EllipticalArc(
    Point from,
    Point to,
    Point centre,
    double rx,
    double ry,
    double turn,
    double start,
    double sweep)
    implements FreeCurve {

  private static final double TURN = 2 * Math.PI;

  /** Half axes whose difference is below this share of them are those of a circle. */
  private static final double ROUND = 1e-12;

  /** A chord that falls short of the full width by this share or less is the full width. */
  private static final double HALF_TURN = 1e-14;

  /**
   * Refuses half axes that are not above zero and a sweep of 0 or more than a turn.
   *
   * @throws IllegalArgumentException naming the field
   */
  public EllipticalArc {
    Numbers.positive("rx", rx);
    Numbers.positive("ry", ry);
    Numbers.finite("turn", turn);
    Numbers.finite("start", start);
    if (Numbers.finite("sweep", sweep) == 0 || Math.abs(sweep) > TURN) {
      throw new IllegalArgumentException("sweep must not be 0 nor more than a full turn");
    }
  }

  /** A piece of the ellipse about a centre. */
  public static EllipticalArc about(
      Point centre, double rx, double ry, double turn, double start, double sweep) {
    Point from = point(centre, rx, ry, turn, start);
    Point to = Math.abs(sweep) == TURN ? from : point(centre, rx, ry, turn, start + sweep);
    return new EllipticalArc(from, to, centre, rx, ry, turn, start, sweep);
  }

  /**
   * The piece between two different points. Half axes that are too small to reach are stretched in
   * proportion until they do. W3C SVG 2, appendix B.2.4 and B.2.5 (conversion from end points to
   * centre, correction of out-of-range radii).
   *
   * @param large whether the piece of more than half a turn is meant
   * @param counterClockwise whether the angle grows along it
   * @throws GeometryException when the points are the same
   */
  public static EllipticalArc through(
      Point from,
      Point to,
      double rx,
      double ry,
      double turn,
      boolean large,
      boolean counterClockwise) {
    if (from.equals(to)) {
      throw new GeometryException("an elliptical arc needs two different ends", from);
    }
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    double dx = (from.x() - to.x()) / 2;
    double dy = (from.y() - to.y()) / 2;
    double a = rx;
    double b = ry;
    // Half the chord in the ellipse's own frame, each axis measured in half axes.
    double u = (cos * dx + sin * dy) / a;
    double v = (cos * dy - sin * dx) / b;
    double reach = Math.hypot(u, v);
    if (reach > 1 - HALF_TURN) {
      a *= reach;
      b *= reach;
      u /= reach;
      v /= reach;
      reach = 1;
    }
    double side = Math.sqrt((1 - reach) * (1 + reach)) / reach;
    side = large == counterClockwise ? -side : side;
    double cu = side * v;
    double cv = -side * u;
    Point middle = from.middle(to);
    Point centre =
        new Point(
            middle.x() + cos * a * cu - sin * b * cv, middle.y() + sin * a * cu + cos * b * cv);
    double start = Math.atan2(v - cv, u - cu);
    double end = Math.atan2(-v - cv, -u - cu);
    double sweep = end - start;
    if (counterClockwise && sweep <= 0) {
      sweep += TURN;
    } else if (!counterClockwise && sweep >= 0) {
      sweep -= TURN;
    }
    sweep = Math.max(-Math.nextDown(TURN), Math.min(Math.nextDown(TURN), sweep));
    return new EllipticalArc(from, to, centre, a, b, turn, start, sweep);
  }

  private static Point point(Point centre, double rx, double ry, double turn, double angle) {
    double x = rx * Math.cos(angle);
    double y = ry * Math.sin(angle);
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return new Point(centre.x() + cos * x - sin * y, centre.y() + sin * x + cos * y);
  }

  @Override
  public Point at(double t) {
    if (t == 0) {
      return from;
    }
    return t == 1 ? to : point(centre, rx, ry, turn, start + t * sweep);
  }

  @Override
  public Point derivative(double t, int order) {
    if (order < 1 || order > 3) {
      throw new IllegalArgumentException("order: " + order);
    }
    // Each derivative is the position a quarter turn on, times the sweep.
    double angle = start + t * sweep + order * (Math.PI / 2);
    return point(Point.ORIGIN, rx, ry, turn, angle).times(Math.pow(sweep, order));
  }

  @Override
  public Optional<Segment> exact() {
    if (Math.abs(rx - ry) > ROUND * rx || rx <= Tolerances.SAME_POINT) {
      return Optional.empty();
    }
    if (from.equals(to)) {
      return Optional.of(new Arc(from, from, centre, rx, Math.copySign(TURN, sweep)));
    }
    return rx * Math.abs(sweep) <= Tolerances.SAME_POINT
        ? Optional.empty()
        : Optional.of(new Arc(from, to, centre, rx, sweep));
  }
}
