package felloe.yaml;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;

/** Turns bytes into text, strictly, and refuses what can be no YAML text at all. */
final class SourceText {

  /** The largest file that is read, in bytes. */
  static final int LARGEST = 8 * 1024 * 1024;

  private static final HexFormat HEX = HexFormat.of().withUpperCase();
  private static final String SAVE_AS_UTF8 = "save the file as plain text in UTF-8";

  private SourceText() {}

  static BadInput tooLarge(Place place) {
    return new BadInput(
        new Problem(
            place,
            "",
            "",
            "is over 8 MiB (8388608 bytes); a file of this kind has a few kilobytes",
            "check that it is the right file"));
  }

  /** Decodes UTF-8, names the first byte that is none, then checks the characters. */
  static String decode(String name, byte[] bytes) {
    if (bytes.length > LARGEST) {
      throw tooLarge(Place.ofFile(name));
    }
    if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
      throw new BadInput(
          new Problem(
              Place.ofFile(name), "", "", "must be UTF-8 text, but is UTF-16", SAVE_AS_UTF8));
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    out.flip();
    if (result.isError()) {
      int at = in.position();
      String hex = "0x" + HEX.toHexDigits(bytes[at]);
      throw new BadInput(
          new Problem(
              placeAfter(name, out.toString()),
              "",
              "",
              "must be UTF-8 text, but the byte " + hex + " at offset " + at + " is not",
              SAVE_AS_UTF8));
    }
    return out.toString();
  }

  /**
   * Checks the size and the characters of a text, and takes away a byte order mark.
   *
   * @param place the option that the text came from, or null when it came from the file {@code
   *     name}
   */
  static String checked(String name, String text, Place place) {
    if (text.length() > LARGEST) {
      throw tooLarge(place == null ? Place.ofFile(name) : place);
    }
    String clean = text.startsWith("\uFEFF") ? text.substring(1) : text;
    int at = 0;
    while (at < clean.length()) {
      int c = clean.codePointAt(at);
      if (!isAllowed(c)) {
        String hex = "U+" + HEX.toHexDigits(c, c > 0xFFFFF ? 6 : c > 0xFFFF ? 5 : 4);
        throw new BadInput(
            new Problem(
                place == null ? placeAfter(name, clean.substring(0, at)) : place,
                "",
                "",
                "has a character that no text may have: " + (c == 0 ? "NUL, " : "") + hex,
                place == null ? "delete it, or " + SAVE_AS_UTF8 : "leave it out"));
      }
      at += Character.charCount(c);
    }
    return clean;
  }

  // YAML 1.2.2, production 1 (c-printable).
  private static boolean isAllowed(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c <= 0x7E)
        || c == 0x85
        || (c >= 0xA0 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD && c != 0xFEFF)
        || c >= 0x10000;
  }

  private static boolean startsWith(byte[] bytes, int first, int second) {
    return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
  }

  /** The place of the character that follows a text. */
  static Place placeAfter(String name, String before) {
    String text = before.startsWith("\uFEFF") ? before.substring(1) : before;
    int line = 1;
    int start = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean crBeforeLf = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if (c == '\n' || (c == '\r' && !crBeforeLf)) {
        line++;
        start = i + 1;
      }
    }
    return Place.of(name, line, 1 + text.codePointCount(start, text.length()));
  }

  /** The text of a line, counted from 0, without the spaces around it; empty beyond the end. */
  static String line(String text, int number) {
    return Arrays.stream(text.split("\r\n|\r|\n", -1)).skip(number).findFirst().orElse("");
  }
}
