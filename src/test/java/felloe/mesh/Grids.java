package felloe.mesh;

import java.util.function.ToDoubleBiFunction;

/** Meshes in rows, for tests that count elements as books do. */
public final class Grids {

  private Grids() {}

  /**
   * Squares over (0, 0) to (1, 1), each cut in two, mapped to a plate.
   *
   * @param n squares along a side
   * @param rising whether the cuts run from low left to high right
   * @param x abscissa by place in the unit square
   * @param y ordinate by place in the unit square
   */
  public static PlateMesh grid(
      int n,
      boolean rising,
      ToDoubleBiFunction<Double, Double> x,
      ToDoubleBiFunction<Double, Double> y) {
    int side = 2 * n + 1;
    int nodes = (n + 1) * (n + 1);
    int[] number = new int[side * side];
    double[] px = new double[side * side];
    double[] py = new double[side * side];
    int node = 0;
    int middle = nodes;
    for (int r = 0; r < side; r++) {
      for (int c = 0; c < side; c++) {
        int id = r % 2 == 0 && c % 2 == 0 ? node++ : middle++;
        number[r * side + c] = id;
        px[id] = x.applyAsDouble(c / 2.0 / n, r / 2.0 / n);
        py[id] = y.applyAsDouble(c / 2.0 / n, r / 2.0 / n);
      }
    }
    int[] corners = new int[6 * n * n];
    int[] middles = new int[6 * n * n];
    int at = 0;
    for (int r = 0; r < 2 * n; r += 2) {
      for (int c = 0; c < 2 * n; c += 2) {
        int[][] two =
            rising
                ? new int[][] {{0, 0, 2, 0, 2, 2}, {0, 0, 2, 2, 0, 2}}
                : new int[][] {{0, 0, 2, 0, 0, 2}, {2, 0, 2, 2, 0, 2}};
        for (int[] t : two) {
          for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            corners[at] = number[(r + t[2 * i + 1]) * side + c + t[2 * i]];
            int my = (t[2 * j + 1] + t[2 * k + 1]) / 2;
            int mx = (t[2 * j] + t[2 * k]) / 2;
            middles[at++] = number[(r + my) * side + c + mx];
          }
        }
      }
    }
    boolean[] edge = new boolean[nodes];
    for (int i = 0; i < nodes; i++) {
      int c = i % (n + 1);
      int r = i / (n + 1);
      edge[i] = c == 0 || r == 0 || c == n || r == n;
    }
    return new PlateMesh(px, py, nodes, corners, middles, edge, edge);
  }
}
