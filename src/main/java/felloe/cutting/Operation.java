package felloe.cutting;

import java.util.List;

/**
 * What is done without changing the tool or the speed: one feature, or a group of holes.
 *
 * @param title in words, such as {@code window W1, 3 passes}
 * @param tool the tool
 * @param speed spindle speed, 1/min; 0 for a beam
 * @param moves in order; the first is a {@link Move.Travel}
 */
public record Operation(String title, CutterTool tool, double speed, List<Move> moves) {

  /** Copies the moves. */
  public Operation {
    moves = List.copyOf(moves);
  }
}
