package felloe.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where a shape may be put beside others without meeting them. The positions of a shape's origin at
 * which it would meet a standing shape are the Minkowski sum of the standing one and the mirrored
 * moving one (its no-fit polygon); what is left of the sheet's rectangle is free. Shapes are grown
 * and cut into convex pieces first. Tangents stand for what bulges out and chords for what is
 * hollow, so that the answer errs to the safe side only, by at most {@link #COARSE} per shape, and
 * between straight edges by no more than {@value #HAIR} mm.
 */
public final class NoFit {

  /** Greatest distance between a shape and the chords that stand for it here, mm. */
  public static final double COARSE = 0.25;

  /** Straight edges are grown by this much more than asked, mm, so that rounding never errs. */
  private static final double HAIR = 1e-6;

  /** Points nearer to a straight line than this share of its length are left out. */
  private static final double STRAIGHT = 1e-9;

  private NoFit() {}

  /** A shape made ready: grown, in convex pieces, about its own origin. */
  public static final class Shape {
    private final List<List<Point>> pieces;
    private final Box box;

    private Shape(List<List<Point>> pieces, Box box) {
      this.pieces = pieces;
      this.box = box;
    }

    /**
     * Makes a region ready. Its holes count as free room for others, where something fits.
     *
     * @param growth how far it is grown all round, mm, not below 0
     * @param smallest holes that are not this wide and this high are filled, mm
     * @throws GeometryException when the region cannot be grown
     */
    public static Shape of(Region region, double growth, double smallest) {
      List<Contour> roomy = region.holes().stream().filter(hole -> roomy(hole, smallest)).toList();
      List<List<Point>> pieces = new ArrayList<>();
      Region open = new Region(region.outer(), roomy);
      List<Topology.Piece> round =
          Offset.of(open, growth + HAIR).stream().map(Shape::around).toList();
      if (round.stream().allMatch(Topology::sound)) {
        round.forEach(piece -> pieces.addAll(ConvexPieces.of(piece)));
      } else {
        // Where tangents meet across a narrow notch, chords of a larger growth do.
        for (Region grown : Offset.of(open, growth + COARSE)) {
          pieces.addAll(ConvexPieces.of(chords(grown)));
        }
      }
      return new Shape(List.copyOf(pieces), region.outer().box());
    }

    private static Topology.Piece chords(Region region) {
      Flattener chords = new Flattener(COARSE);
      List<List<Point>> holes = region.holes().stream().map(hole -> chords.add(hole, 0)).toList();
      return new Topology.Piece(chords.add(region.outer(), 0), holes);
    }

    /** A polygon that covers a region. */
    private static Topology.Piece around(Region region) {
      return new Topology.Piece(
          around(region.outer(), true),
          region.holes().stream().map(hole -> around(hole, false)).toList());
    }

    private static List<Point> around(Contour contour, boolean solid) {
      List<Point> ring = new ArrayList<>();
      for (Segment segment : contour.segments()) {
        boolean out = segment instanceof Arc arc && arc.sweep() > 0 == solid;
        List<Point> to = out ? tangents((Arc) segment) : Flattener.vertices(segment, COARSE);
        to.forEach(p -> put(ring, p));
      }
      // The seam is straight where the first segment goes on as the last one.
      put(ring, ring.remove(0));
      return ring;
    }

    /** Adds a point; the one before it goes when it lies straight between its neighbours. */
    private static void put(List<Point> ring, Point p) {
      int n = ring.size();
      if (n > 1) {
        Point in = ring.get(n - 1).minus(ring.get(n - 2));
        Point out = p.minus(ring.get(n - 1));
        if (in.dot(out) > 0 && Math.abs(in.cross(out)) <= STRAIGHT * in.norm() * out.norm()) {
          ring.remove(n - 1);
        }
      }
      ring.add(p);
    }

    /** Where tangents of an arc meet, and its end. */
    private static List<Point> tangents(Arc arc) {
      double widest = 2 * Math.acos(arc.radius() / (arc.radius() + COARSE));
      int parts = (int) Math.ceil(Math.abs(arc.sweep()) / Math.min(widest, Math.PI / 4));
      double half = arc.sweep() / (2 * parts);
      List<Point> points = new ArrayList<>();
      for (int k = 0; k < parts; k++) {
        double angle = arc.startAngle() + (2 * k + 1) * half;
        points.add(arc.centre().plus(Point.polar(arc.radius() / Math.cos(half), angle)));
      }
      points.add(arc.to());
      return points;
    }

    private static boolean roomy(Contour hole, double smallest) {
      return Math.min(hole.box().width(), hole.box().height()) >= smallest;
    }

    /** Whether another is the same but for where it lies. */
    public boolean alike(Shape other) {
      Point by = new Point(other.box.minX() - box.minX(), other.box.minY() - box.minY());
      return pieces.size() == other.pieces.size()
          && pieces.stream().allMatch(a -> other.pieces.stream().anyMatch(b -> alike(a, b, by)));
    }

    private static boolean alike(List<Point> ring, List<Point> other, Point by) {
      int n = ring.size();
      return n == other.size()
          && IntStream.range(0, n)
              .anyMatch(
                  start ->
                      IntStream.range(0, n)
                          .allMatch(
                              i ->
                                  ring.get(i).plus(by).distance(other.get((start + i) % n))
                                      < Tolerances.ROUNDING));
    }

    /** The box round the region itself, not grown. */
    public Box box() {
      return box;
    }
  }

  /** Positions that a standing shape forbids to a moving one. */
  public static final class Forbidden {
    private final List<Topology.Piece> pieces;

    private Forbidden(List<Topology.Piece> pieces) {
      this.pieces = pieces;
    }

    /** The same for the standing and the moving shape turned together, and then shifted. */
    public Forbidden moved(RigidTransform motion) {
      return new Forbidden(
          pieces.stream()
              .map(
                  piece ->
                      new Topology.Piece(
                          moved(piece.outer(), motion),
                          piece.holes().stream().map(hole -> moved(hole, motion)).toList()))
              .toList());
    }

    private static List<Point> moved(List<Point> ring, RigidTransform motion) {
      return ring.stream().map(motion::of).toList();
    }
  }

  /**
   * The positions of {@code moving}'s origin at which it would meet {@code standing}.
   *
   * @throws GeometryException when JTS finds no answer
   */
  public static Forbidden between(Shape standing, Shape moving) {
    List<Topology.Piece> sums = new ArrayList<>();
    for (List<Point> a : standing.pieces) {
      for (List<Point> b : moving.pieces) {
        List<Point> sum = new ArrayList<>(a.size() * b.size());
        for (Point p : a) {
          for (Point q : b) {
            sum.add(p.minus(q));
          }
        }
        sums.add(new Topology.Piece(Topology.hull(sum), List.of()));
      }
    }
    return new Forbidden(Topology.combine(Topology.Operation.UNION, sums, List.of()));
  }

  private static Box box(List<Point> ring) {
    return ring.stream().map(p -> Box.of(p, p)).reduce(Box::union).orElseThrow();
  }

  /**
   * The lowest position, the leftmost of those, at which a shape lies in the sheet and clear of all
   * that stands.
   *
   * @param sheet where the whole shape must lie
   * @return empty when there is none
   * @throws GeometryException when JTS finds no answer
   */
  public static Optional<Point> lowest(Box sheet, Shape moving, List<Forbidden> standing) {
    Box box = moving.box();
    double left = sheet.minX() - box.minX();
    double low = sheet.minY() - box.minY();
    double right = sheet.maxX() - box.maxX();
    double high = sheet.maxY() - box.maxY();
    if (right - left <= Tolerances.SAME_POINT || high - low <= Tolerances.SAME_POINT) {
      return Optional.empty();
    }
    List<Point> corners =
        List.of(
            new Point(left, low),
            new Point(right, low),
            new Point(right, high),
            new Point(left, high));
    Box free = new Box(left, low, right, high);
    List<Topology.Piece> taken = new ArrayList<>();
    for (Forbidden forbidden : standing) {
      forbidden.pieces.stream()
          .filter(piece -> box(piece.outer()).touches(free))
          .forEach(taken::add);
    }
    List<Topology.Piece> room =
        Topology.combine(
            Topology.Operation.DIFFERENCE, List.of(new Topology.Piece(corners, List.of())), taken);
    List<Point> candidates = new ArrayList<>();
    for (Topology.Piece piece : room) {
      candidates.addAll(piece.outer());
      piece.holes().forEach(candidates::addAll);
    }
    return candidates.stream()
        .min(Comparator.comparingDouble(Point::y).thenComparingDouble(Point::x));
  }
}
