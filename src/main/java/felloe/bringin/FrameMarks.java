package felloe.bringin;

import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the marks lie on the sheets of the photo frame: square marks of the ArUco kind, out of the
 * published dictionary MIP_36h12 (36 bits, any two of which differ in 12). Two or four sheets lie
 * round the part, or a small part lies on a sheet by itself, within a ring of smaller marks. Each
 * sheet has marks of its own, so that a photo tells which sheet lies where.
 */
public final class FrameMarks {

  /** Sheets that lie round a part, and the one on which a part lies. */
  public static final int ROUND = 4;

  /** The sheet on which a small part lies. */
  public static final int TARGET = 4;

  static final int SHEETS = 5;

  /** Columns and rows of marks on a sheet: they fit on A4 (ISO 216) and on letter paper. */
  private static final int COLUMNS = 3;

  private static final int ROWS = 4;

  /** Side of a mark, its black border counted, mm; and from one to the next. */
  private static final double SIDE = 38;

  private static final double PITCH = 53;

  /** The same of the ring, of which only the outer marks are there. */
  private static final int RING_COLUMNS = 5;

  private static final int RING_ROWS = 6;
  private static final double RING_SIDE = 24;
  private static final double RING_PITCH = 36;

  /** White paper ends before this far from the marks of a sheet beside the part, mm. */
  private static final double PAPER = 50;

  /** The same below them, where words stand on A4: {@code template.PhotoSheet} lays it out. */
  private static final double PAPER_BELOW = 90;

  /** Modules along a mark's side: six of data and a border of one all round. */
  static final int MODULES = 8;

  private static final int DATA = MODULES - 2;

  private static final List<Mark> ALL = made();

  private FrameMarks() {}

  /**
   * A mark.
   *
   * @param id its number in the dictionary
   * @param sheet from 0
   * @param corner lower left, mm from the lower left corner of the sheet's first mark
   * @param side its border counted, mm
   */
  public record Mark(int id, int sheet, Point corner, double side) {

    /** Its corners, counter-clockwise from the lower left, on its sheet. */
    public List<Point> corners() {
      return List.of(
          corner,
          new Point(corner.x() + side, corner.y()),
          new Point(corner.x() + side, corner.y() + side),
          new Point(corner.x(), corner.y() + side));
    }
  }

  /**
   * A rectangle full of marks.
   *
   * @param corners counter-clockwise
   * @param rim how far round it there may be white paper on a darker ground, mm; 0 where paper is
   *     the ground
   * @param foot the same below its first side
   */
  record Block(List<Point> corners, double rim, double foot) {
    Block {
      corners = List.copyOf(corners);
    }
  }

  /** All marks, in the order of their numbers. */
  public static List<Mark> all() {
    return ALL;
  }

  /** The marks of a sheet. */
  public static List<Mark> of(int sheet) {
    return ALL.stream().filter(mark -> mark.sheet() == sheet).toList();
  }

  private static List<Mark> made() {
    List<Mark> marks = new ArrayList<>();
    for (int sheet = 0; sheet < ROUND; sheet++) {
      for (int row = 0; row < ROWS; row++) {
        for (int column = 0; column < COLUMNS; column++) {
          marks.add(new Mark(marks.size(), sheet, new Point(column * PITCH, row * PITCH), SIDE));
        }
      }
    }
    for (int row = 0; row < RING_ROWS; row++) {
      for (int column = 0; column < RING_COLUMNS; column++) {
        boolean inner = row > 0 && row < RING_ROWS - 1 && column > 0 && column < RING_COLUMNS - 1;
        if (!inner) {
          Point corner = new Point(column * RING_PITCH, row * RING_PITCH);
          marks.add(new Mark(marks.size(), TARGET, corner, RING_SIDE));
        }
      }
    }
    return List.copyOf(marks);
  }

  /** The white of a mark on its sheet, as rectangles that overlap; all else within it is black. */
  public static List<Box> white(Mark mark) {
    double unit = mark.side() / MODULES;
    List<Box> all = new ArrayList<>();
    for (int row = 0; row < DATA; row++) {
      for (int column = 0; column < DATA; column++) {
        if (!MarksFound.black(mark.id(), row, column)) {
          // With the neighbours to the right and below, so that no hair of black stays between.
          double x = mark.corner().x() + (column + 1) * unit;
          double y = mark.corner().y() + mark.side() - (row + 2) * unit;
          int right = column + 1 < DATA && !MarksFound.black(mark.id(), row, column + 1) ? 1 : 0;
          int below = row + 1 < DATA && !MarksFound.black(mark.id(), row + 1, column) ? 1 : 0;
          all.add(new Box(x, y, x + (1 + right) * unit, y + unit));
          all.add(new Box(x, y - below * unit, x + unit, y + unit));
        }
      }
    }
    return all;
  }

  /** How wide and high the marks of a sheet reach from its origin. */
  public static Point extent(int sheet) {
    return sheet == TARGET
        ? new Point(
            (RING_COLUMNS - 1) * RING_PITCH + RING_SIDE, (RING_ROWS - 1) * RING_PITCH + RING_SIDE)
        : new Point((COLUMNS - 1) * PITCH + SIDE, (ROWS - 1) * PITCH + SIDE);
  }

  /** What a part on the sheet may measure, mm: it keeps away from the marks. */
  public static Point free() {
    Point all = extent(TARGET);
    double edge = 2 * (RING_SIDE + 2 * PartSeen.BESIDE_MARKS);
    return new Point(all.x() - edge, all.y() - edge);
  }

  static List<Block> blocks(int sheet) {
    Point far = extent(sheet);
    if (sheet != TARGET) {
      return List.of(block(0, 0, far.x(), far.y(), PAPER, PAPER_BELOW));
    }
    return List.of(
        block(0, 0, far.x(), RING_SIDE, 0, 0),
        block(0, far.y() - RING_SIDE, far.x(), far.y(), 0, 0),
        block(0, 0, RING_SIDE, far.y(), 0, 0),
        block(far.x() - RING_SIDE, 0, far.x(), far.y(), 0, 0));
  }

  private static Block block(double x0, double y0, double x1, double y1, double rim, double foot) {
    return new Block(
        List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)),
        rim,
        foot);
  }
}
