package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * Acts on a line of hours, one below the other: a black bar for work, an open one for waiting, with
 * its hours beside it.
 */
public final class TimeLine {

  private static final double ROW = 3.6;
  private static final double BAR = 2.6;
  private static final double TEXT = 2.5;
  private static final double LEFT = 8;
  private static final double GAP = 3;

  /** Room for the figure at a line, mm. */
  private static final double EACH = 9;

  private TimeLine() {}

  /**
   * An act.
   *
   * @param name by which it is known
   * @param begins hours
   * @param work hours of work
   * @param waiting hours of waiting after it
   * @param words its hours in words
   */
  public record Span(String name, double begins, double work, double waiting, String words) {

    private double ends() {
      return begins + work + waiting;
    }
  }

  /**
   * The picture, at its size on the page.
   *
   * @param width that it may take, mm
   */
  public static Picture of(List<Span> spans, double width) {
    double words = TextWidth.widest(spans.stream().map(Span::words).toList(), TEXT);
    double wide = width - LEFT - GAP - words;
    double all = spans.stream().mapToDouble(Span::ends).max().orElse(1);
    double step = step(all, wide);
    double axis = step * Tolerances.up(all / step);
    double scale = wide / axis;
    double below = -ROW * spans.size();
    List<Mark> marks = new ArrayList<>();
    for (double hour = 0; hour <= axis + step / 2; hour += step) {
      double x = hour * scale;
      marks.add(Mark.Stroke.of(new Line(new Point(x, 0), new Point(x, below)), LineType.THIN));
      String text = Numbers.brief(hour, 0) + (hour == 0 ? " h" : "");
      marks.add(Mark.Label.of(text, new Point(x, 1.4), TEXT, Anchor.MIDDLE));
    }
    for (int i = 0; i < spans.size(); i++) {
      double y = -ROW * (i + 0.5);
      row(spans.get(i), y, scale, marks);
      Point at = new Point(wide + GAP, y - TEXT / 2);
      marks.add(Mark.Label.of(spans.get(i).words(), at, TEXT, Anchor.START));
    }
    Box page = new Box(-LEFT, below - 1, wide + GAP + words, 2 * TEXT);
    return new Picture(Drawing.of("time", marks), page, 1);
  }

  private static void row(Span span, double y, double scale, List<Mark> marks) {
    double from = span.begins() * scale;
    double between = from + span.work() * scale;
    double to = between + span.waiting() * scale;
    double low = y - BAR / 2;
    marks.add(Mark.Label.of(span.name(), new Point(-2, y - TEXT / 2), TEXT, Anchor.END));
    if (span.work() > 0) {
      Box bar = new Box(from, low, Math.max(between, from + 0.4), low + BAR);
      marks.add(new Mark.Fill(List.of(Contour.rectangle(bar)), 1));
    }
    if (span.waiting() > 0) {
      Contour bar = Contour.rectangle(new Box(between, low, to, low + BAR));
      marks.add(new Mark.Fill(List.of(bar), 0));
      marks.add(Mark.Stroke.of(bar, LineType.EDGE));
    }
  }

  /** Hours between the lines: a part of a day, or days. */
  private static double step(double all, double wide) {
    double most = Math.max(1, Math.floor(wide / EACH));
    for (double step : new double[] {1, 2, 4, 6, 12, 24, 48}) {
      if (all / step <= most) {
        return step;
      }
    }
    return 24 * Math.ceil(all / 24 / most);
  }
}
