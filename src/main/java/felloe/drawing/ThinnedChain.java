package felloe.drawing;

import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Chains of points with fewer of them, for pictures; never for a line that is cut to.
 *
 * <p>Accuracy: no point that is left out lies farther from the chain than the tolerance; then each
 * is moved to a grid of an eighth of the tolerance at most.
 *
 * <p>Source: D. H. Douglas and T. K. Peucker, Cartographica 10 (1973) 112.
 */
final class ThinnedChain {

  private final double tolerance;
  private final double grid;

  /**
   * @param tolerance mm
   */
  ThinnedChain(double tolerance) {
    this.tolerance = Numbers.finite("tolerance", tolerance);
    // A power of ten, so that coordinates are short in files.
    this.grid = Math.pow(10, Math.floor(Math.log10(tolerance / 8)));
  }

  /** The chain as lines; none where all of it is within the grid. */
  List<Segment> of(List<Point> points, boolean closed) {
    List<Point> all = new ArrayList<>(points);
    if (closed) {
      all.add(points.get(0));
    }
    BitSet kept = new BitSet(all.size());
    kept.set(0);
    kept.set(all.size() - 1);
    if (closed) {
      int far = farthest(all);
      kept.set(far);
      split(all, 0, far, kept);
      split(all, far, all.size() - 1, kept);
    } else {
      split(all, 0, all.size() - 1, kept);
    }
    return lines(all, kept, closed);
  }

  private static int farthest(List<Point> all) {
    int far = 0;
    for (int i = 1; i < all.size(); i++) {
      if (all.get(i).distance(all.get(0)) > all.get(far).distance(all.get(0))) {
        far = i;
      }
    }
    return far;
  }

  private void split(List<Point> all, int from, int to, BitSet kept) {
    double most = tolerance;
    int at = -1;
    for (int i = from + 1; i < to; i++) {
      double away = away(all.get(i), all.get(from), all.get(to));
      if (away > most) {
        most = away;
        at = i;
      }
    }
    if (at >= 0) {
      kept.set(at);
      split(all, from, at, kept);
      split(all, at, to, kept);
    }
  }

  private static double away(Point p, Point from, Point to) {
    return from.near(to, Tolerances.SAME_POINT)
        ? p.distance(from)
        : p.distance(new Line(from, to).nearest(p));
  }

  private List<Segment> lines(List<Point> all, BitSet kept, boolean closed) {
    List<Point> corners = new ArrayList<>();
    kept.stream()
        .mapToObj(all::get)
        .map(this::onGrid)
        .filter(p -> corners.isEmpty() || last(corners).distance(p) > grid / 2)
        .forEach(corners::add);
    List<Segment> lines = new ArrayList<>();
    for (int i = 1; i < corners.size(); i++) {
      lines.add(new Line(corners.get(i - 1), corners.get(i)));
    }
    if (closed && !lines.isEmpty() && !last(corners).equals(corners.get(0))) {
      lines.add(new Line(last(corners), corners.get(0)));
    }
    return lines;
  }

  private static Point last(List<Point> points) {
    return points.get(points.size() - 1);
  }

  private Point onGrid(Point p) {
    return new Point(Math.rint(p.x() / grid) * grid, Math.rint(p.y() / grid) * grid);
  }
}
