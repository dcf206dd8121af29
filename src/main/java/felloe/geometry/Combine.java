package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Union, intersection and difference of regions, exact in lines and arcs. Where edges cross
 * cleanly, their meetings tell all ({@link CleanCut}); elsewhere JTS decides on chords which pieces
 * meet. Every edge of the result is a stretch of a source segment's own curve, and every corner the
 * closed-form meeting of two curves. Regions that differ from the true result by less than {@link
 * Tolerances#CHORD} in width may be lost.
 */
public final class Combine {

  private Combine() {}

  /**
   * All that lies in at least one of the regions.
   *
   * @throws GeometryException when there is no sound result
   */
  public static List<Region> union(List<Region> regions) {
    return combine(Topology.Operation.UNION, regions, List.of());
  }

  /**
   * All that lies in a region of {@code a} and not in any of {@code b}.
   *
   * @throws GeometryException when there is no sound result
   */
  public static List<Region> difference(List<Region> a, List<Region> b) {
    return combine(Topology.Operation.DIFFERENCE, a, b);
  }

  /**
   * All that lies in a region of {@code a} and in one of {@code b}.
   *
   * @throws GeometryException when there is no sound result
   */
  public static List<Region> intersection(List<Region> a, List<Region> b) {
    return combine(Topology.Operation.INTERSECTION, a, b);
  }

  private static List<Region> combine(
      Topology.Operation operation, List<Region> a, List<Region> b) {
    if (a.isEmpty()) {
      return operation == Topology.Operation.UNION ? b : List.of();
    }
    return CleanCut.of(operation, a, b).orElseGet(() -> onChords(operation, a, b));
  }

  /** Any regions combined: on chords it is decided what meets. */
  static List<Region> onChords(Topology.Operation operation, List<Region> a, List<Region> b) {
    return refining(Tolerances.CHORD, chord -> () -> new Attempt(chord).run(operation, a, b));
  }

  /** One try at a chord tolerance. */
  @FunctionalInterface
  interface Tries {
    /** The work at a tolerance. */
    Supplier<List<Region>> at(double chord);
  }

  /** Tries with ever finer chords, since what chords hide a finer cut may show. */
  static List<Region> refining(double chord, Tries tries) {
    for (double finer = chord; ; finer /= 8) {
      try {
        return tries.at(finer).get();
      } catch (GeometryException e) {
        if (finer < chord / 500) {
          throw e;
        }
      }
    }
  }

  /** One combination at one chord tolerance. */
  private static final class Attempt implements CurveRecovery.Sources {
    private final double chord;
    private final Flattener chords;
    private final List<Segment> segments = new ArrayList<>();
    private final List<Integer> next = new ArrayList<>();
    private Flattener.Finder finder;

    Attempt(double chord) {
      this.chord = chord;
      this.chords = new Flattener(chord);
    }

    List<Region> run(Topology.Operation operation, List<Region> a, List<Region> b) {
      List<Topology.Piece> first = a.stream().map(this::piece).toList();
      List<Topology.Piece> second = b.stream().map(this::piece).toList();
      finder = chords.finder();
      List<Topology.Piece> result = Topology.combine(operation, first, second);
      return new CurveRecovery(this, chord).regions(result);
    }

    private Topology.Piece piece(Region region) {
      return new Topology.Piece(
          ring(region.outer()), region.holes().stream().map(this::ring).toList());
    }

    private List<Point> ring(Contour contour) {
      int start = segments.size();
      int count = contour.segments().size();
      segments.addAll(contour.segments());
      for (int i = 0; i < count; i++) {
        next.add(start + (i + 1) % count);
      }
      return chords.add(contour, start);
    }

    @Override
    public int owner(Point p) {
      int owner = finder.owner(p);
      if (owner < 0) {
        throw new GeometryException("an edge came back that has no source", p);
      }
      return owner;
    }

    @Override
    public Curve curve(int number) {
      return Curve.of(segments.get(number));
    }

    @Override
    public List<Point> joints(int first, int second) {
      List<Point> joints = new ArrayList<>(2);
      if (next.get(first) == second) {
        joints.add(segments.get(first).to());
      }
      if (next.get(second) == first) {
        joints.add(segments.get(second).to());
      }
      return joints;
    }
  }
}
