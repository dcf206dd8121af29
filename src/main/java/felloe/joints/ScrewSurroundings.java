package felloe.joints;

import felloe.geometry.Contour;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;

/** What lies round the screw holes of a plate. */
final class ScrewSurroundings {

  /** Wider holes take no screw, mm (ISO 273, coarse series for M10). */
  private static final double WIDEST_SCREW_HOLE = 12;

  private final List<Contour> edges = new ArrayList<>();
  private final List<Hole> screwHoles = new ArrayList<>();

  /**
   * Room round a hole.
   *
   * @param edge from its centre to the nearest edge, mm
   * @param left width of the least section beside it, mm
   */
  record Room(double edge, double left) {}

  ScrewSurroundings(Plate plate) {
    edges.add(plate.outline());
    for (Window window : plate.windows()) {
      edges.add(window.contour());
    }
    for (Hole hole : plate.holes()) {
      boolean screw =
          hole.role() == HoleRole.BOLT
              || hole.role() == HoleRole.GRIP
              || hole.role() == HoleRole.OTHER && hole.diameter() <= WIDEST_SCREW_HOLE;
      if (screw) {
        screwHoles.add(hole);
      } else {
        edges.add(hole.contour());
      }
    }
  }

  Room of(Hole hole) {
    double edge = Double.POSITIVE_INFINITY;
    for (Contour contour : edges) {
      edge = Math.min(edge, contour.distance(hole.centre()));
    }
    double left = 2 * edge - hole.diameter();
    for (Hole other : screwHoles) {
      if (other != hole) {
        double apart = hole.centre().distance(other.centre());
        left = Math.min(left, apart - (hole.diameter() + other.diameter()) / 2);
      }
    }
    return new Room(edge, left);
  }
}
