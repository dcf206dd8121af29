package felloe.template;

import felloe.drawing.Anchor;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.TextWidth;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * The check bars: lines of a round length with end ticks, to lay a rule on. The length counts
 * between the middles of the end ticks.
 */
final class CheckBars {

  private static final double LONG = 4;
  private static final double MIDDLE = 2.2;
  private static final double SHORT = 1.4;

  /** What words leave free for the end ticks, mm. */
  private static final double BESIDE_TICKS = 3;

  private CheckBars() {}

  /** A bar that runs to the right from a point, ticks and words above it. */
  static List<Mark> across(Point start, double length) {
    List<Mark> marks = new ArrayList<>();
    marks.add(line(start, start.plus(new Point(length, 0))));
    for (int i = 0; 10 * i <= length + Tolerances.ROUNDING; i++) {
      Point foot = start.plus(new Point(10 * i, 0));
      marks.add(line(foot, foot.plus(new Point(0, tick(i, length)))));
    }
    Point words = start.plus(new Point(length / 2, 3));
    marks.add(Mark.Label.of(words(length), words, StripText.SMALL, Anchor.MIDDLE));
    return marks;
  }

  /** A bar that runs up from a point, ticks and words to the left of it. */
  static List<Mark> up(Point start, double length) {
    List<Mark> marks = new ArrayList<>();
    marks.add(line(start, start.plus(new Point(0, length))));
    for (int i = 0; 10 * i <= length + Tolerances.ROUNDING; i++) {
      Point foot = start.plus(new Point(0, 10 * i));
      marks.add(line(foot, foot.plus(new Point(-tick(i, length), 0))));
    }
    Point words = start.plus(new Point(-3, length / 2));
    marks.add(new Mark.Label(words(length), words, StripText.SMALL, Math.PI / 2, Anchor.MIDDLE));
    return marks;
  }

  private static double tick(int i, double length) {
    boolean end = i == 0 || Math.abs(10 * i - length) < Tolerances.ROUNDING;
    return end ? LONG : i % 5 == 0 ? MIDDLE : SHORT;
  }

  /** Between the end ticks, in fewer words where the bar is short. */
  private static String words(double length) {
    String bar = "check bar " + Numbers.brief(length, 1) + " mm";
    String whole = bar + " between the end ticks: measure before use";
    boolean room = TextWidth.of(whole, StripText.SMALL) <= length - BESIDE_TICKS;
    return room ? whole : bar + ": measure before use";
  }

  private static Mark line(Point from, Point to) {
    return Mark.Stroke.of(new Line(from, to), LineType.THIN);
  }
}
