package felloe.cutting;

import felloe.geometry.Numbers;

/**
 * What takes the material away.
 *
 * @param name in words, such as {@code 4 mm end mill}
 * @param kind what it is
 * @param diameter mm; the kerf for a beam
 * @param flutes cutting edges; 0 where it has none
 */
public record CutterTool(String name, Kind kind, double diameter, int flutes) {

  /** Kinds of tools. */
  public enum Kind {
    /** Cuts sideways and, on a ramp, down. */
    END_MILL,
    /** Cuts down only. */
    DRILL,
    /** A beam of light or water. */
    BEAM
  }

  /**
   * Refuses a diameter that is not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public CutterTool {
    Numbers.positive("diameter", diameter);
  }
}
