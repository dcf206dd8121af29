package felloe.out;

import felloe.geometry.Contour;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import java.util.List;

/**
 * The lines of a cut file that serve one purpose.
 *
 * @param role what for
 * @param edges closed lines
 * @param chains open lines that are cut in one go: on by a lead, once round, off by another, mm
 * @param marks loose lines and arcs, such as the crosses at centres, mm
 */
public record CutLayer(
    CutRole role, List<CutEdge> edges, List<List<Segment>> chains, List<Segment> marks) {

  public CutLayer {
    edges = List.copyOf(edges);
    chains = chains.stream().map(List::copyOf).toList();
    marks = List.copyOf(marks);
  }

  /** A layer of closed lines. */
  public static CutLayer of(CutRole role, List<Contour> contours) {
    return ofEdges(role, contours.stream().map(CutEdge::of).toList());
  }

  /** A layer of edges of features. */
  static CutLayer ofEdges(CutRole role, List<CutEdge> edges) {
    return new CutLayer(role, edges, List.of(), List.of());
  }

  /** A layer of open lines that are cut in one go each. */
  static CutLayer ofChains(CutRole role, List<List<Segment>> chains) {
    return new CutLayer(role, List.of(), chains, List.of());
  }

  /** Its closed lines. */
  public List<Contour> contours() {
    return edges.stream().map(CutEdge::contour).toList();
  }

  /** Whether there is nothing in it. */
  boolean isEmpty() {
    return edges.isEmpty() && chains.isEmpty() && marks.isEmpty();
  }

  /** The layer after a rigid motion. */
  public CutLayer moved(RigidTransform motion) {
    return new CutLayer(
        role,
        edges.stream().map(edge -> edge.moved(motion)).toList(),
        chains.stream()
            .map(chain -> chain.stream().map(segment -> segment.moved(motion)).toList())
            .toList(),
        marks.stream().map(mark -> mark.moved(motion)).toList());
  }
}
