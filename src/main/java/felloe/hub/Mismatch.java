package felloe.hub;

import felloe.geometry.Numbers;

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

    public String words() {
      return words;
    }
  }

  /** What is off, in one sentence. */
  public String words() {
    return switch (kind) {
      case COUNT ->
          "The plate has "
              + Numbers.brief(plate, 0)
              + " bolt holes, the hub "
              + Numbers.brief(hub, 0)
              + " screws.";
      case PITCH_DIAMETER ->
          "The holes stand on a circle of "
              + Numbers.brief(plate, 2)
              + " mm, the screws on one of "
              + Numbers.brief(hub, 2)
              + " mm.";
      case SPACING -> subject + " is " + Numbers.fixed(plate, 2) + " mm off its place.";
      case HOLE_SIZE ->
          subject
              + " is "
              + Numbers.brief(plate, 2)
              + " mm, smaller than its "
              + Numbers.brief(hub, 2)
              + " mm screw.";
      case PILOT ->
          "The spigot of "
              + Numbers.brief(hub, 2)
              + " mm finds an opening of "
              + Numbers.brief(Math.max(0, plate), 2)
              + " mm.";
    };
  }

  /** Plate less hub, in {@link #unit}. */
  public double by() {
    return plate - hub;
  }
}
