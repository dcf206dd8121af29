package felloe.drawing;

import felloe.geometry.Region;
import java.util.List;

/**
 * What the cutting plan of a cloth shows: x across the roll, y along it, mm.
 *
 * @param title its heading
 * @param width of the roll
 * @param length to buy
 * @param pieces what is cut
 * @param words what to know, in lines
 */
public record RollView(
    String title, double width, double length, List<Piece> pieces, List<String> words) {

  public RollView {
    pieces = List.copyOf(pieces);
    words = List.copyOf(words);
  }

  /**
   * A piece.
   *
   * @param label as written on it
   * @param direction of its ply
   * @param region where it lies
   */
  public record Piece(String label, String direction, Region region) {}
}
