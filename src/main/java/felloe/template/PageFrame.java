package felloe.template;

import felloe.drawing.Correction;
import felloe.geometry.Box;

/**
 * How a page is divided. Millimetres on the paper, origin at its lower left corner.
 *
 * <p>The strip along the lower edge holds the page's name, the title block, the cautions, the map
 * and the horizontal check bar; the narrow column at the left holds the vertical check bar; the
 * field beside and above them holds the drawing.
 *
 * @param width of the paper
 * @param height of the paper
 * @param room what may be drawn on
 * @param strip the strip along the lower edge
 * @param column the column at the left
 * @param field where the drawing lies
 * @param bar true length of the check bars
 */
record PageFrame(
    double width, double height, Box room, Box strip, Box column, Box field, double bar) {

  /** Longest check bar, mm. */
  static final double LONGEST_BAR = 150;

  /** Width of the column, mm. */
  static final double COLUMN = 8;

  /** Space between furniture and field, mm. */
  static final double SPACE = 1;

  /** Height of the row that holds the horizontal check bar, mm. */
  static final double BAR_ROW = 7;

  static PageFrame of(
      double width,
      double height,
      double margin,
      Correction correction,
      StripText text,
      double bar) {
    Box printable = new Box(margin, margin, width - margin, height - margin);
    Box room = correction.room(printable);
    double stripHeight = BAR_ROW + text.height(room.width());
    double bottom = room.minY() + stripHeight;
    return new PageFrame(
        width,
        height,
        room,
        new Box(room.minX(), room.minY(), room.maxX(), bottom),
        new Box(room.minX(), bottom + SPACE, room.minX() + COLUMN, room.maxY()),
        new Box(room.minX() + COLUMN + SPACE, bottom + SPACE, room.maxX(), room.maxY()),
        bar);
  }

  /**
   * Length of the check bars on a paper, the same both ways, upright or across, corrected or not:
   * the largest multiple of 10 mm, at most 150 mm, for which there is always room.
   */
  static double bar(double width, double height, double margin) {
    double least = Double.POSITIVE_INFINITY;
    double most = 1 + BarReading.LARGEST_ERROR;
    for (double[] side : new double[][] {{width, height}, {height, width}}) {
      double across = (side[0] - 2 * margin) / most;
      double up = (side[1] - 2 * margin) / most - BAR_ROW - SPACE - StripText.most(across);
      least = Math.min(least, Math.min(across, up) - 3);
    }
    return Math.min(LONGEST_BAR, 10 * Math.floor(least / 10));
  }
}
