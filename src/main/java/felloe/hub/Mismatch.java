package felloe.hub;

/**
 * A figure in which plate and hub differ, so that the screws do not all enter.
 *
 * @param kind which figure
 * @param subject whose: {@code plate}, or the label of a hole
 * @param plate the plate's figure
 * @param hub the hub's figure
 * @param unit of both; empty for a count
 */
public record Mismatch(Kind kind, String subject, double plate, double hub, String unit) {

  /** Which figure is off. */
  public enum Kind {
    /** Number of holes. */
    COUNT("number of holes"),
    /** Pitch circle diameter. */
    PITCH_DIAMETER("pitch circle diameter"),
    /** The holes stand unevenly: the figure is how far the worst one is off its place. */
    SPACING("place of the hole"),
    /** A hole is smaller than its screw. */
    HOLE_SIZE("hole diameter"),
    /** The spigot does not enter the bore. */
    PILOT("bore");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /** Plate less hub, in {@link #unit}. */
  public double by() {
    return plate - hub;
  }
}
