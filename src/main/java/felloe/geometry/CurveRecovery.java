package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Turns a ring of chords back into lines and arcs. Every chord names the curve it stands for;
 * neighbouring chords on one curve become one segment again; its ends are the exact meetings of
 * neighbouring curves, not the chords' vertices. So the result does not depend on how finely the
 * curves were cut.
 */
final class CurveRecovery {

  private final Sources sources;
  private final double chord;

  /**
   * Prepares to trace.
   *
   * @param sources the curves that chords may stand for
   * @param chord greatest distance of a chord from its curve, mm
   */
  CurveRecovery(Sources sources, double chord) {
    this.sources = sources;
    this.chord = chord;
  }

  /** The curves that chords stand for, by number. */
  interface Sources {
    /** The number of the curve that a point of a chord stands for; -1 for a curve of no length. */
    int owner(Point p);

    Curve curve(int number);

    /** How much farther than the chords' own error a meeting may lie from theirs, mm. */
    default double skipped() {
      return 0;
    }

    /** How far the chords may lie off for reasons of their own, mm. */
    default double shortcut() {
      return 0;
    }

    /** Points where two curves are known to join exactly; may be empty. */
    List<Point> joints(int first, int second);

    /**
     * A curve that belongs between two others near a point, though it is so short that the chords
     * may skip it; empty when the two meet directly.
     */
    default OptionalInt between(int first, int second, Point near) {
      return OptionalInt.empty();
    }
  }

  /** A stretch of chords on one curve. */
  private record Run(int firstOwner, int lastOwner, Curve curve, List<Point> vertices) {
    double length() {
      double sum = 0;
      for (int i = 1; i < vertices.size(); i++) {
        sum += vertices.get(i).distance(vertices.get(i - 1));
      }
      return sum;
    }

    Point end() {
      return vertices.get(vertices.size() - 1);
    }

    Run with(Run next) {
      List<Point> all = new ArrayList<>(vertices);
      all.addAll(next.vertices.subList(1, next.vertices.size()));
      return new Run(firstOwner, next.lastOwner, curve, all);
    }

    /** Angle that the chords travel about the centre, signed. */
    double sweepAbout(Point centre) {
      double sum = 0;
      for (int i = 1; i < vertices.size(); i++) {
        Point u = vertices.get(i - 1).minus(centre);
        Point v = vertices.get(i).minus(centre);
        sum += Math.atan2(u.cross(v), u.dot(v));
      }
      return sum;
    }
  }

  /** The regions that some chord polygons stand for; pieces that shrink to nothing are left out. */
  List<Region> regions(List<Topology.Piece> pieces) {
    List<Region> regions = new ArrayList<>();
    for (Topology.Piece piece : pieces) {
      Optional<Contour> outer = contour(piece.outer());
      if (outer.isPresent()) {
        List<Contour> holes = new ArrayList<>();
        piece.holes().forEach(ring -> contour(ring).ifPresent(holes::add));
        regions.add(new Region(outer.get(), holes));
      }
    }
    return regions;
  }

