package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.ArcFit;
import felloe.geometry.ArcMerge;
import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.measure.CircleFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A closed loop as lines and arcs: chords become the arcs that they stand for, curves that are
 * round become arcs, lines in a row become one.
 *
 * @param contour what stands for the loop
 * @param off the greatest distance of the loop's own lines from it, mm
 */
record Recognised(Contour contour, double off) {

  /** Fewer chords than this are the edges of a polygon. */
  private static final int FEWEST_CHORDS = 4;

  /** Chords of one curve differ in length by no more than so many times. */
  private static final double EVEN = 4;

  /** Chords of an arc turn by no more than this from one to the next, radians. */
  private static final double SHARPEST = Math.toRadians(25);

  /** A whole circle of chords has at least so many. */
  private static final int CIRCLE = 8;

  /** Places on a curve at which it is held against an arc. */
  private static final int SAMPLES = 32;

  /** What a distance that is looked at in places may be more between them (a margin for feel). */
  private static final double BETWEEN = 1.1;

  /** Pieces of an arc lie this near to it, mm: the rounding of five decimals, at its ends. */
  private static final double PIECES = 5e-5;

  /** An arc of nearly a whole turn is not found from its ends, radians. */
  private static final double LONGEST = Math.toRadians(330);

  /** Lines in a row and arcs of one circle are one where they differ by less, mm. */
  private static final double DIGITS = 2e-3;

  /**
   * Recognises.
   *
   * @param within how far arcs may lie from the chords and curves that they stand for, mm
   * @throws GeometryException when the loop crosses itself
   */
  static Recognised of(Joining.Loop loop, double within) {
    List<Stroke> strokes = loop.strokes();
    Optional<Contour> circle = circle(strokes, within);
    Contour contour = circle.orElseGet(() -> new Contour(segments(turned(strokes), within)));
    double off = 0;
    for (Stroke stroke : strokes) {
      for (Point p : samples(stroke)) {
        off = Math.max(off, contour.distance(p));
      }
      if (stroke instanceof Stroke.Free) {
        // What the arcs of a curve are off by is measured both ways.
        off = Math.max(off, stroke.fit(Tolerances.FREE_CURVE).distance());
      }
    }
    // Between the places that were looked at it may be somewhat more.
    boolean exact = strokes.stream().allMatch(s -> s instanceof Stroke.Exact);
    return new Recognised(contour, exact ? off : off * BETWEEN);
  }

  /** Points of a stroke, its start first, without its end. */
  private static List<Point> samples(Stroke stroke) {
    List<Point> all = new ArrayList<>();
    all.add(stroke.from());
    if (stroke instanceof Stroke.Free free) {
      for (int i = 1; i < SAMPLES; i++) {
        all.add(free.curve().at(i / (double) SAMPLES));
      }
    } else {
      all.add(stroke.middle());
    }
    return all;
  }

  /** All of it one circle. */
  private static Optional<Contour> circle(List<Stroke> strokes, double within) {
    boolean chords = strokes.stream().allMatch(Recognised::straight);
    if (chords && strokes.size() < CIRCLE) {
      return Optional.empty();
    }
    if (strokes.size() == 1
        && strokes.get(0) instanceof Stroke.Exact exact
        && exact.segment() instanceof Arc arc) {
      return Optional.of(Contour.circle(arc.centre(), arc.radius()));
    }
    boolean exact = strokes.stream().allMatch(s -> s instanceof Stroke.Exact);
    List<Point> fitted = new ArrayList<>();
    List<Point> all = new ArrayList<>();
    for (Stroke stroke : strokes) {
      List<Point> own = samples(stroke);
      fitted.addAll(chords ? own.subList(0, 1) : own);
      all.addAll(own);
    }
    double limit = exact && !chords ? DIGITS : within;
    return CircleFit.TAUBIN
        .of(fitted)
        .filter(c -> all.stream().allMatch(p -> off(c, p) <= limit))
        .map(c -> Contour.circle(c.centre(), c.radius()));
  }

  private static double off(CircleFit.Circle circle, Point p) {
    return Math.abs(p.distance(circle.centre()) - circle.radius());
  }

