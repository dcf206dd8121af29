package felloe.mesh;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
    Set<Long> sides = new HashSet<>();
    for (int[] ring : rings) {
      List<Vertex> chain = new ArrayList<>();
      for (int i = 0; i < ring.length; i++) {
        chain.add(vertices[ring[i]]);
        sides.add(side(ring[i], ring[(i + 1) % ring.length]));
      }
      chain.add(vertices[ring[0]]);
      LinearConstraint constraint = new LinearConstraint(chain);
      constraint.complete();
      kept.add(constraint);
    }
    tin.addConstraints(kept, false);
    List<int[]> all = new ArrayList<>();
    TriangleCollector.visitSimpleTriangles(tin, t -> all.add(corners(t)));
    return material(all, sides, rings.get(0), x, y);
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
   */
  private static int[] material(
      List<int[]> all, Set<Long> walls, int[] outer, double[] x, double[] y) {
    Map<Long, int[]> beside = new HashMap<>();
    for (int t = 0; t < all.size(); t++) {
      int[] corner = all.get(t);
      for (int c = 0; c < 3; c++) {
        long side = side(corner[c], corner[(c + 1) % 3]);
        int[] pair = beside.computeIfAbsent(side, s -> new int[] {-1, -1});
        pair[pair[0] < 0 ? 0 : 1] = t;
      }
    }
    boolean[] inside = new boolean[all.size()];
    ArrayDeque<Integer> open = new ArrayDeque<>();
    for (int t = 0; t < all.size(); t++) {
      int[] corner = all.get(t);
      for (int c = 0; c < 3; c++) {
        if (corner[c] == outer[0] && corner[(c + 1) % 3] == outer[1]) {
          inside[t] = true;
          open.add(t);
        }
      }
    }
    while (!open.isEmpty()) {
      int[] corner = all.get(open.poll());
      for (int c = 0; c < 3; c++) {
        long side = side(corner[c], corner[(c + 1) % 3]);
        if (!walls.contains(side)) {
          for (int next : beside.get(side)) {
            if (next >= 0 && !inside[next]) {
              inside[next] = true;
              open.add(next);
            }
          }
        }
      }
    }
    int found = 0;
    for (boolean in : inside) {
      found += in ? 1 : 0;
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
}
