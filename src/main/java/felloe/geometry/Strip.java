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
   * @return empty where another part of the contour comes as near to an edge of the strip as the
   *     stretch itself, or an edge of the strip would fold
   */
  public static Optional<Region> along(
      Contour contour, List<Segment> stretch, double outward, double inward) {
    Optional<List<Segment>> outer = edge(contour, stretch, outward);
    Optional<List<Segment>> inner = edge(contour, stretch, -inward);
    if (outer.isEmpty() || inner.isEmpty()) {
      return Optional.empty();
    }
    List<Segment> chain = new ArrayList<>(outer.get());
    List<Segment> back = new ArrayList<>();
    inner.get().forEach(segment -> back.add(segment.reversed()));
    Collections.reverse(back);
    chain.add(new Line(chain.get(chain.size() - 1).to(), back.get(0).from()));
    chain.addAll(back);
    chain.add(new Line(back.get(back.size() - 1).to(), chain.get(0).from()));
    try {
      return Optional.of(Region.of(new Contour(chain)));
    } catch (GeometryException meets) {
      return Optional.empty();
    }
  }

  /**
   * One edge. It keeps its distance from the whole contour; so no other part of the contour lies in
   * the strip, since that would have to come in through an edge or an end.
   */
  private static Optional<List<Segment>> edge(
      Contour contour, List<Segment> stretch, double outward) {
    if (Math.abs(outward) <= Tolerances.SAME_POINT) {
      return Optional.of(stretch);
    }
    OffsetProof proof =
        new OffsetProof(
            SegmentIndex.of(List.of(contour)), Math.abs(outward), Tolerances.SAME_POINT);
    return ParallelCurve.of(stretch, outward).filter(proof::keeps);
  }
}
