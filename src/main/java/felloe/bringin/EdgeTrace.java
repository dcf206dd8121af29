package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The lines along which a field over squares is 0, what is above 0 to their left. */
final class EdgeTrace {

  private final float[] field;
  private final int columns;
  private final int rows;

  EdgeTrace(float[] field, int columns, int rows) {
    this.field = field;
    this.columns = columns;
    this.rows = rows;
  }

  /** Closed lines, in squares from the middle of the first one; the longest first. */
  List<List<Point>> loops() {
    // Each crossing of a square's side leads to the next one: from the key of one side to another.
    Map<Long, Long> next = new HashMap<>();
    for (int j = 0; j < rows - 1; j++) {
      for (int i = 0; i < columns - 1; i++) {
        cell(i, j, next);
      }
    }
    List<List<Point>> all = new ArrayList<>();
    while (!next.isEmpty()) {
      long start = next.keySet().iterator().next();
      List<Point> loop = new ArrayList<>();
      Long at = start;
      while (at != null) {
        loop.add(crossing(at));
        at = next.remove(at);
        if (at != null && at == start) {
          break;
        }
      }
      if (loop.size() > 8) {
        all.add(loop);
      }
    }
    all.sort(Comparator.comparingDouble(EdgeTrace::area).reversed());
    return all;
  }

  /** The largest of all lines and those within it: dirt beside a part is no edge of it. */
  List<List<Point>> outerWithOpenings() {
    List<List<Point>> all = loops();
    return all.stream().filter(l -> l == all.get(0) || within(all.get(0), l.get(0))).toList();
  }

  /** Whether a closed line goes round a place. */
  private static boolean within(List<Point> loop, Point p) {
    boolean in = false;
    for (int i = 0; i < loop.size(); i++) {
      Point a = loop.get(i);
      Point b = loop.get((i + 1) % loop.size());
      boolean passes = a.y() > p.y() != b.y() > p.y();
      in ^= passes && a.x() + (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) > p.x();
    }
    return in;
  }

  /** Counter-clockwise above 0. */
  static double area(List<Point> loop) {
    double sum = 0;
    for (int i = 0; i < loop.size(); i++) {
      sum += loop.get(i).cross(loop.get((i + 1) % loop.size())) / 2;
    }
    return sum;
  }

  private boolean in(int i, int j) {
    return field[j * columns + i] > 0;
  }

  private long side(int i, int j, boolean upright) {
    return 2L * ((long) j * columns + i) + (upright ? 1 : 0);
  }

  private Point crossing(long key) {
    int k = (int) (key / 2);
    int i = k % columns;
    int j = k / columns;
    float a = field[k];
    float b = field[key % 2 == 1 ? k + columns : k + 1];
    double t = a / (a - b);
    return key % 2 == 1 ? new Point(i, j + t) : new Point(i + t, j);
  }

  /** Corners 0 to 3 counter-clockwise from the lower left; side s lies between s and s + 1. */
  private void cell(int i, int j, Map<Long, Long> next) {
    boolean[] c = {in(i, j), in(i + 1, j), in(i + 1, j + 1), in(i, j + 1)};
    long[] sides = {
      side(i, j, false), side(i + 1, j, true), side(i, j + 1, false), side(i, j, true)
    };
    // A line comes in where, going round, the field falls, and leaves where it rises before that.
    for (int s = 0; s < 4; s++) {
      if (c[s] && !c[(s + 1) % 4]) {
        int back = s;
        while (c[back]) {
          back = (back + 3) % 4;
        }
        next.put(sides[s], sides[back]);
      }
    }
  }
}
