package felloe.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * How wide a line of text is in the program's own font, DejaVu Sans Condensed, so that a layout
 * knows the room a label takes before any writer draws it.
 *
 * <p>Accuracy: the font's own advance widths, without kerning, as the writers set it: exact for
 * Latin, Greek, Cyrillic, Hebrew and Arabic letters, punctuation, arrows and signs. Any other
 * character counts as one em, which is more than the box that stands for a missing glyph.
 */
public final class TextWidth {

  /** Resource name of the font file. */
  public static final String FONT = "/felloe/fonts/DejaVuSansCondensed.ttf";

  /** Height of a capital letter as a share of the font size: the glyph H, 1493 of 2048 units. */
  public static final double CAPITALS = 1493.0 / 2048;

  /**
   * How far letters such as g hang below the base line, as a share of the font size: the glyph of
   * the lower-case g, 426 of 2048 units.
   */
  public static final double TAILS = 426.0 / 2048;

  private static final String WIDTHS = "/felloe/fonts/widths.txt";
  private static final int EM = 2048;
  private static final int[] TABLE = read();

  private TextWidth() {}

  /**
   * Width of a line of text, mm.
   *
   * @param text what it says; what {@link #shown} drops has no width
   * @param height height of the capital letters, mm
   */
  public static double of(String text, double height) {
    return of(units(text), height);
  }

  /** The width of a text of some units, mm. */
  static double of(long units, double height) {
    return units * fontSize(height) / EM;
  }

  /** The width of a text in thousandths of the font size. */
  static long units(String text) {
    String shown = shown(text);
    long units = 0;
    for (int i = 0; i < shown.length(); ) {
      int c = shown.codePointAt(i);
      units += units(c);
      i += Character.charCount(c);
    }
    return units;
  }

  /** The widest of several lines, mm; 0 for none. */
  public static double widest(List<String> lines, double height) {
    return lines.stream().mapToDouble(line -> of(line, height)).max().orElse(0);
  }

  /**
   * The font size (em) whose capitals have a given height, in the unit of the height.
   *
   * @param height height of the capital letters
   */
  public static double fontSize(double height) {
    return height / CAPITALS;
  }

  /**
   * The text as every writer sets it: line breaks and tabs become spaces; control characters, marks
   * that turn the writing direction, halves of broken pairs and code points that no character will
   * ever have are dropped.
   */
  public static String shown(String text) {
    if (isPlain(text)) {
      return text;
    }
    StringBuilder kept = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      if (c == '\n' || c == '\r' || c == '\t') {
        kept.append(' ');
      } else if (isShown(c)) {
        kept.appendCodePoint(c);
      }
    }
    return kept.toString();
  }

  /** Whether it is all printable ASCII, of which nothing is dropped. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c > '~') {
        return false;
      }
    }
    return true;
  }

  private static boolean isShown(int c) {
    int type = Character.getType(c);
    boolean turnsDirection =
        (c >= 0x202a && c <= 0x202e) || (c >= 0x2066 && c <= 0x2069) || c == 0x200e || c == 0x200f;
    boolean nobody = (c & 0xfffe) == 0xfffe || (c >= 0xfdd0 && c <= 0xfdef);
    return type != Character.CONTROL
        && type != Character.SURROGATE
        && type != Character.LINE_SEPARATOR
        && type != Character.PARAGRAPH_SEPARATOR
        && !turnsDirection
        && !nobody;
  }

  private static int units(int c) {
    return c < TABLE.length ? TABLE[c] : EM;
  }

  /** Reads lines of: first character in hexadecimal, then one width a character. */
  private static int[] read() {
    int[] table = new int[0x2800];
    Arrays.fill(table, EM);
    try (InputStream in = TextWidth.class.getResourceAsStream(WIDTHS)) {
      String all = new String(in.readAllBytes(), StandardCharsets.US_ASCII);
      all.lines()
          .filter(line -> !line.startsWith("#"))
          .forEach(
              line -> {
                String[] words = line.split(" ");
                int first = Integer.parseInt(words[0], 16);
                for (int i = 1; i < words.length; i++) {
                  table[first + i - 1] = Integer.parseInt(words[i]);
                }
              });
      return table;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
