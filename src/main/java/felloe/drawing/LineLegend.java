package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** What the line types on a drawing mean (ISO 128), in as many rows as it takes. */
public final class LineLegend {

  private static final double SAMPLE = 14;
  private static final double TEXT = 2.5;
  private static final double ROW = 4.6;
  private static final double GAP = 2;
  private static final double BETWEEN = 6;

  private LineLegend() {}

  /**
   * The legend of those line types that a drawing has; empty where it has no lines.
   *
   * @param width that it may take, mm
   */
  public static Picture of(Drawing drawing, double width) {
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    double y = 0;
    for (LineType type : LineType.values()) {
      if (drawing.marks().stream().noneMatch(m -> m instanceof Mark.Stroke s && s.type() == type)) {
        continue;
      }
      String text = words(type);
      double wide = SAMPLE + GAP + TextWidth.of(text, TEXT);
      if (x > 0 && x + wide > width) {
        x = 0;
        y -= ROW;
      }
      double middle = y - ROW / 2;
      Line line = new Line(new Point(x, middle), new Point(x + SAMPLE, middle));
      marks.add(Mark.Stroke.of(line, type));
      Point at = new Point(x + SAMPLE + GAP, middle - TEXT / 2);
      marks.add(Mark.Label.of(text, at, TEXT, Anchor.START));
      x += wide + BETWEEN;
    }
    return new Picture(Drawing.of("legend", marks), new Box(0, y - ROW, width, 0), 1);
  }

  private static String words(LineType type) {
    return switch (type) {
      case EDGE -> "edge: the finish line";
      case THIN -> "dimension, leader";
      case CENTRE -> "centre line, pitch circle";
      case ROUGH -> "rough line";
      case DASHED -> "hidden edge";
    };
  }
}
