package felloe.hub;

import felloe.geometry.Numbers;
import felloe.plate.Basis;

/**
 * A screw thread with its clearance holes.
 *
 * @param name such as {@code M5} or {@code 10-32}
 * @param diameter nominal major diameter, mm
 * @param pitch mm
 * @param fine clearance hole, fine series of ISO 273 (close fit of ASME B18.2.8 for inch), mm
 * @param medium the same, medium series (normal fit), mm
 * @param coarse the same, coarse series (loose fit), mm
 * @param basis where the figures come from
 */
public record ScrewThread(
    String name,
    double diameter,
    double pitch,
    double fine,
    double medium,
    double coarse,
    Basis basis) {

  /**
   * Refuses figures that do not grow from the screw to the coarse hole.
   *
   * @throws IllegalArgumentException naming the thread
   */
  public ScrewThread {
    Numbers.finite("pitch", pitch);
    if (!(0 < diameter && diameter < fine && fine < medium && medium < coarse)
        || Double.isInfinite(coarse)) {
      throw new IllegalArgumentException(name + ": holes must grow from the screw to coarse");
    }
  }

  /**
   * The hole of a series, mm.
   *
   * @throws IllegalArgumentException for what is no series: below fine, above coarse
   */
  public double hole(ClearanceSeries series) {
    return switch (series) {
      case FINE -> fine;
      case MEDIUM -> medium;
      case COARSE -> coarse;
      default -> throw new IllegalArgumentException(series + " has no hole of its own");
    };
  }
}
