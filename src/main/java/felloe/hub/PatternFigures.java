package felloe.hub;

import felloe.geometry.Point;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The circle that holes stand on, and how well.
 *
 * @param count number of holes
 * @param centre of the circle, mm
 * @param pitchDiameter mm
 * @param roundness the greatest distance of a centre from the circle, mm
 * @param unevenness the greatest difference of a gap between neighbours from an equal share of the
 *     turn, radians
 */
public record PatternFigures(
    int count, Point centre, double pitchDiameter, double roundness, double unevenness) {

  /** Holes whose spread across their line is less than this share of it lie in one line. */
  private static final double IN_LINE = 1e-9;

  /**
   * The circle of least squares in x² + y² (Kåsa's method, closed form): exact for points that lie
   * on one circle, and biased to a small circle only for a short arc. Two points stand opposite.
   *
   * @return empty for fewer than two points or for points on one line
   */
  public static Optional<PatternFigures> of(List<Point> points) {
    int n = points.size();
    if (n < 2) {
      return Optional.empty();
    }
    double mx = 0;
    double my = 0;
    for (Point p : points) {
      mx += p.x() / n;
      my += p.y() / n;
    }
    double sxx = 0;
    double sxy = 0;
    double syy = 0;
    double sxz = 0;
    double syz = 0;
    double sz = 0;
    for (Point p : points) {
      double x = p.x() - mx;
      double y = p.y() - my;
      double z = x * x + y * y;
      sxx += x * x;
      sxy += x * y;
      syy += y * y;
      sxz += x * z;
      syz += y * z;
      sz += z;
    }
    double det = sxx * syy - sxy * sxy;
    Point offset = Point.ORIGIN;
    if (n > 2) {
      if (det <= IN_LINE * sz * sz) {
        return Optional.empty();
      }
      offset = new Point((sxz * syy - syz * sxy) / (2 * det), (sxx * syz - sxy * sxz) / (2 * det));
    }
    double radius = Math.sqrt(offset.dot(offset) + sz / n);
    Point centre = new Point(mx, my).plus(offset);
    double roundness = 0;
    for (Point p : points) {
      roundness = Math.max(roundness, Math.abs(p.distance(centre) - radius));
    }
    return Optional.of(
        new PatternFigures(n, centre, 2 * radius, roundness, unevenness(points, centre)));
  }

  private static double unevenness(List<Point> points, Point centre) {
    double[] angles = new double[points.size()];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = points.get(i).minus(centre).angle();
    }
    Arrays.sort(angles);
    double share = 2 * Math.PI / angles.length;
    double most = 0;
    for (int i = 0; i < angles.length; i++) {
      double next = i + 1 < angles.length ? angles[i + 1] : angles[0] + 2 * Math.PI;
      most = Math.max(most, Math.abs(next - angles[i] - share));
    }
    return most;
  }
}
