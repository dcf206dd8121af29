package felloe.template;

import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Tiles laid over a drawing in rows and columns, neighbours sharing an overlap. Columns and rows
 * may differ in width and height, so that seams can keep off holes. Coordinates are the drawing's,
 * millimetres. Row 0 is on top, column 0 on the left.
 *
 * @param across what the columns cover, from left to right, overlaps included
 * @param down what the rows cover, from the top down, overlaps included
 * @param overlap what neighbours share
 * @param leftOut tiles (row times columns plus column) that carry nothing and are not printed
 */
public record Grid(List<Span> across, List<Span> down, double overlap, List<Integer> leftOut) {

  /**
   * A stretch of one direction, mm.
   *
   * @param from its lower end
   * @param to its upper end
   */
  public record Span(double from, double to) {}

  /** Takes lists that nobody can change. */
  public Grid {
    across = List.copyOf(across);
    down = List.copyOf(down);
    leftOut = List.copyOf(leftOut);
  }

  /** A single tile. */
  static Grid of(Box tile, double overlap) {
    return new Grid(
        List.of(new Span(tile.minX(), tile.maxX())),
        List.of(new Span(tile.minY(), tile.maxY())),
        overlap,
        List.of());
  }

  /** Number of columns. */
  public int columns() {
    return across.size();
  }

  /** Number of rows. */
  public int rows() {
    return down.size();
  }

  /** The upper left corner of the upper left tile. */
  public Point corner() {
    return new Point(across.get(0).from(), down.get(0).to());
  }

  /** Whether a tile exists and is printed. */
  public boolean has(int row, int column) {
    return row >= 0
        && row < rows()
        && column >= 0
        && column < columns()
        && !leftOut.contains(row * columns() + column);
  }

  /** Number of tiles that are printed. */
  public int count() {
    return rows() * columns() - leftOut.size();
  }

  /** What a tile covers. */
  public Box tile(int row, int column) {
    Span x = across.get(column);
    Span y = down.get(row);
    return new Box(x.from(), y.from(), x.to(), y.to());
  }

  /** x of the seam between a column and the next: the middle of their overlap. */
  public double seamAfterColumn(int column) {
    return across.get(column).to() - overlap / 2;
  }

  /** y of the seam between a row and the next below. */
  public double seamAfterRow(int row) {
    return down.get(row).from() + overlap / 2;
  }

  /** The part of a tile that remains after trimming and is not covered by a neighbour. */
  public Box seen(int row, int column) {
    Box tile = tile(row, column);
    return new Box(
        has(row, column - 1) ? seamAfterColumn(column - 1) : tile.minX(),
        has(row + 1, column) ? seamAfterRow(row) : tile.minY(),
        has(row, column + 1) ? seamAfterColumn(column) : tile.maxX(),
        has(row - 1, column) ? seamAfterRow(row - 1) : tile.maxY());
  }

  /** The same without a strip along each of its seams. */
  Box clear(int row, int column, double strip) {
    Box seen = seen(row, column);
    return new Box(
        seen.minX() + (has(row, column - 1) ? strip : 0),
        seen.minY() + (has(row + 1, column) ? strip : 0),
        seen.maxX() - (has(row, column + 1) ? strip : 0),
        seen.maxY() - (has(row - 1, column) ? strip : 0));
  }

  /** x of every seam that runs up and down. */
  public List<Double> seamsAcross() {
    List<Double> seams = new ArrayList<>();
    for (int i = 0; i + 1 < columns(); i++) {
      seams.add(seamAfterColumn(i));
    }
    return seams;
  }

  /** y of every seam that runs left and right. */
  public List<Double> seamsUp() {
    List<Double> seams = new ArrayList<>();
    for (int i = 0; i + 1 < rows(); i++) {
      seams.add(seamAfterRow(i));
    }
    return seams;
  }

  /** A tile's name by row and column, such as {@code B2}. */
  public static String name(int row, int column) {
    StringBuilder letters = new StringBuilder();
    for (int n = row; n >= 0; n = n / 26 - 1) {
      letters.insert(0, (char) ('A' + n % 26));
    }
    return letters.append(column + 1).toString();
  }

  /** The same grid without some tiles. */
  Grid without(List<Integer> tiles) {
    return new Grid(across, down, overlap, tiles);
  }
}
