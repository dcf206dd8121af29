package felloe.bringin;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The group codes and values of an ASCII DXF file, with their lines. */
final class DxfPairs {

  /**
   * One of them.
   *
   * @param line of the value, from 1
   */
  record Pair(int code, String value, int line) {}

  private static final String BINARY = "AutoCAD Binary DXF";

  private DxfPairs() {}

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
      pairs.add(new Pair(number, lines[i + 1].strip(), i + 2));
      if (number == 0 && pairs.get(pairs.size() - 1).value().equals("EOF")) {
        return pairs;
      }
    }
    throw reading.refused(
        lines.length, "", "", "breaks off before its end (EOF)", "save or copy the file again");
  }
}
