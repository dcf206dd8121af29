package felloe.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a shape may be put beside others without meeting them. The positions of a shape's origin at
 * which it would meet a standing shape are the Minkowski sum of the standing one and the mirrored
 * moving one (its no-fit polygon); what is left of the sheet's rectangle is free. Shapes are grown
 * and cut into convex pieces first; the growth covers the chords' error, so that the answer errs to
 * the safe side only, by at most {@link #COARSE} per shape.
 */
public final class NoFit {

  /** Greatest distance between a shape and the chords that stand for it here, mm. */
  public static final double COARSE = 0.25;

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
      for (Region grown : Offset.of(new Region(region.outer(), roomy), growth + COARSE)) {
        Flattener chords = new Flattener(COARSE);
        List<List<Point>> holes = new ArrayList<>();
        grown.holes().forEach(hole -> holes.add(chords.add(hole, 0)));
        pieces.addAll(ConvexPieces.of(new Topology.Piece(chords.add(grown.outer(), 0), holes)));
      }
      return new Shape(List.copyOf(pieces), region.outer().box());
    }

    private static boolean roomy(Contour hole, double smallest) {
      return Math.min(hole.box().width(), hole.box().height()) >= smallest;
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
    List<Topology.Piece> taken = new ArrayList<>();
    standing.forEach(forbidden -> taken.addAll(forbidden.pieces));
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
