package felloe.load;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.mesh.Fineness;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where the next mesh is to be finer: about a place where a plate was used most.
 *
 * <p>What is judged at its very edge gets a stretch of that edge, and not one place: about one fine
 * place among coarse ones the coarse ones bend too little, and the fine place makes up for it. With
 * one place fillets of 4 to 10 mm were told 3 percent too high, and up to 6, with a stretch within
 * 1.
 *
 * @param region the material, mm
 * @param section the plate through its thickness
 */
record WorstSpots(Region region, PlateSection section) {

  /** Edges on a tight arc, as a part of its radius. */
  private static final double ON_ARC = 0.1;

  /** Edges elsewhere, in edge layers: within one a twist dies away, and the stress has its peak. */
  private static final double IN_LAYER = 1.0 / 3;

  /** No edges need be shorter, in edge layers: with them small holes are told within 5 percent. */
  private static final double SHORTEST = 0.12;

  /** How far a stretch goes each way, as a part of the radius, and at most in edge layers. */
  private static final double ALONG_ARC = 0.5;

  private static final double MOST_LAYERS = 3;

  /** Edges about a place in a mesh without an edge layer, as a part of its longest. */
  private static final double QUARTER = 0.25;

  /**
   * About a place.
   *
   * @param edge the longest edge of the next mesh, mm
   */
  List<Fineness.Spot> about(Point worst, double edge) {
    // Laminates are judged farther in than their edge, and some plates have no such layer.
    if (section.strength().plies() > 0 || section.edgeRows().isEmpty()) {
      return List.of(new Fineness.Spot(worst, QUARTER * edge));
    }
    double layer = section.edgeLayer();
    double inLayer = Math.min(QUARTER * edge, IN_LAYER * layer);
    List<Fineness.Spot> spots = new ArrayList<>();
    Contour near =
        region.contours().stream()
            .min(Comparator.comparingDouble(c -> c.distance(worst)))
            .orElseThrow();
    if (near.distance(worst) <= MOST_LAYERS * layer) {
      stretch(new ArcLengthIndex(near), near.nearest(worst), inLayer, spots);
    } else {
      spots.add(new Fineness.Spot(worst, inLayer));
    }
    return spots;
  }

  private void stretch(
      ArcLengthIndex course, Point middle, double inLayer, List<Fineness.Spot> spots) {
    double layer = section.edgeLayer();
    double along = course.position(middle);
    double radius = 1 / Math.abs(course.curvature(along));
    double edge = Math.max(SHORTEST * layer, Math.min(ON_ARC * radius, inLayer));
    double half = Math.min(ALONG_ARC * radius, MOST_LAYERS * layer);
    int each = (int) Math.ceil(2 * half / edge);
    for (int i = -each; i <= each; i++) {
      spots.add(new Fineness.Spot(course.at(along + half * i / each), edge));
    }
  }
}
