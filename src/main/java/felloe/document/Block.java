package felloe.document;

import felloe.drawing.Picture;
import java.util.List;
import java.util.function.Supplier;

/** A piece of a report. A face sets it in its own way and adds no words of its own. */
public sealed interface Block {

  /**
   * A heading; on pages what follows up to the next one stays with it where that leaves little
   * blank.
   *
   * @param text what it says
   */
  record Heading(String text) implements Block {}

  /**
   * Running text.
   *
   * @param text what it says
   */
  record Paragraph(String text) implements Block {}

  /**
   * Sentences that are to be read first.
   *
   * @param tone how they are meant
   * @param texts one for each
   */
  record Callout(Tone tone, List<String> texts) implements Block {

    public Callout {
      texts = List.copyOf(texts);
    }
  }

  /** How sentences or a cell are meant. Faces show it by sign and weight, never by colour alone. */
  enum Tone {
    /** All is as it should be. */
    WELL,
    /** The maker must decide. */
    CAUTION,
    /** It fails, or is not as wanted. */
    FAIL,
    /** Neither good nor bad. */
    NOTE
  }

  /**
   * Numbered sentences.
   *
   * @param texts one for each number
   * @param ticked whether paper has a box to tick beside each
   */
  record Steps(List<String> texts, boolean ticked) implements Block {

    public Steps {
      texts = List.copyOf(texts);
    }

    /** Steps without boxes. */
    public static Steps of(List<String> texts) {
      return new Steps(texts, false);
    }
  }

  /**
   * A table. Its heads stand above it again on every page that it goes on to; without rows nothing
   * of it is shown.
   *
   * @param caption a line above the heads, repeated with them; may be empty
   * @param columns from left to right
   * @param rows a cell for each column, in order
   * @param abreast whether parts of a long one may stand side by side where there is room
   */
  record Table(String caption, List<Column> columns, List<List<Cell>> rows, boolean abreast)
      implements Block {

    /**
     * @throws IllegalArgumentException when there is no column, or when a row has not a cell for
     *     each column
     */
    public Table {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      if (columns.isEmpty()) {
        throw new IllegalArgumentException("a table must have a column");
      }
      for (List<Cell> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(row.size() + " cells for " + columns.size());
        }
      }
    }

    /** A table in one part, without a caption. */
    public static Table of(List<Column> columns, List<List<Cell>> rows) {
      return new Table("", columns, rows, false);
    }

    public static Table ofWords(List<Column> columns, List<List<String>> rows) {
      return of(
          columns,
          rows.stream().map(row -> row.stream().<Cell>map(Cell.Words::new).toList()).toList());
    }

    /** The same, in parts side by side where there is room. */
    public Table sideBySide() {
      return new Table(caption, columns, rows, true);
    }

    /** The same under a line of words. */
    public Table under(String line) {
      return new Table(line, columns, rows, abreast);
    }
  }

  /**
   * A picture, or small ones side by side: on pages as large as the width allows, at most full
   * size; left out on a terminal.
   *
   * @param pictures what is drawn, in order
   */
  record Figure(List<Picture> pictures) implements Block {

    public Figure {
      pictures = List.copyOf(pictures);
    }

    public Figure(Picture picture) {
      this(List.of(picture));
    }
  }

  /** What follows begins on a new page, or after a gap. */
  record PageBreak() implements Block {}

  /**
   * Blocks that not every face shows at once. They are put together only where they are shown: most
   * runs of a command never need them.
   *
   * @param depth when they are shown
   * @param inside what is shown then
   */
  record Folded(Depth depth, Supplier<List<Block>> inside) implements Block {

    /** Folded blocks that stand already. */
    public Folded(Depth depth, List<Block> blocks) {
      this(depth, standing(blocks));
    }

    private static Supplier<List<Block>> standing(List<Block> blocks) {
      List<Block> copy = List.copyOf(blocks);
      return () -> copy;
    }

    /** What is shown. */
    public List<Block> blocks() {
      return List.copyOf(inside.get());
    }
  }

  /** When folded blocks are shown. */
  enum Depth {
    /** On paper; on a terminal when everything is asked for; on a web page behind a fold. */
    ALL,
    /** On paper; on a terminal when sources are asked for; on a web page behind a fold. */
    SOURCES,
    /** On paper only, such as columns to write in. */
    PAPER,
    /** On a terminal or a web page only. */
    SCREEN
  }

  /**
   * A column of a table.
   *
   * @param head what stands above it
   * @param unit of all its quantities, which then stands in the head alone; may be empty
   * @param fill how it is filled
   * @param share how wide it is on pages against others that share the width that is left, or so
   *     many times as wide as usual where it is written in; at least 1
   */
  record Column(String head, String unit, Fill fill, int share) {

    public Column {
      if (share < 1) {
        throw new IllegalArgumentException("share must be at least 1, not " + share);
      }
    }

    /** A column of the usual width. */
    public Column(String head, String unit, Fill fill) {
      this(head, unit, fill, 1);
    }

    /** Words, as wide as they are where there is room. */
    public static Column words(String head) {
      return new Column(head, "", Fill.WORDS);
    }

    /** Figures of one unit; quantities tell their own where it is empty. */
    public static Column figures(String head, String unit) {
      return new Column(head, unit, Fill.FIGURES);
    }

    /** Words that give way first. */
    public static Column wrapped(String head) {
      return new Column(head, "", Fill.WRAPPED);
    }

    /** Room to write something in by hand. */
    public static Column blank(String head) {
      return new Column(head, "", Fill.BLANK);
    }

    /** What stands above it, the unit behind. */
    public String heading() {
      return unit.isEmpty() ? head : (head + " " + unit).strip();
    }
  }

  /** How a column is filled. Words that are too wide for their column go on below. */
  enum Fill {
    /** Words, as wide as they are where there is room. */
    WORDS,
    /** Figures, set to the right. */
    FIGURES,
    /** Words; such columns share the width that is left, and give way first. */
    WRAPPED,
    /** Blank: something is written in by hand; not on a terminal. */
    BLANK,
    /** A box to tick beside each text, an empty text without a box; not on a terminal. */
    TICK
  }
}
