package felloe.solid;

import felloe.geometry.Arrangement;
import felloe.geometry.Point;
import felloe.solid.Relief.Corner;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Pieces of a relief with their heights, and the skin round them. Heights at one point of the plan
 * are made one where they nearly are; where faces of two neighbours cross along their common side,
 * both pieces are cut at the crossing, so that along every side one face lies above the other from
 * end to end.
 */
final class ReliefMesh {

  private final List<Point> points = new ArrayList<>();
  private final List<List<Cell>> around = new ArrayList<>();
  private final Map<Point, Integer> numbers = new HashMap<>();
  private final Map<Side, Cell> sides = new LinkedHashMap<>();

  /** A triangle of the plan, counter-clockwise, with the heights of its faces at its corners. */
  private static final class Cell {
    private final int[] at;
    private final double[] bottom;
    private final double[] top;

    Cell(int[] at, double[] bottom, double[] top) {
      this.at = at;
      this.bottom = bottom;
      this.top = top;
    }

    int corner(int point) {
      return at[0] == point ? 0 : at[1] == point ? 1 : 2;
    }

    boolean flat() {
      return Arrays.equals(bottom, top);
    }

    /** The same with one corner elsewhere. */
    Cell with(int corner, int point, double newBottom, double newTop) {
      Cell cell = new Cell(at.clone(), bottom.clone(), top.clone());
      cell.at[corner] = point;
      cell.bottom[corner] = newBottom;
      cell.top[corner] = newTop;
      return cell;
    }
  }

  void add(Corner a, Corner b, Corner c) {
    put(
        new Cell(
            new int[] {number(a.at()), number(b.at()), number(c.at())},
            new double[] {a.bottom(), b.bottom(), c.bottom()},
            new double[] {a.top(), b.top(), c.top()}));
  }

  private int number(Point p) {
    return numbers.computeIfAbsent(
        p,
        fresh -> {
          points.add(fresh);
          around.add(new ArrayList<>());
          return points.size() - 1;
        });
  }

  private void put(Cell cell) {
    for (int i = 0; i < 3; i++) {
      sides.put(new Side(cell.at[i], cell.at[(i + 1) % 3]), cell);
      around.get(cell.at[i]).add(cell);
    }
  }

  private void drop(Cell cell) {
    for (int i = 0; i < 3; i++) {
      sides.remove(new Side(cell.at[i], cell.at[(i + 1) % 3]), cell);
      around.get(cell.at[i]).remove(cell);
    }
  }

  /** The triangles round the whole. */
  List<Triangle> skin() {
    for (int point = 0; point < points.size(); point++) {
      settle(point);
    }
    cutCrossings();
    new ArrayList<>(sides.values()).stream().filter(Cell::flat).forEach(this::drop);
    List<double[]> heights = new ArrayList<>();
    for (int point = 0; point < points.size(); point++) {
      heights.add(heights(point));
    }
    List<Triangle> skin = new ArrayList<>();
    sides.forEach(
        (side, cell) -> {
          if (side.from() == cell.at[0]) {
            skin.add(face(cell, cell.top));
            skin.add(face(cell, cell.bottom).reversed());
          }
          walls(side, cell, heights, skin);
        });
    return skin;
  }

  /** Makes one of heights at a point that nearly are one: the lowest stands for all. */
  private void settle(int point) {
    double[] heights = heights(point);
    for (int i = 1; i < heights.length; i++) {
      if (heights[i] - heights[i - 1] < Arrangement.SNAP) {
        replace(point, heights[i], heights[i - 1]);
        heights[i] = heights[i - 1];
      }
    }
  }

