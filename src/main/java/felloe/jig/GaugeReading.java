package felloe.jig;

import felloe.geometry.Numbers;

/**
 * What was measured over both arms of the printed gauge.
 *
 * @param across over the arm along the bed's x, mm
 * @param along over the arm along its y, mm
 */
public record GaugeReading(double across, double along) {

  /** Readings farther than this from what was drawn are a slip, as a part of it. */
  public static final double MOST_OFF = 0.03;

  /**
   * Refuses readings that are not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public GaugeReading {
    Numbers.positive("across", across);
    Numbers.positive("along", along);
  }
}
