package felloe.cutting;

import felloe.plate.Place;

/**
 * An edge of the plate that is cut.
 *
 * @param label its label on the plate; {@code outline} for the outline
 * @param kind what it is
 * @param place where the maker wrote it
 */
public record CutFeature(String label, Kind kind, Place place) {

  /** Kinds of edges, in the order in which they are cut: what lies inside goes first. */
  public enum Kind {
    /** A round hole. */
    HOLE,
    /** A window. */
    WINDOW,
    /** The outer edge. */
    OUTLINE
  }
}
