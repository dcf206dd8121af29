package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * What room of a picture is taken, kept as points one unit apart: lines, which a label had better
 * not cross, solids (lettering, arrowheads), which nothing may cross, and centre lines, which break
 * off for lettering where nothing else serves.
 */
final class PictureRoom {

  private static final double CELL = 6;
  private static final double STRIKE = 0.8;

  private final double unit;
  private final Cloud lines = new Cloud();
  private final Cloud centreLines = new Cloud();
  private final Cloud solids = new Cloud();
  private Box extent;

  PictureRoom(double unit, Box start) {
    this.unit = unit;
    this.extent = start;
  }

  /** The smallest box round everything so far. */
  Box extent() {
    return extent;
  }

  void takeLine(Segment segment) {
    take(segment, lines);
  }

  void takeCentreLine(Segment segment) {
    take(segment, centreLines);
  }

  private void take(Segment segment, Cloud points) {
    extent = extent.union(segment.box());
    int pieces = (int) Math.max(1, Math.ceil(segment.length() / unit));
    for (int i = 0; i <= pieces; i++) {
      points.add(segment.at((double) i / pieces));
    }
  }

  void takeSolid(Box box) {
    extent = extent.union(box);
    int across = (int) Math.max(1, Math.ceil(box.width() / unit));
    int up = (int) Math.max(1, Math.ceil(box.height() / unit));
    for (int i = 0; i <= across; i++) {
      double x = box.minX() + i * box.width() / across;
      for (int j = 0; j <= up; j++) {
        solids.add(new Point(x, box.minY() + j * box.height() / up));
      }
    }
  }

  /** How badly a box is in the way: 0 when it is free; solids weigh ten times what lines do. */
  double cost(Box box) {
    return hardCost(box) + (onCentreLine(box) ? 1 : 0);
  }

  /** Whether a centre line runs through a box. */
  boolean onCentreLine(Box box) {
    return centreLines.count(box, p -> true) > 0;
  }

  /** The same as {@link #cost(Box)}, centre lines not counted. */
  double hardCost(Box box) {
    return lines.count(box, p -> true) + 10 * solids.count(box, p -> true);
  }

  /** How much lettering a straight line from one point to another would strike through. */
  double cost(Point from, Point to) {
    Point along = to.minus(from);
    double square = along.dot(along);
    if (square == 0) {
      return 0;
    }
    return 10
        * solids.count(
            Box.of(from, to).grown(unit),
            p -> {
              double fraction = Math.max(0, Math.min(1, p.minus(from).dot(along) / square));
              return from.plus(along, fraction).distance(p) < STRIKE * unit;
            });
  }

  /** Points in square cells, so that a box asks only those near it. */
  private final class Cloud {
    private final Map<Long, List<Point>> cells = new HashMap<>();

    void add(Point p) {
      cells.computeIfAbsent(key(cell(p.x()), cell(p.y())), k -> new ArrayList<>()).add(p);
    }

    long count(Box box, Predicate<Point> also) {
      long count = 0;
      for (long i = cell(box.minX()); i <= cell(box.maxX()); i++) {
        for (long j = cell(box.minY()); j <= cell(box.maxY()); j++) {
          for (Point p : cells.getOrDefault(key(i, j), List.of())) {
            count += box.contains(p) && also.test(p) ? 1 : 0;
          }
        }
      }
      return count;
    }

    private long cell(double coordinate) {
      return (long) Math.floor(coordinate / (CELL * unit));
    }

    private long key(long i, long j) {
      return (i << 32) ^ (j & 0xffffffffL);
    }
  }
}
