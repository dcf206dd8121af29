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
  private final int samples;
  private final double[] px;
  private final double[] py;
  private final double[][] values;
  private final int[] start;
  private final int[] about;
  private final double[] term = new double[TERMS];

  /**
   * Takes the samples.
   *
   * @param idle triangles that say nothing, since all that they touch is held
   * @param samples how many points a triangle has
   * @param px abscissas of all points, one triangle after another
   * @param py ordinates
   * @param values for each quantity its values at the points
   */
  NodalRecovery(
      PlateMesh mesh, boolean[] idle, int samples, double[] px, double[] py, double[][] values) {
    this.mesh = mesh;
    this.idle = idle;
    this.samples = samples;
    this.px = px;
    this.py = py;
    this.values = values;
    this.start = new int[mesh.nodes() + 1];
    this.about = about();
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

  /** The values at the nodes, as many a node as there are quantities; 0 where nothing is said. */
  double[] atNodes() {
    int quantities = values.length;
    double[] result = new double[quantities * mesh.nodes()];
    int[] seen = new int[mesh.triangles()];
    int[] patch = new int[mesh.triangles()];
    double[][] normal = new double[TERMS][TERMS + quantities];
    for (int node = 0; node < mesh.nodes(); node++) {
      int n = patch(node, seen, patch);
      if (n == 0) {
        continue;
      }
      double size = size(node, patch, n);
      for (double[] row : normal) {
        Arrays.fill(row, 0);
      }
      for (int i = 0; i < n; i++) {
        for (int s = 0; s < samples; s++) {
          add(normal, node, samples * patch[i] + s, size);
        }
      }
      // The value at the node itself is the constant term.
      int terms = samples * n >= 2 * TERMS ? TERMS : samples * n >= 6 ? 3 : 1;
      for (int i = 1; i < TERMS; i++) {
        for (int j = 0; j < i; j++) {
          normal[i][j] = normal[j][i];
        }
      }
      solve(normal, terms, quantities);
      for (int q = 0; q < quantities; q++) {
        result[quantities * node + q] = normal[0][TERMS + q];
      }
    }
    return result;
  }

  private int patch(int node, int[] seen, int[] patch) {
    int n = 0;
    int mark = node + 1;
    for (int i = start[node]; i < start[node + 1]; i++) {
      if (seen[about[i]] != mark) {
        seen[about[i]] = mark;
        patch[n++] = about[i];
      }
    }
    int first = n;
    for (int k = 0; k < first; k++) {
      for (int c = 0; c < 3; c++) {
        int near = mesh.corner(patch[k], c);
        for (int i = start[near]; i < start[near + 1]; i++) {
          if (seen[about[i]] != mark) {
            seen[about[i]] = mark;
            patch[n++] = about[i];
          }
        }
      }
    }
    return n;
  }

  private double size(int node, int[] patch, int n) {
    double most = 0;
    for (int i = 0; i < n; i++) {
      for (int s = 0; s < samples; s++) {
        int at = samples * patch[i] + s;
        most = Math.max(most, Math.hypot(px[at] - mesh.x(node), py[at] - mesh.y(node)));
      }
    }
    return most;
  }

  private void add(double[][] normal, int node, int at, double size) {
    double dx = (px[at] - mesh.x(node)) / size;
    double dy = (py[at] - mesh.y(node)) / size;
    double square = dx * dx + dy * dy;
    // What lies nearer counts more.
    double weight = 1 / ((0.03 + square) * (0.03 + square));
    term[0] = 1;
    term[1] = dx;
    term[2] = dy;
    term[3] = dx * dx;
    term[4] = dx * dy;
    term[5] = dy * dy;
    for (int i = 0; i < TERMS; i++) {
      double[] row = normal[i];
      double weighted = weight * term[i];
      for (int j = i; j < TERMS; j++) {
        row[j] += weighted * term[j];
      }
      for (int q = 0; q < values.length; q++) {
        row[TERMS + q] += weighted * values[q][at];
      }
    }
  }

  /** Gauss elimination with pivots on the diagonal: the matrix is positive definite. */
  private static void solve(double[][] m, int terms, int quantities) {
    for (int i = 0; i < terms; i++) {
      double pivot = Math.max(m[i][i], 1e-12);
      for (int r = 0; r < terms; r++) {
        if (r != i) {
          double factor = m[r][i] / pivot;
          for (int c = i; c < terms; c++) {
            m[r][c] -= factor * m[i][c];
          }
          for (int c = TERMS; c < TERMS + quantities; c++) {
            m[r][c] -= factor * m[i][c];
          }
        }
      }
    }
    for (int c = TERMS; c < TERMS + quantities; c++) {
      m[0][c] /= Math.max(m[0][0], 1e-12);
    }
  }
}
