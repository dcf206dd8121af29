package felloe.joints;

import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.List;
import java.util.Optional;

/**
 * Alike screws through one plate, and how they share a load by the elastic method: the plate is
 * stiff, each screw yields alike. A force through the centroid goes to all in equal parts; a moment
 * goes to each in proportion to its distance from the centroid and square to the line from there.
 *
 * <p>Exact for that model; real holes have clearance, so that until the screws bear or the faces
 * slip, the load lies in friction. Source: elastic (vector) method of machine-design handbooks.
 *
 * @param screws their centres, mm
 */
public record BoltGroup(List<Point> screws) {

  /** Screws whose spread across their line is less than this share of it lie in one line. */
  private static final double IN_LINE = 1e-9;

  private static final int DIRECTIONS = 360;
  private static final int NARROWINGS = 60;

  /**
   * @throws IllegalArgumentException when there is no screw
   */
  public BoltGroup {
    screws = List.copyOf(screws);
    if (screws.isEmpty()) {
      throw new IllegalArgumentException("a group has at least one screw");
    }
  }

  /** Mean of the centres. */
  public Point centroid() {
    Point sum = Point.ORIGIN;
    for (Point screw : screws) {
      sum = sum.plus(screw);
    }
    return sum.times(1.0 / screws.size());
  }

  /** Sum of the squared distances from the centroid, mm². */
  public double polar() {
    Point c = centroid();
    return screws.stream().mapToDouble(s -> s.minus(c).dot(s.minus(c))).sum();
  }

  /** Whether the screws alone can carry a torque: there are two at different places. */
  public boolean carriesTorque() {
    return polar() > Tolerances.SAME_POINT;
  }

  /**
   * Force of the plate on each screw, N, in order. They add up to the load in force and in moment.
   *
   * @param force on the plate, N
   * @param at where it acts, mm
   * @param torque on the plate besides, N mm, counter-clockwise
   * @throws IllegalArgumentException when there is a moment and {@link #carriesTorque} is false
   */
  public List<Point> shares(Point force, Point at, double torque) {
    Point c = centroid();
    double moment = torque + at.minus(c).cross(force);
    Point direct = force.times(1.0 / screws.size());
    if (!carriesTorque()) {
      if (Math.abs(moment) > Tolerances.SAME_POINT * Math.max(1, force.norm())) {
        throw new IllegalArgumentException("one screw alone carries no torque");
      }
      return screws.stream().map(s -> direct).toList();
    }
    double factor = moment / polar();
    return screws.stream().map(s -> direct.plus(s.minus(c).left(), factor)).toList();
  }

  /**
   * The greatest force on each screw, N, in order, when a pull through the hub axis may point any
   * way, together with a torque: in proportion to the number of screws.
   *
   * <p>Found to 1e-9 of its size: the square of the force is a sum of waves of one and two periods
   * round the circle, so the best of 360 directions lies at its highest crest.
   *
   * @param pull N
   * @param torque N mm
   */
  public List<Double> worst(double pull, double torque) {
    Point c = centroid();
    double polar = polar();
    if (!carriesTorque()) {
      // Refuses what one screw cannot carry.
      return shares(new Point(pull, 0), c, torque).stream().map(Point::norm).toList();
    }
    return screws.stream()
        .map(
            s ->
                new Turning(screws.size(), c, s.minus(c).left().times(1 / polar), pull, torque)
                    .worst())
        .toList();
  }

  /**
   * One screw while the pull turns round.
   *
   * @param count of screws
   * @param centroid of the group; the pull acts at the hub axis
   * @param lever force on the screw by a unit of moment
   */
  private record Turning(int count, Point centroid, Point lever, double pull, double torque) {

    double worst() {
      double step = 2 * Math.PI / DIRECTIONS;
      double best = 0;
      double bestAngle = 0;
      for (int i = 0; i < DIRECTIONS; i++) {
        double share = share(step * i);
        if (share > best) {
          best = share;
          bestAngle = step * i;
        }
      }
      double low = bestAngle - step;
      double high = bestAngle + step;
      for (int i = 0; i < NARROWINGS; i++) {
        double a = low + (high - low) / 3;
        double b = high - (high - low) / 3;
        if (share(a) < share(b)) {
          low = a;
        } else {
          high = b;
        }
      }
      return Math.max(best, share((low + high) / 2));
    }

    private double share(double angle) {
      double x = pull * Math.cos(angle);
      double y = pull * Math.sin(angle);
      double moment = torque - centroid.x() * y + centroid.y() * x;
      return Math.hypot(x / count + moment * lever.x(), y / count + moment * lever.y());
    }
  }

  /**
   * Pull along each screw, N, in order, by a moment that tilts the plate; the least stiff case of
   * the handbooks: the plate tilts about an axis through the centroid, so half of the screws are
   * pulled and half relieved. Prying is not in it.
   *
   * @param moment as a vector in the plane of the plate, along its axis by the right-hand rule, N
   *     mm
   * @return empty when the screws lie on one line (or are one), and cannot carry every tilt
   */
  public Optional<List<Double>> tilts(Point moment) {
    Point c = centroid();
    // A pull t at r has the moment (r.y t, -r.x t); t = a x + b y must add up to the one given.
    Point turned = new Point(-moment.y(), moment.x());
    return inertia().map(m -> screws.stream().map(s -> m.solve(s.minus(c)).dot(turned)).toList());
  }

  /**
   * The greatest pull along each screw, N, when a tilt of a given size may have its axis any way.
   *
   * @param moment N mm
   * @return empty as for {@link #tilts}
   */
  public Optional<List<Double>> worstTilt(double moment) {
    Point c = centroid();
    return inertia()
        .map(m -> screws.stream().map(s -> moment * m.solve(s.minus(c)).norm()).toList());
  }

  private record Inertia(double xx, double xy, double yy) {
    double determinant() {
      return xx * yy - xy * xy;
    }

    Point solve(Point r) {
      double d = determinant();
      return new Point((yy * r.x() - xy * r.y()) / d, (xx * r.y() - xy * r.x()) / d);
    }
  }

  private Optional<Inertia> inertia() {
    Point c = centroid();
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (Point screw : screws) {
      Point r = screw.minus(c);
      xx += r.x() * r.x();
      xy += r.x() * r.y();
      yy += r.y() * r.y();
    }
    Inertia m = new Inertia(xx, xy, yy);
    double size = xx + yy;
    return m.determinant() > IN_LINE * size * size ? Optional.of(m) : Optional.empty();
  }
}
