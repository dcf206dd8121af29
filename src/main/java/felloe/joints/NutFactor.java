package felloe.joints;

import felloe.geometry.Numbers;

/**
 * Range of the nut factor K in T = K d F.
 *
 * @param low least
 * @param high greatest
 * @param basis where it comes from
 */
public record NutFactor(double low, double high, String basis) {

  /**
   * Refuses a range that is none.
   *
   * @throws IllegalArgumentException naming the field
   */
  public NutFactor {
    if (!(Numbers.finite("low", low) > 0 && Numbers.finite("high", high) >= low)) {
      throw new IllegalArgumentException("low must be above zero and not above high");
    }
  }
}
