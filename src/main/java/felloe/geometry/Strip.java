package felloe.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * What lies along a stretch of a contour, between two parallels of it and two ends square to it:
 * exact in lines and arcs, without a cut on chords.
 */
public final class Strip {

  private Strip() {}

  /**
   * The strip along a stretch.
   *
   * @param contour the contour
   * @param stretch the edges of it that the strip lies on, in order of travel, not all round
   * @param outward how far outside the contour it begins; inside where negative, mm
   * @param inward how far inside it ends, more than {@code -outward}, mm
   * @return empty where another part of the contour comes into the strip, or an edge of it would
   *     fold
   */
  public static Optional<Region> along(
      Contour contour, List<Segment> stretch, double outward, double inward) {
    Optional<List<Segment>> outer = parallel(stretch, outward);
    Optional<List<Segment>> inner = parallel(stretch, -inward);
    if (outer.isEmpty() || inner.isEmpty()) {
      return Optional.empty();
    }
    List<Segment> back = new ArrayList<>();
    inner.get().forEach(segment -> back.add(segment.reversed()));
    Collections.reverse(back);
    Line far = new Line(end(outer.get()), back.get(0).from());
    Line near = new Line(end(back), outer.get().get(0).from());
    // What comes into a strip comes in through an edge or an end of it.
    SegmentIndex edges = SegmentIndex.of(List.of(contour));
    boolean clear =
        clear(edges, back, List.of())
            && (outward == 0 || clear(edges, outer.get(), List.of()))
            && clear(edges, List.of(far), List.of(end(stretch)))
            && clear(edges, List.of(near), List.of(stretch.get(0).from()));
    if (!clear) {
      return Optional.empty();
    }
    List<Segment> chain = new ArrayList<>(outer.get());
    chain.add(far);
    chain.addAll(back);
    chain.add(near);
    try {
      return Optional.of(Region.of(new Contour(chain)));
    } catch (GeometryException meets) {
      return Optional.empty();
    }
  }

  private static Optional<List<Segment>> parallel(List<Segment> stretch, double outward) {
    return outward == 0 ? Optional.of(stretch) : ParallelCurve.of(stretch, outward);
  }

  private static Point end(List<Segment> chain) {
    return chain.get(chain.size() - 1).to();
  }

  /** Whether a chain meets the contour nowhere but near a place where it has to. */
  private static boolean clear(SegmentIndex contour, List<Segment> chain, List<Point> there) {
    boolean[] clear = {true};
    for (Segment edge : chain) {
      contour.touching(
          edge.box().grown(Tolerances.SAME_POINT),
          number -> {
            for (Point p : Gap.meetings(edge, contour.get(number))) {
              clear[0] &= there.stream().anyMatch(q -> p.near(q, 2 * Tolerances.SAME_POINT));
            }
          });
    }
    return clear[0];
  }
}
