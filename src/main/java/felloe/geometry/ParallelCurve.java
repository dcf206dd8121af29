package felloe.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The parallel of a chain of edges where nothing of it is lost but what its own neighbours cut off:
 * every edge moved in closed form, a round about each corner on the side that opens, and the
 * meeting of the two moved edges at each corner on the side that closes. No chord is cut, so that
 * it comes in a fraction of the time. Where edges farther apart meet, there is no answer, and the
 * general method has to find it.
 *
 * <p>Why it is all of the offset: a point of the offset's edge has its foot on the source, at a
 * right angle, so it lies on a moved edge or on the round of a corner. Of these all is kept, but
 * for the end of a moved edge beyond its first meeting with the next one, which lies nearer to that
 * one than the distance, and for an arc that is moved past its centre, which lies nearer to the
 * rest of the source. That what is kept keeps its distance is for {@link OffsetProof} to say.
 */
final class ParallelCurve {

  /** A joint that turns by less moves by no more than a point may; radians times mm. */
  private static final double SMOOTH = Tolerances.SAME_POINT / 10;

  /** What is left of a trimmed edge, at the least, mm: shorter ones are left to the chords. */
  private static final double SHORTEST = 100 * Tolerances.SAME_POINT;

  private enum Joint {
    /** The moved edges run on into each other. */
    SMOOTH,
    /** The moved edges part: a round about the corner lies between them. */
    ROUND,
    /** The moved edges cross. */
    CUT
  }

  /** An edge that is moved: the piece as it would be without its neighbours, and how it ends. */
  private record Moved(Segment source, Segment whole, Joint after) {}

  private final double right;
  private final boolean closed;
  private final List<Moved> kept = new ArrayList<>();

  private ParallelCurve(double right, boolean closed) {
    this.right = right;
    this.closed = closed;
  }

  /**
   * The parallel of a contour.
   *
   * @param right how far to the right of travel, which is outward; inward where negative, mm
   * @return empty where it is not all told by neighbours
   */
  static Optional<Contour> of(Contour contour, double right) {
    List<Segment> source = contour.segments();
    try {
      if (source.size() == 1) {
        Arc circle = (Arc) source.get(0);
        double radius = circle.radius() + right;
        return radius > SHORTEST
            ? Optional.of(Contour.circle(circle.centre(), radius))
            : Optional.empty();
      }
      // A chain that runs the other way round is what lies beyond the middle of the figure.
      return new ParallelCurve(right, true)
          .made(source)
          .filter(chain -> AreaProperties.of(chain).area() > 0)
          .map(Contour::new);
    } catch (GeometryException meets) {
      return Optional.empty();
    }
  }

  /**
   * The parallel of an open chain of edges; its ends stand beside the chain's.
   *
   * @param right how far to the right of travel, to the left where negative, mm
   * @return empty where it is not all told by neighbours
   */
  static Optional<List<Segment>> of(List<Segment> stretch, double right) {
    try {
      return new ParallelCurve(right, false).made(stretch);
    } catch (GeometryException meets) {
      return Optional.empty();
    }
  }

  private Optional<List<Segment>> made(List<Segment> source) {
    if (!keep(source) || kept.size() < (closed ? 2 : 1)) {
      return Optional.empty();
    }
    List<Segment> chain = new ArrayList<>();
    int n = kept.size();
    Optional<Point> first =
        closed ? start(kept.get(n - 1), kept.get(0)) : Optional.of(kept.get(0).whole.from());
    Optional<Point> from = first;
    for (int i = 0; i < n; i++) {
      Moved edge = kept.get(i);
      Moved next = kept.get((i + 1) % n);
      boolean last = i == n - 1;
      Optional<Point> to =
          last && edge.after != Joint.ROUND && closed
              ? first
              : edge.after == Joint.CUT ? start(edge, next) : Optional.of(edge.whole.to());
      if (from.isEmpty() || to.isEmpty()) {
        return Optional.empty();
      }
      Optional<Segment> piece = trimmed(edge.whole, from.get(), to.get());
      if (piece.isEmpty()) {
        return Optional.empty();
      }
      chain.add(piece.get());
      from = to;
      if (edge.after == Joint.ROUND) {
        Point begin = last ? first.get() : next.whole.from();
        chain.add(round(edge, next, to.get(), begin));
        from = Optional.of(begin);
      }
    }
    return Optional.of(chain);
  }

