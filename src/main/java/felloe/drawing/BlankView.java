package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Region;
import java.util.List;

/**
 * What the picture of a blank shows, in the plate's frame, mm.
 *
 * @param title its heading
 * @param plate the finished plate
 * @param blank edge of the blank
 * @param strips test strips
 * @param mould the mould plate
 * @param grid distance of the tape lines, mm
 * @param words what to know, in lines
 */
public record BlankView(
    String title,
    Region plate,
    Contour blank,
    List<Strip> strips,
    Box mould,
    double grid,
    List<String> words) {

  public BlankView {
    strips = List.copyOf(strips);
    words = List.copyOf(words);
  }

  /**
   * A test strip.
   *
   * @param label as written on it
   * @param contour its edge
   */
  public record Strip(String label, Contour contour) {}
}
