package felloe.bringin;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The group codes and values of an ASCII DXF file, with their lines. */
final class DxfPairs {

  /**
   * One of them.
   *
   * @param line of the value, from 1
   */
  record Pair(int code, String value, int line) {}

  private static final String BINARY = "AutoCAD Binary DXF";

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,2})?");

  private DxfPairs() {}

  /** Codes of coordinates, sizes, angles and flags. */
  private static boolean isNumber(int code) {
    return (code >= 10 && code < 80) || (code >= 210 && code < 240);
  }

  /** All of them. */
  static List<Pair> read(byte[] bytes, Reading reading) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    if (text.startsWith(BINARY)) {
      throw reading.refused(0, "", "", "is a binary DXF file", "save it as ASCII DXF");
    }
    List<Pair> pairs = new ArrayList<>();
    String[] lines = text.split("\r\n|\r|\n", -1);
    for (int i = 0; i + 1 < lines.length; i += 2) {
      String code = lines[i].strip();
      int number;
      try {
        number = Integer.parseInt(code);
      } catch (NumberFormatException none) {
        throw reading.refused(
            i + 1, "", code, "must be a group code, a whole number", "save the drawing again");
      }
      String value = lines[i + 1].strip();
      pairs.add(new Pair(number, value, i + 2));
      if (isNumber(number) && !NUMBER.matcher(value).matches()) {
        reading.wrong(i + 2, "", value, "must be a number", "save the drawing again");
      }
      if (number == 0 && pairs.get(pairs.size() - 1).value().equals("EOF")) {
        return pairs;
      }
    }
    throw reading.refused(
        lines.length, "", "", "breaks off before its end (EOF)", "save or copy the file again");
  }
}
