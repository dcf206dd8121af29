package felloe.load;

import felloe.mesh.PlateMesh;
import java.util.Arrays;

/**
 * Values at the nodes from values inside the triangles. About each node a quadratic is laid, by
 * least squares, through what the triangles near it say at the points where they are most exact;
 * near those are the triangles about the node and about its neighbours.
 *
 * <p>At an edge this is far better than a mean: it looks along the gradient instead of across it.
 * Source: Zienkiewicz and Zhu, The superconvergent patch recovery, IJNME 33 (1992) 1331, from
 * memory; here with one patch a node.
 */
final class NodalRecovery {

  private static final int TERMS = 6;

  private final PlateMesh mesh;
  private final boolean[] idle;
  private final int[] zones;
  private final int samples;
  private final double[] px;
  private final double[] py;
  private final int[] start;
  private final int[] about;
  private final double[] term = new double[TERMS];

  /** For each node the samples that it is told from, and by how much each counts. */
  private final int[][] from;

  private final double[][] share;

  /**
   * Takes the places of the samples, and finds how each node is told from them.
   *
   * @param idle triangles that say nothing, since all that they touch is held
   * @param zones of the triangles where not all are alike, 0 for bare ones: strains jump where a
   *     zone ends, and a node there is told by the bare side, which is strained more
   * @param samples how many points a triangle has
   * @param px abscissas of all points, one triangle after another
   * @param py ordinates
   */
  NodalRecovery(
      PlateMesh mesh, boolean[] idle, int[] zones, int samples, double[] px, double[] py) {
    this.mesh = mesh;
    this.idle = idle;
    this.zones = zones;
    this.samples = samples;
    this.px = px;
    this.py = py;
    this.start = new int[mesh.nodes() + 1];
    this.about = about();
    from = new int[mesh.nodes()][];
    share = new double[mesh.nodes()][];
    shares();
  }

  boolean[] idle() {
    return idle;
  }

