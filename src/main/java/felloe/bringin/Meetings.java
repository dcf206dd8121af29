package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where the ends of strokes meet. End 2 i is where stroke i starts, end 2 i + 1 where it ends. */
final class Meetings {

  /** Ends as near as this meet, whatever gap is allowed, mm: what a drawing's digits leave. */
  static final double TOUCH = 1e-3;

  /** Of the shortest line beside them ends that meet lie no farther apart than this part. */
  static final double SHARE = 0.25;

  private final List<Stroke> open;
  private final double gap;

  private Meetings(List<Stroke> open, double gap) {
    this.open = open;
    this.gap = gap;
  }

  /**
   * Numbers the places where ends meet: first ends that touch, then ends that are still alone, the
   * nearest first, so that nothing shorter than the gap vanishes in it.
   */
  static int[] of(List<Stroke> open, double gap) {
    return new Meetings(open, gap).places();
  }

  private int[] places() {
    int[] group = new int[2 * open.size()];
    Map<Long, List<Integer>> grid = new HashMap<>();
    List<double[]> pairs = new ArrayList<>();
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
      Point p = end(i);
      for (long cell : Cells.around(p, gap)) {
        for (int other : grid.getOrDefault(cell, List.of())) {
          double apart = end(other).distance(p);
          if (apart <= touch(i, other)) {
            union(group, i, other);
          } else if (apart <= gap) {
            pairs.add(new double[] {apart, other, i});
          }
        }
      }
      grid.computeIfAbsent(Cells.of(p, gap), c -> new ArrayList<>()).add(i);
    }
    int[] count = new int[group.length];
    for (int i = 0; i < group.length; i++) {
      count[root(group, i)]++;
    }
    pairs.sort(Comparator.comparingDouble(pair -> pair[0]));
    for (double[] pair : pairs) {
      int a = root(group, (int) pair[1]);
      int b = root(group, (int) pair[2]);
      boolean ends = (int) pair[1] / 2 == (int) pair[2] / 2;
      if (a != b && count[a] == 1 && count[b] == 1 && !ends) {
        union(group, a, b);
        count[root(group, a)] = 2;
      }
    }
    for (int i = 0; i < group.length; i++) {
      group[i] = root(group, i);
    }
    return group;
  }

  private double touch(int a, int b) {
    if (a / 2 == b / 2) {
      return 0;
    }
    double shortest =
        Math.min(Stroke.size(List.of(open.get(a / 2))), Stroke.size(List.of(open.get(b / 2))));
    return Math.min(TOUCH, SHARE * shortest);
  }

  private Point end(int number) {
    Stroke stroke = open.get(number / 2);
    return number % 2 == 0 ? stroke.from() : stroke.to();
  }

  private static int root(int[] group, int i) {
    int at = i;
    while (group[at] != at) {
      group[at] = group[group[at]];
      at = group[at];
    }
    return at;
  }

  private static void union(int[] group, int a, int b) {
    group[root(group, a)] = root(group, b);
  }
}
