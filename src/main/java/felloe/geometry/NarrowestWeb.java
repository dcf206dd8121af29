package felloe.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The narrowest webs of a region: where material is left thin between two edges.
 *
 * <p>Between two different contours the web is their shortest gap. Within one contour it is a
 * <em>neck</em>: two edge points that face each other through material such that
 *
 * <ol>
 *   <li>the open disc over the way between them touches no edge, so that both points are the
 *       nearest edge of its middle, and the way is square to both edges or ends in a corner that
 *       points into the material;
 *   <li>the way does not get shorter when both of its ends move along their edges to either side
 *       (second order: {@code (1 - ka L)(1 - kb L) >= 1} with the curvatures ka and kb, positive
 *       where the edge bulges out of the material, and the length L).
 * </ol>
 *
 * So a sharp tip, the two sides next to a corner and the ends of a rounded bar do not count, while
 * a bar or a rim of even width does. These are the saddles of the distance to the edge, the places
 * where a region that is worn away evenly from all edges first breaks into pieces or opens a way
 * between two holes; and in addition bars and teeth of even width, which wear away without
 * breaking.
 *
 * <p>All candidates come in closed form from pairs of segments that lie near each other, so that a
 * width is as exact as the edges, about 1e-9 mm; pieces of even width are tried at nine places. A
 * worn-away region made with JTS gives the same answer only by trying widths, at some milliseconds
 * each; it is the proof in the tests, not the way.
 */
public final class NarrowestWeb {

  /** How far from a right angle, in radians, still counts as square. */
  static final double SLANT = 1e-7;

  /** How far the second order test may fall short by rounding. */
  private static final double EVEN = 1e-6;

  private static final int PLACES = 8;

  /** What rounding and {@link #SLANT} may turn, radians. */
  private static final double FAN_ROUNDED = 1e-5;

  /** How many pieces away a point is still looked at that may lie between two others. */
  private static final int FAR = 256;

  /** How many corners to either side of a segment are looked at before the index is asked. */
  private static final int NEXT = 2;

  /** A point this far inside, as a share of the size, is no rounding. */
  private static final double INSIDE = 10 * Tolerances.SAME_POINT;

  /** The widest search for the narrowest web, in pairs of segments: about a second. */
  private static final long MOST_PAIRS = 5_000_000;

  /**
   * A web.
   *
   * @param from its end on the first contour, mm
   * @param to its end on the second contour, mm
   * @param width the distance of its ends, mm
   * @param first the contour's number in {@link Region#contours()}: 0 for the outer edge
   * @param second the other contour's number, not below {@code first}; equal to it for a neck
   */
  public record Web(Point from, Point to, double width, int first, int second) {

    /** Half way across. */
    public Point middle() {
      return from.middle(to);
    }

    /** Whether it lies between two parts of one contour. */
    public boolean isNeck() {
      return first == second;
    }
  }

  private final Region region;
  private final List<Segment> segments = new ArrayList<>();
  private final List<Box> boxes = new ArrayList<>();
  private final List<Integer> owner = new ArrayList<>();
  private final List<Integer> next = new ArrayList<>();
  private final List<Integer> previous = new ArrayList<>();
  private final SegmentIndex index;
  private final double size;

  /** Direction of travel half way along each segment, radians. */
  private final double[] heading;

  /** How far directions at a segment's points, its corners counted, turn from that, radians. */
  private final double[] fan;

  /** The middle of each segment's box. */
  private final Point[] middle;

  /** Half the diagonal of each segment's box, mm. */
  private final double[] radius;

  /** The number of the first segment of each segment's contour. */
  private final int[] firstOf;

  /** How many segments each segment's contour has. */
  private final int[] count;

