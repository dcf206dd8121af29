package felloe.layup;

import felloe.geometry.Numbers;

/**
 * Something that a job takes.
 *
 * @param what its name, with the size by which it is asked for in a shop
 * @param amount how much of it
 * @param unit of the amount; empty for pieces
 * @param each size of a piece, or {@code each} where a name stands for several things; else empty
 * @param spent whether it is used up; else it is a tool that must be at hand
 */
public record Supply(String what, double amount, String unit, String each, boolean spent) {

  /**
   * Refuses an amount that is not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Supply {
    Numbers.positive("amount", amount);
  }

  /** What is used up. */
  public static Supply spent(String what, double amount, String unit) {
    return new Supply(what, amount, unit, "", true);
  }

  /** Pieces that must be at hand. */
  public static Supply tool(String what, int pieces) {
    return new Supply(what, pieces, "", "", false);
  }
}
