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
 * @param marks loose lines and arcs, such as the crosses at centres, mm
 */
public record CutLayer(CutRole role, List<Contour> contours, List<Segment> marks) {

  /** Copies the lists. */
  public CutLayer {
    contours = List.copyOf(contours);
    marks = List.copyOf(marks);
  }

  /** A layer of closed lines. */
  public static CutLayer of(CutRole role, List<Contour> contours) {
    return new CutLayer(role, contours, List.of());
  }

  /** The layer after a rigid motion. */
  public CutLayer moved(RigidTransform motion) {
    return new CutLayer(
        role,
        contours.stream().map(contour -> contour.moved(motion)).toList(),
        marks.stream().map(mark -> mark.moved(motion)).toList());
  }
}