  private int[] about() {
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3 && !idle[t]; c++) {
        start[mesh.corner(t, c) + 1]++;
      }
    }
    for (int i = 0; i < mesh.nodes(); i++) {
      start[i + 1] += start[i];
    }
    int[] next = Arrays.copyOf(start, mesh.nodes());
    int[] found = new int[start[mesh.nodes()]];
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3 && !idle[t]; c++) {
        found[next[mesh.corner(t, c)]++] = t;
      }
    }
    return found;
  }

  /**
   * The values at the nodes, as many a node as there are quantities; 0 where nothing is said.
   *
   * @param values all quantities of the first point, then those of the next
   * @param quantities how many there are
   */
  double[] atNodes(double[] values, int quantities) {
    double[] result = new double[quantities * mesh.nodes()];
    double[] sums = new double[quantities];
    for (int node = 0; node < mesh.nodes(); node++) {
      int[] at = from[node];
      double[] by = share[node];
      Arrays.fill(sums, 0);
      for (int i = 0; i < at.length; i++) {
        int first = quantities * at[i];
        double share = by[i];
        for (int q = 0; q < quantities; q++) {
          sums[q] += share * values[first + q];
        }
      }
      System.arraycopy(sums, 0, result, quantities * node, quantities);
    }
    return result;
  }

  private void shares() {
    int[] seen = new int[mesh.triangles()];
    int[] patch = new int[mesh.triangles()];
    double[][] normal = new double[TERMS][TERMS + 1];
    double[] dx = new double[samples];
    double[] dy = new double[samples];
    double[] weights = new double[samples];
    for (int node = 0; node < mesh.nodes(); node++) {
      int count = samples * patch(node, seen, patch);
      int[] at = new int[count];
      double[] by = new double[count];
      from[node] = at;
      share[node] = by;
      if (count == 0) {
        continue;
      }
      if (count > dx.length) {
        dx = new double[2 * count];
        dy = new double[2 * count];
        weights = new double[2 * count];
      }
      double most = 0;
      for (int i = 0; i < count; i++) {
        at[i] = samples * patch[i / samples] + i % samples;
        dx[i] = px[at[i]] - mesh.x(node);
        dy[i] = py[at[i]] - mesh.y(node);
        most = Math.max(most, dx[i] * dx[i] + dy[i] * dy[i]);
      }
      double scale = 1 / Math.sqrt(most);
      for (double[] row : normal) {
        Arrays.fill(row, 0);
      }
      for (int i = 0; i < count; i++) {
        dx[i] *= scale;
        dy[i] *= scale;
        double square = dx[i] * dx[i] + dy[i] * dy[i];
        // What lies nearer counts more.
        weights[i] = 1 / ((0.03 + square) * (0.03 + square));
        add(normal, dx[i], dy[i], weights[i]);
      }
      int terms = count >= 2 * TERMS ? TERMS : count >= 6 ? 3 : 1;
      for (int i = 1; i < TERMS; i++) {
        for (int j = 0; j < i; j++) {
          normal[i][j] = normal[j][i];
        }
      }
      // The value at the node itself is the constant term: what a sample adds to it is the first
      // row of the inverse times the sample's terms.
      normal[0][TERMS] = 1;
      solve(normal, terms);
      for (int i = 0; i < count; i++) {
        terms(dx[i], dy[i]);
        double sum = 0;
        for (int k = 0; k < terms; k++) {
          sum += normal[k][TERMS] * term[k];
        }
        by[i] = weights[i] * sum;
      }
    }
  }

  private int patch(int node, int[] seen, int[] patch) {
    int n = 0;
    int mark = node + 1;
    int zone = zone(node);
    for (int i = start[node]; i < start[node + 1]; i++) {
      if (seen[about[i]] != mark && isIn(zone, about[i])) {
        seen[about[i]] = mark;
        patch[n++] = about[i];
      }
    }
    int first = n;
    for (int k = 0; k < first; k++) {
      for (int c = 0; c < 3; c++) {
        int near = mesh.corner(patch[k], c);
        for (int i = start[near]; i < start[near + 1]; i++) {
          if (seen[about[i]] != mark && isIn(zone, about[i])) {
            seen[about[i]] = mark;
            patch[n++] = about[i];
          }
        }
      }
    }
    return n;
  }

  private boolean isIn(int zone, int triangle) {
    return zones.length == 0 || zones[triangle] == zone;
  }

  /** The zone that a node is told by: the bare one where it touches that. */
  private int zone(int node) {
    int zone = Integer.MAX_VALUE;
    for (int i = start[node]; i < start[node + 1] && zones.length > 0; i++) {
      zone = Math.min(zone, zones[about[i]]);
    }
    return zone;
  }

  private void terms(double dx, double dy) {
    term[0] = 1;
    term[1] = dx;
    term[2] = dy;
    term[3] = dx * dx;
    term[4] = dx * dy;
    term[5] = dy * dy;
  }

  private void add(double[][] normal, double dx, double dy, double weight) {
    terms(dx, dy);
    for (int i = 0; i < TERMS; i++) {
      double[] row = normal[i];
      double weighted = weight * term[i];
      for (int j = i; j < TERMS; j++) {
        row[j] += weighted * term[j];
      }
    }
  }

  /** Gauss and Jordan with pivots on the diagonal: the matrix is positive definite. */
  private static void solve(double[][] m, int terms) {
    for (int i = 0; i < terms; i++) {
      double pivot = Math.max(m[i][i], 1e-12);
      for (int r = 0; r < terms; r++) {
        if (r != i) {
          double factor = m[r][i] / pivot;
          for (int c = i; c < terms; c++) {
            m[r][c] -= factor * m[i][c];
          }
          m[r][TERMS] -= factor * m[i][TERMS];
        }
      }
    }
    for (int i = 0; i < terms; i++) {
      m[i][TERMS] /= Math.max(m[i][i], 1e-12);
    }
  }
}
