package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A closed edge of lines and arcs, each meeting the next at a point that both share, fitted to
 * measured places all at once. So a corner lies where its stretches meet: its own few places, which
 * blur has rounded, decide nothing.
 */
final class EdgeChain {

  /** A turn at a joint that is no more than this may be none, radians; and how much none it is. */
  private static final double NEARLY_TANGENT = Math.toRadians(9);

  private static final double TANGENT_SPREAD = Math.toRadians(0.6);

  /** An arc shorter than this rounds a corner, mm, and so is likely to be tangent at both ends. */
  private static final double ROUNDING_ARC = 16;

  private static final double ROUNDING_TURN = Math.toRadians(40);

  private static final double ROUNDING_SPREAD = Math.toRadians(2);

  /** A turn that is surely a corner, radians. */
  private static final double CORNER = Math.toRadians(20);

  /** How far from a corner an arc that is tried begins, mm. */
  private static final double CUT = 2.0;

  /** Blur makes a corner no rounder than this, mm. */
  private static final double ROUNDEST = 1;

  /** Stretches shorter than this are tried to be done without, mm. */
  private static final double SHORT = 12;

  /** How far round a stretch places have a say on whether it is needed, mm. */
  private static final double AROUND = 5;

  /** Fewer places on a stretch tell nothing of it. */
  private static final int SEEN = 3;

  /** What it may cost to do without one, in squares of the spread. */
  private static final double PRICE = 14;

  /** A place that is astray costs so much and no more. */
  private static final double MOST = 16;

  /** A spread beyond this is that of a wrong chain, mm. */
  private static final double MOST_SPREAD = 0.035;

  /** A joint where nothing turns may lie anywhere: it stays within this of where it is, mm. */
  private static final double JOINT_SPREAD = 1.5;

  /** Beside a corner blur and its own curve mislead, mm. */
  private static final double BESIDE_CORNER = 1.1;

  /** Between places, mm, and on stretches that round a corner; and fewest of a whole circle. */
  private static final double EVERY = 1;

  private static final double CLOSER = 0.4;

  private static final int FEWEST = 48;

  /** A stretch shorter than this is left out, mm. */
  private static final double SHORTEST = 0.4;

  /** By what numbers are moved to learn what follows, mm. */
  private static final double STEP = 1e-4;

  /** Below this a residual's spread is not believed, mm. */
  private static final double LEAST_SPREAD = 0.01;

  private Point[] joints;
  private double[] rises;
  private Point centre;
  private double radius;
  private boolean clockwise;
  private boolean whole;
  private double spread = Double.NaN;
  private double found = Double.NaN;

  private EdgeChain() {}

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

