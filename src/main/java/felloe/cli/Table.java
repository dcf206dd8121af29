package felloe.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Rows of text in columns of even width. */
final class Table {

  private static final String GAP = "  ";

  private final String sides;
  private final List<String[]> rows = new ArrayList<>();

  /**
   * A table.
   *
   * @param sides for each column {@code l} or {@code r}: the side that its texts stand on
   */
  Table(String sides) {
    this.sides = sides;
  }

  /** Adds a row. */
  Table row(String... cells) {
    if (cells.length != sides.length()) {
      throw new IllegalArgumentException(cells.length + " cells for " + sides.length());
    }
    rows.add(cells);
    return this;
  }

  /** The rows as lines, without blanks at their ends. */
  List<String> lines() {
    int[] widths = new int[sides.length()];
    for (String[] row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], width(row[i]));
      }
    }
    return rows.stream().map(row -> line(row, widths)).toList();
  }

  private String line(String[] row, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < row.length; i++) {
      String blank = " ".repeat(widths[i] - width(row[i]));
      line.append(i == 0 ? "" : GAP);
      line.append(sides.charAt(i) == 'r' ? blank + row[i] : row[i] + blank);
    }
    return line.toString().stripTrailing();
  }

  private static int width(String text) {
    return text.codePointCount(0, text.length());
  }

  /** A text broken at blanks into lines of at most so many characters, each set in by so many. */
  static List<String> wrapped(String text, int indent, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : Arrays.asList(text.split(" "))) {
      if (line.length() > 0 && indent + line.length() + 1 + word.length() > width) {
        lines.add(" ".repeat(indent) + line);
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(" ".repeat(indent) + line);
    return lines;
  }
}
