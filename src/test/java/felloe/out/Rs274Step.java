package felloe.out;

import java.util.ArrayList;
import java.util.List;

/**
 * One movement of the controlled point as the interpreter understood it, mm.
 *
 * @param line line of the program, counted from 1
 * @param rapid whether it is a traverse
 * @param cycle whether a drilling cycle made it
 * @param from start {x, y, z}
 * @param to end {x, y, z}
 * @param centre centre {x, y} of an arc; null for a straight move
 * @param sweep angle travelled by an arc, radians, positive counter-clockwise
 * @param feed mm/min; of no meaning for a traverse
 * @param speed spindle speed, 1/min clockwise; 0 when it stands
 * @param tool how many pauses came before
 */
public record Rs274Step(
    int line,
    boolean rapid,
    boolean cycle,
    double[] from,
    double[] to,
    double[] centre,
    double sweep,
    double feed,
    double speed,
    int tool) {

  /** Length of the path, mm. */
  public double length() {
    double rise = to[2] - from[2];
    double plan =
        centre == null ? Math.hypot(to[0] - from[0], to[1] - from[1]) : Math.abs(sweep) * radius();
    return Math.hypot(plan, rise);
  }

  double radius() {
    return Math.hypot(from[0] - centre[0], from[1] - centre[1]);
  }

  /** How long it takes, s. */
  public double seconds(double rapidRate) {
    return 60 * length() / (rapid ? rapidRate : feed);
  }

  /** Whether the point moves in plan. */
  boolean across() {
    return centre != null || from[0] != to[0] || from[1] != to[1];
  }

  /** Height of the path near a place, its ends included, within a distance; else NaN. */
  double heightNear(double[] p, double within) {
    double height = heightBeside(p, within);
    for (double[] end : List.of(from, to)) {
      if (Math.hypot(p[0] - end[0], p[1] - end[1]) <= within) {
        height = Double.isNaN(height) ? end[2] : Math.min(height, end[2]);
      }
    }
    return height;
  }

  private double heightBeside(double[] p, double within) {
    double t;
    if (centre != null) {
      double r = radius();
      if (Math.abs(Math.hypot(p[0] - centre[0], p[1] - centre[1]) - r) > within) {
        return Double.NaN;
      }
      double turn =
          Math.atan2(p[1] - centre[1], p[0] - centre[0])
              - Math.atan2(from[1] - centre[1], from[0] - centre[0]);
      double along = Math.copySign(1, sweep) * turn;
      t = (along - 2 * Math.PI * Math.floor(along / (2 * Math.PI))) / Math.abs(sweep);
    } else {
      double dx = to[0] - from[0];
      double dy = to[1] - from[1];
      double square = dx * dx + dy * dy;
      t = square == 0 ? 1 : ((p[0] - from[0]) * dx + (p[1] - from[1]) * dy) / square;
    }
    double kept = Math.max(0, Math.min(1, t));
    double x = from[0] + kept * (to[0] - from[0]);
    double y = from[1] + kept * (to[1] - from[1]);
    if (centre != null) {
      double a = Math.atan2(from[1] - centre[1], from[0] - centre[0]) + kept * sweep;
      x = centre[0] + radius() * Math.cos(a);
      y = centre[1] + radius() * Math.sin(a);
    }
    boolean near = Math.hypot(p[0] - x, p[1] - y) <= within;
    return near ? from[2] + kept * (to[2] - from[2]) : Double.NaN;
  }

  /** Points along the path no farther from it, between them, than a tolerance. */
  List<double[]> points(double tolerance) {
    List<double[]> points = new ArrayList<>();
    points.add(from);
    if (centre != null) {
      double r = radius();
      double step = 2 * Math.acos(Math.max(0.5, 1 - tolerance / r));
      int n = Math.max(2, (int) Math.ceil(Math.abs(sweep) / step));
      double a = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
      for (int i = 1; i < n; i++) {
        double t = (double) i / n;
        points.add(
            new double[] {
              centre[0] + r * Math.cos(a + t * sweep),
              centre[1] + r * Math.sin(a + t * sweep),
              from[2] + t * (to[2] - from[2])
            });
      }
    }
    points.add(to);
    return points;
  }
}
