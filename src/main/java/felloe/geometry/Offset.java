package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Offsets of regions and contours, exact in lines and arcs, with round outside corners: the offset
 * of a rounded rectangle is four lines and four arcs, that of a circle one circle. Where edges are
 * cut by their neighbours alone, that is all ({@link ParallelCurve}); elsewhere JTS decides on
 * chords which stretches of the moved curves remain; the curves themselves are the source's, moved
 * in closed form: a line shifted, an arc with its radius changed, an arc round each outside corner.
 * Every stretch of the result is measured against the source before it is handed out; it lies at
 * the offset distance within 1e-6 mm, and within 1e-5 mm where edges all but touch. Necks that
 * differ from twice the distance by less than {@link Tolerances#CHORD} may fall either way.
 */
public final class Offset {

  /** Where even the finest chords cannot show what comes nearer by less than they err, mm. */
  private static final double COARSE = 1e-5;

  /** A neck of two radii has neither one piece nor two; this much tells which, mm. */
  private static final double HAIR = 1e-3;

  // JTS leaves out the round of a corner shorter than a twentieth of the distance.
  private static final double SKIPPED = 0.1;

  private Offset() {}

  /**
   * The region grown or shrunk.
   *
   * @param distance outward where positive, inward where negative, mm
   * @return the pieces, none when nothing is left
   * @throws GeometryException when there is no sound result
   */
  public static List<Region> of(Region region, double distance) {
    Numbers.finite("distance", distance);
    if (Math.abs(distance) <= Tolerances.SAME_POINT) {
      return List.of(region);
    }
    return parallel(region, distance).orElseGet(() -> onChords(region, distance));
  }

  /** The offset of a region, where each of its edges moves by itself. */
  static Optional<List<Region>> parallel(Region region, double distance) {
    Optional<Contour> outer = ParallelCurve.of(region.outer(), distance);
    if (outer.isEmpty()) {
      return Optional.empty();
    }
    List<Contour> holes = new ArrayList<>();
    for (Contour hole : region.holes()) {
      Optional<Contour> moved = ParallelCurve.of(hole, -distance);
      if (moved.isEmpty()) {
        return Optional.empty();
      }
      holes.add(moved.get());
    }
    SegmentIndex source = SegmentIndex.of(region.contours());
    OffsetProof proof = new OffsetProof(source, Math.abs(distance), Tolerances.SAME_POINT);
    try {
      Region moved = new Region(outer.get(), holes);
      boolean sound = moved.contours().stream().allMatch(edge -> proof.keeps(edge.segments()));
      return sound ? Optional.of(List.of(moved)) : Optional.empty();
    } catch (GeometryException meets) {
      return Optional.empty();
    }
  }

  /** The offset of any region: on chords it is decided what remains. */
  static List<Region> onChords(Region region, double distance) {
    double chord = Math.min(Tolerances.CHORD, Math.abs(distance) / 4);
    return Combine.refining(chord, c -> () -> new Attempt(region, distance, c).run());
  }

  /**
   * The figure inside a contour grown or shrunk.
   *
   * @throws GeometryException when there is no sound result
   */
  public static List<Region> of(Contour contour, double distance) {
    return of(Region.of(contour), distance);
  }

  /**
   * The region with every corner that turns inward for a cutter rounded to a radius: what a disc of
   * that radius can sweep inside it. Parts narrower than the disc are lost; where it sweeps a neck
   * from both sides alone, both sides are one piece when they meet. A neck that is as wide as the
   * disc to a hair is taken to be narrower, and corners then are that hair rounder.
   *
   * @param radius radius of the disc, mm, not below zero
   * @throws GeometryException when there is no sound result
   */
  public static List<Region> opened(Region region, double radius) {
    try {
      return swept(region, radius);
    } catch (GeometryException justAsWide) {
      return swept(region, radius + HAIR);
    }
  }

  private static List<Region> swept(Region region, double radius) {
    List<Region> swept = new ArrayList<>();
    for (Region core : of(region, -radius)) {
      swept.addAll(of(core, radius));
    }
    return meet(swept) ? Combine.union(swept) : swept;
  }

  private static boolean meet(List<Region> regions) {
    for (int i = 0; i < regions.size(); i++) {
      for (int k = 0; k < i; k++) {
        Contour a = regions.get(i).outer();
        Contour b = regions.get(k).outer();
        if (a.box().touches(b.box()) && a.gap(b).distance() <= Tolerances.SAME_POINT) {
          return true;
        }
      }
    }
    return false;
  }

  /** One offset at one chord tolerance. */
  private static final class Attempt implements CurveRecovery.Sources {
    private final Region region;
    private final double distance;
    private final double chord;
    private final List<Segment> segments = new ArrayList<>();
    private final List<Integer> next = new ArrayList<>();
    private final List<Integer> previous = new ArrayList<>();
    private final List<Double> rightward = new ArrayList<>();
    private final SegmentIndex index;

    Attempt(Region region, double distance, double chord) {
      this.region = region;
      this.distance = distance;
      this.chord = chord;
      add(region.outer(), distance);
      // Round a hole the material lies to the right of travel, so outward is to the left.
      region.holes().forEach(hole -> add(hole, -distance));
      this.index = new SegmentIndex(segments);
    }

    private void add(Contour contour, double toTheRight) {
      int start = segments.size();
      int count = contour.segments().size();
      for (int i = 0; i < count; i++) {
        segments.add(contour.segments().get(i));
        next.add(start + (i + 1) % count);
        previous.add(start + (i + count - 1) % count);
        rightward.add(toTheRight);
      }
    }

    /**
     * By JTS's buffer, and where its shortcuts at short edges spoil the answer, by sweeping along
     * the edges there as well.
     */
    List<Region> run() {
      Flattener chords = new Flattener(chord);
      Topology.Piece piece =
          new Topology.Piece(
              chords.add(region.outer(), 0),
              region.holes().stream().map(hole -> chords.add(hole, 0)).toList());
      int perTurn = Flattener.perTurn(Math.abs(distance), chord);
      List<Topology.Piece> pieces = Topology.offset(piece, distance, perTurn);
      double tolerance = chord > COARSE ? Tolerances.SAME_POINT : COARSE;
      OffsetProof proof = new OffsetProof(index, Math.abs(distance), tolerance);
      Set<Integer> swept = new TreeSet<>();
      while (true) {
        SortedSet<Integer> spoilt;
        GeometryException fault;
        try {
          List<Region> regions = new CurveRecovery(this, chord).regions(pieces);
          spoilt = proof.tooNear(regions);
          if (spoilt.isEmpty()) {
            return regions;
          }
          Point at = segments.get(spoilt.first()).from();
          fault = new GeometryException("an offset edge lies off its distance", at);
        } catch (GeometryException e) {
          spoilt = e.where().map(this::around).orElseGet(TreeSet::new);
          fault = e;
        }
        spoilt = withNeighbours(spoilt);
        if (!swept.addAll(spoilt)) {
          throw fault;
        }
        pieces = without(pieces, spoilt);
      }
    }

    private SortedSet<Integer> withNeighbours(SortedSet<Integer> numbers) {
      SortedSet<Integer> all = new TreeSet<>(numbers);
      for (int number : numbers) {
        all.add(next.get(number));
        all.add(previous.get(number));
      }
      return all;
    }

    /** The source's edges that an edge of the offset near a point may stem from. */
    private SortedSet<Integer> around(Point p) {
      SortedSet<Integer> numbers = new TreeSet<>();
      double reach = Math.abs(distance) + 20 * chord;
      index.touching(
          Box.of(p, p).grown(reach),
          number -> {
            if (segments.get(number).distance(p) <= reach) {
              numbers.add(number);
            }
          });
      return numbers;
    }

    private List<Topology.Piece> without(List<Topology.Piece> pieces, Set<Integer> numbers) {
      SweptArea swept = new SweptArea(chord);
      numbers.forEach(number -> swept.add(segments.get(number), rightward.get(number)));
      if (distance < 0) {
        return Topology.combine(Topology.Operation.DIFFERENCE, pieces, swept.pieces());
      }
      List<Topology.Piece> all = new ArrayList<>(pieces);
      all.addAll(swept.pieces());
      return Topology.combine(Topology.Operation.UNION, all, List.of());
    }

    /** A moved segment has its source's number; the corner at its end that plus the count. */
    @Override
    public int owner(Point p) {
      int nearest = index.nearest(p);
      Segment segment = segments.get(nearest);
      Point foot = segment.nearest(p);
      boolean circle = segment instanceof Arc arc && arc.isCircle();
      if (!circle && foot.equals(segment.to()) && !smooth(nearest)) {
        return segments.size() + nearest;
      }
      if (!circle && foot.equals(segment.from()) && !smooth(previous.get(nearest))) {
        return segments.size() + previous.get(nearest);
      }
      return movedRadius(nearest) <= Tolerances.SAME_POINT ? -1 : nearest;
    }

    /** Whether the joint at the end of a segment is tangent. */
    private boolean smooth(int number) {
      Point in = segments.get(number).tangent(1);
      Point out = segments.get(next.get(number)).tangent(0);
      return Math.abs(in.cross(out)) <= Tolerances.SAME_DIRECTION && in.dot(out) > 0;
    }

    private double movedRadius(int number) {
      return segments.get(number) instanceof Arc arc
          ? arc.radius() + Math.signum(arc.sweep()) * rightward.get(number)
          : Double.POSITIVE_INFINITY;
    }

    @Override
    public Curve curve(int number) {
      if (number >= segments.size()) {
        return new Curve.Circle(segments.get(number - segments.size()).to(), Math.abs(distance));
      }
      if (segments.get(number) instanceof Arc arc) {
        return new Curve.Circle(arc.centre(), movedRadius(number));
      }
      return new Curve.Straight(movedPoint(number, 0), ((Line) segments.get(number)).direction());
    }

    private Point movedPoint(int number, double fraction) {
      Segment segment = segments.get(number);
      return segment.at(fraction).plus(segment.tangent(fraction).right(), rightward.get(number));
    }

    @Override
    public List<Point> joints(int first, int second) {
      List<Point> joints = new ArrayList<>(2);
      joint(first, second, joints);
      joint(second, first, joints);
      return joints;
    }

    @Override
    public double skipped() {
      return SKIPPED * Math.abs(distance);
    }

    /** A round left out moves an edge by up to half of the square of a twentieth. */
    @Override
    public double shortcut() {
      return 2e-3 * Math.abs(distance);
    }

    @Override
    public OptionalInt between(int first, int second, Point near) {
      int n = segments.size();
      if (first >= n || second >= n || next.get(first) != second || smooth(first)) {
        return OptionalInt.empty();
      }
      Point in = segments.get(first).tangent(1);
      double turn = in.cross(segments.get(second).tangent(0));
      boolean outside = turn * rightward.get(first) > 0;
      boolean lasting = Math.abs(turn * distance) > 4 * Tolerances.SAME_POINT;
      boolean here = near.near(movedPoint(first, 1), skipped() + 20 * chord);
      return outside && lasting && here ? OptionalInt.of(n + first) : OptionalInt.empty();
    }

    /** The joint where {@code second} follows {@code first} along the source. */
    private void joint(int first, int second, List<Point> joints) {
      int n = segments.size();
      if (second == first + n) {
        joints.add(movedPoint(first, 1));
      } else if (first >= n && second < n && next.get(first - n) == second) {
        joints.add(movedPoint(second, 0));
      } else if (first < n && second < n && next.get(first) == second && smooth(first)) {
        joints.add(movedPoint(first, 1));
      }
    }
  }
}
