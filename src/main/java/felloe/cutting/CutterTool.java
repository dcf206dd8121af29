package felloe.cutting;

import felloe.geometry.Numbers;

/**
 * What takes the material away.
 *
 * @param name in words, such as {@code 4 mm end mill}
 * @param kind what it is
 * @param diameter mm; the kerf for a beam; of a V tool what it must cut at its widest
 * @param flutes cutting edges; 0 where it has none
 * @param angle included angle of a V tool, radians; else 0
 * @param tip width of the flat at a V tool's tip, mm; else 0
 */
public record CutterTool(
    String name, Kind kind, double diameter, int flutes, double angle, double tip) {

  /** A tool that is no cone. */
  public CutterTool(String name, Kind kind, double diameter, int flutes) {
    this(name, kind, diameter, flutes, 0, 0);
  }

  /** Kinds of tools. */
  public enum Kind {
    /** Cuts sideways and, on a ramp, down. */
    END_MILL,
    /** A cone: cuts lines and edges as wide as it is deep. */
    V_TOOL,
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
