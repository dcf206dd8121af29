package felloe.load;

import felloe.geometry.Point;
import felloe.mesh.PlateMesh;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

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
  private final Told nodes;

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
    nodes = new Fits().at(IntStream.range(0, mesh.nodes()).toArray(), List.of());
  }

  /**
   * How values at places are told from samples.
   *
   * @param nodes the node that each place is, or is nearest to
   * @param from the samples that each place is told from
   * @param share by how much each of those counts
   */
  record Told(int[] nodes, int[][] from, double[][] share) {

    /** Of no places. */
    static final Told NONE = new Told(new int[0], new int[0][], new double[0][]);

    /** Puts the values at the places into an array in which so many others stand before them. */
    private void tell(double[] values, int quantities, double[] into, int before) {
      double[] sums = new double[quantities];
      for (int place = 0; place < nodes.length; place++) {
        int[] at = from[place];
        double[] by = share[place];
        Arrays.fill(sums, 0);
        for (int i = 0; i < at.length; i++) {
          int first = quantities * at[i];
          double share = by[i];
          for (int q = 0; q < quantities; q++) {
            sums[q] += share * values[first + q];
          }
        }
        System.arraycopy(sums, 0, into, quantities * (before + place), quantities);
      }
    }
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
   * How values at other places than nodes are told: by the triangles about the nearest node that is
   * told anything, and by a quadratic that is laid for the place itself.
   */
  Told at(List<Point> places) {
    return places.isEmpty() ? Told.NONE : new Fits().at(new NodesByX().nearest(places), places);
  }

  /**
   * The values at the nodes and then at other places, as many a place as there are quantities; 0
   * where nothing is said.
   *
   * @param values all quantities of the first point, then those of the next
   * @param quantities how many there are
   * @param others found by {@link #at}
   */
  double[] told(double[] values, int quantities, Told others) {
    double[] result = new double[quantities * (mesh.nodes() + others.nodes().length)];
    nodes.tell(values, quantities, result, 0);
    others.tell(values, quantities, result, mesh.nodes());
    return result;
  }

  /** Nodes that are told anything, from left to right, to find those near a place. */
  private final class NodesByX {

    private final int[] nodes;
    private final double[] x;

    NodesByX() {
      nodes =
          IntStream.range(0, mesh.nodes())
              .filter(i -> start[i] < start[i + 1])
              .boxed()
              .sorted((a, b) -> Double.compare(mesh.x(a), mesh.x(b)))
              .mapToInt(Integer::intValue)
              .toArray();
      x = Arrays.stream(nodes).mapToDouble(mesh::x).toArray();
    }

    int[] nearest(List<Point> places) {
      return places.stream().mapToInt(this::nearest).toArray();
    }

    private int nearest(Point p) {
      int found = Arrays.binarySearch(x, p.x());
      int right = found < 0 ? -found - 1 : found;
      int left = right - 1;
      int best = nodes[Math.min(right, nodes.length - 1)];
      double least = mesh.distance(best, p);
      while (left >= 0 && p.x() - x[left] < least || right < x.length && x[right] - p.x() < least) {
        for (int i : new int[] {left, right}) {
          if (i >= 0 && i < x.length && mesh.distance(nodes[i], p) < least) {
            best = nodes[i];
            least = mesh.distance(best, p);
          }
        }
        left--;
        right++;
      }
      return best;
    }
  }

  /** Lays quadratics; its arrays serve one place after another. */
  private final class Fits {

    private final int[] seen = new int[mesh.triangles()];
    private final int[] patch = new int[mesh.triangles()];
    private final double[][] normal = new double[TERMS][TERMS + 1];
    private final double[] term = new double[TERMS];
    private double[] dx = new double[samples];
    private double[] dy = new double[samples];
    private double[] weights = new double[samples];
    private int mark;

    /**
     * How places are told.
     *
     * @param near the nodes about which the triangles lie
     * @param places where they are, if not at those nodes
     */
    Told at(int[] near, List<Point> places) {
      int[][] from = new int[near.length][];
      double[][] share = new double[near.length][];
      for (int i = 0; i < near.length; i++) {
        int count = samples * patch(near[i]);
        from[i] = new int[count];
        share[i] = new double[count];
        if (count > 0) {
          boolean node = places.isEmpty();
          double x = node ? mesh.x(near[i]) : places.get(i).x();
          double y = node ? mesh.y(near[i]) : places.get(i).y();
          lay(x, y, from[i], share[i]);
        }
      }
      return new Told(near, from, share);
    }

    private void lay(double x, double y, int[] at, double[] by) {
      int count = at.length;
      if (count > dx.length) {
        dx = new double[2 * count];
        dy = new double[2 * count];
        weights = new double[2 * count];
      }
      double most = 0;
      for (int i = 0; i < count; i++) {
        at[i] = samples * patch[i / samples] + i % samples;
        dx[i] = px[at[i]] - x;
        dy[i] = py[at[i]] - y;
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
        add(dx[i], dy[i], weights[i]);
      }
      int terms = count >= 2 * TERMS ? TERMS : count >= 6 ? 3 : 1;
      for (int i = 1; i < TERMS; i++) {
        for (int j = 0; j < i; j++) {
          normal[i][j] = normal[j][i];
        }
      }
      // The value at the place itself is the constant term: what a sample adds to it is the first
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

    /** Puts the triangles about a node and about its neighbours down, and tells how many. */
    private int patch(int node) {
      int n = 0;
      mark++;
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

    private void terms(double dx, double dy) {
      term[0] = 1;
      term[1] = dx;
      term[2] = dy;
      term[3] = dx * dx;
      term[4] = dx * dy;
      term[5] = dy * dy;
    }

    private void add(double dx, double dy, double weight) {
      terms(dx, dy);
      for (int i = 0; i < TERMS; i++) {
        double[] row = normal[i];
        double weighted = weight * term[i];
        for (int j = i; j < TERMS; j++) {
          row[j] += weighted * term[j];
        }
      }
    }
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
