package felloe.out;

import felloe.geometry.Contour;
import felloe.geometry.RigidTransform;
import felloe.plate.FeatureTag;
import felloe.plate.Hole;
import felloe.plate.Window;
import java.util.Optional;

/**
 * A closed line of a cut file.
 *
 * @param contour exact, mm
 * @param tag the feature whose very edge it is; empty for the outline, and for the path of a tool,
 *     which lies beside the edge
 */
public record CutEdge(Contour contour, Optional<FeatureTag> tag) {

  /** A line that is no feature's own edge. */
  static CutEdge of(Contour contour) {
    return new CutEdge(contour, Optional.empty());
  }

  static CutEdge of(Window window) {
    return new CutEdge(window.contour(), Optional.of(FeatureTag.of(window)));
  }

  static CutEdge of(Hole hole) {
    return new CutEdge(hole.contour(), Optional.of(FeatureTag.of(hole)));
  }

  CutEdge moved(RigidTransform motion) {
    return new CutEdge(contour.moved(motion), tag);
  }
}
