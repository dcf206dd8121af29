package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * An instrument and the wheel before it, as an eye sees them: what is nearer covers what is not.
 */
public final class SightPicture {

  private static final double USUAL = 170;
  private static final double TEXT = 4.2;
  private static final double EDGE = 8;
  private static final double DARK = 0.55;
  private static final double LIGHT = 0.12;

  private SightPicture() {}

  /**
   * Draws it.
   *
   * @param title above it
   * @param instrument edge of what is to be seen
   * @param covers what lies before it, outer edge and holes, the farthest first
   */
  public static Picture of(String title, Contour instrument, List<List<Contour>> covers) {
    Box box = instrument.box();
    for (List<Contour> cover : covers) {
      box = box.union(cover.get(0).box());
    }
    double unit = Math.max(box.width(), box.height()) / USUAL;
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Fill(List.of(instrument), DARK));
    marks.add(Mark.Stroke.of(instrument, LineType.EDGE));
    for (List<Contour> cover : covers) {
      marks.add(new Mark.Fill(cover, LIGHT));
      cover.forEach(edge -> marks.add(Mark.Stroke.of(edge, LineType.THIN)));
    }
    double height = TEXT * unit;
    Mark words =
        Mark.Label.of(
            title, new Point(box.minX(), box.maxY() + EDGE * unit / 2), height, Anchor.START);
    Box page =
        new Box(
            box.minX() - EDGE * unit,
            box.minY() - EDGE * unit,
            Math.max(box.maxX(), box.minX() + TextWidth.of(title, height)) + EDGE * unit,
            box.maxY() + 2 * EDGE * unit);
    return new Picture(
        new Drawing(
            List.of(new Drawing.Layer("edges", marks), new Drawing.Layer("words", List.of(words)))),
        page,
        unit);
  }
}
