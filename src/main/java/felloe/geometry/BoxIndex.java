package felloe.geometry;

import java.util.ArrayList;
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

  private final int[] order;

  // Four sides a box, from the leaves (in order) up to the top: arrays are read faster than boxes.
  private final double[][] levels;

  BoxIndex(List<Box> boxes) {
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

  private static double[][] stack(List<Box> boxes, int[] order) {
    List<double[]> levels = new ArrayList<>();
    double[] sides = new double[4 * order.length];
    for (int i = 0; i < order.length; i++) {
      Box box = boxes.get(order[i]);
      sides[4 * i] = box.minX();
      sides[4 * i + 1] = box.minY();
      sides[4 * i + 2] = box.maxX();
      sides[4 * i + 3] = box.maxY();
    }
    levels.add(sides);
    while (sides.length > 4 * FAN) {
      sides = above(sides);
      levels.add(sides);
    }
    return levels.toArray(double[][]::new);
  }

  /** The boxes round each {@code FAN} boxes of a level. */
  private static double[] above(double[] below) {
    int count = below.length / 4;
    int nodes = (count + FAN - 1) / FAN;
    double[] sides = new double[4 * nodes];
    for (int node = 0; node < nodes; node++) {
      int at = 4 * node;
      System.arraycopy(below, at * FAN, sides, at, 4);
      for (int i = at * FAN + 4; i < Math.min(below.length, (at + 4) * FAN); i += 4) {
        sides[at] = Math.min(sides[at], below[i]);
        sides[at + 1] = Math.min(sides[at + 1], below[i + 1]);
        sides[at + 2] = Math.max(sides[at + 2], below[i + 2]);
        sides[at + 3] = Math.max(sides[at + 3], below[i + 3]);
      }
    }
    return sides;
  }

  /** Calls {@code found} with the number of every box that touches the given one. */
  void touching(Box box, IntConsumer found) {
    int top = levels.length - 1;
    touching(box, top, 0, levels[top].length / 4, found);
  }

  private void touching(Box box, int level, int start, int end, IntConsumer found) {
    double[] sides = levels[level];
    for (int i = start; i < end; i++) {
      int at = 4 * i;
      boolean touches =
          sides[at] <= box.maxX()
              && box.minX() <= sides[at + 2]
              && sides[at + 1] <= box.maxY()
              && box.minY() <= sides[at + 3];
      if (touches && level > 0) {
        touching(box, level - 1, i * FAN, childrenEnd(level, i), found);
      } else if (touches) {
        found.accept(order[i]);
      }
    }
  }

  private int childrenEnd(int level, int node) {
    return Math.min(levels[level - 1].length / 4, (node + 1) * FAN);
  }

  /**
   * The number of the thing nearest to a point, the lower number where two are equally near.
   *
   * @param distance the distance of a numbered thing, never less than that of its box
   */
  int nearest(Point p, IntToDoubleFunction distance) {
    LineSearch search = new LineSearch(p, distance);
    int top = levels.length - 1;
    search.visit(top, 0, levels[top].length / 4);
    return search.best;
  }

  private final class LineSearch {
    private final Point p;
    private final IntToDoubleFunction distance;
    private int best = -1;
    private double bestDistance = Double.POSITIVE_INFINITY;

    LineSearch(Point p, IntToDoubleFunction distance) {
      this.p = p;
      this.distance = distance;
    }

    /** Looks through some nodes of a level (no more than {@code FAN}), the nearest first. */
    void visit(int level, int start, int end) {
      int count = end - start;
      double[] far = new double[count];
      for (int i = 0; i < count; i++) {
        far[i] = distance(levels[level], 4 * (start + i));
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
        int node = start + next;
        if (level > 0) {
          visit(level - 1, node * FAN, childrenEnd(level, node));
        } else {
          consider(order[node]);
        }
      }
    }

    private double distance(double[] sides, int at) {
      double dx = Math.max(0, Math.max(sides[at] - p.x(), p.x() - sides[at + 2]));
      double dy = Math.max(0, Math.max(sides[at + 1] - p.y(), p.y() - sides[at + 3]));
      return Point.length(dx, dy);
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
