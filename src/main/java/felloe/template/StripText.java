package felloe.template;

import felloe.drawing.Paragraph;
import java.util.List;

/**
 * What the strip along a page's lower edge says, the same on every page of a set.
 *
 * @param title the plate's name in words
 * @param facts short lines of the title block: name and revision, stock, face
 * @param notes running text: how to mark out, the cautions
 */
record StripText(String title, List<String> facts, String notes) {

  /** Letter height of small print, after ISO 3098, mm. */
  static final double SMALL = 1.8;

  /** Distance of its lines, mm. */
  static final double PITCH = 2.6;

  StripText {
    facts = List.copyOf(facts);
  }

  /** Whether the strip is so narrow that the notes stand below the other cells. */
  static boolean stacked(double width) {
    return width < 170;
  }

  /** Width of the cell with the page's name. */
  static double nameCell(double width) {
    return stacked(width) ? 16 : 19;
  }

  /** Width of the map's cell. */
  static double mapCell(double width) {
    return stacked(width) ? 26 : 30;
  }

  /** Width of the title block. */
  static double titleCell(double width) {
    return stacked(width) ? width - nameCell(width) - mapCell(width) : 50;
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

  /** Height of the title block. */
  double factsHeight() {
    return Math.max(15, 6 + facts.size() * PITCH);
  }

  /** Height that the text needs under the check bar in a strip of some width. */
  double height(double width) {
    double facts = factsHeight();
    double notes = notesHeight(width);
    return stacked(width) ? facts + notes : Math.max(facts, notes);
  }
}
