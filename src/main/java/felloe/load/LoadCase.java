package felloe.load;

import java.util.List;

/**
 * What the hands do at one time.
 *
 * @param name short name, as it stands in files
 * @param title in words
 * @param forces of the hands
 * @param patch diameter of the round patch over which each force is spread, mm; 0 for a point
 * @param basis where the figures come from
 */
public record LoadCase(
    String name, String title, List<HandForce> forces, double patch, String basis) {

  /** Refuses a case without forces, and a patch below 0. */
  public LoadCase {
    forces = List.copyOf(forces);
    if (forces.isEmpty()) {
      throw new IllegalArgumentException("a load case needs a force");
    }
    if (!(patch >= 0) || Double.isInfinite(patch)) {
      throw new IllegalArgumentException("patch must be 0 or more");
    }
  }
}
