package felloe.paper;

import java.util.List;

/**
 * What pages for the bench say, in order; where it stands on the pages is found when they are laid
 * out.
 *
 * @param title what the pages are, such as {@code drilling sheet}
 * @param blocks from top to bottom
 */
public record BenchText(String title, List<Block> blocks) {

  /** Copies the blocks. */
  public BenchText {
    blocks = List.copyOf(blocks);
  }

  /** A piece of the text. */
  public sealed interface Block {}

  /**
   * A heading; what follows up to the next one stays on one page where it fits on one.
   *
   * @param text what it says
   */
  public record Heading(String text) implements Block {}

  /**
   * Running text.
   *
   * @param text what it says
   */
  public record Words(String text) implements Block {}

  /**
   * Numbered sentences.
   *
   * @param texts one for each number
   */
  public record Steps(List<String> texts) implements Block {
    /** Copies the texts. */
    public Steps {
      texts = List.copyOf(texts);
    }
  }

  /**
   * Sentences in a frame, which are to be read first.
   *
   * @param texts one for each
   */
  public record Framed(List<String> texts) implements Block {
    /** Copies the texts. */
    public Framed {
      texts = List.copyOf(texts);
    }
  }

  /**
   * A table.
   *
   * @param columns from left to right
   * @param rows a text for each column, in order
   */
  public record Rows(List<Column> columns, List<List<String>> rows) implements Block {
    /**
     * Copies columns and rows.
     *
     * @throws IllegalArgumentException when a row has not a text for each column
     */
    public Rows {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(row.size() + " texts for " + columns.size());
        }
      }
    }
  }

  /**
   * A column of a table.
   *
   * @param head what stands above it
   * @param fill how it is filled
   */
  public record Column(String head, Fill fill) {}

  /** How a column is filled. */
  public enum Fill {
    /** Short words on one line. */
    WORDS,
    /** Figures, set to the right. */
    FIGURES,
    /** Words on as many lines as it takes; such columns share the width that is left. */
    WRAPPED,
    /** Blank: something is written in by hand. */
    BLANK
  }
}
