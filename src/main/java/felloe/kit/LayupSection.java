package felloe.kit;

import java.util.List;

/**
 * A part of a plan as words, for the terminal and for paper alike.
 *
 * @param title what it is about
 * @param sides for each column {@code l} or {@code r}; empty when there is no table
 * @param rows the table, its heading first
 * @param lines sentences below the table
 */
public record LayupSection(
    String title, String sides, List<List<String>> rows, List<String> lines) {

  /** Copies the lists. */
  public LayupSection {
    rows = rows.stream().map(List::copyOf).toList();
    lines = List.copyOf(lines);
  }

  static LayupSection words(String title, List<String> lines) {
    return new LayupSection(title, "", List.of(), lines);
  }
}
