package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * A closed path with a direction of travel and a start in the middle of one of its segments.
 * Positions are lengths travelled from the start; beyond the length it goes round again.
 */
final class Loop {

  /** Arcs shorter than this become lines: rounded to a few decimals they may lose their way, mm. */
  private static final double SHORT = 0.005;

  private final ArcLengthIndex index;

  private Loop(List<Segment> segments) {
    this.index = new ArcLengthIndex(segments);
  }

  /**
   * The segments of a contour in the direction of travel.
   *
   * @param finishRight whether the finish line is to lie to the right of travel
   */
  static List<Segment> directed(CutLine line, boolean finishRight) {
    return line.inside() == finishRight ? line.path().segments() : line.path().clockwise();
  }

  /** The directed chain, started in the middle of its segment with a number. */
  static Loop startedAt(List<Segment> chain, int number) {
    Segment first = chain.get(number);
    List<Segment> turned = new ArrayList<>(chain.size() + 1);
    if (first instanceof Arc arc && arc.isCircle()) {
      turned.add(arc);
      return new Loop(turned);
    }
    Point middle = first.at(0.5);
    turned.add(part(first, 0.5, 1, middle, first.to()));
    for (int k = 1; k < chain.size(); k++) {
      turned.add(chain.get((number + k) % chain.size()));
    }
    turned.add(part(first, 0, 0.5, first.from(), middle));
    return new Loop(turned);
  }

  /** The stretch of a segment between two fractions of its length, with these very ends. */
  static Segment part(Segment segment, double start, double end, Point from, Point to) {
    if (segment instanceof Arc arc) {
      double sweep = arc.sweep() * (end - start);
      boolean whole = arc.isCircle() && end - start == 1;
      if (whole) {
        return arc;
      }
      if (arc.radius() * Math.abs(sweep) > SHORT && !from.equals(to)) {
        return new Arc(from, to, arc.centre(), arc.radius(), sweep);
      }
    }
    return new Line(from, to);
  }

  /** Length of one lap, mm. */
  double length() {
    return index.length();
  }

  /** The segments of one lap from the start. */
  List<Segment> segments() {
    return index.segments();
  }

  /** Position at which a segment starts. */
  double start(int number) {
    return index.start(number);
  }

  /** The point at a position. */
  Point at(double position) {
    return index.at(position);
  }

  /** The direction of travel at a position, a vector of length one. */
  Point tangent(double position) {
    return index.tangent(position);
  }

  /** Receives the pieces of a walk. */
  @FunctionalInterface
  interface Walker {
    /** A piece of the path between two positions. */
    void piece(Segment piece, double from, double to);
  }

  /**
   * Walks from one position to another, broken at the joints and at given positions. Positions
   * within {@code least} of a joint or of each other are left out.
   *
   * @param from where it begins, not below 0
   * @param breaks in rising order
   */
  void walk(double from, double to, double[] breaks, double least, Walker walker) {
    double length = length();
    double lap = length * Math.floor(from / length);
    int i = index.number(from - lap);
    Point at = at(from);
    double s = from;
    int next = 0;
    while (s < to) {
      double start = lap + index.start(i);
      double end = lap + index.start(i + 1);
      double stop = Math.min(end, to);
      while (next < breaks.length && breaks[next] < s + least) {
        next++;
      }
      boolean broken = next < breaks.length && breaks[next] < stop - least;
      double reached = broken ? breaks[next] : stop;
      boolean last = reached == to;
      if (!broken && end - reached < least) {
        reached = end;
      }
      Segment segment = segments().get(i);
      double a = (s - start) / (end - start);
      double b = reached == end ? 1 : (reached - start) / (end - start);
      Point point = b == 1 ? segment.to() : segment.at(b);
      if (s == start) {
        a = 0;
      }
      if (reached - s > 1e-9 && at.distance(point) > 2e-6 || a == 0 && b == 1) {
        walker.piece(
            a == 0 && b == 1 ? whole(segment) : part(segment, a, b, at, point), s, reached);
        at = point;
      }
      s = reached;
      if (last) {
        return;
      }
      if (reached == end) {
        i++;
        if (i == segments().size()) {
          i = 0;
          lap += length;
        }
        s = lap + index.start(i);
      }
    }
  }

  private static Segment whole(Segment segment) {
    return segment instanceof Arc arc && arc.length() <= SHORT
        ? new Line(arc.from(), arc.to())
        : segment;
  }

  /** The loop of a contour's own segments, started where it starts. */
  static Loop of(Contour contour) {
    return new Loop(contour.segments());
  }
}
