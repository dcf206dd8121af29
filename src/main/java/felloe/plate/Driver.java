package felloe.plate;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * Who sits at the wheel.
 *
 * @param people of whom the percentile is
 * @param percentile how many of a hundred of them are smaller: 5, 50 or 95
 * @param own what was measured of the driver; it goes before the percentile, mm
 * @param heels where they rest, pedals pressed; then legs are reckoned
 * @param place where the maker wrote it
 */
public record Driver(
    People people,
    int percentile,
    Map<BodyMeasure, Double> own,
    Optional<Heels> heels,
    Place place) {

  public Driver {
    Map<BodyMeasure, Double> sorted = new EnumMap<>(BodyMeasure.class);
    sorted.putAll(own);
    own = Collections.unmodifiableMap(sorted);
  }

  /** Of whom there are tables. */
  public enum People {
    MEN,
    WOMEN
  }

  /**
   * Where the heels rest.
   *
   * @param apart from middle to middle, mm
   * @param height above the floor, mm
   * @param ahead of the end of the column, away from the driver, mm
   * @param place where the maker wrote it
   */
  public record Heels(double apart, double height, double ahead, Place place) {}
}
