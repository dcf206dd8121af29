package felloe.plate;

import felloe.geometry.Numbers;
import java.util.Optional;

/**
 * What a shape file needs to know of a hub to take its holes from it.
 *
 * @param name the hub spec's name, such as {@code 6x70-m5}
 * @param count number of screws
 * @param pitchDiameter pitch circle diameter, mm
 * @param holeDiameter usual hole in the plate, mm
 * @param firstAngle direction of the first screw, radians counter-clockwise from +x
 * @param bore usual bore in the plate, mm, when the hub wants one
 */
public record HubPattern(
    String name,
    int count,
    double pitchDiameter,
    double holeDiameter,
    double firstAngle,
    Optional<Double> bore) {

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public HubPattern {
    Numbers.finite("pitchDiameter", pitchDiameter);
    Numbers.finite("holeDiameter", holeDiameter);
    Numbers.finite("firstAngle", firstAngle);
  }
}
