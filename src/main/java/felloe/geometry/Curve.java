package felloe.geometry;

import java.util.List;

/**
 * The endless curve that carries a segment: a straight line or a whole circle. Meetings of curves
 * are in closed form.
 */
sealed interface Curve permits Curve.Straight, Curve.Circle {

  /** Lines whose directions differ by less have no meeting that double arithmetic could tell. */
  double PARALLEL = 1e-12;

  /** The nearest point of the curve. */
  Point nearest(Point p);

  /** Distance from a point to the curve. */
  default double distance(Point p) {
    return nearest(p).distance(p);
  }

  /** Whether the other is the same curve, wherever its segment lies and whichever way it runs. */
  boolean same(Curve other, double tolerance);

  /**
   * An endless straight line.
   *
   * @param through a point of it
   * @param direction its direction, of length one
   */
  record Straight(Point through, Point direction) implements Curve {
    @Override
    public Point nearest(Point p) {
      return through.plus(direction, p.minus(through).dot(direction));
    }

    @Override
    public boolean same(Curve other, double tolerance) {
      return other instanceof Straight line
          && Math.abs(direction.cross(line.direction)) * reach(line) <= tolerance
          && distance(line.through) <= tolerance
          && line.distance(through) <= tolerance;
    }

    private double reach(Straight line) {
      return Math.max(1, through.distance(line.through));
    }
  }

  /**
   * A whole circle.
   *
   * @param centre its centre
   * @param radius its radius, above zero
   */
  record Circle(Point centre, double radius) implements Curve {
    @Override
    public Point nearest(Point p) {
      Point out = p.minus(centre);
      double far = out.norm();
      return far == 0 ? centre.plus(new Point(radius, 0)) : centre.plus(out, radius / far);
    }

    @Override
    public boolean same(Curve other, double tolerance) {
      return other instanceof Circle circle
          && centre.near(circle.centre, tolerance)
          && Math.abs(radius - circle.radius) <= tolerance;
    }
  }

  /** The curve that carries a segment. */
  static Curve of(Segment segment) {
    if (segment instanceof Line line) {
      return new Straight(line.from(), line.direction());
    }
    Arc arc = (Arc) segment;
    return new Circle(arc.centre(), arc.radius());
  }

  /**
   * Where two curves meet: no, one or two points. Curves that miss each other by no more than
   * {@code slack} meet at the one point half way across the gap; curves that are the same meet
   * nowhere in particular, so give none.
   */
  static List<Point> meetings(Curve a, Curve b, double slack) {
    if (a instanceof Straight s) {
      return b instanceof Straight t ? lines(s, t) : lineCircle(s, (Circle) b, slack);
    }
    Circle c = (Circle) a;
    return b instanceof Straight t ? lineCircle(t, c, slack) : circles(c, (Circle) b, slack);
  }

  private static List<Point> lines(Straight a, Straight b) {
    double sine = a.direction.cross(b.direction);
    if (Math.abs(sine) < PARALLEL) {
      return List.of();
    }
    double along = b.through.minus(a.through).cross(b.direction) / sine;
    // Far beyond any plate: the lines are parallel for all that matters here.
    return Math.abs(along) > 1e9 ? List.of() : List.of(a.through.plus(a.direction, along));
  }

  private static List<Point> lineCircle(Straight line, Circle circle, double slack) {
    Point foot = line.nearest(circle.centre);
    Point out = foot.minus(circle.centre);
    double far = out.norm();
    double gap = far - circle.radius;
    if (gap > slack) {
      return List.of();
    }
    if (gap >= 0) {
      return List.of(circle.centre.plus(out, (circle.radius + gap / 2) / far));
    }
    double half = Math.sqrt(-gap * (circle.radius + far));
    return List.of(foot.plus(line.direction, -half), foot.plus(line.direction, half));
  }

  private static List<Point> circles(Circle a, Circle b, double slack) {
    Point axis = b.centre.minus(a.centre);
    double d = axis.norm();
    if (d == 0) {
      return List.of();
    }
    Point unit = axis.times(1 / d);
    double outside = d - (a.radius + b.radius);
    double inside = Math.abs(a.radius - b.radius) - d;
    if (outside > slack || inside > slack) {
      return List.of();
    }
    if (outside >= 0) {
      return List.of(a.centre.plus(unit, a.radius + outside / 2));
    }
    if (inside >= 0) {
      return a.radius > b.radius
          ? List.of(a.centre.plus(unit, a.radius - inside / 2))
          : List.of(b.centre.plus(unit, inside / 2 - b.radius));
    }
    double along = (d + (a.radius - b.radius) * (a.radius + b.radius) / d) / 2;
    // Heron's product of the four gaps keeps its digits where circles nearly touch.
    double product = -outside * (a.radius + b.radius + d) * -inside;
    double sum = d + Math.abs(a.radius - b.radius);
    double half = Math.sqrt(Math.max(0, product * sum)) / (2 * d);
    Point foot = a.centre.plus(unit, along);
    return List.of(foot.plus(unit.left(), -half), foot.plus(unit.left(), half));
  }
}
