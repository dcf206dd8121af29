package felloe.template;

import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Tiles laid over a drawing in rows and columns, neighbours sharing an overlap. Coordinates are the
 * drawing's, millimetres. Row 0 is on top, column 0 on the left.
 *
 * @param columns number of columns
 * @param rows number of rows
 * @param tileWidth width of a tile, overlap included
 * @param tileHeight height of a tile, overlap included
 * @param overlap what neighbours share
 * @param corner the upper left corner of the upper left tile
 * @param leftOut tiles (row times columns plus column) that carry nothing and are not printed
 */
public record Grid(
    int columns,
    int rows,
    double tileWidth,
    double tileHeight,
    double overlap,
    Point corner,
    List<Integer> leftOut) {

  /** Copies the list. */
  public Grid {
    leftOut = List.copyOf(leftOut);
  }

  /** Whether a tile exists and is printed. */
  public boolean has(int row, int column) {
    return row >= 0
        && row < rows
        && column >= 0
        && column < columns
        && !leftOut.contains(row * columns + column);
  }

  /** Number of tiles that are printed. */
  public int count() {
    return rows * columns - leftOut.size();
  }

  /** What a tile covers. */
  public Box tile(int row, int column) {
    double x = corner.x() + column * (tileWidth - overlap);
    double y = corner.y() - row * (tileHeight - overlap);
    return new Box(x, y - tileHeight, x + tileWidth, y);
  }

  /** x of the seam between a column and the next: the middle of their overlap. */
  public double seamAfterColumn(int column) {
    return corner.x() + (column + 1) * (tileWidth - overlap) + overlap / 2;
  }

  /** y of the seam between a row and the next below. */
  public double seamAfterRow(int row) {
    return corner.y() - (row + 1) * (tileHeight - overlap) - overlap / 2;
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

  /** x of every seam that runs up and down. */
  public List<Double> seamsAcross() {
    List<Double> seams = new ArrayList<>();
    for (int i = 0; i + 1 < columns; i++) {
      seams.add(seamAfterColumn(i));
    }
    return seams;
  }

  /** y of every seam that runs left and right. */
  public List<Double> seamsUp() {
    List<Double> seams = new ArrayList<>();
    for (int i = 0; i + 1 < rows; i++) {
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
    return new Grid(columns, rows, tileWidth, tileHeight, overlap, corner, tiles);
  }
}
