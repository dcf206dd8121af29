package felloe.drawing;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Cuts a field of values along lines of equal value.
 *
 * <p>Triangles are cut where their linear value meets the limit, and joined again: a side between
 * two triangles that are both inside is never drawn, so that an area is a few rings and not a
 * thousand triangles. Corners that lie just at the limit are inside. Points are told apart by their
 * numbers, never by nearness, so that rings close whatever the figures are.
 */
final class Isobands {

  private static final int NONE = -1;

  private final NodalField field;
  private final int[] neighbours;

  Isobands(NodalField field) {
    this.field = field;
    this.neighbours = neighbours(field.corners());
  }

  /**
   * Where a field is at or above a limit.
   *
   * @param rings edges of that part, with it to their left
   * @param lines those parts of the rings where the value is the limit
   */
  record Area(List<List<Point>> rings, List<Isoline> lines) {
    /** What the rings enclose, mm2. */
    double size() {
      return rings.stream().mapToDouble(Isobands::enclosed).sum();
    }
  }

  /**
   * A line of equal value, with greater values to its left.
   *
   * @param points along it; of a closed one the first is not repeated
   * @param closed whether it ends where it starts
   */
  record Isoline(List<Point> points, boolean closed) {}

  private static double enclosed(List<Point> ring) {
    double sum = 0;
    for (int i = 0; i < ring.size(); i++) {
      sum += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    return sum / 2;
  }

  /** For each side of each triangle, opposite a corner, the triangle beyond it. */
  private static int[] neighbours(int[] corners) {
    int[] beyond = new int[corners.length];
    Arrays.fill(beyond, NONE);
    Map<Long, Integer> seen = new HashMap<>();
    for (int side = 0; side < corners.length; side++) {
      int from = from(corners, side);
      int to = to(corners, side);
      Integer other = seen.put(key(Math.min(from, to), Math.max(from, to)), side);
      if (other != null) {
        beyond[side] = other / 3;
        beyond[other] = side / 3;
      }
    }
    return beyond;
  }

  private static int from(int[] corners, int side) {
    return corners[side - side % 3 + (side + 1) % 3];
  }

  private static int to(int[] corners, int side) {
    return corners[side - side % 3 + (side + 2) % 3];
  }

  private static long key(int from, int to) {
    return ((long) from << 32) | to;
  }

  /** The part of the field at or above a limit; no rings where there is none. */
  Area above(double limit) {
    return new Cut(limit).area();
  }

  /** One limit's cut. */
  private final class Cut {
    private final double limit;
    private final Map<Long, Integer> crossings = new HashMap<>();
    private final List<Point> cut = new ArrayList<>();

    /** Directed sides by their ends; whether each is a line of equal value. */
    private final Map<Long, Boolean> sides = new LinkedHashMap<>();

    Cut(double limit) {
      this.limit = limit;
    }

    Area area() {
      int[] corners = field.corners();
      for (int t = 0; t < corners.length / 3; t++) {
        int inside = inside(t);
        if (inside == 3) {
          whole(t);
        } else if (inside > 0) {
          part(t);
        }
      }
      List<Long> all = new ArrayList<>(sides.keySet());
      List<Long> lines = all.stream().filter(sides::get).toList();
      return new Area(
          chains(all).stream().map(c -> c.points).toList(),
          chains(lines).stream().map(c -> new Isoline(c.points, c.closed)).toList());
    }

    private boolean in(int point) {
      return field.values()[point] >= limit;
    }

    private int inside(int triangle) {
      int count = 0;
      for (int i = 0; i < 3; i++) {
        count += in(field.corners()[3 * triangle + i]) ? 1 : 0;
      }
      return count;
    }

    private void whole(int t) {
      for (int i = 0; i < 3; i++) {
        int beyond = neighbours[3 * t + i];
        if (beyond == NONE || inside(beyond) < 3) {
          int from = from(field.corners(), 3 * t + i);
          int to = to(field.corners(), 3 * t + i);
          boolean level = field.values()[from] == limit && field.values()[to] == limit;
          side(from, to, beyond != NONE && level);
        }
      }
    }

    private void part(int t) {
      List<Integer> piece = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        int from = field.corners()[3 * t + i];
        int to = field.corners()[3 * t + (i + 1) % 3];
        if (in(from)) {
          piece.add(from);
        }
        if (in(from) != in(to)) {
          piece.add(crossing(from, to));
        }
      }
      if (piece.stream().distinct().count() < 3) {
        // Only a corner or a side lies just at the limit.
        return;
      }
      for (int i = 0; i < piece.size(); i++) {
        int from = piece.get(i);
        int to = piece.get((i + 1) % piece.size());
        if (from != to) {
          side(from, to, level(t, from) && level(t, to) && !onEdge(t, from, to));
        }
      }
    }

    private boolean level(int t, int point) {
      return point >= field.values().length || field.values()[point] == limit;
    }

    /** Whether a side of a piece is a whole side of the triangle with nothing beyond. */
    private boolean onEdge(int t, int from, int to) {
      for (int i = 0; i < 3; i++) {
        boolean same =
            from(field.corners(), 3 * t + i) == from && to(field.corners(), 3 * t + i) == to;
        if (same) {
          return neighbours[3 * t + i] == NONE;
        }
      }
      return false;
    }

    /** The point between two corners where the value is the limit: a corner where it is there. */
    private int crossing(int a, int b) {
      int high = in(a) ? a : b;
      int low = in(a) ? b : a;
      double top = field.values()[high];
      double bottom = field.values()[low];
      if (top == limit) {
        return high;
      }
      return crossings.computeIfAbsent(
          key(Math.min(a, b), Math.max(a, b)),
          k -> {
            // Halved, since the difference of very large figures has no bound.
            double share = (limit / 2 - bottom / 2) / (top / 2 - bottom / 2);
            cut.add(corner(low).towards(corner(high), share));
            return field.values().length + cut.size() - 1;
          });
    }

    private Point corner(int point) {
      return new Point(field.x()[point], field.y()[point]);
    }

    private Point point(int number) {
      int nodes = field.values().length;
      return number < nodes ? corner(number) : cut.get(number - nodes);
    }

    /** Two pieces on both sides of a side leave none. */
    private void side(int from, int to, boolean line) {
      if (sides.remove(key(to, from)) == null) {
        sides.put(key(from, to), line);
      }
    }

    private List<Chain> chains(List<Long> ways) {
      Map<Integer, List<Integer>> next = new TreeMap<>();
      Map<Integer, Integer> entries = new HashMap<>();
      for (long way : ways) {
        next.computeIfAbsent((int) (way >> 32), k -> new ArrayList<>()).add((int) way);
        entries.merge((int) way, 1, Integer::sum);
      }
      List<Chain> chains = new ArrayList<>();
      // Open chains first, each from where it starts; what is left is closed.
      for (int start : List.copyOf(next.keySet())) {
        while (next.getOrDefault(start, List.of()).size() > entries.getOrDefault(start, 0)) {
          chains.add(chain(start, next, entries));
        }
      }
      for (int start : List.copyOf(next.keySet())) {
        while (next.containsKey(start)) {
          chains.add(chain(start, next, entries));
        }
      }
      return chains;
    }

    private Chain chain(
        int start, Map<Integer, List<Integer>> next, Map<Integer, Integer> entries) {
      List<Point> points = new ArrayList<>(List.of(point(start)));
      int at = start;
      while (next.containsKey(at)) {
        List<Integer> ways = next.get(at);
        int to = ways.remove(ways.size() - 1);
        if (ways.isEmpty()) {
          next.remove(at);
        }
        entries.merge(to, -1, Integer::sum);
        at = to;
        if (at == start) {
          return new Chain(points, true);
        }
        points.add(point(at));
      }
      return new Chain(points, false);
    }
  }

  private record Chain(List<Point> points, boolean closed) {}
}
