package felloe.document;

import java.util.ArrayList;
import java.util.List;

/**
 * A heading with a table and sentences below it: the usual part of a page, in short.
 *
 * @param title the heading; may be empty
 * @param sides for each column {@code l} or {@code r}; empty when there is no table
 * @param rows the table, its heading first; a cell {@code [ ]} becomes a box to tick
 * @param lines sentences
 */
public record WordBlock(String title, String sides, List<List<String>> rows, List<String> lines) {

  /** What stands for a box to tick. */
  public static final String BOX = "[ ]";

  /** Copies the lists. */
  public WordBlock {
    rows = rows.stream().map(List::copyOf).toList();
    lines = List.copyOf(lines);
  }

  /** Sentences under a heading. */
  public static WordBlock words(String title, List<String> lines) {
    return new WordBlock(title, "", List.of(), lines);
  }

  /** The blocks of several, in order. */
  static List<Block> blocks(List<WordBlock> all) {
    return all.stream().flatMap(each -> each.blocks().stream()).toList();
  }

  /** The same as blocks. */
  public List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    if (!title.isEmpty()) {
      blocks.add(new Block.Heading(title));
    }
    if (!rows.isEmpty()) {
      List<Block.Column> columns = new ArrayList<>();
      for (int i = 0; i < sides.length(); i++) {
        columns.add(new Block.Column(rows.get(0).get(i), "", fill(i)));
      }
      blocks.add(Block.Table.ofWords(columns, rows.subList(1, rows.size())));
    }
    lines.forEach(line -> blocks.add(new Block.Paragraph(line)));
    return blocks;
  }

  private Block.Fill fill(int column) {
    boolean ticked = rows.stream().anyMatch(row -> row.get(column).equals(BOX));
    return ticked
        ? Block.Fill.TICK
        : sides.charAt(column) == 'r' ? Block.Fill.FIGURES : Block.Fill.WORDS;
  }
}
