package felloe.out;

/**
 * What a controller knows beyond NISTIR 6556.
 *
 * @param semicolons comments from a semicolon to the end of the line
 * @param statedCentres G91.1, which says what the report always means: I and J from the start point
 * @param milliseconds whether P of G4 is milliseconds
 */
public record Rs274Beyond(boolean semicolons, boolean statedCentres, boolean milliseconds) {

  /** The report and nothing else. */
  public static final Rs274Beyond NOTHING = new Rs274Beyond(false, false, false);
}