  private double[] heights(int point) {
    TreeSet<Double> heights = new TreeSet<>();
    for (Cell cell : around.get(point)) {
      heights.add(cell.bottom[cell.corner(point)]);
      heights.add(cell.top[cell.corner(point)]);
    }
    return heights.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private void replace(int point, double height, double by) {
    for (Cell cell : around.get(point)) {
      int corner = cell.corner(point);
      cell.bottom[corner] = cell.bottom[corner] == height ? by : cell.bottom[corner];
      cell.top[corner] = cell.top[corner] == height ? by : cell.top[corner];
    }
  }

  private void cutCrossings() {
    Deque<Side> open = new ArrayDeque<>(sides.keySet());
    while (!open.isEmpty()) {
      Side side = open.poll();
      Cell left = sides.get(side);
      Cell right = sides.get(side.other());
      if (left != null && right != null) {
        cutCrossing(side, left, right, open);
      }
    }
  }

  private void cutCrossing(Side side, Cell left, Cell right, Deque<Side> open) {
    int p = side.from();
    int q = side.to();
    for (boolean leftTop : new boolean[] {true, false}) {
      for (boolean rightTop : new boolean[] {true, false}) {
        double[] one = leftTop ? left.top : left.bottom;
        double[] two = rightTop ? right.top : right.bottom;
        double atP = one[left.corner(p)] - two[right.corner(p)];
        double atQ = one[left.corner(q)] - two[right.corner(q)];
        if (atP * atQ < 0) {
          double share = atP / (atP - atQ);
          double length = points.get(p).distance(points.get(q));
          if (share * length < Arrangement.SNAP) {
            meet(p, one[left.corner(p)], two[right.corner(p)], open);
          } else if ((1 - share) * length < Arrangement.SNAP) {
            meet(q, one[left.corner(q)], two[right.corner(q)], open);
          } else {
            int middle = number(points.get(p).towards(points.get(q), share));
            halve(left, side, middle, share);
            halve(right, side.other(), middle, 1 - share);
            double height =
                two[right.corner(p)] - share * (two[right.corner(p)] - two[right.corner(q)]);
            merge(middle, height);
            around.get(middle).forEach(cell -> queue(cell, open));
          }
          return;
        }
      }
    }
  }

  private void meet(int point, double height, double by, Deque<Side> open) {
    replace(point, height, by);
    around.get(point).forEach(cell -> queue(cell, open));
  }

  private static void queue(Cell cell, Deque<Side> open) {
    for (int i = 0; i < 3; i++) {
      open.add(new Side(cell.at[i], cell.at[(i + 1) % 3]));
    }
  }

  /** Cuts a cell in two from a point of a side to the opposite corner. */
  private void halve(Cell cell, Side side, int middle, double share) {
    int p = cell.corner(side.from());
    int q = cell.corner(side.to());
    double bottom = cell.bottom[p] + share * (cell.bottom[q] - cell.bottom[p]);
    double top = cell.top[p] + share * (cell.top[q] - cell.top[p]);
    drop(cell);
    put(cell.with(q, middle, bottom, top));
    put(cell.with(p, middle, bottom, top));
  }

  /** Gives all heights near to the one where faces cross that height, then settles the others. */
  private void merge(int point, double height) {
    for (double near : heights(point)) {
      if (Math.abs(near - height) < Arrangement.SNAP) {
        replace(point, near, height);
      }
    }
    settle(point);
  }

  private Triangle face(Cell cell, double[] heights) {
    return new Triangle(
        Vertex.at(points.get(cell.at[0]), heights[0]),
        Vertex.at(points.get(cell.at[1]), heights[1]),
        Vertex.at(points.get(cell.at[2]), heights[2]));
  }

  /** The walls of a cell over one of its sides: where its neighbour there leaves it bare. */
  private void walls(Side side, Cell cell, List<double[]> heights, List<Triangle> skin) {
    int p = side.from();
    int q = side.to();
    int cp = cell.corner(p);
    int cq = cell.corner(q);
    Cell beyond = sides.get(side.other());
    if (beyond == null) {
      Band all = new Band(cell.bottom[cp], cell.top[cp], cell.bottom[cq], cell.top[cq]);
      wall(p, q, all, heights, skin);
      return;
    }
    int bp = beyond.corner(p);
    int bq = beyond.corner(q);
    Band below =
        new Band(
            cell.bottom[cp],
            Math.min(cell.top[cp], beyond.bottom[bp]),
            cell.bottom[cq],
            Math.min(cell.top[cq], beyond.bottom[bq]));
    Band above =
        new Band(
            Math.max(cell.bottom[cp], beyond.top[bp]),
            cell.top[cp],
            Math.max(cell.bottom[cq], beyond.top[bq]),
            cell.top[cq]);
    wall(p, q, below, heights, skin);
    wall(p, q, above, heights, skin);
  }

  /** Lower and upper end of a wall at both ends of its side. */
  private record Band(double lowP, double highP, double lowQ, double highQ) {}

  /** An upright wall whose outside lies to the right of the way from p to q. */
  private void wall(int p, int q, Band band, List<double[]> heights, List<Triangle> skin) {
    List<Vertex> left = post(p, band.lowP, band.highP, heights.get(p));
    List<Vertex> right = post(q, band.lowQ, band.highQ, heights.get(q));
    int i = 0;
    int j = 0;
    while (i < left.size() - 1 || j < right.size() - 1) {
      boolean climbLeft =
          j == right.size() - 1
              || (i < left.size() - 1 && left.get(i + 1).z() < right.get(j + 1).z());
      Vertex next = climbLeft ? left.get(i + 1) : right.get(j + 1);
      skin.add(new Triangle(left.get(i), right.get(j), next));
      i += climbLeft ? 1 : 0;
      j += climbLeft ? 0 : 1;
    }
  }

  /** The corners up an upright edge: its ends, and all heights between. */
  private List<Vertex> post(int point, double low, double high, double[] heights) {
    List<Vertex> post = new ArrayList<>();
    post.add(Vertex.at(points.get(point), low));
    for (double height : heights) {
      if (height > low && height <= high) {
        post.add(Vertex.at(points.get(point), height));
      }
    }
    return post;
  }
}
