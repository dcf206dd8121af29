package felloe.cutting;

import felloe.geometry.Numbers;

/**
 * Heights of a job, mm. Work zero is the hub axis on the upper face of the stock: z is 0 there and
 * negative in the stock.
 *
 * @param clearance where the cutter may travel fast over clamps, above 0
 * @param approach where a plunge slows down, above 0 and below clearance
 * @param bottom how deep the last pass goes, below 0: the thickness and a little more
 */
public record JobHeights(double clearance, double approach, double bottom) {

  /**
   * Refuses heights out of order.
   *
   * @throws IllegalArgumentException naming the field
   */
  public JobHeights {
    Numbers.finite("clearance", clearance);
    Numbers.finite("approach", approach);
    Numbers.finite("bottom", bottom);
    if (!(clearance > approach && approach > 0 && bottom < 0)) {
      throw new IllegalArgumentException("heights must fall from clearance to bottom");
    }
  }
}
