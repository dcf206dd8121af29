package felloe.geometry;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.IntToDoubleFunction;

/**
 * Finds boxes by place: a packed tree over boxes that are numbered as they were given. Built once,
 * then only read. Searches take about log n steps.
 */
final class BoxIndex {

  private static final int FAN = 8;

  private final List<Box> boxes;
  private final int[] order;
  private final Box[][] levels;

  BoxIndex(List<Box> boxes) {
    this.boxes = boxes;
    this.order = tiled(boxes);
    this.levels = stack(boxes, order);
  }

  /** Sorts into vertical strips and each strip by height, so that neighbours share a node. */
  private static int[] tiled(List<Box> boxes) {
    int n = boxes.size();
    Integer[] byX = new Integer[n];
    Arrays.setAll(byX, i -> i);
    Comparator<Integer> x =
        Comparator.comparingDouble(i -> boxes.get(i).minX() + boxes.get(i).maxX());
    Comparator<Integer> y =
        Comparator.comparingDouble(i -> boxes.get(i).minY() + boxes.get(i).maxY());
    Arrays.sort(byX, x);
    int strips = (int) Math.ceil(Math.sqrt((double) n / FAN));
    int height = strips == 0 ? 1 : (n + strips - 1) / strips;
    height = (height + FAN - 1) / FAN * FAN;
    for (int start = 0; start < n; start += height) {
      Arrays.sort(byX, start, Math.min(n, start + height), y);
    }
    return Arrays.stream(byX).mapToInt(Integer::intValue).toArray();
  }

  private static Box[][] stack(List<Box> boxes, int[] order) {
    int depth = 1;
    for (int n = order.length; n > FAN; n = (n + FAN - 1) / FAN) {
      depth++;
    }
    Box[][] levels = new Box[depth][];
    int count = order.length;
    for (int level = 0; level < depth; level++) {
      int nodes = (count + FAN - 1) / FAN;
      levels[level] = new Box[nodes];
      for (int node = 0; node < nodes; node++) {
        Box box = null;
        for (int i = node * FAN; i < Math.min(count, (node + 1) * FAN); i++) {
          Box part = level == 0 ? boxes.get(order[i]) : levels[level - 1][i];
          box = box == null ? part : box.union(part);
        }
        levels[level][node] = box;
      }
      count = nodes;
    }
    return levels;
  }

  /** Calls {@code found} with the number of every box that touches the given one. */
  void touching(Box box, IntConsumer found) {
    int top = levels.length - 1;
    for (int node = 0; node < levels[top].length; node++) {
      touching(box, top, node, found);
    }
  }

  private void touching(Box box, int level, int node, IntConsumer found) {
    if (!levels[level][node].touches(box)) {
      return;
    }
    int below = level == 0 ? order.length : levels[level - 1].length;
    for (int i = node * FAN; i < Math.min(below, (node + 1) * FAN); i++) {
      if (level > 0) {
        touching(box, level - 1, i, found);
      } else if (boxes.get(order[i]).touches(box)) {
        found.accept(order[i]);
      }
    }
  }

  /**
   * The number of the thing nearest to a point, the lower number where two are equally near.
   *
   * @param distance the distance of a numbered thing, never less than that of its box
   */
  int nearest(Point p, IntToDoubleFunction distance) {
    Search search = new Search(p, distance);
    int top = levels.length - 1;
    for (int node = 0; node < levels[top].length; node++) {
      search.visit(top, node);
    }
    return search.best;
  }

  private final class Search {
    private final Point p;
    private final IntToDoubleFunction distance;
    private int best = -1;
    private double bestDistance = Double.POSITIVE_INFINITY;

    Search(Point p, IntToDoubleFunction distance) {
      this.p = p;
      this.distance = distance;
    }

    void visit(int level, int node) {
      int start = node * FAN;
      int below = level == 0 ? order.length : levels[level - 1].length;
      int count = Math.min(below, start + FAN) - start;
      double[] far = new double[count];
      for (int i = 0; i < count; i++) {
        Box box = level == 0 ? boxes.get(order[start + i]) : levels[level - 1][start + i];
        far[i] = box.distance(p);
      }
      for (int round = 0; round < count; round++) {
        int next = 0;
        for (int i = 1; i < count; i++) {
          if (far[i] < far[next]) {
            next = i;
          }
        }
        if (far[next] > bestDistance) {
          return;
        }
        far[next] = Double.POSITIVE_INFINITY;
        if (level > 0) {
          visit(level - 1, start + next);
        } else {
          consider(order[start + next]);
        }
      }
    }

    private void consider(int candidate) {
      double d = distance.applyAsDouble(candidate);
      if (d < bestDistance || (d == bestDistance && candidate < best)) {
        bestDistance = d;
        best = candidate;
      }
    }
  }
}
