package felloe.out;

import felloe.drawing.TextWidth;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/** Text for files of the workshop that know printable ASCII only. */
final class PlainText {

  private PlainText() {}

  /**
   * The text in characters from space to {@code ~} on one line: accents are dropped, signs of the
   * trade are spelled out, anything else becomes {@code ?}.
   */
  static String of(String text) {
    StringBuilder kept = new StringBuilder();
    String split = Normalizer.normalize(TextWidth.shown(text), Normalizer.Form.NFD);
    split
        .codePoints()
        .forEach(
            c -> {
              if (c >= ' ' && c <= '~') {
                kept.append((char) c);
              } else if (Character.getType(c) != Character.NON_SPACING_MARK) {
                kept.append(spelled(c));
              }
            });
    return kept.toString();
  }

  private static String spelled(int c) {
    return switch (c) {
      case '×' -> "x";
      case '°' -> " deg";
      case '±' -> "+/-";
      case '³' -> "3";
      case '²' -> "2";
      case 'ø', 'Ø', '⌀' -> "dia. ";
      case '–', '—', '−' -> "-";
      case '‘', '’' -> "'";
      case '“', '”' -> "\"";
      case '\u00a0' -> " ";
      default -> "?";
    };
  }

  /** The text on lines of at most {@code longest} characters, broken at blanks where it can be. */
  static List<String> wrapped(String text, int longest) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip();
    while (rest.length() > longest) {
      int blank = rest.lastIndexOf(' ', longest);
      int cut = blank > 0 ? blank : longest;
      lines.add(rest.substring(0, cut).strip());
      rest = rest.substring(cut).strip();
    }
    if (!rest.isEmpty()) {
      lines.add(rest);
    }
    return lines;
  }
}
