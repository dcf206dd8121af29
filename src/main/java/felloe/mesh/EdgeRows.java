package felloe.mesh;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.ArrayList;
import java.util.List;

/**
 * Rows of nodes that follow the edges of the material at given distances, each node square to one
 * of the edge's. Where rows of two edges would meet, and in corners, they end.
 */
final class EdgeRows {

  /** How near another edge or node may be, as a part of the row's distance. */
  private static final double CLEAR = 0.98;

  private final Region region;
  private final NarrowPlaces narrow;
  private final NodeList nodes;

  EdgeRows(Region region, NarrowPlaces narrow, NodeList nodes) {
    this.region = region;
    this.narrow = narrow;
    this.nodes = nodes;
  }

  /**
   * Adds the rows along a contour.
   *
   * @param outer whether it is the outline, with the material on its left
   * @param places the nodes' lengths along it
   * @param distances of the rows, mm, nearest first
   */
  void add(ArcLengthIndex course, boolean outer, List<Double> places, List<Double> distances) {
    List<Double> open = new ArrayList<>(places);
    double before = 0;
    for (double distance : distances) {
      List<Double> next = new ArrayList<>();
      for (double along : open) {
        Point tangent = course.tangent(along);
        Point normal = outer ? tangent.left() : tangent.right();
        Point p = course.at(along).plus(normal, distance);
        boolean clear =
            narrow.index().distance(p) > CLEAR * distance
                && region.contains(p)
                && !nodes.anyWithin(p, 0.7 * (distance - before));
        if (clear) {
          nodes.add(p);
          next.add(along);
        }
      }
      open = next;
      before = distance;
    }
  }
}
