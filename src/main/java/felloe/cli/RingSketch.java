package felloe.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Holes round a circle in plain characters, two of them in brackets with a dotted line between: the
 * pair to measure.
 *
 * @param count number of holes
 * @param from the first of the pair, counted from 1
 * @param to the other; the same for a single hole
 */
record RingSketch(int count, int from, int to) {

  private static final int HALF_WIDTH = 15;
  private static final int HALF_HEIGHT = 6;
  private static final int EDGE = 4;
  private static final int DOTS = 40;

  /** The sketch, without blanks at the ends of lines. */
  List<String> lines() {
    char[][] cells = new char[2 * HALF_HEIGHT + 1][2 * (HALF_WIDTH + EDGE) + 1];
    for (char[] row : cells) {
      Arrays.fill(row, ' ');
    }
    if (from != to) {
      for (int k = 0; k <= DOTS; k++) {
        double f = (double) k / DOTS;
        int x = (int) Math.round(x(from) + f * (x(to) - x(from)));
        int y = (int) Math.round(y(from) + f * (y(to) - y(from)));
        cells[y][x] = '.';
      }
    }
    for (int hole = 1; hole <= count; hole++) {
      boolean asked = hole == from || hole == to;
      String label = asked ? "[" + hole + "]" : "" + hole;
      int x = (int) Math.round(x(hole)) - label.length() / 2;
      for (int k = 0; k < label.length(); k++) {
        cells[(int) Math.round(y(hole))][x + k] = label.charAt(k);
      }
    }
    List<String> lines = new ArrayList<>();
    for (char[] row : cells) {
      lines.add(new String(row).stripTrailing());
    }
    return lines;
  }

  /** The first stands straight up, the next to its left. */
  private double angle(int hole) {
    return Math.PI / 2 + 2 * Math.PI * (hole - 1) / count;
  }

  private double x(int hole) {
    return HALF_WIDTH + EDGE + HALF_WIDTH * Math.cos(angle(hole));
  }

  private double y(int hole) {
    return HALF_HEIGHT - HALF_HEIGHT * Math.sin(angle(hole));
  }
}
