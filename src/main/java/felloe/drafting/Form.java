package felloe.drafting;

import felloe.geometry.Arc;
import felloe.geometry.ArcMerge;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A contour as a draughtsman reads it: what each of its lines and arcs is, so that few dimensions
 * tell it whole.
 *
 * @param chain its lines and arcs, arcs of one circle joined
 * @param kinds what each of them is, in order
 */
record Form(List<Segment> chain, List<Kind> kinds) {

  /** What a line or an arc is. */
  enum Kind {
    /** A line along x. */
    LEVEL,
    /** A line along y. */
    UPRIGHT,
    /** Any other line. */
    SLANTED,
    /** An arc about the hub axis. */
    HUB,
    /** An arc that rounds the corner of its neighbours, which are none. */
    CORNER,
    /** Any other arc. */
    FREE
  }

  /** Directions that part by less are one, radians: a corner's arc was fitted, not drawn. */
  private static final double SMOOTH = 1e-6;

  Form {
    chain = List.copyOf(chain);
    kinds = List.copyOf(kinds);
  }

  static Form of(Contour contour) {
    List<Segment> chain = ArcMerge.closed(contour.segments());
    return new Form(chain, IntStream.range(0, chain.size()).mapToObj(i -> kind(chain, i)).toList());
  }

  private static Kind kind(List<Segment> chain, int i) {
    Segment segment = chain.get(i);
    if (segment instanceof Line line) {
      Point way = line.direction();
      return Math.abs(way.y()) < SMOOTH
          ? Kind.LEVEL
          : Math.abs(way.x()) < SMOOTH ? Kind.UPRIGHT : Kind.SLANTED;
    }
    if (isHub(segment)) {
      return Kind.HUB;
    }
    int n = chain.size();
    return n > 2 && isCorner(chain.get((i + n - 1) % n), segment, chain.get((i + 1) % n))
        ? Kind.CORNER
        : Kind.FREE;
  }

  private static boolean isHub(Segment segment) {
    return segment instanceof Arc arc && arc.centre().norm() < Tolerances.SAME_POINT;
  }

  private static boolean isCorner(Segment before, Segment arc, Segment after) {
    return (before instanceof Line || isHub(before))
        && (after instanceof Line || isHub(after))
        && isSmooth(before, arc)
        && isSmooth(arc, after);
  }

  private static boolean isSmooth(Segment a, Segment b) {
    Point from = a.tangent(1);
    Point to = b.tangent(0);
    return Math.abs(from.cross(to)) < SMOOTH && from.dot(to) > 0;
  }

  /** Whether it has lines or arcs of one kind. */
  boolean has(Kind kind) {
    return kinds.contains(kind);
  }

  /** The box whose sides it has and whose corners are rounded alike, or sharp; a slot as well. */
  Optional<Box> asBox() {
    boolean only =
        kinds.stream().allMatch(k -> k == Kind.LEVEL || k == Kind.UPRIGHT || k == Kind.CORNER);
    Box box = chain.stream().map(Segment::box).reduce(Box::union).orElseThrow();
    boolean alike =
        arcs().stream().map(arc -> Board.figure(arc.radius())).distinct().count() <= 1
            && chain.stream()
                .allMatch(s -> s instanceof Arc arc ? arc.sweep() > 0 : onSide((Line) s, box));
    return only && alike && chain.size() >= 4 ? Optional.of(box) : Optional.empty();
  }

  private static boolean onSide(Line line, Box box) {
    Point middle = line.at(0.5);
    return near(middle.x(), box.minX())
        || near(middle.x(), box.maxX())
        || near(middle.y(), box.minY())
        || near(middle.y(), box.maxY());
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) < Tolerances.SAME_LENGTH;
  }

  /** Its arcs in order. */
  List<Arc> arcs() {
    return chain.stream().filter(Arc.class::isInstance).map(Arc.class::cast).toList();
  }

  /** The line or arc after one, or before it, with the round of the corner between left out. */
  Segment beside(int index, boolean after) {
    int n = chain.size();
    int step = after ? 1 : n - 1;
    int next = (index + step) % n;
    return chain.get(kinds.get(next) == Kind.CORNER ? (next + step) % n : next);
  }
}
