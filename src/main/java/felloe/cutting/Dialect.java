package felloe.cutting;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How one kind of machine controller wants its G-code. The words keep their meaning from ISO 6983
 * as in NISTIR 6556 in every dialect; a dialect chooses among them.
 *
 * @param name what it does, such as {@code plain-rs274}
 * @param title the same in a sentence
 * @param decimals decimals of coordinates, 4 to 6: with three, arcs one after another can miss the
 *     report's rule that both radii of an arc agree within 0.002 mm
 * @param start words of the safe start; {@link #REQUIRED} are among them
 * @param wholeCircles whether a whole circle is one block; else it is two halves
 * @param splitAtQuadrants whether arcs end wherever they cross an axis of their circle
 * @param drillCycles whether holes are drilled by G81 and G83; else by moves
 * @param lines how lines are written
 * @param words what switches the machine
 * @param dwellMilliseconds whether P of G4 is milliseconds; else seconds, as in the report
 * @param spindleSeconds how long the spindle takes to come to speed, s
 */
public record Dialect(
    String name,
    String title,
    int decimals,
    List<String> start,
    boolean wholeCircles,
    boolean splitAtQuadrants,
    boolean drillCycles,
    Lines lines,
    Words words,
    boolean dwellMilliseconds,
    double spindleSeconds) {

  /**
   * Plane XY, millimetres, absolute, feed in mm/min: without these a program means other things.
   */
  public static final Set<String> REQUIRED = Set.of("G17", "G21", "G90", "G94");

  /**
   * What may stand in the safe start besides: no cutter compensation, no tool length, first work
   * zero, no cycle, arc centres from the start point, exact path, continuous path.
   */
  public static final Set<String> ALLOWED =
      Set.of("G40", "G49", "G54", "G80", "G91.1", "G61", "G64");

  /** How comments are marked. */
  public enum Comments {
    /** {@code (like this)}, as in the report. */
    PARENTHESES,
    /** {@code ; like this}. */
    SEMICOLON
  }

  /**
   * How lines are written.
   *
   * @param numberStep step of the line numbers; 0 for none
   * @param comments how comments are marked
   * @param percentSigns whether the program stands between two lines with a percent sign
   * @param carriageReturns whether lines end in CR LF; else LF
   */
  public record Lines(
      int numberStep, Comments comments, boolean percentSigns, boolean carriageReturns) {}

  /**
   * Words that switch the machine.
   *
   * @param spindleOn starts the spindle clockwise, {@code M3}
   * @param spindleOff stops it, {@code M5}
   * @param coolantOn starts coolant or air, if the machine has any
   * @param coolantOff stops it
   * @param pause waits for the maker, {@code M0}
   * @param end ends the program
   */
  public record Words(
      String spindleOn,
      String spindleOff,
      Optional<String> coolantOn,
      Optional<String> coolantOff,
      String pause,
      String end) {}

  /** Copies the list. */
  public Dialect {
    start = List.copyOf(start);
  }
}
