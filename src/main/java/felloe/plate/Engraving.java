package felloe.plate;

import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * A short text or a mark that is cut shallow into a face of the plate: a line is one pass of the
 * tool. Where it lies was checked: inside the outline, clear of windows, holes and edges.
 *
 * @param label short name, unique on the plate, such as {@code E1}
 * @param what the text, or the word for the mark, such as {@code arrow}
 * @param face the face it is on
 * @param strokes its lines in the plate's own axes, as the driver sees the wheel, also for the back
 *     face (whose letters are mirror images here); each a chain in which every segment starts where
 *     the one before ends
 * @param lineWidth width of a line, mm: a tenth of the letters' height (ISO 3098-1, type B)
 * @param depth depth of the pass, mm
 * @param place where the maker wrote it
 */
public record Engraving(
    String label,
    String what,
    Face face,
    List<List<Segment>> strokes,
    double lineWidth,
    double depth,
    Place place) {

  /**
   * Refuses what has no line, a line that is broken, and figures that are not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Engraving {
    List<List<Segment>> copies = new ArrayList<>();
    strokes.forEach(stroke -> copies.add(List.copyOf(stroke)));
    strokes = List.copyOf(copies);
    if (strokes.isEmpty() || strokes.stream().anyMatch(List::isEmpty)) {
      throw new IllegalArgumentException("strokes must have lines");
    }
    strokes.forEach(Engraving::refuseBroken);
    Numbers.positive("lineWidth", lineWidth);
    Numbers.positive("depth", depth);
  }

  private static void refuseBroken(List<Segment> stroke) {
    for (int i = 1; i < stroke.size(); i++) {
      Point end = stroke.get(i - 1).to();
      if (!end.equals(stroke.get(i).from())) {
        throw new IllegalArgumentException("a stroke is broken at " + end);
      }
    }
  }

  /** The smallest upright box round its lines, without their width. */
  public Box box() {
    return strokes.stream()
        .flatMap(List::stream)
        .map(Segment::box)
        .reduce(Box::union)
        .orElseThrow();
  }

  /** Length of all lines, mm. */
  public double length() {
    return strokes.stream().flatMap(List::stream).mapToDouble(Segment::length).sum();
  }
}
