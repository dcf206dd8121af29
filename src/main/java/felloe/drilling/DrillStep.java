package felloe.drilling;

import felloe.geometry.Numbers;
import java.util.Optional;

/**
 * One step of making the holes of a group.
 *
 * @param stage what it does
 * @param tool in words; empty where the words say it all
 * @param diameter of the tool, mm, where it has one
 * @param turning how fast, for a tool that turns in a drill press
 * @param words what to do and what to mind
 */
public record DrillStep(
    Stage stage, String tool, Optional<Double> diameter, Optional<Turning> turning, String words) {

  /**
   * How fast a tool turns.
   *
   * @param reckoned 1000 x surface speed / (pi x diameter), 1/min
   * @param setting the step of a drill press at or below it, 1/min; the slowest step when all are
   *     faster
   * @param tooFast whether even the slowest step is faster than reckoned
   * @param feed mm a turn, where one is known
   * @param seconds to go through at that feed, where one is known
   */
  public record Turning(
      double reckoned,
      double setting,
      boolean tooFast,
      Optional<Double> feed,
      Optional<Double> seconds) {
    /**
     * Refuses figures that are not finite.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Turning {
      Numbers.finite("reckoned", reckoned);
      Numbers.finite("setting", setting);
    }
  }

  static DrillStep byHand(Stage stage, String tool, String words) {
    return new DrillStep(stage, tool, Optional.empty(), Optional.empty(), words);
  }
}
