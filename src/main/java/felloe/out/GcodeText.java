package felloe.out;

import felloe.cutting.Dialect;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The lines of a G-code program in a dialect: numbers, comments, ends of lines. */
final class GcodeText {

  /**
   * Longest text of a comment. The report takes lines of up to 256 characters (from memory); small
   * controllers take fewer, common practice.
   */
  private static final int LONGEST_COMMENT = 66;

  /** Greatest line number of the report: five digits (from memory). */
  private static final int LARGEST_NUMBER = 99_999;

  private final Dialect.Lines style;
  private final StringBuilder file = new StringBuilder();
  private int number;

  GcodeText(Dialect.Lines style) {
    this.style = style;
  }

  void line(String words) {
    if (style.numberStep() > 0) {
      number += style.numberStep();
      if (number > LARGEST_NUMBER) {
        number = style.numberStep();
      }
      file.append('N').append(number).append(' ');
    }
    end(words);
  }

  /** A line with a percent sign, at the start and the end, where the dialect wants it. */
  void percent() {
    if (style.percentSigns()) {
      end("%");
    }
  }

  /** A comment, on several lines if it is long. */
  void comment(String text) {
    List<String> lines = PlainText.wrapped(safe(PlainText.of(text)), LONGEST_COMMENT);
    for (int i = 0; i < lines.size(); i++) {
      // A sign before each further line, so that none begins with a word that a controller obeys.
      String shown = i == 0 ? lines.get(i) : "- " + lines.get(i);
      line(
          switch (style.comments()) {
            case PARENTHESES -> "(" + shown + ")";
            case SEMICOLON -> "; " + shown;
          });
    }
  }

  /**
   * What no controller acts on inside a comment: some take {@code !}, {@code ~}, {@code ?}, {@code
   * $} or {@code %} at once wherever they stand, and brackets or a semicolon end or open comments.
   */
  private static String safe(String text) {
    StringBuilder kept = new StringBuilder();
    for (char c : text.toCharArray()) {
      boolean plain = (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
      if (plain || " .,:+-/='\"&".indexOf(c) >= 0) {
        kept.append(c);
      } else if (c == '(') {
        kept.append("- ");
      } else if (c == ';') {
        kept.append(',');
      } else if (c != ')') {
        kept.append('_');
      }
    }
    return kept.toString();
  }

  private void end(String words) {
    file.append(words).append(style.carriageReturns() ? "\r\n" : "\n");
  }

  byte[] bytes() {
    return file.toString().getBytes(StandardCharsets.US_ASCII);
  }
}
