package felloe.template;

import felloe.drawing.Mark;
import felloe.drawing.Paragraph;
import felloe.drawing.TextWidth;
import felloe.drawing.TextWrap;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the strip along a page's lower edge says, the same on every page of a set.
 *
 * @param title the plate's name in words
 * @param facts short lines of the title block: name and revision, stock, face
 * @param notes running text: how to mark out, the cautions
 */
record StripText(String title, List<String> facts, String notes) {

  /** Letter height of small print, after ISO 3098, mm: read at arm's length. */
  static final double SMALL = 2.5;

  /** Distance of its lines, mm. */
  static final double PITCH = 3.5;

  /** Room beside the words of a cell, mm. */
  static final double PAD = 1.5;

  /** Heights of the title's letters after ISO 3098, mm. */
  private static final double LARGE = 3.5;

  private static final double LEAST = 2.5;

  /** Distance of the lines of a long title, mm: the least of ISO 3098 is 1.4 times the height. */
  private static final double TITLE_PITCH = 3.5;

  /** A title of so many characters is never cut, however wide its letters. */
  private static final int WHOLE = 80;

  /** A longer one is cut when it takes more lines than this. */
  private static final int MOST_LINES = 4;

  /** From the upper edge of the title block to the facts below a title of one line, mm. */
  private static final double TITLE_ROW = 6.2;

  StripText {
    facts = List.copyOf(facts);
  }

  /** This or the other, whichever has more to say in its notes. */
  StripText longer(StripText other) {
    return other.notes.length() > notes.length() ? other : this;
  }

  /** Width of the title block that shows every line of it whole beside the page's name, mm. */
  double titleWidth() {
    double widest =
        Stream.concat(Stream.of(title), facts.stream())
            .mapToDouble(line -> TextWidth.of(line, SMALL))
            .max()
            .orElseThrow();
    return Math.ceil(nameCell(0) + 1 + widest + 2 * PAD);
  }

  /** Whether the strip is so narrow that the notes stand below the other cells. */
  static boolean stacked(double width) {
    return width < 200;
  }

  /** Width of the cell with the page's name. */
  static double nameCell(double width) {
    return stacked(width) ? 23 : 24;
  }

  /** Width of the map's cell. */
  static double mapCell(double width) {
    return stacked(width) ? 26 : 30;
  }

  /** Width of the title block. */
  static double titleCell(double width) {
    return stacked(width) ? width - nameCell(width) - mapCell(width) : 60;
  }

  /** Width of the cell with the notes. */
  static double notesCell(double width) {
    return stacked(width) ? width : width - nameCell(width) - titleCell(width) - mapCell(width);
  }

  /** The notes in lines for a strip of some width. */
  List<String> lines(double width) {
    return Paragraph.wrap(notes, SMALL, Math.min(165, notesCell(width) - 3));
  }

  /** Height of the notes in a strip of some width. */
  double notesHeight(double width) {
    return lines(width).size() * PITCH + 1.5;
  }

  /** The title as labels, its upper edge and that of its cell at a height. */
  List<Mark> title(double left, double cell, double top) {
    List<String> lines = titleLines(cell);
    double room = cell - 2 * PAD;
    double height = TextWidth.of(title, LARGE) <= room ? LARGE : LEAST;
    return Paragraph.labels(lines, left + PAD, top - 1.5, height, TITLE_PITCH);
  }

  private List<String> titleLines(double cell) {
    double room = cell - 2 * PAD;
    if (TextWidth.of(title, LARGE) <= room) {
      return List.of(title);
    }
    int whole =
        title.offsetByCodePoints(0, Math.min(WHOLE, title.codePointCount(0, title.length())));
    int most = Paragraph.wrap(title.substring(0, whole), LEAST, room).size();
    return TextWrap.lines(title, LEAST, room, Math.max(MOST_LINES, most));
  }

  /** From the upper edge of the title block in a cell to its facts, mm. */
  double titleHeight(double cell) {
    return TITLE_ROW + Math.max(0, titleLines(cell).size() - 1) * TITLE_PITCH;
  }

  /** Height of the title block in a cell. */
  double factsHeight(double cell) {
    return Math.max(15, titleHeight(cell) - 0.2 + facts.size() * PITCH);
  }

  /** Height that the text needs under the check bar in a strip of some width. */
  double height(double width) {
    double facts = factsHeight(titleCell(width));
    double notes = notesHeight(width);
    return stacked(width) ? facts + notes : Math.max(facts, notes);
  }
}
