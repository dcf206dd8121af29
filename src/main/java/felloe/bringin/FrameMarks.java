package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the marks lie on the sheets of the photo frame: square marks of the ArUco kind, out of the
 * published dictionary MIP_36h12 (36 bits, any two of which differ in 12). Four sheets lie round
 * the part, each with marks of its own, so that a photo tells which sheet lies where.
 */
final class FrameMarks {

  /** Sheets of the frame. */
  static final int SHEETS = 4;

  /** Columns and rows of marks on a sheet: they fit on A4 (ISO 216) and on letter paper. */
  static final int COLUMNS = 3;

  static final int ROWS = 4;

  /** Side of a mark, its black border counted, mm; and from one to the next. */
  static final double SIDE = 44;

  static final double PITCH = 62;

  /** Modules along a mark's side: six of data and a border of one all round. */
  static final int MODULES = 8;

  private FrameMarks() {}

  /**
   * A mark.
   *
   * @param id its number in the dictionary
   * @param sheet from 0
   * @param corner lower left, mm from the lower left corner of the sheet's first mark
   */
  record Mark(int id, int sheet, Point corner) {

    /** Its corners, counter-clockwise from the lower left, on its sheet. */
    List<Point> corners() {
      return List.of(
          corner,
          new Point(corner.x() + SIDE, corner.y()),
          new Point(corner.x() + SIDE, corner.y() + SIDE),
          new Point(corner.x(), corner.y() + SIDE));
    }
  }

  /** All marks, in the order of their numbers. */
  static List<Mark> all() {
    List<Mark> marks = new ArrayList<>();
    for (int sheet = 0; sheet < SHEETS; sheet++) {
      for (int row = 0; row < ROWS; row++) {
        for (int column = 0; column < COLUMNS; column++) {
          marks.add(new Mark(marks.size(), sheet, new Point(column * PITCH, row * PITCH)));
        }
      }
    }
    return List.copyOf(marks);
  }
}
