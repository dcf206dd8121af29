package felloe.hub;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A ring of evenly spaced threaded holes in the hub.
 *
 * @param count number of screws, at least 1
 * @param pitchDiameter pitch circle diameter, mm
 * @param thread of the screws
 * @param firstAngle direction of the first screw, radians counter-clockwise from +x
 * @param plateHole usual hole in the plate, mm
 */
public record HubRing(
    int count, double pitchDiameter, ScrewThread thread, double firstAngle, double plateHole) {

  /**
   * Refuses figures that make no ring.
   *
   * @throws IllegalArgumentException naming the field
   */
  public HubRing {
    Numbers.finite("firstAngle", firstAngle);
    if (count < 1) {
      throw new IllegalArgumentException("count must be at least 1, not " + count);
    }
    Numbers.positive("pitchDiameter", pitchDiameter);
    Numbers.positive("plateHole", plateHole);
  }

  /** The screw centres in order, counter-clockwise from the first, about the hub axis. */
  public List<Point> centres() {
    List<Point> centres = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      centres.add(Point.polar(pitchDiameter / 2, firstAngle + 2 * Math.PI * i / count));
    }
    return List.copyOf(centres);
  }

  /** What to put a calliper on when the screws are in. */
  public CalliperFigures calliper() {
    return CalliperFigures.of(count, pitchDiameter, thread.diameter());
  }
}
