package felloe.drafting;

import felloe.drawing.Mark;
import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

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

  /** So much more white lies before and behind a text, mm: two texts are not read as one. */
  private static final double APART = 1.5;

  /** White between a text and the lines of its own piece, mm: more than half a line's width. */
  private static final double OWN = 0.15;

  private static final double CHORD = 0.05;
  private static final double CELL = 5;

  /** The end of a line touches what it leads to, mm. */
  private static final double END = 0.4;

  /** Lines nearer than this that run alike are hard to tell apart, mm. */
  private static final double ALIKE = 1.4;

  /** Lines that must not cross do not come nearer than this, mm. */
  private static final double TOUCH = 0.6;

  private static final double ALIKE_SLOPE = 0.15;
  private static final double ALIKE_COST = 3;

  private record Bit(Point from, Point to, Ink ink, Box box) {}

  /** What a text or an arrowhead takes with the white round it, and the box about that. */
  private record Solid(Slab slab, Box box) {
    static Solid of(Slab bare) {
      Slab slab = bare.grown(CLEAR);
      return new Solid(slab, slab.box());
    }
  }

  private final Box frame;
  private final int across;
  private final int up;
  private final List<List<Bit>> cells = new ArrayList<>();
  private final List<Solid> solids = new ArrayList<>();

  /**
   * @param frame nothing is drawn outside of it, mm
   */
  Sheet(Box frame) {
    this.frame = frame;
    this.across = (int) Math.ceil(frame.width() / CELL) + 1;
    this.up = (int) Math.ceil(frame.height() / CELL) + 1;
    for (int i = 0; i < across * up; i++) {
      cells.add(new ArrayList<>());
    }
  }

  Box frame() {
    return frame;
  }

  /** Puts a line on the sheet. */
  void take(Segment segment, Ink ink) {
    List<Point> points = points(segment);
    for (int i = 1; i < points.size(); i++) {
      Box box = Box.of(points.get(i - 1), points.get(i));
      Bit bit = new Bit(points.get(i - 1), points.get(i), ink, box);
      for (int x = column(box.minX()); x <= column(box.maxX()); x++) {
        for (int y = row(box.minY()); y <= row(box.maxY()); y++) {
          cells.get(y * across + x).add(bit);
        }
      }
    }
  }

  /** Keeps a box free of everything. */
  void take(Box box) {
    solids.add(Solid.of(Slab.of(box)));
  }

  /** Whether nothing stands in a box yet. */
  boolean isFree(Box box) {
    Slab slab = Slab.of(box);
    return frame.contains(box) && !meetsSolid(slab) && !meetsLine(slab.grown(CLEAR));
  }

  /** Puts a piece on the sheet. */
  void take(Piece piece) {
    piece.lines().forEach(line -> take(line.segment(), line.ink()));
    piece.texts().forEach(text -> solids.add(Solid.of(Slab.of(text))));
    piece.arrows().forEach(arrow -> solids.add(Solid.of(Slab.of(arrow))));
  }

  /**
   * What a piece costs by what it crosses, mm of leader; infinite when it must not stand there: a
   * text that meets anything, a line that meets a text, an arrowhead or a dimension line, anything
   * outside the frame.
   */
  double cost(Piece piece) {
    for (Piece.Stroke line : piece.lines()) {
      if (!frame.contains(line.segment().box())) {
        return Ink.NEVER;
      }
    }
    for (Mark.Label text : piece.texts()) {
      if (isTaken(text, piece)) {
        return Ink.NEVER;
      }
    }
    for (Piece.Arrow arrow : piece.arrows()) {
      Slab slab = Slab.of(arrow);
      if (!frame.contains(slab.box()) || meetsSolid(slab) || meetsLine(slab)) {
        return Ink.NEVER;
      }
    }
    double cost = 0;
    for (Piece.Stroke line : piece.lines()) {
      cost += crossed(line);
      if (cost == Ink.NEVER) {
        return cost;
      }
    }
    return cost;
  }

  /** Whether a text would meet what stands already, or the rest of its own piece. */
  private boolean isTaken(Mark.Label text, Piece piece) {
    Slab bare = Slab.of(text);
    Slab own = bare.grown(OWN);
    Slab slab = bare.grown(CLEAR);
    if (!frame.contains(slab.box()) || meetsSolid(bare.longer(APART)) || meetsLine(slab)) {
      return true;
    }
    for (Piece.Stroke line : piece.lines()) {
      if (isCrossed(own, points(line.segment()))) {
        return true;
      }
    }
    return piece.arrows().stream().anyMatch(arrow -> own.meets(Slab.of(arrow)))
        || piece.texts().stream().anyMatch(other -> other != text && own.meets(Slab.of(other)));
  }

  private boolean meetsSolid(Slab slab) {
    Box box = slab.box();
    for (Solid solid : solids) {
      if (box.touches(solid.box) && slab.meets(solid.slab)) {
        return true;
      }
    }
    return false;
  }

  private boolean meetsLine(Slab slab) {
    Box box = slab.box();
    for (int x = column(box.minX()); x <= column(box.maxX()); x++) {
      for (int y = row(box.minY()); y <= row(box.maxY()); y++) {
        for (Bit bit : cells.get(y * across + x)) {
          if (box.touches(bit.box) && slab.meets(bit.from, bit.to)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private double crossed(Piece.Stroke line) {
    List<Point> points = points(line.segment());
    Box whole = line.segment().box();
    for (Solid solid : solids) {
      if (whole.touches(solid.box) && isCrossed(solid.slab, points)) {
        return Ink.NEVER;
      }
    }
    double cost = 0;
    for (int i = 1; i < points.size() && cost != Ink.NEVER; i++) {
      cost += crossed(points.get(i - 1), points.get(i), line);
    }
    return cost;
  }

  private static boolean isCrossed(Slab slab, List<Point> points) {
    for (int i = 1; i < points.size(); i++) {
      if (slab.meets(points.get(i - 1), points.get(i))) {
        return true;
      }
    }
    return false;
  }

  /** What a short straight piece of a line costs. */
  private double crossed(Point from, Point to, Piece.Stroke line) {
    double cost = 0;
    Box box = Box.of(from, to).grown(ALIKE);
    for (int x = column(box.minX()); x <= column(box.maxX()); x++) {
      for (int y = row(box.minY()); y <= row(box.maxY()); y++) {
        for (Bit bit : cells.get(y * across + x)) {
          if (!box.touches(bit.box)) {
            continue;
          }
          double crossing = line.ink().crossing(bit.ink);
          if (crossing == Ink.NEVER && !bit.ink.isPart() && isNear(from, to, bit)) {
            return Ink.NEVER;
          }
          Point at = crossing(from, to, bit);
          // A piece that lies in two cells counts where the crossing is.
          if (at != null && column(at.x()) == x && row(at.y()) == y) {
            cost += bit.ink.isPart() && isEnd(line.segment(), at) ? 0 : crossing;
          } else if (line.ink() != Ink.EXTENSION && isAlike(from, to, bit)) {
            cost += ALIKE_COST;
          }
        }
      }
    }
    return cost;
  }

  /** Whether two short straight pieces cross or nearly touch. */
  private static boolean isNear(Point from, Point to, Bit bit) {
    return crossing(from, to, bit) != null
        || distance(from, bit.from, bit.to) < TOUCH
        || distance(to, bit.from, bit.to) < TOUCH
        || distance(bit.from, from, to) < TOUCH
        || distance(bit.to, from, to) < TOUCH;
  }

  private static double distance(Point p, Point from, Point to) {
    Point way = to.minus(from);
    double part = p.minus(from).dot(way) / way.dot(way);
    return p.distance(from.plus(way, Math.max(0, Math.min(1, part))));
  }

  private static boolean isEnd(Segment segment, Point p) {
    return segment.from().near(p, END) || segment.to().near(p, END);
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

  /** The column of cells that a place lies in; the outer ones reach beyond the frame. */
  private int column(double x) {
    return cell(x - frame.minX(), across);
  }

  private int row(double y) {
    return cell(y - frame.minY(), up);
  }

  private static int cell(double from, int count) {
    return Math.max(0, Math.min(count - 1, (int) Math.floor(from / CELL)));
  }
}