  /** Moves each edge, and leaves out arcs that are moved past their centres. */
  private boolean keep(List<Segment> source) {
    int n = source.size();
    if (!closed && (gone(source.get(0)) || gone(source.get(n - 1)))) {
      return false;
    }
    for (int i = 0; i < n; i++) {
      if (gone(source.get(i))) {
        continue;
      }
      if (!closed && i == n - 1) {
        kept.add(new Moved(source.get(i), moved(source.get(i)), Joint.SMOOTH));
        break;
      }
      int next = i + 1;
      Optional<Joint> joint = joint(source.get(i), source.get(next % n));
      while (gone(source.get(next % n))) {
        Optional<Joint> beyond = joint(source.get(next % n), source.get((next + 1) % n));
        boolean smooth = joint.equals(beyond) && joint.equals(Optional.of(Joint.SMOOTH));
        joint = smooth ? beyond : Optional.empty();
        next++;
      }
      if (joint.isEmpty()) {
        return false;
      }
      Joint after = next == i + 1 ? joint.get() : Joint.CUT;
      kept.add(new Moved(source.get(i), moved(source.get(i)), after));
    }
    return true;
  }

  private boolean gone(Segment edge) {
    return movedRadius(edge) <= SHORTEST;
  }

  private double movedRadius(Segment edge) {
    return edge instanceof Arc arc
        ? arc.radius() + Math.signum(arc.sweep()) * right
        : Double.POSITIVE_INFINITY;
  }

  private Point movedPoint(Segment edge, double fraction) {
    return edge.at(fraction).plus(edge.tangent(fraction).right(), right);
  }

  private Segment moved(Segment edge) {
    Point from = movedPoint(edge, 0);
    Point to = movedPoint(edge, 1);
    return edge instanceof Arc arc
        ? new Arc(from, to, arc.centre(), movedRadius(arc), arc.sweep())
        : new Line(from, to);
  }

  /** How the moved edges meet at the end of the first; empty where that is neither clear. */
  private Optional<Joint> joint(Segment edge, Segment next) {
    Point in = edge.tangent(1);
    Point out = next.tangent(0);
    double turn = in.cross(out) * right;
    boolean onward = in.dot(out) > 0;
    if (onward && Math.abs(turn) <= SMOOTH) {
      return Optional.of(Joint.SMOOTH);
    }
    if (Math.abs(turn) <= SHORTEST) {
      return Optional.empty();
    }
    return Optional.of(turn > 0 ? Joint.ROUND : Joint.CUT);
  }

  /** Where an edge begins, after the one before it. */
  private Optional<Point> start(Moved before, Moved edge) {
    return switch (before.after) {
      case SMOOTH -> Optional.of(before.whole.to());
      case ROUND -> Optional.of(edge.whole.from());
      case CUT -> meeting(before.whole, edge.whole);
    };
  }

  /**
   * Where two moved edges cross: of all such places the last of the one and the first of the other;
   * empty where there is no such place, so that their ends beyond it cross nowhere.
   */
  private static Optional<Point> meeting(Segment a, Segment b) {
    List<Point> found =
        Curve.meetings(Curve.of(a), Curve.of(b), 0).stream()
            .filter(p -> a.distance(p) <= SMOOTH && b.distance(p) <= SMOOTH)
            .toList();
    Optional<Point> last =
        found.stream().min(Comparator.comparingDouble(p -> between(a, p, a.to())));
    Optional<Point> first =
        found.stream().min(Comparator.comparingDouble(p -> between(b, b.from(), p)));
    return last.equals(first) ? last : Optional.empty();
  }

  /** How far it is from one point of a segment to a later one, along an arc in radians. */
  private static double between(Segment on, Point from, Point to) {
    if (on instanceof Arc arc) {
      return arc.sweep() > 0
          ? Arc.sweepBetween(arc.centre(), from, to)
          : Arc.sweepBetween(arc.centre(), to, from);
    }
    return to.distance(from);
  }

  private static Arc round(Moved edge, Moved next, Point from, Point to) {
    Point centre = edge.source.to();
    double turn = edge.source.tangent(1).cross(next.source.tangent(0));
    return Arc.about(centre, from, to, turn > 0);
  }

  /** The stretch of a moved edge between two of its points; empty where nothing is left of it. */
  private static Optional<Segment> trimmed(Segment whole, Point from, Point to) {
    if (whole instanceof Arc arc) {
      double sweep = Math.copySign(between(arc, from, to), arc.sweep());
      double slack = SHORTEST / arc.radius();
      boolean tooMuch = Math.abs(sweep) > Math.abs(arc.sweep()) + slack;
      return tooMuch || Math.abs(sweep) <= slack
          ? Optional.empty()
          : Optional.of(new Arc(from, to, arc.centre(), arc.radius(), sweep));
    }
    double left = to.minus(from).dot(((Line) whole).direction());
    return left <= SHORTEST ? Optional.empty() : Optional.of(new Line(from, to));
  }
}
