package felloe.load;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.mesh.PlateMesh;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;

/** A mesh with the middles of its sides; those of sides on an edge lie on the exact contour. */
final class SixNodeMesh {

  /** Most that a side may be bowed, as a part of its triangle's height: else that would fold. */
  private static final double MOST_BOW = 0.2;

  private final PlateMesh mesh;
  private final int[] middles;
  private final double[] x;
  private final double[] y;

  SixNodeMesh(PlateMesh mesh, Region region) {
    this.mesh = mesh;
    middles = new int[3 * mesh.triangles()];
    double[] px = new double[mesh.nodes() + middles.length];
    double[] py = new double[px.length];
    int points = 0;
    while (points < mesh.nodes()) {
      px[points] = mesh.x(points);
      py[points] = mesh.y(points++);
    }
    Map<Long, Integer> sides = new HashMap<>();
    Map<Long, Integer> across = new HashMap<>();
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3; c++) {
        int a = mesh.corner(t, (c + 1) % 3);
        int b = mesh.corner(t, (c + 2) % 3);
        long side = ((long) Math.min(a, b) << 32) | Math.max(a, b);
        Integer known = sides.get(side);
        if (known == null) {
          px[points] = (mesh.x(a) + mesh.x(b)) / 2;
          py[points] = (mesh.y(a) + mesh.y(b)) / 2;
          known = points++;
          sides.put(side, known);
          across.put(side, mesh.corner(t, c));
        } else {
          across.remove(side);
        }
        middles[3 * t + c] = known;
      }
    }
    x = Arrays.copyOf(px, points);
    y = Arrays.copyOf(py, points);
    // Only sides of one triangle are left: those on an edge.
    across.forEach(
        (side, corner) -> {
          int middle = sides.get(side);
          Point at = curved(region, (int) (side >> 32), side.intValue(), middle, corner);
          x[middle] = at.x();
          y[middle] = at.y();
        });
  }

  private Point curved(Region region, int a, int b, int middle, int across) {
    Point straight = new Point(x[middle], y[middle]);
    Point exact =
        region.contours().stream()
            .map((Contour contour) -> contour.nearest(straight))
            .min(Comparator.comparingDouble(straight::distance))
            .orElseThrow();
    Point side = new Point(x[b] - x[a], y[b] - y[a]);
    Point corner = new Point(x[across], y[across]);
    double high = Math.abs(side.cross(corner.minus(straight))) / side.norm();
    double bow = exact.distance(straight);
    return bow <= MOST_BOW * high ? exact : straight.towards(exact, MOST_BOW * high / bow);
  }

  int points() {
    return x.length;
  }

  double x(int point) {
    return x[point];
  }

  double y(int point) {
    return y[point];
  }

  double distance(int point, Point p) {
    return Math.hypot(x[point] - p.x(), y[point] - p.y());
  }

  int triangles() {
    return mesh.triangles();
  }

  int corner(int triangle, int corner) {
    return mesh.corner(triangle, corner);
  }

  /** The middle of the side opposite a corner. */
  int middle(int triangle, int corner) {
    return middles[3 * triangle + corner];
  }

  double area(int triangle) {
    return mesh.area(triangle);
  }
}
