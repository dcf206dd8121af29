package felloe.plate;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A ring of evenly spaced hub holes about the hub axis.
 *
 * @param label its name, such as {@code bolt circle}
 * @param count number of holes, at least 1
 * @param pitchDiameter pitch circle diameter, mm
 * @param holeDiameter diameter of each hole, mm
 * @param firstAngle direction of the first hole, radians counter-clockwise from +x
 * @param hub name of the hub spec it was taken from, if any
 * @param place where the maker wrote it
 */
public record BoltCircle(
    String label,
    int count,
    double pitchDiameter,
    double holeDiameter,
    double firstAngle,
    Optional<String> hub,
    Place place) {

  /**
   * Refuses figures that make no ring.
   *
   * @throws IllegalArgumentException naming the field
   */
  public BoltCircle {
    Numbers.finite("firstAngle", firstAngle);
    if (count < 1) {
      throw new IllegalArgumentException("count must be at least 1, not " + count);
    }
    Numbers.positive("pitchDiameter", pitchDiameter);
    Numbers.positive("holeDiameter", holeDiameter);
  }

  /** The hole centres in order, counter-clockwise from the first. */
  public List<Point> centres() {
    return IntStream.range(0, count)
        .mapToObj(i -> Point.polar(pitchDiameter / 2, firstAngle + 2 * Math.PI * i / count))
        .toList();
  }
}
