package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where the sheets of a photo lie on the plane of the paper, whose origin is that of the first one.
 *
 * @param first the sheet that shows the most marks
 * @param at of each sheet, which of all numbers its three begin at; 0 for the first, which has
 *     none; -1 for sheets that are not seen
 * @param count of all numbers, the camera's among them
 */
record SheetsLaid(int first, int[] at, int count) {

  static SheetsLaid of(List<MarksFound.Seen> seen) {
    int[] marks = new int[FrameMarks.SHEETS];
    for (MarksFound.Seen one : seen) {
      marks[one.mark().sheet()]++;
    }
    int first = 0;
    for (int sheet = 1; sheet < marks.length; sheet++) {
      first = marks[sheet] > marks[first] ? sheet : first;
    }
    int[] at = new int[marks.length];
    Arrays.fill(at, -1);
    int next = Camera.NUMBERS;
    for (int sheet = 0; sheet < marks.length; sheet++) {
      if (marks[sheet] > 0) {
        at[sheet] = sheet == first ? 0 : next;
        next += sheet == first ? 0 : 3;
      }
    }
    return new SheetsLaid(first, at, next);
  }

  boolean shows(int sheet) {
    return at[sheet] >= 0;
  }

  /** A place of a sheet on the plane of the paper. */
  Point laid(int sheet, Point p, double[] numbers) {
    int i = at[sheet];
    if (i == 0) {
      return p;
    }
    double cos = Math.cos(numbers[i + 2]);
    double sin = Math.sin(numbers[i + 2]);
    return new Point(
        numbers[i] + cos * p.x() - sin * p.y(), numbers[i + 1] + sin * p.x() + cos * p.y());
  }

  /** The blocks of marks, as they lie on the plane of the paper. */
  List<FrameMarks.Block> blocks(double[] numbers) {
    List<FrameMarks.Block> all = new ArrayList<>();
    for (int sheet = 0; sheet < at.length; sheet++) {
      if (shows(sheet)) {
        for (FrameMarks.Block block : FrameMarks.blocks(sheet)) {
          List<Point> corners = new ArrayList<>();
          for (Point p : block.corners()) {
            corners.add(laid(sheet, p, numbers));
          }
          all.add(new FrameMarks.Block(corners, block.rim(), block.foot()));
        }
      }
    }
    return all;
  }
}