  private static boolean straight(Stroke stroke) {
    return stroke instanceof Stroke.Exact exact && exact.segment() instanceof Line;
  }

  private static Point leaving(Stroke stroke) {
    return stroke instanceof Stroke.Exact exact
        ? exact.segment().tangent(0)
        : ((Stroke.Free) stroke).curve().tangent(0, true);
  }

  private static Point arriving(Stroke stroke) {
    return stroke instanceof Stroke.Exact exact
        ? exact.segment().tangent(1)
        : ((Stroke.Free) stroke).curve().tangent(1, false);
  }

  /** The loop beginning at its sharpest corner, or at its longest line where it has none. */
  private static List<Stroke> turned(List<Stroke> strokes) {
    int n = strokes.size();
    int best = 0;
    double most = -1;
    for (int i = 0; i < n; i++) {
      Stroke before = strokes.get((i + n - 1) % n);
      Stroke after = strokes.get(i);
      double turn = Math.abs(turn(arriving(before), leaving(after)));
      double change = before.getClass() == after.getClass() ? 0 : SHARPEST;
      double length = straight(after) ? after.from().distance(after.to()) : 0;
      double score = (turn > SHARPEST ? turn * 1e6 : change) + length;
      if (score > most) {
        most = score;
        best = i;
      }
    }
    List<Stroke> turned = new ArrayList<>(strokes.subList(best, n));
    turned.addAll(strokes.subList(0, best));
    return turned;
  }

  private static double turn(Point a, Point b) {
    return Math.atan2(a.cross(b), a.dot(b));
  }

  private static List<Segment> segments(List<Stroke> strokes, double within) {
    List<Segment> all = new ArrayList<>();
    int i = 0;
    while (i < strokes.size()) {
      Run run = run(strokes, i, within);
      all.addAll(run.segments());
      i = run.next();
    }
    return ArcMerge.closed(all);
  }

  /** What stands for the strokes up to another one. */
  private record Run(List<Segment> segments, int next) {}

  private static Run run(List<Stroke> strokes, int first, double within) {
    Stroke stroke = strokes.get(first);
    if (straight(stroke)) {
      Run arc = longest(strokes, first, alike(strokes, first, true), FEWEST_CHORDS, within);
      Run line = line(strokes, first, within);
      return arc.next() > line.next() ? arc : line;
    }
    if (stroke instanceof Stroke.Exact exact) {
      return pieces(strokes, first, (Arc) exact.segment());
    }
    Run arc = longest(strokes, first, alike(strokes, first, false), 1, within);
    return arc.next() > first ? arc : new Run(fitted(stroke), first + 1);
  }

  /** Pieces of one arc, as SVG has long ones written, are one. */
  private static Run pieces(List<Stroke> strokes, int first, Arc piece) {
    Arc whole = piece;
    int next = first + 1;
    while (next < strokes.size()
        && strokes.get(next) instanceof Stroke.Exact exact
        && exact.segment() instanceof Arc arc
        && arc.sweep() > 0 == whole.sweep() > 0
        && Math.abs(whole.sweep() + arc.sweep()) < LONGEST) {
      Point to = arc.to();
      double rise = piece.from().distance(to) / 2 * Math.tan((whole.sweep() + arc.sweep()) / 4);
      if (Arc.isStraight(piece.from(), to, rise)) {
        // As of a lens, whose second arc ends where the first begins.
        break;
      }
      Arc joined = Arc.withRise(piece.from(), to, rise);
      boolean one =
          strokes.subList(first, next + 1).stream()
              .allMatch(
                  s ->
                      joined.distance(s.from()) <= PIECES && joined.distance(s.middle()) <= PIECES);
      if (!one) {
        break;
      }
      whole = joined;
      next++;
    }
    return new Run(List.of(whole), next);
  }

  private static List<Segment> fitted(Stroke stroke) {
    ArcFit fit = stroke.fit(Tolerances.FREE_CURVE);
    return fit.segments();
  }

