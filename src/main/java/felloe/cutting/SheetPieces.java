package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The pieces into which slots divide a sheet, found row by row. Rows stand so near that none is
 * jumped by a slot or by a wall of {@link Surroundings#WALL}; along a row the slots' ends are exact
 * but for the chords of arcs, which err by {@value #CHORD} mm.
 */
final class SheetPieces {

  private static final double CHORD = 0.005;

  private static final double FULL_TURN = 2 * Math.PI;

  /** A stretch of a row that is left standing. */
  private record Run(double from, double to, int number) {}

  private final double half;
  private final double step;
  private final Box box;
  private final List<List<Run>> rows = new ArrayList<>();
  private final List<Integer> parents = new ArrayList<>();

  /**
   * Divides.
   *
   * @param cuts ways of the middle of the cutter
   * @param half half the slots' width, mm
   * @param sheet the sheet; without one it reaches beyond all cuts
   */
  SheetPieces(List<Segment> cuts, double half, Optional<Box> sheet) {
    this.half = half;
    this.step = Math.min(half / 2, 0.4 * Surroundings.WALL);
    Box swept = cuts.stream().map(Segment::box).reduce(Box::union).orElseThrow();
    Box wide = swept.grown(half + 4 * step);
    this.box =
        sheet
            .map(
                s ->
                    new Box(
                        Math.max(s.minX(), wide.minX()),
                        Math.max(s.minY(), wide.minY()),
                        Math.min(s.maxX(), wide.maxX()),
                        Math.min(s.maxY(), wide.maxY())))
            .orElse(wide);
    List<List<double[]>> taken = new ArrayList<>();
    int count = (int) Math.ceil(box.height() / step) + 1;
    for (int i = 0; i < count; i++) {
      taken.add(new ArrayList<>());
    }
    cuts.forEach(cut -> take(cut, taken));
    // Number 0 is the frame: all that reaches the edge.
    parents.add(0);
    for (int i = 0; i < count; i++) {
      rows.add(runs(taken.get(i), i == 0 || i == count - 1));
      if (i > 0) {
        join(rows.get(i - 1), rows.get(i));
      }
    }
  }

  private double height(int row) {
    return Math.min(box.minY() + row * step, box.maxY());
  }

  private int row(double y) {
    return (int) Math.ceil((y - box.minY()) / step - 1e-9);
  }

  private void take(Segment cut, List<List<double[]>> taken) {
    int parts = 1;
    if (cut instanceof Arc arc) {
      double turn = 2 * Math.acos(Math.max(0, 1 - CHORD / arc.radius()));
      parts = (int) Math.ceil(Math.min(FULL_TURN, Math.abs(arc.sweep())) / turn);
    }
    Point from = cut.from();
    for (int i = 1; i <= parts; i++) {
      Point to = i == parts ? cut.to() : cut.at(i / (double) parts);
      stadium(from, to, taken);
      from = to;
    }
  }

  private void stadium(Point a, Point b, List<List<double[]>> taken) {
    double low = Math.min(a.y(), b.y()) - half;
    double high = Math.max(a.y(), b.y()) + half;
    for (int i = Math.max(0, row(low)); i < taken.size() && height(i) <= high; i++) {
      double[] ends = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
      double y = height(i);
      disc(a, y, ends);
      disc(b, y, ends);
      double length = a.distance(b);
      if (length > 0) {
        Point side = b.minus(a).left().times(half / length);
        edge(a.plus(side), b.plus(side), y, ends);
        edge(a.minus(side), b.minus(side), y, ends);
      }
      if (ends[0] < ends[1]) {
        taken.get(i).add(ends);
      }
    }
  }

  private void disc(Point c, double y, double[] ends) {
    double dy = y - c.y();
    if (Math.abs(dy) < half) {
      double dx = Math.sqrt(half * half - dy * dy);
      ends[0] = Math.min(ends[0], c.x() - dx);
      ends[1] = Math.max(ends[1], c.x() + dx);
    }
  }

  private static void edge(Point a, Point b, double y, double[] ends) {
    if (a.y() > y != b.y() > y) {
      double x = a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
      ends[0] = Math.min(ends[0], x);
      ends[1] = Math.max(ends[1], x);
    }
  }

  private List<Run> runs(List<double[]> taken, boolean border) {
    taken.sort(Comparator.comparingDouble(ends -> ends[0]));
    List<Run> runs = new ArrayList<>();
    double at = box.minX();
    for (double[] ends : taken) {
      if (ends[0] > at) {
        add(runs, at, Math.min(ends[0], box.maxX()), border);
      }
      at = Math.max(at, ends[1]);
    }
    if (at < box.maxX()) {
      add(runs, at, box.maxX(), border);
    }
    return runs;
  }

  private void add(List<Run> runs, double from, double to, boolean border) {
    int number = parents.size();
    parents.add(number);
    runs.add(new Run(from, to, number));
    if (border || from <= box.minX() || to >= box.maxX()) {
      unite(number, 0);
    }
  }

  private void join(List<Run> lower, List<Run> upper) {
    int i = 0;
    int j = 0;
    while (i < lower.size() && j < upper.size()) {
      Run a = lower.get(i);
      Run b = upper.get(j);
      if (a.from() < b.to() && b.from() < a.to()) {
        unite(a.number(), b.number());
      }
      if (a.to() < b.to()) {
        i++;
      } else {
        j++;
      }
    }
  }

  private void unite(int a, int b) {
    int one = root(a);
    int other = root(b);
    parents.set(Math.max(one, other), Math.min(one, other));
  }

  private int root(int number) {
    int at = number;
    while (parents.get(at) != at) {
      parents.set(at, parents.get(parents.get(at)));
      at = parents.get(at);
    }
    return at;
  }

  /** Whether a piece is the frame that the sheet is held by. */
  boolean frame(int piece) {
    return piece == root(0);
  }

  /** The piece nearest to a place of the sheet within a distance; -1 for none. */
  int near(Point p, double within) {
    if (!box.contains(p)) {
      return root(0);
    }
    int best = -1;
    double nearest = within;
    int last = Math.min(rows.size() - 1, row(p.y() + within));
    for (int i = Math.max(0, row(p.y() - within)); i <= last; i++) {
      double dy = height(i) - p.y();
      for (Run run : rows.get(i)) {
        double dx = Math.max(0, Math.max(run.from() - p.x(), p.x() - run.to()));
        double distance = Math.hypot(dx, dy);
        if (distance <= nearest) {
          nearest = distance;
          best = root(run.number());
        }
      }
    }
    return best;
  }
}
