package felloe.drawing;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines of a measured width. */
public final class TextWrap {

  private static final String MORE = "\u2026";

  private TextWrap() {}

  /**
   * The lines of a text, broken at blanks; a word wider than the line is broken within. No line is
   * wider than {@code width} as {@link TextWidth} measures it, except one of a single character.
   *
   * @param text what it says
   * @param height height of the capital letters, mm
   * @param width room for a line, mm
   * @param most greatest number of lines; the last ends in an ellipsis when text is left over
   */
  public static List<String> lines(String text, double height, double width, int most) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    // Widths of whole characters add up, so that no line is measured twice.
    long units = 0;
    for (String word : TextWidth.shown(text).strip().split(" +")) {
      long more = TextWidth.units(line.isEmpty() ? word : " " + word);
      if (TextWidth.of(units + more, height) <= width) {
        line.append(line.isEmpty() ? "" : " ").append(word);
        units += more;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line.toString());
      }
      String rest = word;
      while (TextWidth.of(rest, height) > width && rest.codePointCount(0, rest.length()) > 1) {
        String start = start(rest, height, width);
        lines.add(start);
        rest = rest.substring(start.length());
      }
      line = new StringBuilder(rest);
      units = TextWidth.units(rest);
    }
    if (!line.isEmpty()) {
      lines.add(line.toString());
    }
    if (lines.size() <= most) {
      return List.copyOf(lines);
    }
    List<String> kept = new ArrayList<>(lines.subList(0, most - 1));
    double room = width - TextWidth.of(MORE, height);
    String last = String.join(" ", lines.subList(most - 1, lines.size()));
    kept.add(start(last, height, room).stripTrailing() + MORE);
    return List.copyOf(kept);
  }

  /** The longest start of a text that fits, at least one character. */
  private static String start(String text, double height, double width) {
    int end = text.offsetByCodePoints(0, 1);
    while (end < text.length()) {
      int next = text.offsetByCodePoints(end, 1);
      if (TextWidth.of(text.substring(0, next), height) > width) {
        break;
      }
      end = next;
    }
    return text.substring(0, end);
  }
}
