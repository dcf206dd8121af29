package felloe.bringin;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * An edge as it was first seen and as it was then measured.
 *
 * @param line coarsely, mm on the plane of the paper
 * @param edge measured; its segments make a contour
 * @param contour the same
 */
record TracedEdge(List<Point> line, EdgeChain edge, Contour contour) {

  TracedEdge(List<Point> line, EdgeChain edge) {
    this(List.copyOf(line), edge, new Contour(edge.segments()));
  }

  /** How large it was seen at first, mm². What runs away when it is measured was small then. */
  double seen() {
    return Math.abs(EdgeTrace.area(line));
  }

  /**
   * Those that can be edges of the part together: openings lie within the first edge, which is the
   * outer one, and apart from each other. Of two that do not, the one that was seen smaller is
   * wrong: a spot on the wall of an opening, of which an edge was made that runs off.
   *
   * @param all the outer edge first
   * @return some of them, in the same order
   */
  static List<TracedEdge> together(List<TracedEdge> all) {
    Contour outline = all.get(0).contour;
    List<TracedEdge> kept = new ArrayList<>();
    all.stream()
        .skip(1)
        .sorted(Comparator.comparingDouble(TracedEdge::seen).reversed())
        .filter(one -> one.edge.places().stream().allMatch(outline::contains))
        .filter(one -> kept.stream().noneMatch(one::meets))
        .forEach(kept::add);
    return all.stream().filter(one -> one == all.get(0) || kept.contains(one)).toList();
  }

  private boolean meets(TracedEdge other) {
    return contour.box().touches(other.contour.box())
        && (edge.places().stream().anyMatch(other.contour::contains)
            || other.edge.places().stream().anyMatch(contour::contains));
  }
}