  /** Where strokes of one kind that run on without a corner end. */
  private static int alike(List<Stroke> strokes, int first, boolean chords) {
    int next = first + 1;
    while (next < strokes.size()) {
      Stroke stroke = strokes.get(next);
      boolean kind = chords ? straight(stroke) : stroke instanceof Stroke.Free;
      double turn = kind ? turn(arriving(strokes.get(next - 1)), leaving(stroke)) : 0;
      if (!kind || Math.abs(turn) > SHARPEST) {
        break;
      }
      next++;
    }
    return next;
  }

  /** The longest run of strokes up to an end that one arc stands for; none below a number. */
  private static Run longest(List<Stroke> strokes, int first, int end, int fewest, double within) {
    Run best = new Run(List.of(), first);
    int low = first + fewest;
    if (low > end) {
      return best;
    }
    // Doubling, then halving: a longer run that fits has only shorter ones that do.
    int step = fewest;
    int high = low;
    while (high <= end) {
      Optional<Arc> arc = arc(strokes.subList(first, high), within);
      if (arc.isEmpty()) {
        break;
      }
      best = new Run(List.of(arc.get()), high);
      if (high == end) {
        return best;
      }
      step *= 2;
      high = Math.min(end, first + step);
    }
    int bad = high;
    while (bad - best.next() > 1 && best.next() > first) {
      int middle = (best.next() + bad) / 2;
      Optional<Arc> arc = arc(strokes.subList(first, middle), within);
      if (arc.isPresent()) {
        best = new Run(List.of(arc.get()), middle);
      } else {
        bad = middle;
      }
    }
    return best;
  }

  /** The arc between the ends of some strokes that lies within a distance of all of them. */
  private static Optional<Arc> arc(List<Stroke> strokes, double within) {
    boolean chords = straight(strokes.get(0));
    Point from = strokes.get(0).from();
    Point to = strokes.get(strokes.size() - 1).to();
    List<Point> fitted = new ArrayList<>();
    List<Point> all = new ArrayList<>();
    for (Stroke stroke : strokes) {
      List<Point> own = samples(stroke);
      fitted.addAll(chords ? own.subList(0, 1) : own);
      all.addAll(own);
    }
    fitted.add(to);
    if (from.near(to, DIGITS)) {
      return Optional.empty();
    }
    Optional<CircleFit.Circle> circle = CircleFit.TAUBIN.of(fitted);
    if (circle.isEmpty() || all.stream().anyMatch(p -> off(circle.get(), p) > within)) {
      return Optional.empty();
    }
    Point centre = circle.get().centre();
    double sweep = 0;
    for (int i = 1; i < fitted.size(); i++) {
      sweep += turn(fitted.get(i - 1).minus(centre), fitted.get(i).minus(centre));
    }
    double rise = from.distance(to) / 2 * Math.tan(sweep / 4);
    if (Math.abs(sweep) >= 2 * Math.PI || Arc.isStraight(from, to, rise)) {
      return Optional.empty();
    }
    Arc arc = Arc.withRise(from, to, rise);
    return all.stream().allMatch(p -> arc.distance(p) <= within)
        ? Optional.of(arc)
        : Optional.empty();
  }

  /** Lines that follow each other straight on, as one; many short ones may be less exact. */
  private static Run line(List<Stroke> strokes, int first, double within) {
    Point from = strokes.get(first).from();
    double longest = from.distance(strokes.get(first).to());
    double shortest = longest;
    int next = first + 1;
    while (next < strokes.size() && straight(strokes.get(next))) {
      Line whole = new Line(from, strokes.get(next).to());
      double length = strokes.get(next).from().distance(strokes.get(next).to());
      longest = Math.max(longest, length);
      shortest = Math.min(shortest, length);
      boolean on = true;
      double along = 0;
      for (int i = first; i < next && on; i++) {
        Point p = strokes.get(i).to();
        double at = p.minus(from).dot(whole.direction());
        // A long edge keeps its direction where short chords of an arc follow.
        double limit =
            next - first >= FEWEST_CHORDS && longest <= EVEN * shortest ? within : DIGITS;
        on = whole.distance(p) <= limit && at >= along;
        along = at;
      }
      if (!on) {
        break;
      }
      next++;
    }
    return new Run(List.of(new Line(from, strokes.get(next - 1).to())), next);
  }
}
