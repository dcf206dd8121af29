package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A closed edge of lines and arcs, each meeting the next at a point that both share, fitted to
 * measured places all at once. So a corner lies where its stretches meet: its own few places, which
 * blur has rounded, decide nothing.
 */
final class EdgeChain {

  /** A turn at a joint that is no more than this may be none, radians; and how much none it is. */
  static final double NEARLY_TANGENT = Math.toRadians(9);

  /** An arc shorter than this rounds a corner, mm, and so is likely to be tangent at both ends. */
  static final double ROUNDING_ARC = 16;

  /** Beside a corner blur and its own curve mislead, mm. */
  private static final double BESIDE_CORNER = 1.1;

  /** Between places, mm, and on stretches that round a corner; and fewest of a whole circle. */
  private static final double EVERY = 1;

  private static final double CLOSER = 0.4;

  private static final int FEWEST = 48;

  private Point[] joints;
  private double[] rises;
  private Point centre;
  private double radius;
  private boolean clockwise;
  private boolean whole;
  private double spread = Double.NaN;
  private double found = Double.NaN;
  private Optional<Astray> astray = Optional.empty();

  private EdgeChain() {}

  /**
   * Where the edge was seen first and the chain does not lie.
   *
   * @param at the farthest place
   * @param off mm
   */
  record Astray(Point at, double off) {}

  /** The same edge, which may be wrong at a place. */
  EdgeChain doubted(Astray where) {
    EdgeChain chain = known(spread, found);
    chain.astray = Optional.of(where);
    return chain;
  }

  Optional<Astray> astray() {
    return astray;
  }

  /**
   * Through joints.
   *
   * @param rises of each stretch from its chord to its right, mm; 0 for a line
   */
  static EdgeChain of(List<Point> joints, List<Double> rises) {
    EdgeChain chain = new EdgeChain();
    chain.joints = joints.toArray(new Point[0]);
    chain.rises = rises.stream().mapToDouble(Double::doubleValue).toArray();
    return chain;
  }

  /** A whole circle: the part lies left of it, outside when it is travelled clockwise. */
  static EdgeChain circle(Point centre, double radius, boolean clockwise) {
    EdgeChain chain = new EdgeChain();
    chain.centre = centre;
    chain.radius = radius;
    chain.clockwise = clockwise;
    return chain;
  }

  /** A hole that was measured as a whole. */
  static EdgeChain hole(HoleFit.Hole hole) {
    EdgeChain chain = circle(hole.centre(), hole.radius(), true);
    chain.whole = true;
    chain.spread = hole.spread();
    chain.found = hole.explained();
    return chain;
  }

  /**
   * A place of the chain.
   *
   * @param stretch its number
   * @param outward unit vector away from the part
   * @param bend how it bends: one over the radius, above 0 where the part is round there, 1/mm
   * @param counts whether the edge can be measured there
   */
  record Site(int stretch, Point at, Point outward, double bend, boolean counts) {}

  /** A measured place of a stretch. */
  record Measured(int stretch, Point at) {}

  boolean round() {
    return centre != null;
  }

  /** Whether it was measured as a whole, so that its spread is that of middle and radius. */
  boolean whole() {
    return whole;
  }

  Point centre() {
    return centre;
  }

  double radius() {
    return radius;
  }

  /** Root mean square of what is left at the places that count, mm. */
  double spread() {
    return spread;
  }

  /** How many stretches. */
  int stretches() {
    return joints.length;
  }

  /** Where a stretch begins; the one before ends there. */
  Point joint(int k) {
    return joints[k % joints.length];
  }

  /** How far a stretch rises to the right of its chord, mm; 0 for a line. */
  double rise(int k) {
    return rises[k];
  }

  /** The same edge with what is known of how well it was found. */
  EdgeChain known(double itsSpread, double share) {
    EdgeChain chain = new EdgeChain();
    chain.joints = joints;
    chain.rises = rises;
    chain.centre = centre;
    chain.radius = radius;
    chain.clockwise = clockwise;
    chain.whole = whole;
    chain.spread = itsSpread;
    chain.found = share;
    chain.astray = astray;
    return chain;
  }

  boolean clockwise() {
    return clockwise;
  }

  /** Share of the places at which the edge was found and lies on the chain. */
  double found() {
    return found;
  }

  /** In order of travel, the part to the left. */
  List<Segment> segments() {
    if (round()) {
      return List.of(Arc.circle(centre, radius));
    }
    List<Segment> all = new ArrayList<>();
    for (int k = 0; k < joints.length; k++) {
      all.add(segment(k));
    }
    return all;
  }