  /**
   * The contour that a ring of chord vertices stands for; empty when it shrinks to nothing.
   *
   * @throws GeometryException when neighbouring curves have no meeting where the chords meet, or
   *     the contour encloses another area than the ring
   */
  private Optional<Contour> contour(List<Point> ring) {
    Optional<Contour> contour = traced(ring);
    double area = 0;
    double length = 0;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      area += a.minus(ring.get(0)).cross(b.minus(ring.get(0))) / 2;
      length += a.distance(b);
    }
    double change = Math.abs(contour.map(Contour::area).orElse(0.0) - area);
    if (change > length * (4 * chord + sources.shortcut())) {
      throw new GeometryException("an edge touches itself or is too thin to follow", ring.get(0));
    }
    return contour;
  }

  private Optional<Contour> traced(List<Point> ring) {
    List<Run> runs = completed(runs(ring));
    while (runs.size() > 1) {
      List<Segment> chain = new ArrayList<>();
      int drop = trace(runs, chain);
      if (drop < 0) {
        return Optional.of(new Contour(chain));
      }
      runs = without(runs, drop);
    }
    if (runs.size() == 1 && runs.get(0).curve() instanceof Curve.Circle circle) {
      // A sliver between two arcs of one circle goes there and back, so travels no angle.
      double travelled = Math.abs(runs.get(0).sweepAbout(circle.centre()));
      if (travelled > Math.PI) {
        return Optional.of(Contour.circle(circle.centre(), circle.radius()));
      }
    }
    return Optional.empty();
  }

  /** Groups the edges of a ring by curve. */
  private List<Run> runs(List<Point> ring) {
    List<Run> runs = new ArrayList<>();
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % n);
      int owner = sources.owner(a.middle(b));
      if (owner < 0) {
        if (!runs.isEmpty()) {
          Run last = runs.remove(runs.size() - 1);
          runs.add(last.with(new Run(last.lastOwner(), last.lastOwner(), null, List.of(a, b))));
        }
        continue;
      }
      add(runs, new Run(owner, owner, sources.curve(owner), new ArrayList<>(List.of(a, b))));
    }
    joinEnds(runs);
    return runs;
  }

  /** The runs together with those that are too short for the chords to show. */
  private List<Run> completed(List<Run> runs) {
    List<Run> all = new ArrayList<>(runs.size());
    for (int k = 0; k < runs.size(); k++) {
      Run run = runs.get(k);
      all.add(run);
      int next = runs.get((k + 1) % runs.size()).firstOwner();
      sources
          .between(run.lastOwner(), next, run.end())
          .ifPresent(o -> all.add(new Run(o, o, sources.curve(o), List.of(run.end()))));
    }
    return all;
  }

  private void add(List<Run> runs, Run next) {
    if (!runs.isEmpty()) {
      Run last = runs.get(runs.size() - 1);
      boolean same =
          last.lastOwner() == next.firstOwner()
              || last.curve().same(next.curve(), Tolerances.SAME_CURVE);
      if (same && last.lastOwner() == next.firstOwner() && next.vertices().size() == 2) {
        // The usual case, in place: copying the vertices each time would cost the square.
        last.vertices().add(next.end());
        return;
      }
      if (same) {
        runs.set(runs.size() - 1, last.with(next));
        return;
      }
    }
    runs.add(next);
  }

  private void joinEnds(List<Run> runs) {
    if (runs.size() > 1) {
      Run last = runs.get(runs.size() - 1);
      Run first = runs.get(0);
      if (last.lastOwner() == first.firstOwner()
          || last.curve().same(first.curve(), Tolerances.SAME_CURVE)) {
        runs.remove(runs.size() - 1);
        runs.set(0, last.with(first));
      }
    }
  }

  private List<Run> without(List<Run> runs, int drop) {
    List<Run> rest = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      int k = (drop + 1 + i) % runs.size();
      if (k != drop) {
        add(rest, runs.get(k));
      }
    }
    joinEnds(rest);
    return rest;
  }

  /** Builds the chain, or gives the number of a run that has no room between its neighbours. */
  private int trace(List<Run> runs, List<Segment> chain) {
    int n = runs.size();
    List<Point> joints = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      Optional<Point> joint = meeting(runs.get(k), runs.get((k + 1) % n));
      if (joint.isEmpty()) {
        return unmet(runs, k);
      }
      joints.add(joint.get());
    }
    int drop = -1;
    for (int k = 0; k < n; k++) {
      Optional<Segment> segment = segment(runs.get(k), joints.get((k + n - 1) % n), joints.get(k));
      if (segment.isPresent()) {
        chain.add(segment.get());
      } else if (drop < 0 || runs.get(k).length() < runs.get(drop).length()) {
        drop = k;
      }
    }
    return drop;
  }

  /** Of two runs whose curves do not meet, the shorter one that may be a slip of the chords. */
  private int unmet(List<Run> runs, int k) {
    int next = (k + 1) % runs.size();
    int shorter = runs.get(k).length() < runs.get(next).length() ? k : next;
    if (slip(runs, shorter)) {
      return shorter;
    }
    throw new GeometryException("two edges have no exact meeting", runs.get(k).end());
  }

  /** Whether a run is short, or the curve of a neighbour says just as well where it lies. */
  private boolean slip(List<Run> runs, int k) {
    Run run = runs.get(k);
    return run.length() <= 4 * chord
        || follows(run, runs.get((k + 1) % runs.size()).curve())
        || follows(run, runs.get((k + runs.size() - 1) % runs.size()).curve());
  }

  private boolean follows(Run run, Curve curve) {
    return run.vertices().stream().allMatch(p -> curve.distance(p) <= 2 * chord);
  }

  private Optional<Point> meeting(Run a, Run b) {
    Point near = a.end();
    double limit =
        sources.skipped() + 20 * chord + 3 * Math.sqrt(2 * chord * Math.max(reach(a), reach(b)));
    Optional<Point> known = nearest(sources.joints(a.lastOwner(), b.firstOwner()), near, limit);
    return known.isPresent()
        ? known
        : nearest(Curve.meetings(a.curve(), b.curve(), Tolerances.SAME_POINT / 2), near, limit);
  }

  private static double reach(Run run) {
    return run.curve() instanceof Curve.Circle circle ? circle.radius() : 0;
  }

  private static Optional<Point> nearest(List<Point> candidates, Point near, double limit) {
    Point best = null;
    for (Point p : candidates) {
      if (p.near(near, limit) && (best == null || p.distance(near) < best.distance(near))) {
        best = p;
      }
    }
    return Optional.ofNullable(best);
  }

  /** The run's curve between its joints; empty when nothing is left or it would run backward. */
  private static Optional<Segment> segment(Run run, Point from, Point to) {
    if (run.curve() instanceof Curve.Circle circle) {
      double travelled = run.sweepAbout(circle.centre());
      double sweep = Arc.sweepBetween(circle.centre(), from, to);
      sweep += 2 * Math.PI * Math.rint((travelled - sweep) / (2 * Math.PI));
      boolean backward = sweep * travelled < 0;
      boolean tiny = Math.abs(sweep) * circle.radius() <= 2 * Tolerances.SAME_POINT;
      if (backward || tiny || Math.abs(sweep) >= 2 * Math.PI || from.equals(to)) {
        return Optional.empty();
      }
      return Optional.of(new Arc(from, to, circle.centre(), circle.radius(), sweep));
    }
    Point travelled = run.end().minus(run.vertices().get(0));
    boolean backward = travelled.dot(to.minus(from)) < 0;
    return backward || from.near(to, 2 * Tolerances.SAME_POINT)
        ? Optional.empty()
        : Optional.of(new Line(from, to));
  }
}
