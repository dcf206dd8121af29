package felloe.drawing;

import java.util.List;

/**
 * What the picture of a stack shows.
 *
 * @param title its heading
 * @param plies from the mould up
 * @param woven whether each ply has yarns both ways
 * @param thickness of the whole, in words
 * @param properties of the stack, in words
 */
public record StackView(
    String title, List<Ply> plies, boolean woven, String thickness, String properties) {

  public StackView {
    plies = List.copyOf(plies);
  }

  /**
   * A ply.
   *
   * @param number from 1
   * @param angle of its warp, degrees counter-clockwise from the plate's x axis
   * @param words its direction
   */
  public record Ply(int number, double angle, String words) {}
}
