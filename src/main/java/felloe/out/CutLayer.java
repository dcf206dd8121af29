package felloe.out;

import felloe.geometry.Contour;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import java.util.List;

/**
 * The lines of a cut file that serve one purpose.
 *
 * @param role what for
 * @param contours closed lines, exact, mm
 * @param chains open lines that are cut in one go: on by a lead, once round, off by another, mm
 * @param marks loose lines and arcs, such as the crosses at centres, mm
 */
public record CutLayer(
    CutRole role, List<Contour> contours, List<List<Segment>> chains, List<Segment> marks) {

  public CutLayer {
    contours = List.copyOf(contours);
    chains = chains.stream().map(List::copyOf).toList();
    marks = List.copyOf(marks);
  }

  /** A layer of closed lines. */
  public static CutLayer of(CutRole role, List<Contour> contours) {
    return new CutLayer(role, contours, List.of(), List.of());
  }

  /** A layer of open lines that are cut in one go each. */
  static CutLayer ofChains(CutRole role, List<List<Segment>> chains) {
    return new CutLayer(role, List.of(), chains, List.of());
  }

  /** Whether there is nothing in it. */
  boolean isEmpty() {
    return contours.isEmpty() && chains.isEmpty() && marks.isEmpty();
  }

  /** The layer after a rigid motion. */
  public CutLayer moved(RigidTransform motion) {
    return new CutLayer(
        role,
        contours.stream().map(contour -> contour.moved(motion)).toList(),
        chains.stream()
            .map(chain -> chain.stream().map(segment -> segment.moved(motion)).toList())
            .toList(),
        marks.stream().map(mark -> mark.moved(motion)).toList());
  }
}
