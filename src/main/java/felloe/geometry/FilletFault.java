package felloe.geometry;

/**
 * A corner radius that has no room.
 *
 * @param corner number of the corner, from 1: the start of the edge with the same number
 * @param where the corner, mm
 * @param wanted the radius asked for, mm
 * @param largest the largest radius that fits there while all other corners stay as they are, mm; 0
 *     when none does
 * @param why which edge is too short and by how much, as part of a sentence
 */
public record FilletFault(int corner, Point where, double wanted, double largest, String why) {

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public FilletFault {
    Numbers.finite("wanted", wanted);
    Numbers.finite("largest", largest);
  }

  /** The largest radius as text, in mm, rounded down to 3 decimals so that it fits as written. */
  public String largestText() {
    // A ten-thousandth of the last digit undoes the rounding of the search for the limit.
    return Numbers.down(largest, 3);
  }

  /** The fault as a sentence. */
  public String sentence() {
    return "corner "
        + corner
        + " at "
        + where
        + " has no room for a radius of "
        + Numbers.brief(wanted, 3)
        + " mm, at most "
        + largestText()
        + " mm: "
        + why;
  }
}
