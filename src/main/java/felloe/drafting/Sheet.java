package felloe.drafting;

import felloe.drawing.Mark;
import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * All that stands on a drawing so far, and whether one piece more would meet any of it. Lines are
 * kept as short straight pieces in square cells, texts and arrowheads as rectangles.
 *
 * <p>Accuracy: an arc strays by at most {@link #CHORD} from its pieces, well below the white that
 * is kept round texts.
 */
final class Sheet {

  /** White round texts, mm. */
  private static final double CLEAR = 0.7;

  private static final double CHORD = 0.05;
  private static final double CELL = 5;

  /** The ends of a line touch what they lead to: so much of them is not looked at, mm. */
  private static final double END = 0.4;

  /** Lines nearer than this that run alike are hard to tell apart, mm. */
  private static final double ALIKE = 1.4;

  private static final double ALIKE_SLOPE = 0.15;
  private static final double ALIKE_COST = 3;

  private record Bit(Point from, Point to, Ink ink) {}

  private final Box frame;
  private final Map<Long, List<Bit>> cells = new HashMap<>();
  private final List<Slab> solids = new ArrayList<>();

  /**
   * @param frame nothing is drawn outside of it, mm
   */
  Sheet(Box frame) {
    this.frame = frame;
  }

  Box frame() {
    return frame;
  }

  /** Puts a line on the sheet. */
  void take(Segment segment, Ink ink) {
    List<Point> points = points(segment);
    for (int i = 1; i < points.size(); i++) {
      Bit bit = new Bit(points.get(i - 1), points.get(i), ink);
      Box box = Box.of(bit.from, bit.to);
      for (long x = cell(box.minX()); x <= cell(box.maxX()); x++) {
        for (long y = cell(box.minY()); y <= cell(box.maxY()); y++) {
          cells.computeIfAbsent(key(x, y), k -> new ArrayList<>()).add(bit);
        }
      }
    }
  }

  /** Keeps a box free of everything. */
  void take(Box box) {
    solids.add(Slab.of(box));
  }

  /** Whether nothing stands in a box yet. */
  boolean isFree(Box box) {
    Slab slab = Slab.of(box.grown(CLEAR));
    return frame.contains(box) && !meetsSolid(slab) && !meetsLine(slab);
  }

  /** Puts a piece on the sheet. */
  void take(Piece piece) {
    piece.lines().forEach(line -> take(line.segment(), line.ink()));
    piece.texts().forEach(text -> solids.add(Slab.of(text)));
    piece.arrows().forEach(arrow -> solids.add(Slab.of(arrow)));
  }

  /**
   * What a piece costs by what it crosses, mm of leader; infinite when it must not stand there: a
   * text that meets anything, a line that meets a text, an arrowhead or a dimension line, anything
   * outside the frame.
   */
  double cost(Piece piece) {
    for (Mark.Label text : piece.texts()) {
      if (isTaken(text, piece)) {
        return Ink.NEVER;
      }
    }
    for (Piece.Arrow arrow : piece.arrows()) {
      Slab slab = Slab.of(arrow);
      if (!frame.contains(slab.box()) || meetsLine(slab) || meetsSolid(slab.grown(CLEAR))) {
        return Ink.NEVER;
      }
    }
    double cost = 0;
    for (Piece.Stroke line : piece.lines()) {
      if (!frame.contains(line.segment().box())) {
        return Ink.NEVER;
      }
      cost += crossed(line);
      if (cost == Ink.NEVER) {
        return cost;
      }
    }
    return cost;
  }

  /** Whether a text would meet what stands already, or the rest of its own piece. */
  private boolean isTaken(Mark.Label text, Piece piece) {
    Slab own = Slab.of(text);
    Slab slab = own.grown(CLEAR);
    if (!frame.contains(slab.box()) || meetsSolid(slab) || meetsLine(slab)) {
      return true;
    }
    for (Piece.Stroke line : piece.lines()) {
      List<Point> points = points(line.segment());
      for (int i = 1; i < points.size(); i++) {
        if (own.meets(points.get(i - 1), points.get(i))) {
          return true;
        }
      }
    }
    return piece.arrows().stream().anyMatch(arrow -> own.meets(Slab.of(arrow)))
        || piece.texts().stream().anyMatch(other -> other != text && own.meets(Slab.of(other)));
  }

  private boolean meetsSolid(Slab slab) {
    Box box = slab.box();
    for (Slab solid : solids) {
      if (box.touches(solid.box()) && slab.meets(solid)) {
        return true;
      }
    }
    return false;
  }

  private boolean meetsLine(Slab slab) {
    Box box = slab.box();
    for (long x = cell(box.minX()); x <= cell(box.maxX()); x++) {
      for (long y = cell(box.minY()); y <= cell(box.maxY()); y++) {
        for (Bit bit : cells.getOrDefault(key(x, y), List.of())) {
          if (slab.meets(bit.from, bit.to)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private double crossed(Piece.Stroke line) {
    List<Point> points = points(line.segment());
    double length = line.segment().length();
    double cost = 0;
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      Point to = points.get(i);
      if (length > 3 * END) {
        double step = from.distance(to);
        from = i == 1 ? from.towards(to, Math.min(1, END / step)) : from;
        to = i == points.size() - 1 ? to.towards(from, Math.min(1, END / step)) : to;
      }
      for (Slab solid : solids) {
        if (solid.box().grown(CLEAR).touches(Box.of(from, to))
            && solid.grown(CLEAR).meets(from, to)) {
          return Ink.NEVER;
        }
      }
      cost += crossed(from, to, line.ink());
    }
    return cost;
  }

  /** What a short straight piece costs. */
  private double crossed(Point from, Point to, Ink ink) {
    double cost = 0;
    Box box = Box.of(from, to).grown(ALIKE);
    for (long x = cell(box.minX()); x <= cell(box.maxX()); x++) {
      for (long y = cell(box.minY()); y <= cell(box.maxY()); y++) {
        for (Bit bit : cells.getOrDefault(key(x, y), List.of())) {
          Point at = crossing(from, to, bit);
          // A piece that lies in two cells counts where the crossing is.
          if (at != null && cell(at.x()) == x && cell(at.y()) == y) {
            cost += ink.crossing(bit.ink);
          } else if (ink != Ink.EXTENSION && isAlike(from, to, bit)) {
            cost += ALIKE_COST;
          }
        }
      }
    }
    return cost;
  }

  private static Point crossing(Point from, Point to, Bit bit) {
    Point way = to.minus(from);
    Point other = bit.to.minus(bit.from);
    double det = way.cross(other);
    if (det == 0) {
      return null;
    }
    Point start = bit.from.minus(from);
    double t = start.cross(other) / det;
    double s = start.cross(way) / det;
    return t >= 0 && t <= 1 && s >= 0 && s <= 1 ? from.plus(way, t) : null;
  }

  private static boolean isAlike(Point from, Point to, Bit bit) {
    Point way = to.minus(from);
    Point other = bit.to.minus(bit.from);
    double length = way.norm();
    double slope = Math.abs(way.cross(other)) / (length * other.norm());
    if (!(slope < ALIKE_SLOPE)) {
      return false;
    }
    Point start = bit.from.middle(bit.to).minus(from);
    double along = start.dot(way) / length;
    return along >= 0 && along <= length && Math.abs(way.cross(start)) / length < ALIKE;
  }

  /** Ends of short straight pieces along a segment. */
  private static List<Point> points(Segment segment) {
    double length = segment.length();
    double radius = segment.curvature() == 0 ? 0 : 1 / Math.abs(segment.curvature());
    double step = radius == 0 ? CELL : Math.min(CELL, Math.sqrt(8 * CHORD * radius));
    int pieces = (int) Math.max(1, Math.ceil(length / step));
    List<Point> points = new ArrayList<>(pieces + 1);
    for (int i = 0; i <= pieces; i++) {
      points.add(segment.at((double) i / pieces));
    }
    return points;
  }

  private static long cell(double coordinate) {
    return (long) Math.floor(coordinate / CELL);
  }

  private static long key(long x, long y) {
    return (x << 32) ^ (y & 0xffffffffL);
  }
}
