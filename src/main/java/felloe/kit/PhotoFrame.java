package felloe.kit;

import felloe.bringin.FrameMarks;
import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.template.PhotoSheet;
import java.util.ArrayList;
import java.util.List;

/** The sheets of the photo frame, with what to do with them. */
final class PhotoFrame {

  private PhotoFrame() {}

  /** Four to lie round a part, and one for a small part to lie on. */
  static List<PhotoSheet> sheets() {
    List<PhotoSheet> all = new ArrayList<>();
    for (int sheet = 0; sheet < FrameMarks.ROUND; sheet++) {
      String name = "Photo frame, sheet " + (sheet + 1) + " of " + FrameMarks.ROUND;
      all.add(sheet(name, sheet, round()));
    }
    all.add(sheet("Photo frame, sheet for a small part", FrameMarks.TARGET, target()));
    return all;
  }

  private static PhotoSheet sheet(String name, int sheet, List<String> steps) {
    List<Box> black = new ArrayList<>();
    List<Box> white = new ArrayList<>();
    for (FrameMarks.Mark mark : FrameMarks.of(sheet)) {
      Point c = mark.corner();
      black.add(new Box(c.x(), c.y(), c.x() + mark.side(), c.y() + mark.side()));
      white.addAll(FrameMarks.white(mark));
    }
    return new PhotoSheet(name, black, white, steps);
  }

  private static List<String> round() {
    return List.of(
        "Tape the sheets flat on one plane round the part, a hand's breadth off: all four, or 1 and"
            + " 2 left and right of a part no higher than they are. The ground plainly lighter or"
            + " darker than the part.",
        "Look straight down, the wheel upright, all marks in the photo, light from all sides, no"
            + " flash. A part that hangs or stands can fall: lay it down.");
  }

  private static List<String> target() {
    Point free = FrameMarks.free();
    return List.of(
        "For a part of up to "
            + Numbers.brief(Math.floor(free.x()), 0)
            + " x "
            + Numbers.brief(Math.floor(free.y()), 0)
            + " mm, plainly darker than paper: lay it in the middle, clear of all marks, the paper"
            + " flat.",
        "Look straight down, the part upright, all marks in the photo, light from all sides, no"
            + " flash.");
  }
}
