package felloe.load;

import felloe.geometry.Point;
import felloe.laminate.PlaneStiffness;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Curvature at a free edge, and strain in the plane, told by how the slopes or displacements of the
 * edge's own nodes change from one to the next. No moment or pull crosses a free edge and, of a
 * plate that gives in shear, no twist ends there, so that all follows from that along the edge.
 *
 * <p>Beside small holes what the triangles say about the edge is up to 6 percent too high, and this
 * up to 5 too low, each more so where the mesh is coarse; the mean of both is taken. So it is in
 * the plane: at a hole in a pulled plate triangles alone say 2 to 3.5 percent too much on any mesh,
 * the edge up to 3 too little, the mean is within 1.3. The change is that of the quartic through
 * five nodes in a row. At corners and beside what is held nothing is corrected.
 */
final class FreeEdge {

  /** A turn from one side to the next of which the cosine is less is a corner: 40 degrees. */
  private static final double CORNER = 0.77;

  /** Nodes before and behind one in its row. */
  private static final int REACH = 2;

  /**
   * A node with its row.
   *
   * @param row the nodes, this one in the middle
   * @param change how much the slope of each counts for its change along the edge, 1/mm
   * @param tx abscissa of the edge's direction
   * @param ty its ordinate
   */
  private record Place(int[] row, double[] change, double tx, double ty) {

    private double changeOf(double[] of, int unknown) {
      double sum = 0;
      for (int k = 0; k < row.length; k++) {
        sum += change[k] * of[3 * row[k] + unknown];
      }
      return sum;
    }
  }

  private final List<Place> places = new ArrayList<>();

  /**
   * Finds the edges of a mesh.
   *
   * @param held unknowns that are held
   */
  FreeEdge(PlateMesh mesh, BitSet held) {
    int[] next = next(mesh);
    int[] previous = new int[next.length];
    Arrays.fill(previous, -1);
    for (int i = 0; i < next.length; i++) {
      if (next[i] >= 0) {
        previous[next[i]] = i;
      }
    }
    for (int i = 0; i < next.length; i++) {
      int[] row = row(i, next, previous);
      if (row.length > 0
          && Arrays.stream(row).noneMatch(n -> isHeld(held, n))
          && smooth(mesh, row)) {
        places.add(place(mesh, row));
      }
    }
  }

  private static boolean isHeld(BitSet held, int node) {
    return held.nextSetBit(3 * node) >= 0 && held.nextSetBit(3 * node) < 3 * node + 3;
  }

  /** For each node the one after it along the edge; -1 within the material. */
  private static int[] next(PlateMesh mesh) {
    Set<Long> ways = new HashSet<>();
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3; c++) {
        int a = mesh.corner(t, c);
        int b = mesh.corner(t, (c + 1) % 3);
        if (mesh.onEdge(a) && mesh.onEdge(b)) {
          ways.add((long) a << 32 | b);
        }
      }
    }
    int[] next = new int[mesh.nodes()];
    Arrays.fill(next, -1);
    for (long way : ways) {
      int a = (int) (way >> 32);
      int b = (int) way;
      // A side within the material is gone both ways.
      if (!ways.contains((long) b << 32 | a)) {
        next[a] = b;
      }
    }
    return next;
  }

  /** The row about a node; empty where there is none. */
  private static int[] row(int node, int[] next, int[] previous) {
    int[] row = new int[2 * REACH + 1];
    int first = node;
    for (int k = 0; k < REACH && first >= 0; k++) {
      first = previous[first];
    }
    for (int k = 0; k < row.length; k++) {
      if (first < 0) {
        return new int[0];
      }
      row[k] = first;
      first = next[first];
    }
    return row;
  }

  private static boolean smooth(PlateMesh mesh, int[] row) {
    for (int k = 1; k < row.length - 1; k++) {
      Point in = mesh.point(row[k]).minus(mesh.point(row[k - 1])).unit();
      Point out = mesh.point(row[k + 1]).minus(mesh.point(row[k])).unit();
      if (in.dot(out) < CORNER) {
        return false;
      }
    }
    return true;
  }

  private static Place place(PlateMesh mesh, int[] row) {
    double[] at = new double[row.length];
    for (int k = 1; k < row.length; k++) {
      at[k] = at[k - 1] + mesh.point(row[k]).distance(mesh.point(row[k - 1]));
    }
    double[] change = slopes(at, REACH);
    double x = 0;
    double y = 0;
    for (int k = 0; k < row.length; k++) {
      x += change[k] * mesh.x(row[k]);
      y += change[k] * mesh.y(row[k]);
    }
    // By the length of the curve, and not of its chords.
    double length = Math.sqrt(x * x + y * y);
    for (int k = 0; k < row.length; k++) {
      change[k] /= length;
    }
    return new Place(row, change, x / length, y / length);
  }

  /** How much the value at each place counts for the slope, at one, of the curve through all. */
  private static double[] slopes(double[] at, int middle) {
    double[] by = new double[at.length];
    for (int k = 0; k < at.length; k++) {
      if (k != middle) {
        double part = 1 / (at[k] - at[middle]);
        by[middle] -= part;
        for (int j = 0; j < at.length; j++) {
          if (j != k && j != middle) {
            part *= (at[middle] - at[j]) / (at[k] - at[j]);
          }
        }
        by[k] = part;
      }
    }
    return by;
  }

  /**
   * Corrects the curvatures of nodes on free edges.
   *
   * @param slopes three unknowns a node, slopes the second and third of them
   * @param d bending stiffness, N mm
   * @param curvatures three figures a node
   */
  void correct(double[] slopes, PlaneStiffness d, double[] curvatures) {
    for (Place place : places) {
      double along = -place.tx * place.changeOf(slopes, 1) - place.ty * place.changeOf(slopes, 2);
      correct(place, along, d, curvatures);
    }
  }

  /**
   * Corrects the strains of nodes on free edges: nothing pulls across them, so that all strain
   * follows from that along the edge.
   *
   * @param moves three unknowns a node, displacements the first two of them
   * @param a membrane stiffness, N/mm
   * @param strains three figures a node
   */
  void correctInPlane(double[] moves, PlaneStiffness a, double[] strains) {
    for (Place place : places) {
      double along = place.tx * place.changeOf(moves, 0) + place.ty * place.changeOf(moves, 1);
      correct(place, along, a, strains);
    }
  }

  private static void correct(Place place, double along, PlaneStiffness stiff, double[] figures) {
    double tx = place.tx;
    double ty = place.ty;
    double[] alone = stiff.underPull(tx * tx, ty * ty, tx * ty);
    double own = tx * tx * alone[0] + ty * ty * alone[1] + tx * ty * alone[2];
    int node = 3 * place.row[REACH];
    for (int k = 0; k < 3; k++) {
      figures[node + k] = (figures[node + k] + along / own * alone[k]) / 2;
    }
  }
}
