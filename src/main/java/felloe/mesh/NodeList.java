package felloe.mesh;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Nodes as they are found, and a search among them. Not shared between threads. */
final class NodeList {

  private final int most;
  private final double cell;
  private final Map<Long, List<Integer>> cells = new HashMap<>();
  private double[] x = new double[256];
  private double[] y = new double[256];
  private int count;

  NodeList(int most, double cell) {
    this.most = most;
    this.cell = cell;
  }

  int add(Point p) {
    if (count == most) {
      throw new MeshException("the mesh has more than " + most + " nodes", p);
    }
    if (count == x.length) {
      x = Arrays.copyOf(x, 2 * count);
      y = Arrays.copyOf(y, 2 * count);
    }
    x[count] = p.x();
    y[count] = p.y();
    cells.computeIfAbsent(cell(p.x(), p.y()), k -> new ArrayList<>()).add(count);
    return count++;
  }

  int count() {
    return count;
  }

  double[] x() {
    return x;
  }

  double[] y() {
    return y;
  }

  private long cell(double px, double py) {
    return key((int) Math.floor(px / cell), (int) Math.floor(py / cell));
  }

  private static long key(int column, int row) {
    return ((long) column << 32) ^ (row & 0xffffffffL);
  }

  /** Whether any node lies nearer to a point than that. */
  boolean anyWithin(Point p, double distance) {
    int fromColumn = (int) Math.floor((p.x() - distance) / cell);
    int toColumn = (int) Math.floor((p.x() + distance) / cell);
    int fromRow = (int) Math.floor((p.y() - distance) / cell);
    int toRow = (int) Math.floor((p.y() + distance) / cell);
    for (int column = fromColumn; column <= toColumn; column++) {
      for (int row = fromRow; row <= toRow; row++) {
        for (int i : cells.getOrDefault(key(column, row), List.of())) {
          double dx = x[i] - p.x();
          double dy = y[i] - p.y();
          if (dx * dx + dy * dy < distance * distance) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