  /** Prepares a region for searching. */
  public NarrowestWeb(Region region) {
    this.region = region;
    List<Contour> contours = region.contours();
    for (int c = 0; c < contours.size(); c++) {
      // Material always lies to the left of travel.
      add(c, c == 0 ? contours.get(c).segments() : contours.get(c).clockwise());
    }
    segments.forEach(segment -> boxes.add(segment.box()));
    heading = new double[segments.size()];
    fan = new double[segments.size()];
    for (int i = 0; i < segments.size(); i++) {
      Segment here = segments.get(i);
      heading[i] = here.tangent(0.5).angle();
      double own = here instanceof Arc arc ? Math.abs(arc.sweep()) / 2 : 0;
      double before = turn(segments.get(previous.get(i)).tangent(1), here.tangent(0));
      double after = turn(here.tangent(1), segments.get(next.get(i)).tangent(0));
      fan[i] = own + Math.max(before, after) + FAN_ROUNDED;
    }
    middle = new Point[segments.size()];
    radius = new double[segments.size()];
    firstOf = new int[segments.size()];
    count = new int[segments.size()];
    for (int i = 0, first = 0; i < segments.size(); i++) {
      Box box = boxes.get(i);
      middle[i] = box.centre();
      radius[i] = Math.hypot(box.width(), box.height()) / 2;
      first = i == 0 || owner.get(i).equals(owner.get(i - 1)) ? first : i;
      firstOf[i] = first;
      count[i] = contours.get(owner.get(i)).segments().size();
    }
    this.index = new SegmentIndex(segments);
    Box all = region.outer().box();
    this.size = Math.hypot(all.width(), all.height());
  }

  private void add(int contour, List<Segment> chain) {
    int start = segments.size();
    int n = chain.size();
    for (int k = 0; k < n; k++) {
      segments.add(chain.get(k));
      owner.add(contour);
      next.add(start + (k + 1) % n);
      previous.add(start + (k + n - 1) % n);
    }
  }

  private static double turn(Point in, Point out) {
    return Math.abs(Math.atan2(in.cross(out), in.dot(out)));
  }

  /** Whether the edge may run one way on one segment and the other way on the other. */
  private boolean opposed(int a, int b) {
    double off = Math.IEEEremainder(heading[a] - heading[b] + Math.PI, 2 * Math.PI);
    return Math.abs(off) <= fan[a] + fan[b];
  }

