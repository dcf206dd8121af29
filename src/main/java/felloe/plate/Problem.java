package felloe.plate;

import java.util.Objects;

/**
 * One thing that is wrong with the user's input, told so that a maker can mend it: where, which
 * value, what was read, what is allowed, and how to cure it.
 *
 * <p>What was read is made safe to print: control and invisible characters are written as escapes
 * and it is cut to {@value #LONGEST_VALUE} characters.
 *
 * @param place where the value was written
 * @param who the path of the value, such as {@code windows[2].radius}; may be empty
 * @param value what was read; may be empty
 * @param wanted what is allowed, as the rest of a sentence about the value: {@code must be at most
 *     31.6 mm}
 * @param cure what to do about it: {@code write 3.5}; may be empty
 */
public record Problem(Place place, String who, String value, String wanted, String cure) {

  /** The longest quotation of what was read, in characters. */
  public static final int LONGEST_VALUE = 60;

  /** Makes a problem; {@code value} is made safe and cut. */
  public Problem {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(who, "who");
    Objects.requireNonNull(wanted, "wanted");
    Objects.requireNonNull(cure, "cure");
    value = shown(value);
  }

  /**
   * The problem on one line: {@code heron.yaml:14:9 windows[2].radius: '40 mm' must be at most 31.6
   * mm here (half the window's height); lower it or raise height}.
   */
  public String line() {
    StringBuilder text = new StringBuilder(place.toString());
    if (!who.isEmpty() && !place.names(who)) {
      text.append(' ').append(who);
    }
    text.append(": ");
    if (!value.isEmpty()) {
      text.append('\'').append(value).append("' ");
    }
    text.append(wanted);
    if (!cure.isEmpty()) {
      text.append("; ").append(cure);
    }
    return text.toString();
  }

  /** The same as {@link #line()}. */
  @Override
  public String toString() {
    return line();
  }

  /**
   * A text made safe to quote in a message: line breaks, control characters and characters that
   * cannot be seen or turn the writing direction become escapes such as {@code \n} or {@code
   * \u202e}; a text longer than {@value #LONGEST_VALUE} characters is cut and ends in an ellipsis.
   */
  public static String shown(String text) {
    return shown(text, LONGEST_VALUE);
  }

  static String shown(String text, int longest) {
    StringBuilder safe = new StringBuilder();
    int at = 0;
    while (at < text.length()) {
      int c = text.codePointAt(at);
      String piece = shownCharacter(c);
      if (safe.length() + piece.length() > longest) {
        trimTo(safe, longest - 1);
        return safe.append('…').toString();
      }
      safe.append(piece);
      at += Character.charCount(c);
    }
    return safe.toString();
  }

  private static void trimTo(StringBuilder safe, int length) {
    if (safe.length() > length) {
      int end = Character.isLowSurrogate(safe.charAt(length)) ? length - 1 : length;
      safe.setLength(end);
    }
  }

  private static String shownCharacter(int c) {
    switch (c) {
      case '\n':
        return "\\n";
      case '\r':
        return "\\r";
      case '\t':
        return "\\t";
      default:
        break;
    }
    int type = Character.getType(c);
    boolean unsafe =
        type == Character.CONTROL
            || type == Character.FORMAT
            || type == Character.SURROGATE
            || type == Character.UNASSIGNED
            || type == Character.LINE_SEPARATOR
            || type == Character.PARAGRAPH_SEPARATOR;
    if (!unsafe) {
      return Character.toString(c);
    }
    String hex = Integer.toHexString(c);
    return "\\u" + "0".repeat(Math.max(0, 4 - hex.length())) + hex;
  }
}
