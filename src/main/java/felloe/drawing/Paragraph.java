package felloe.drawing;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Running text set in lines. */
public final class Paragraph {

  private static final String DOTS = "\u2026";

  private Paragraph() {}

  /** Lines no wider than {@code width} mm, at least one; a word that is wider alone is broken. */
  public static List<String> wrap(String text, double height, double width) {
    List<String> lines = TextWrap.lines(text, height, width, Integer.MAX_VALUE);
    return lines.isEmpty() ? List.of("") : lines;
  }

  /** The text, cut with an ellipsis where it is wider than {@code width} mm. */
  public static String fit(String text, double height, double width) {
    if (TextWidth.of(text, height) <= width) {
      return text;
    }
    int[] characters = text.codePoints().toArray();
    int kept = characters.length;
    while (kept > 0 && TextWidth.of(new String(characters, 0, kept) + DOTS, height) > width) {
      kept--;
    }
    return new String(characters, 0, kept).stripTrailing() + DOTS;
  }

  /** Lines as labels, the first one's capitals hanging from a height. */
  public static List<Mark> labels(
      List<String> lines, double left, double top, double height, double pitch) {
    List<Mark> labels = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Point at = new Point(left, top - height - i * pitch);
      labels.add(Mark.Label.of(lines.get(i), at, height, Anchor.START));
    }
    return labels;
  }
}
