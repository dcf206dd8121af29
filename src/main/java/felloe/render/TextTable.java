package felloe.render;

import felloe.document.Block;
import felloe.document.Block.Column;
import felloe.document.Block.Fill;
import felloe.document.Cell;
import felloe.document.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A table set in characters: columns as wide as their cells where there is room, else wrapped by
 * column at blanks, words first and figures never.
 */
final class TextTable {

  private static final int GAP = 2;

  /** Verdicts of no more characters than this are not broken. */
  private static final int WHOLE = 14;

  private final List<Column> columns = new ArrayList<>();
  private final List<List<String>> rows = new ArrayList<>();
  private final int[] widths;
  private final int[] whole;

  /**
   * @param width that it may take, characters
   */
  TextTable(Block.Table table, int width) {
    List<Integer> shown = shown(table);
    shown.forEach(i -> columns.add(table.columns().get(i)));
    List<String> heads = columns.stream().map(Column::heading).toList();
    if (heads.stream().anyMatch(head -> !head.isEmpty())) {
      rows.add(heads);
    }
    for (List<Cell> row : table.rows()) {
      rows.add(shown.stream().map(i -> plain(row.get(i).text(columnUnit(table, i)))).toList());
    }
    this.whole = shown.stream().mapToInt(i -> whole(table, i)).toArray();
    this.widths = widths(width - GAP * Math.max(0, columns.size() - 1));
  }

  /** What the verdicts of a column take that are short enough to stay in one piece. */
  private static int whole(Block.Table table, int column) {
    return table.rows().stream()
        .map(row -> row.get(column))
        .filter(cell -> cell instanceof Cell.Verdict)
        .mapToInt(cell -> length(cell.text("")))
        .filter(n -> n <= WHOLE)
        .max()
        .orElse(0);
  }

  private static String columnUnit(Block.Table table, int column) {
    return table.columns().get(column).unit();
  }

  /** A terminal's hyphen for the minus sign. */
  static String plain(String text) {
    return text.replace(Quantity.MINUS, '-');
  }

  /** Columns that a hand fills, and those in which nothing stands, are not for a terminal. */
  private static List<Integer> shown(Block.Table table) {
    List<Integer> shown = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      Column column = table.columns().get(i);
      int at = i;
      boolean filled = table.rows().stream().anyMatch(row -> !row.get(at).text("").isEmpty());
      if (filled && column.fill() != Fill.TICK && column.fill() != Fill.BLANK) {
        shown.add(i);
      }
    }
    return shown;
  }

  private int[] widths(int room) {
    int n = columns.size();
    int[] natural = new int[n];
    int[] least = new int[n];
    for (int i = 0; i < n; i++) {
      boolean figures = columns.get(i).fill() == Fill.FIGURES;
      least[i] = whole[i];
      for (int r = 0; r < rows.size(); r++) {
        String text = rows.get(r).get(i);
        boolean head = r == 0 && text.equals(columns.get(i).heading());
        natural[i] = Math.max(natural[i], length(text));
        least[i] = Math.max(least[i], figures && !head ? length(text) : longestWord(text));
      }
    }
    if (sum(natural) <= room) {
      return natural;
    }
    int[] fitted = least.clone();
    if (sum(least) > room) {
      return cut(fitted, room);
    }
    // What is left over goes to those that are furthest from what they want, a character at a time.
    for (int spare = room - sum(least); spare > 0; spare--) {
      int next = -1;
      for (int i = 0; i < n; i++) {
        boolean wants = fitted[i] < natural[i];
        if (wants && (next < 0 || natural[i] * fitted[next] > natural[next] * fitted[i])) {
          next = i;
        }
      }
      if (next < 0) {
        break;
      }
      fitted[next]++;
    }
    return fitted;
  }

  /** Columns of words cut where even their longest words have no room, the widest first. */
  private int[] cut(int[] fitted, int room) {
    while (sum(fitted) > room) {
      int widest = -1;
      for (int i = 0; i < fitted.length; i++) {
        boolean words = columns.get(i).fill() != Fill.FIGURES;
        if (words && fitted[i] > 1 && (widest < 0 || fitted[i] > fitted[widest])) {
          widest = i;
        }
      }
      if (widest < 0) {
        break;
      }
      fitted[widest]--;
    }
    return fitted;
  }

  private static int sum(int[] values) {
    return Arrays.stream(values).sum();
  }

  private static int longestWord(String text) {
    return Arrays.stream(text.split(" ")).mapToInt(TextTable::length).max().orElse(0);
  }

  static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  /** The lines, without blanks at their ends. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      List<List<String>> cells = new ArrayList<>();
      for (int i = 0; i < widths.length; i++) {
        cells.add(TextRenderer.wrapped(row.get(i), widths[i]));
      }
      int high = cells.stream().mapToInt(List::size).max().orElse(0);
      for (int k = 0; k < high; k++) {
        lines.add(line(cells, k));
      }
    }
    return lines;
  }

  private String line(List<List<String>> cells, int k) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      String text = k < cells.get(i).size() ? cells.get(i).get(k) : "";
      String blank = " ".repeat(Math.max(0, widths[i] - length(text)));
      line.append(i == 0 ? "" : " ".repeat(GAP));
      line.append(columns.get(i).fill() == Fill.FIGURES ? blank + text : text + blank);
    }
    return line.toString().stripTrailing();
  }
}
