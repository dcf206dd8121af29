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
    int side = n + 1;
    double[] px = new double[side * side];
    double[] py = new double[side * side];
    for (int i = 0; i < px.length; i++) {
      double across = (double) (i % side) / n;
      double up = (double) (i / side) / n;
      px[i] = x.applyAsDouble(across, up);
      py[i] = y.applyAsDouble(across, up);
    }
    int[] corners = new int[6 * n * n];
    int at = 0;
    for (int r = 0; r < n; r++) {
      for (int c = 0; c < n; c++) {
        int low = r * side + c;
        int high = low + side;
        int[] two =
            rising
                ? new int[] {low, low + 1, high + 1, low, high + 1, high}
                : new int[] {low, low + 1, high, low + 1, high + 1, high};
        for (int node : two) {
          corners[at++] = node;
        }
      }
    }
    boolean[] edge = new boolean[px.length];
    for (int i = 0; i < px.length; i++) {
      int c = i % side;
      int r = i / side;
      edge[i] = c == 0 || r == 0 || c == n || r == n;
    }
    return new PlateMesh(px, py, corners, edge, edge);
  }
}
