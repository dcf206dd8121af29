package felloe.template;

import felloe.drawing.Correction;
import felloe.geometry.Box;

/**
 * How a page is divided. Millimetres on the paper, origin at its lower left corner.
 *
 * <p>A framed page has a column at the left with the vertical check bar, and beside it a strip
 * along the lower edge with the page's name, the title block, the cautions, the map and the
 * horizontal check bar; the field above the strip holds the drawing. On an open page the drawing
 * may lie anywhere, and the same things stand where it leaves room: that can save pages. A page of
 * words has the strip alone.
 *
 * @param kind how it is divided
 * @param width of the paper
 * @param height of the paper
 * @param room what may be drawn on
 * @param strip the strip along the lower edge
 * @param column the column at the left
 * @param field where the drawing lies
 * @param bar true length of the check bars
 */
record PageFrame(
    Kind kind,
    double width,
    double height,
    Box room,
    Box strip,
    Box column,
    Box field,
    double bar) {

  /** How a page is divided. */
  enum Kind {
    /** Strip and column beside the field. */
    FRAMED,
    /** Everything where the drawing leaves room. */
    OPEN,
    /** Words alone: no check bars. */
    WORDS
  }

  /**
   * Length of the check bars, mm, on every paper that has room for it. It lies well within a common
   * rule or calliper of 150 mm.
   */
  static final double LONGEST_BAR = 100;

  /** Width of the column, mm. */
  static final double COLUMN = 8;

  /** Space between furniture and field, mm. */
  static final double SPACE = 1;

  /** Height of the row that holds the horizontal check bar, mm. */
  static final double BAR_ROW = 8;

  static PageFrame of(
      Kind kind,
      double width,
      double height,
      double margin,
      Correction correction,
      StripText text,
      double bar) {
    Box printable = new Box(margin, margin, width - margin, height - margin);
    Box room = correction.room(printable);
    double left = room.minX() + (kind == Kind.FRAMED ? COLUMN + SPACE : 0);
    double bottom =
        room.minY() + (kind == Kind.FRAMED ? BAR_ROW : 0) + text.height(room.maxX() - left);
    return new PageFrame(
        kind,
        width,
        height,
        room,
        new Box(left, room.minY(), room.maxX(), bottom),
        new Box(room.minX(), room.minY(), room.minX() + COLUMN, room.maxY()),
        kind == Kind.OPEN ? room : new Box(left, bottom + SPACE, room.maxX(), room.maxY()),
        bar);
  }

  /**
   * Length of the check bars on a paper, the same both ways, upright or across, corrected or not:
   * 100 mm, or on small paper with a wide margin the largest multiple of 10 mm for which there is
   * always room.
   */
  static double bar(double width, double height, double margin) {
    double most = 1 + BarReading.LARGEST_ERROR;
    double least = (Math.min(width, height) - 2 * margin) / most - COLUMN - SPACE - 3;
    return Math.min(LONGEST_BAR, 10 * Math.floor(least / 10));
  }
}