  /**
   * Whether an edge point near one of them lies inside each disc over a way from one to the other,
   * so that no way is open. With the way's ends p and q, a point v lies inside where {@code (v - p)
   * . (q - v) > 0}; taken at the middles of both boxes, that is less by no more than what half
   * their diagonals allow. Most pairs of a line with many short pieces end here.
   */
  private boolean edgeBetween(int a, int b) {
    Point from = middle[a];
    Point to = middle[b];
    int n = count[a];
    for (int step = 1; step < n && step <= FAR; step *= 2) {
      for (int way = -1; way <= 1; way += 2) {
        if (inside(from, radius[a], to, radius[b], neighbour(a, way * step))
            || inside(from, radius[a], to, radius[b], neighbour(b, way * step))) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean inside(Point from, double nearFrom, Point to, double nearTo, Point v) {
    double ax = v.x() - from.x();
    double ay = v.y() - from.y();
    double bx = to.x() - v.x();
    double by = to.y() - v.y();
    double least = ax * bx + ay * by - nearFrom * nearTo - size * INSIDE;
    return least > 0 && least > nearFrom * Math.hypot(bx, by) + nearTo * Math.hypot(ax, ay);
  }

  /** The start of a segment of the same contour, so many further on. */
  private Point neighbour(int segment, int further) {
    int start = firstOf[segment];
    return segments.get(start + Math.floorMod(segment - start + further, count[segment])).from();
  }

  /** The narrowest web of a region; none where one contour has no neck, such as a plain disc. */
  public static Optional<Web> of(Region region) {
    return new NarrowestWeb(region).narrowest();
  }

  /**
   * The narrowest web; none where one contour has no neck, such as a plain disc. Also none where so
   * many segments lie so close that more than {@value #MOST_PAIRS} pairs would have to be looked
   * at: ask {@link #upTo} for those that are narrow.
   */
  public Optional<Web> narrowest() {
    return narrowest(true);
  }

  /** The narrowest web between two different contours; none where there is only one. */
  public Optional<Web> between() {
    return region.holes().isEmpty() ? Optional.empty() : narrowest(false);
  }

  private Optional<Web> narrowest(boolean necks) {
    double seen = 0;
    for (double reach = size / 64; ; reach *= 2) {
      if (pairs(reach) > MOST_PAIRS) {
        return Optional.empty();
      }
      List<Web> found = within(seen, reach, necks);
      seen = reach;
      if (!found.isEmpty()) {
        return Optional.of(found.get(0));
      }
      if (reach > size) {
        return Optional.empty();
      }
    }
  }

  /**
   * The narrowest web of each pair of contours that face each other, and the narrowest neck of each
   * contour. A pair whose shortest gap is cut by a third contour is left out.
   *
   * @return in order of width; equal widths (to 1e-6 mm) in order of the contours' numbers
   */
  public List<Web> all() {
    return upTo(size);
  }

  /**
   * The same as {@link #all()}, no wider than a given width. Quick where the width is small.
   *
   * @param widest mm
   */
  public List<Web> upTo(double widest) {
    return within(0, widest, true);
  }

  /** How many pairs of segments lie within reach, counted up to a little beyond the most. */
  private long pairs(double reach) {
    long[] count = {0};
    for (int i = 0; i < segments.size() && count[0] <= 2 * MOST_PAIRS; i++) {
      index.touching(boxes.get(i).grown(reach), b -> count[0]++);
    }
    return count[0] / 2;
  }

  /**
   * Webs up to a width.
   *
   * @param seen a width up to which there is none, mm
   */
  private List<Web> within(double seen, double widest, boolean necks) {
    Map<Long, Web> best = new TreeMap<>();
    for (int i = 0; i < segments.size(); i++) {
      int a = i;
      index.touching(
          boxes.get(i).grown(widest),
          b -> {
            if (b > a
                && (necks || !owner.get(a).equals(owner.get(b)))
                && middle[a].distance(middle[b]) + radius[a] + radius[b] > seen) {
              look(a, b, widest, best);
            }
          });
    }
    return best.values().stream()
        .filter(this::clear)
        .sorted(
            Comparator.comparingDouble((Web web) -> Math.rint(web.width() / Tolerances.SAME_POINT))
                .thenComparingInt(Web::first)
                .thenComparingInt(Web::second))
        .toList();
  }

  private void look(int a, int b, double widest, Map<Long, Web> best) {
    int first = owner.get(a);
    int second = owner.get(b);
    long key = ((long) first << 32) | second;
    Web known = best.get(key);
    double limit = known == null ? widest : known.width();
    Optional<Web> found;
    if (first != second) {
      Gap gap = Gap.between(segments.get(a), segments.get(b));
      found = Optional.of(new Web(gap.from(), gap.to(), gap.distance(), first, second));
    } else if (!opposed(a, b) || edgeBetween(a, b)) {
      // The way across a neck is square to both sides, so that they run opposite ways.
      return;
    } else {
      Necks necks = new Necks(a, b, limit);
      necks.search();
      found = Optional.ofNullable(necks.best);
    }
    found
        .filter(web -> known == null ? web.width() <= widest : web.width() < known.width())
        .ifPresent(web -> best.put(key, web));
  }

  /** Whether no third contour crosses the way. Necks are clear by their empty disc. */
  private boolean clear(Web web) {
    if (web.isNeck() || web.width() <= Tolerances.SAME_POINT) {
      return true;
    }
    Line way = new Line(web.from(), web.to());
    boolean[] cut = {false};
    index.touching(
        way.box(),
        i -> {
          int at = owner.get(i);
          if (at != web.first() && at != web.second()) {
            cut[0] |= !Gap.meetings(way, segments.get(i)).isEmpty();
          }
        });
    return !cut[0];
  }

  /** The search for the narrowest neck between two segments of one contour. */
  private final class Necks {
    private final int a;
    private final int b;
    private final Segment onA;
    private final Segment onB;
    private final double limit;
    private Web best;

    Necks(int a, int b, double limit) {
      this.a = a;
      this.b = b;
      this.limit = limit;
      this.onA = segments.get(a);
      this.onB = segments.get(b);
    }

    void search() {
      // Each corner is the start of just one segment, so starts alone reach every corner.
      offer(onA.from(), onB.from());
      for (Point foot : Square.feet(onA.from(), onB)) {
        offer(onA.from(), foot);
      }
      for (Point foot : Square.feet(onB.from(), onA)) {
        offer(foot, onB.from());
      }
      if (onA instanceof Arc arc) {
        for (Point p : Square.fromArc(arc, onB)) {
          Square.feet(p, onB).forEach(q -> offer(p, q));
        }
      } else if (onB instanceof Arc arc) {
        for (Point q : Square.fromArc(arc, onA)) {
          Square.feet(q, onA).forEach(p -> offer(p, q));
        }
      }
      if (sameDirections()) {
        for (int k = 0; k <= PLACES; k++) {
          Point p = onA.at((double) k / PLACES);
          Square.feet(p, onB).forEach(q -> offer(p, q));
          Point q = onB.at((double) k / PLACES);
          Square.feet(q, onA).forEach(foot -> offer(foot, q));
        }
        evenLines();
      }
    }

    /** Whether all normals of one segment are normals of the other: parallel or concentric. */
    private boolean sameDirections() {
      if (onA instanceof Line l && onB instanceof Line m) {
        return Math.abs(l.direction().cross(m.direction())) < SLANT;
      }
      return onA instanceof Arc p
          && onB instanceof Arc q
          && p.centre().near(q.centre(), Tolerances.SAME_POINT);
    }

    /** The middle of the stretch over which two parallel lines face each other. */
    private void evenLines() {
      if (onA instanceof Line l && onB instanceof Line m) {
        Point along = l.direction();
        double s = m.from().minus(l.from()).dot(along);
        double t = m.to().minus(l.from()).dot(along);
        double start = Math.max(0, Math.min(s, t));
        double end = Math.min(l.length(), Math.max(s, t));
        if (start <= end) {
          for (int k = 0; k <= PLACES; k++) {
            Point p = l.from().plus(along, start + (end - start) * k / PLACES);
            Square.feet(p, onB).forEach(q -> offer(p, q));
          }
        }
      }
    }

    private void offer(Point p, Point q) {
      double width = p.distance(q);
      if (width <= Tolerances.SAME_POINT
          || width > limit
          || (best != null && width >= best.width())) {
        return;
      }
      Point across = q.minus(p).times(1 / width);
      double[] atP = bends(a, p, across, width);
      double[] atQ = bends(b, q, across.times(-1), width);
      // What comes after p lies on the same side of the way as what comes before q.
      if (atP == null || atQ == null || !holds(atP[0], atQ[1]) || !holds(atP[1], atQ[0])) {
        return;
      }
      Point middle = p.middle(q);
      if (cornerWithin(middle, width / 2 - Tolerances.SAME_POINT)) {
        return;
      }
      if (index.distance(middle) >= width / 2 - Tolerances.SAME_POINT && region.contains(middle)) {
        best = new Web(p, q, width, owner.get(a), owner.get(b));
      }
    }

    /** Whether a corner next to either segment lies in a disc: quicker to see than by the index. */
    private boolean cornerWithin(Point middle, double radius) {
      for (int step = -NEXT; step <= NEXT + 1; step++) {
        if (neighbour(a, step).distance(middle) < radius
            || neighbour(b, step).distance(middle) < radius) {
          return true;
        }
      }
      return false;
    }
  }

  private static boolean holds(double a, double b) {
    if (a == Double.POSITIVE_INFINITY || b == Double.POSITIVE_INFINITY) {
      return Math.min(a, b) >= -EVEN;
    }
    return a >= 0 && b >= 0 && a * b >= 1 - EVEN;
  }

  /**
   * One less curvature times width, for what comes after a point and what comes before it; infinite
   * where the edge turns away from the way at once; null where it turns toward it.
   */
  private double[] bends(int segment, Point p, Point across, double width) {
    int after = segment;
    int before = segment;
    if (p.near(segments.get(segment).from(), Tolerances.SAME_POINT)) {
      before = previous.get(segment);
    } else if (p.near(segments.get(segment).to(), Tolerances.SAME_POINT)) {
      after = next.get(segment);
    }
    double ahead = bend(segments.get(after), p, 1, across, width);
    double behind = bend(segments.get(before), p, -1, across, width);
    return Double.isNaN(ahead) || Double.isNaN(behind) ? null : new double[] {ahead, behind};
  }

  private static double bend(Segment on, Point p, int way, Point across, double width) {
    double toward = way * Square.direction(on, p).dot(across);
    if (toward > SLANT) {
      return Double.NaN;
    }
    return toward < -SLANT ? Double.POSITIVE_INFINITY : 1 - on.curvature() * width;
  }
}
