package felloe.paper;

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

  /** Copies the lines. */
  StripText {
    facts = List.copyOf(facts);
  }

  /** Width of the cell with the page's name. */
  static double nameCell(double width) {
    return width < 150 ? 15 : 19;
  }

  /** Width of the title block. */
  static double titleCell(double width) {
    return width < 150 ? 38 : 50;
  }

  /** Width of the map. */
  static double mapCell(double width) {
    return width < 150 ? 22 : 30;
  }

  /** Width of the cell with the notes. */
  static double notesCell(double width) {
    return width - nameCell(width) - titleCell(width) - mapCell(width);
  }

  /** The notes in lines for a strip of some width. */
  List<String> lines(double width) {
    return Paragraph.wrap(notes, SMALL, Math.min(165, notesCell(width) - 3));
  }

  /** Height that the text needs under the check bar in a strip of some width. */
  double height(double width) {
    double facts = 6 + this.facts.size() * PITCH;
    return Math.max(15, Math.max(facts, lines(width).size() * PITCH + 1.5));
  }

  /** A height that no plate's text exceeds in a strip of some width; a test holds it. */
  static double most(double width) {
    return width < 150 ? 41 : width < 200 ? 26 : 17.5;
  }
}