  private Segment segment(int k) {
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

  private static double turn(Segment a, Segment b) {
    Point u = a.tangent(1);
    Point v = b.tangent(0);
    return Math.atan2(u.cross(v), u.dot(v));
  }

  private static boolean sharp(Segment a, Segment b) {
    return Math.abs(turn(a, b)) > NEARLY_TANGENT;
  }

  /** Fitted to places of its stretches, places that are astray weighing little. */
  EdgeChain fitted(List<Measured> places, int sites) {
    EdgeChain next = copy();
    for (int round = 0; round < 12; round++) {
      double scale = next.scale(places);
      double moved = round() ? next.circleStep(places, scale) : next.step(places, scale);
      if (moved < STEP) {
        break;
      }
    }
    double scale = next.scale(places);
    double squares = 0;
    int near = 0;
    for (Measured m : places) {
      double r = next.off(m);
      if (Math.abs(r) < 4 * scale) {
        squares += r * r;
        near++;
      }
    }
    next.spread = Math.sqrt(squares / Math.max(1, near));
    next.found = near / (double) Math.max(1, sites);
    return next;
  }

  private EdgeChain copy() {
    EdgeChain next = new EdgeChain();
    next.joints = joints == null ? null : joints.clone();
    next.rises = rises == null ? null : rises.clone();
    next.centre = centre;
    next.radius = radius;
    next.clockwise = clockwise;
    return next;
  }

  private double scale(List<Measured> places) {
    double[] off = places.stream().mapToDouble(m -> Math.abs(off(m))).sorted().toArray();
    return off.length == 0 ? LEAST_SPREAD : Math.max(LEAST_SPREAD, 1.4826 * off[off.length / 2]);
  }

  private double off(Measured m) {
    if (round()) {
      return m.at().distance(centre) - radius;
    }
    int k = m.stretch();
    return off(joints[k], joints[(k + 1) % joints.length], rises[k], m.at());
  }

  /** How far a place lies to the right of a stretch, run on beyond its ends. */
  private static double off(Point from, Point to, double rise, Point p) {
    if (rise == 0 || Arc.isStraight(from, to, rise)) {
      return p.minus(from).dot(to.minus(from).unit().right());
    }
    double half = from.distance(to) / 2;
    double r = (half * half + rise * rise) / (2 * Math.abs(rise));
    Point out = to.minus(from).unit().right();
    Point c = from.middle(to).plus(out, rise - Math.copySign(r, rise));
    return rise > 0 ? p.distance(c) - r : r - p.distance(c);
  }

  /** So much does a residual count. */
  private static double weight(double off, double scale) {
    double share = off / (3 * scale);
    double w = 1 / (1 + share * share);
    return w * w / (scale * scale);
  }

  private double circleStep(List<Measured> places, double scale) {
    NormalEquations equations = new NormalEquations(3);
    for (Measured m : places) {
      Point u = m.at().minus(centre).unit();
      double r = off(m);
      equations.add(new double[] {-u.x(), -u.y(), -1}, r, weight(r, scale));
    }
    double[] step = equations.step(1e-9);
    centre = centre.plus(new Point(step[0], step[1]));
    radius += step[2];
    return Math.hypot(step[0], step[1]) + Math.abs(step[2]);
  }

  private double step(List<Measured> places, double scale) {
    int n = joints.length;
    NormalEquations equations = new NormalEquations(3 * n);
    for (Measured m : places) {
      int k = m.stretch();
      int next = (k + 1) % n;
      double r = off(m);
      double[] row = new double[3 * n];
      for (int axis = 0; axis < 2; axis++) {
        row[2 * k + axis] += (off(nudged(k, axis), joints[next], rises[k], m.at()) - r) / STEP;
        row[2 * next + axis] += (off(joints[k], nudged(next, axis), rises[k], m.at()) - r) / STEP;
      }
      if (rises[k] != 0) {
        row[2 * n + k] = (off(joints[k], joints[next], rises[k] + STEP, m.at()) - r) / STEP;
      }
      equations.add(row, r, weight(r, scale));
    }
    for (int k = 0; k < n; k++) {
      tangent(k, equations);
      for (int axis = 0; axis < 2; axis++) {
        double[] stays = new double[3 * n];
        stays[2 * k + axis] = 1;
        equations.add(stays, 0, 1 / (JOINT_SPREAD * JOINT_SPREAD));
      }
      double[] stays = new double[3 * n];
      stays[2 * n + k] = 1;
      equations.add(stays, 0, rises[k] == 0 ? 1e12 : 1e-3);
    }
    double[] step = equations.step(1e-6);
    double most = 0;
    for (int k = 0; k < n; k++) {
      Point move = new Point(step[2 * k], step[2 * k + 1]);
      double length = move.norm();
      most = Math.max(most, length);
      joints[k] = joints[k].plus(length > 1 ? move.unit() : move);
      double change = Math.max(-1, Math.min(1, step[2 * n + k]));
      rises[k] = rises[k] == 0 ? 0 : rises[k] + change;
    }
    return most;
  }

  private Point nudged(int k, int axis) {
    return joints[k].plus(axis == 0 ? new Point(STEP, 0) : new Point(0, STEP));
  }

  /** Where two stretches nearly run on into each other, they are likely to do so quite. */
  private void tangent(int k, NormalEquations equations) {
    int n = joints.length;
    int before = (k + n - 1) % n;
    if (rises[k] == 0 && rises[before] == 0) {
      return;
    }
    double turn = turn(segment(before), segment(k));
    boolean rounds = rounds(before) || rounds(k);
    if (Math.abs(turn) > (rounds ? ROUNDING_TURN : NEARLY_TANGENT)) {
      return;
    }
    double[] row = new double[3 * n];
    Point[] keptJoints = joints;
    double[] keptRises = rises;
    for (int i : new int[] {before, k, (k + 1) % n}) {
      for (int axis = 0; axis < 2; axis++) {
        joints = keptJoints.clone();
        joints[i] = joints[i].plus(axis == 0 ? new Point(STEP, 0) : new Point(0, STEP));
        row[2 * i + axis] = (turn(segment(before), segment(k)) - turn) / STEP;
      }
    }
    joints = keptJoints;
    for (int i : new int[] {before, k}) {
      if (keptRises[i] != 0) {
        rises = keptRises.clone();
        rises[i] += STEP;
        row[2 * n + i] = (turn(segment(before), segment(k)) - turn) / STEP;
      }
    }
    rises = keptRises;
    // What is a corner after all is not held.
    double hold = rounds ? ROUNDING_SPREAD : TANGENT_SPREAD;
    double share = rounds ? 0 : turn / (3 * hold);
    double w = 1 / (1 + share * share);
    equations.add(row, turn, w * w / (hold * hold));
  }

  private boolean rounds(int k) {
    return rises[k] != 0 && segment(k).length() < ROUNDING_ARC;
  }

  /** Fitted to the places once more, without short stretches that explain next to nothing. */
  EdgeChain simplified(List<Measured> places) {
    if (round()) {
      return this;
    }
    List<Point> points = places.stream().map(Measured::at).toList();
    // One scale for all: what fits worse must not be judged by its own spread.
    double scale = Math.min(MOST_SPREAD, Math.max(2 * LEAST_SPREAD, spread));
    EdgeChain best = this;
    boolean again = true;
    while (again && best.joints.length > 2) {
      again = false;
      List<Measured> own = best.assigned(points);
      for (int k = 0; k < best.joints.length && !again; k++) {
        int stretch = k;
        // Where nothing was seen of a stretch, nothing speaks against it either.
        boolean seen = own.stream().filter(m -> m.stretch() == stretch).count() >= SEEN;
        double length = best.segment(k).length();
        if (length < 2 * SHORTEST || (seen && length < SHORT)) {
          // What is left over elsewhere has no say.
          Point middle = best.segment(k).at(0.5);
          List<Point> near =
              points.stream().filter(p -> p.distance(middle) < length / 2 + AROUND).toList();
          EdgeChain without = best.without(k);
          without = without.fitted(without.assigned(points), points.size());
          if (without.cost(near, scale) < best.cost(near, scale) + PRICE) {
            best = without;
            again = true;
          }
        }
      }
    }
    return best;
  }

  private double cost(List<Point> points, double scale) {
    double sum = 0;
    for (Measured m : assigned(points)) {
      double r = off(m) / scale;
      sum += Math.min(r * r, MOST);
    }
    return sum;
  }

  /** Each place with the stretch that is nearest. */
  private List<Measured> assigned(List<Point> points) {
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

  /** With an arc at each corner, which the photo may then make larger or do without. */
  EdgeChain rounded() {
    if (round()) {
      return this;
    }
    List<Segment> all = segments();
    int n = all.size();
    List<Point> kept = new ArrayList<>();
    List<Double> bends = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      Segment before = all.get((k + n - 1) % n);
      Segment here = all.get(k);
      Segment after = all.get((k + 1) % n);
      double cut = turns(before, here) ? CUT / here.length() : 0;
      double end = turns(here, after) ? 1 - CUT / here.length() : 1;
      Point from = here.at(cut);
      Point to = here.at(end);
      kept.add(from);
      double sweep = here instanceof Arc arc ? arc.sweep() * (end - cut) : 0;
      bends.add(rise(from, to, sweep));
      if (end < 1) {
        kept.add(to);
        bends.add(rise(to, after.at(CUT / after.length()), turn(here, after)));
      }
    }
    EdgeChain chain = EdgeChain.of(kept, bends);
    chain.spread = spread;
    return chain;
  }

  private static double rise(Point from, Point to, double sweep) {
    return from.distance(to) / 2 * Math.tan(sweep / 4);
  }

  private static boolean turns(Segment a, Segment b) {
    return Math.abs(turn(a, b)) > CORNER && Math.min(a.length(), b.length()) > 3 * CUT;
  }

  /** With corners where it has arcs that are no rounder than blur makes a corner. */
  EdgeChain sharpened() {
    EdgeChain chain = this;
    for (int k = 0; !chain.round() && k < chain.joints.length && chain.joints.length > 2; k++) {
      if (chain.segment(k) instanceof Arc arc
          && arc.radius() < ROUNDEST
          && Math.abs(arc.sweep()) > CORNER) {
        chain = chain.without(k);
        k--;
      }
    }
    return chain;
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

  private EdgeChain without(int k) {
    List<Point> kept = new ArrayList<>();
    List<Double> bends = new ArrayList<>();
    int n = joints.length;
    int next = (k + 1) % n;
    for (int i = 0; i < n; i++) {
      if (i != k) {
        kept.add(i == next ? joints[k].middle(joints[next]) : joints[i]);
        bends.add(rises[i]);
      }
    }
    EdgeChain chain = EdgeChain.of(kept, bends);
    chain.spread = spread;
    return chain;
  }

  /** The chain without stretches that have shrunk to nothing. */
  EdgeChain tidied() {
    if (round()) {
      return this;
    }
    List<Point> kept = new ArrayList<>();
    List<Double> bends = new ArrayList<>();
    int n = joints.length;
    for (int k = 0; k < n; k++) {
      if (joints[k].distance(joints[(k + 1) % n]) >= SHORTEST) {
        kept.add(joints[k]);
        bends.add(rises[k]);
      }
    }
    if (kept.size() < 2 || kept.size() == n) {
      return this;
    }
    EdgeChain next = EdgeChain.of(kept, bends);
    next.spread = spread;
    next.found = found;
    return next;
  }

  @Override
  public String toString() {
    return round()
        ? "circle " + centre + " " + radius
        : Arrays.toString(joints) + Arrays.toString(rises);
  }
}
