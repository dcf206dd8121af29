package felloe.mesh;

import felloe.geometry.Point;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Moves nodes to even distances. Each side of a triangle is a bar that pushes its ends apart when
 * it is shorter than a little more than its place wants; after some rounds the triangles are made
 * anew.
 */
final class Relaxation {

  private static final int TIMES = 3;
  private static final int ROUNDS = 6;
  private static final double STEP = 0.2;

  /** Bars want to be a little too long, so that the nodes spread over the whole. */
  private static final double STRETCH = 1.2;

  private final NodeList nodes;
  private final int fixed;
  private final List<int[]> rings;
  private final SizeField sizes;
  private final double spacing;
  private final NarrowPlaces narrow;

  /** For each node so far it is from an edge of the material at least, mm. */
  private final double[] off;

  Relaxation(
      NodeList nodes,
      int fixed,
      List<int[]> rings,
      SizeField sizes,
      double spacing,
      NarrowPlaces narrow) {
    this.nodes = nodes;
    this.fixed = fixed;
    this.rings = rings;
    this.sizes = sizes;
    this.spacing = spacing;
    this.narrow = narrow;
    this.off = new double[nodes.count()];
  }

  /**
   * Moves the nodes and gives their triangles.
   *
   * @param sides the sides on contours, all of which must be there in the end
   */
  int[] relax(Set<Long> sides) {
    int[] triangles = triangles();
    for (int i = 0; i < TIMES; i++) {
      push(triangles);
      triangles = triangles();
    }
    refuseLost(sides, triangles);
    return triangles;
  }

  private int[] triangles() {
    return Delaunay.triangles(nodes.x(), nodes.y(), nodes.count(), rings, spacing);
  }

  private void push(int[] triangles) {
    int count = nodes.count();
    double[] x = nodes.x();
    double[] y = nodes.y();
    double[] fx = new double[count];
    double[] fy = new double[count];
    double[] wants = new double[triangles.length];
    for (int round = 0; round < ROUNDS; round++) {
      Arrays.fill(fx, 0);
      Arrays.fill(fy, 0);
      double lengths = 0;
      double wanted = 0;
      for (int pass = 0; pass < 2; pass++) {
        double scale = pass == 0 ? 0 : STRETCH * Math.sqrt(lengths / wanted);
        for (int t = 0; t < triangles.length; t += 3) {
          for (int c = 0; c < 3; c++) {
            int a = triangles[t + c];
            int b = triangles[t + (c + 1) % 3];
            double dx = x[b] - x[a];
            double dy = y[b] - y[a];
            double length = Math.sqrt(dx * dx + dy * dy);
            if (pass == 0) {
              wants[t + c] = sizes.at((x[a] + x[b]) / 2, (y[a] + y[b]) / 2);
              lengths += length * length;
              wanted += wants[t + c] * wants[t + c];
            } else {
              // Inner sides are met twice, once from each triangle.
              double force = Math.max(0, scale * wants[t + c] - length) / 2 / length;
              fx[a] -= force * dx;
              fy[a] -= force * dy;
              fx[b] += force * dx;
              fy[b] += force * dy;
            }
          }
        }
      }
      for (int i = fixed; i < count; i++) {
        move(i, fx[i], fy[i]);
      }
    }
  }

  private void move(int i, double fx, double fy) {
    double[] x = nodes.x();
    double[] y = nodes.y();
    double nx = x[i] + STEP * fx;
    double ny = y[i] + STEP * fy;
    double size = sizes.at(x[i], y[i]);
    double step = STEP * Math.sqrt(fx * fx + fy * fy);
    if (step >= size / 2) {
      return;
    }
    // No node comes near an edge of the material: it would make flat triangles, or leave.
    double far = off[i] - step;
    if (far <= size / 2) {
      far = narrow.index().distance(new Point(nx, ny));
    }
    if (far > size / 2) {
      x[i] = nx;
      y[i] = ny;
      off[i] = far;
    }
  }

  private void refuseLost(Set<Long> sides, int[] triangles) {
    Map<Long, Integer> met = new HashMap<>();
    for (int t = 0; t < triangles.length; t += 3) {
      for (int c = 0; c < 3; c++) {
        long side = Delaunay.side(triangles[t + c], triangles[t + (c + 1) % 3]);
        if (sides.contains(side)) {
          met.merge(side, 1, Integer::sum);
        }
      }
    }
    for (long side : sides) {
      if (met.getOrDefault(side, 0) != 1) {
        int node = (int) (side >> 32);
        throw new MeshException(
            "the material is too narrow for edges of the length allowed",
            new Point(nodes.x()[node], nodes.y()[node]));
      }
    }
  }
}
