package felloe.joints;

import felloe.plate.Hole;
import java.util.List;

/**
 * Holes that take a screw and have none in the plan, so that nothing is judged there.
 *
 * @param holes at least one
 * @param name what they are called in words
 * @param why the rest of a sentence about them, without its stop
 */
public record Unscrewed(List<Hole> holes, String name, String why) {

  public Unscrewed {
    holes = List.copyOf(holes);
  }

  /** Such as {@code H1: no metric screw suits a hole of 4.9 mm.}. */
  public String words() {
    return name + ": " + why + ".";
  }
}
