package felloe.document;

import felloe.drawing.Picture;
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
   * A heading; what follows up to the next one stays on its page where that leaves little blank.
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
   * A table. Its heads stand above it again on every page that it goes on to; without rows nothing
   * of it is drawn.
   *
   * @param caption a line above the heads, repeated with them; may be empty
   * @param columns from left to right
   * @param rows a text for each column, in order
   * @param abreast whether parts of a long one may stand side by side where there is room
   */
  public record Rows(String caption, List<Column> columns, List<List<String>> rows, boolean abreast)
      implements Block {
    /**
     * Copies columns and rows.
     *
     * @throws IllegalArgumentException when there is no column, or when a row has not a text for
     *     each column
     */
    public Rows {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      if (columns.isEmpty()) {
        throw new IllegalArgumentException("a table must have a column");
      }
      for (List<String> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(row.size() + " texts for " + columns.size());
        }
      }
    }

    /** A table in one part, without a caption. */
    public static Rows of(List<Column> columns, List<List<String>> rows) {
      return new Rows("", columns, rows, false);
    }

    /** The same, in parts side by side where there is room. */
    public Rows sideBySide() {
      return new Rows(caption, columns, rows, true);
    }
  }

  /**
   * A picture: as large as the width allows, at most full size. It goes to the next page rather
   * than be much smaller than that.
   *
   * @param picture what is drawn
   */
  public record Drawn(Picture picture) implements Block {}

  /** What follows begins on a new page. */
  public record NewPage() implements Block {}

  /**
   * A column of a table.
   *
   * @param head what stands above it
   * @param fill how it is filled
   */
  public record Column(String head, Fill fill) {}

  /** How a column is filled. Words that are too wide for their column go on below. */
  public enum Fill {
    /** Words, as wide as they are where there is room. */
    WORDS,
    /** Figures, set to the right. */
    FIGURES,
    /** Words; such columns share the width that is left, and give way first. */
    WRAPPED,
    /** Blank: something is written in by hand. */
    BLANK,
    /** A box to tick beside each text, an empty text without a box. */
    TICK
  }
}
