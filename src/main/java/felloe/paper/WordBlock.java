package felloe.paper;

import java.util.List;

/**
 * A heading with a table and sentences below it, to be set on pages.
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
}
