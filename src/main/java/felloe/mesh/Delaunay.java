package felloe.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tinfour.common.IConstraint;
import org.tinfour.common.LinearConstraint;
import org.tinfour.common.SimpleTriangle;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.TriangleCollector;

/** The Delaunay triangles of points that keep given closed chains; the only user of Tinfour. */
final class Delaunay {

  private Delaunay() {}

  /**
   * The triangles of the material.
   *
   * @param x abscissas of the points
   * @param y ordinates
   * @param count how many of them count
   * @param rings closed chains of point numbers; the material lies inside the first and outside the
   *     others
   * @param spacing a usual distance between neighbours, mm
   * @return three point numbers a triangle, counter-clockwise, in a fixed order
   */
  static int[] triangles(double[] x, double[] y, int count, List<int[]> rings, double spacing) {
    IncrementalTin tin = new IncrementalTin(spacing);
    Vertex[] vertices = new Vertex[count];
    for (int i = 0; i < count; i++) {
      vertices[i] = new Vertex(x[i], y[i], 0, i);
    }
    tin.add(List.of(vertices), null);
    List<IConstraint> kept = new ArrayList<>();
    int[] after = new int[count];
    Arrays.fill(after, -1);
    for (int[] ring : rings) {
      List<Vertex> chain = new ArrayList<>();
      for (int i = 0; i < ring.length; i++) {
        chain.add(vertices[ring[i]]);
        after[ring[i]] = ring[(i + 1) % ring.length];
      }
      chain.add(vertices[ring[0]]);
      LinearConstraint constraint = new LinearConstraint(chain);
      constraint.complete();
      kept.add(constraint);
    }
    tin.addConstraints(kept, false);
    List<int[]> all = new ArrayList<>();
    TriangleCollector.visitSimpleTriangles(tin, t -> all.add(corners(t)));
    return material(all, after, rings.get(0));
  }

  private static int[] corners(SimpleTriangle triangle) {
    return new int[] {
      triangle.getVertexA().getIndex(),
      triangle.getVertexB().getIndex(),
      triangle.getVertexC().getIndex()
    };
  }

  static long side(int a, int b) {
    return ((long) Math.min(a, b) << 32) | Math.max(a, b);
  }

  /**
   * From the triangle inside the first side of the outer chain, all that can be reached without
   * crossing a chain: no point is asked whether it is inside, so no rounding can misjudge it.
   *
   * @param after for each point on a chain the next one, else -1
   */
  private static int[] material(List<int[]> all, int[] after, int[] outer) {
    // The sides that start at each point, a chain of them: side 3 t + c is that from corner c of t.
    int[] first = new int[after.length];
    int[] next = new int[3 * all.size()];
    Arrays.fill(first, -1);
    for (int side = 0; side < next.length; side++) {
      int from = all.get(side / 3)[side % 3];
      next[side] = first[from];
      first[from] = side;
    }
    boolean[] inside = new boolean[all.size()];
    int[] open = new int[all.size()];
    int found = 0;
    int start = side(all, first, next, outer[0], outer[1]);
    if (start >= 0) {
      inside[start / 3] = true;
      open[found++] = start / 3;
    }
    for (int i = 0; i < found; i++) {
      int[] corner = all.get(open[i]);
      for (int c = 0; c < 3; c++) {
        int a = corner[c];
        int b = corner[(c + 1) % 3];
        if (after[a] != b && after[b] != a) {
          int across = side(all, first, next, b, a);
          if (across >= 0 && !inside[across / 3]) {
            inside[across / 3] = true;
            open[found++] = across / 3;
          }
        }
      }
    }
    int[] result = new int[3 * found];
    int n = 0;
    for (int t = 0; t < all.size(); t++) {
      if (inside[t]) {
        for (int c : all.get(t)) {
          result[n++] = c;
        }
      }
    }
    return result;
  }

  /** The side from a point to another, or -1. */
  private static int side(List<int[]> all, int[] first, int[] next, int from, int to) {
    int side = first[from];
    while (side >= 0 && all.get(side / 3)[(side % 3 + 1) % 3] != to) {
      side = next[side];
    }
    return side;
  }
}