  Segment segment(int k) {
    Point from = joints[k];
    Point to = joints[(k + 1) % joints.length];
    return rises[k] == 0 || Arc.isStraight(from, to, rises[k])
        ? new Line(from, to)
        : Arc.withRise(from, to, rises[k]);
  }

  /** Places along it, a millimetre apart; those beside corners count for nothing. */
  List<Site> sites() {
    List<Site> all = new ArrayList<>();
    if (round()) {
      int count = Math.max(FEWEST, (int) (2 * Math.PI * radius / EVERY));
      for (int i = 0; i < count; i++) {
        double angle = 2 * Math.PI * i / count * (clockwise ? -1 : 1);
        Point out = Point.polar(1, angle);
        Point at = centre.plus(out, radius);
        all.add(
            clockwise
                ? new Site(0, at, out.times(-1), -1 / radius, true)
                : new Site(0, at, out, 1 / radius, true));
      }
      return all;
    }
    List<Segment> segments = segments();
    int n = segments.size();
    for (int k = 0; k < n; k++) {
      Segment s = segments.get(k);
      double length = s.length();
      double before = sharp(segments.get((k + n - 1) % n), s) ? BESIDE_CORNER : 0;
      double after = sharp(s, segments.get((k + 1) % n)) ? BESIDE_CORNER : 0;
      int count = Math.max(4, (int) Math.round(length / (length < ROUNDING_ARC ? CLOSER : EVERY)));
      for (int i = 0; i < count; i++) {
        double t = (i + 0.5) / count;
        boolean counts = t * length >= before && (1 - t) * length >= after;
        Point out = s.tangent(t).right();
        all.add(new Site(k, s.at(t), out, s.curvature(), counts));
      }
    }
    return all;
  }

  /** The same places alone. */
  List<Point> places() {
    return sites().stream().map(Site::at).toList();
  }

  /** By how much the way turns to the left from one to the other, radians. */
  static double turn(Segment a, Segment b) {
    Point u = a.tangent(1);
    Point v = b.tangent(0);
    return Math.atan2(u.cross(v), u.dot(v));
  }

  private static boolean sharp(Segment a, Segment b) {
    return Math.abs(turn(a, b)) > NEARLY_TANGENT;
  }

  /** How far a place lies to the right of its stretch, outside of a circle, mm. */
  double off(Measured m) {
    if (round()) {
      return m.at().distance(centre) - radius;
    }
    int k = m.stretch();
    return off(joints[k], joints[(k + 1) % joints.length], rises[k], m.at());
  }

  /** How far a place lies to the right of a stretch, run on beyond its ends. */
  static double off(Point from, Point to, double rise, Point p) {
    if (rise == 0 || Arc.isStraight(from, to, rise)) {
      return p.minus(from).dot(to.minus(from).unit().right());
    }
    double half = from.distance(to) / 2;
    double r = (half * half + rise * rise) / (2 * Math.abs(rise));
    Point out = to.minus(from).unit().right();
    Point c = from.middle(to).plus(out, rise - Math.copySign(r, rise));
    return rise > 0 ? p.distance(c) - r : r - p.distance(c);
  }

  /** Each place with the stretch that is nearest. */
  List<Measured> assigned(List<Point> points) {
    List<Segment> segments = segments();
    List<Measured> all = new ArrayList<>();
    for (Point p : points) {
      int nearest = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k < segments.size(); k++) {
        double d = segments.get(k).distance(p);
        if (d < least) {
          least = d;
          nearest = k;
        }
      }
      all.add(new Measured(nearest, p));
    }
    return all;
  }

  /** Places with the stretches that they lie on, in the order of travel. */
  List<Measured> inOrder(List<Measured> places) {
    if (round()) {
      return places;
    }
    List<Measured> all = assigned(places.stream().map(Measured::at).toList());
    all.sort(
        Comparator.comparingInt(Measured::stretch)
            .thenComparingDouble(m -> along(m.stretch(), m.at())));
    return all;
  }

  /** Grows along a stretch. */
  private double along(int k, Point p) {
    if (segment(k) instanceof Arc arc) {
      Point from = arc.from().minus(arc.centre());
      Point out = p.minus(arc.centre());
      double turned = Math.atan2(from.cross(out), from.dot(out)) * Math.signum(arc.sweep());
      // Behind the start by no more than half of what is left of the circle.
      double back = Math.PI - Math.abs(arc.sweep()) / 2;
      return turned < -back ? turned + 2 * Math.PI : turned;
    }
    return p.minus(joints[k]).dot(segment(k).tangent(0));
  }
}
