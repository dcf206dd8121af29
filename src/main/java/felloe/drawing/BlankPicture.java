package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The picture of a blank on its mould: the plate and the test strips in it, and the tape lines by
 * which plies are placed. To be looked at; the sizes are in words.
 */
public final class BlankPicture {

  private static final double USUAL = 190;
  private static final double TEXT = 3;

  private final BlankView view;
  private final double unit;
  private final List<Mark> tape = new ArrayList<>();
  private final List<Mark> edges = new ArrayList<>();
  private final List<Mark> words = new ArrayList<>();

  private BlankPicture(BlankView view) {
    this.view = view;
    this.unit = Math.max(view.mould().width(), view.mould().height()) / USUAL;
  }

  /** Draws it. */
  public static Picture of(BlankView view) {
    return new BlankPicture(view).draw();
  }

  private Picture draw() {
    Box mould = view.mould();
    Box blank = view.blank().box();
    edges.add(Mark.Stroke.of(Contour.rectangle(mould), LineType.THIN));
    grid(mould);
    middles(mould);
    edges.add(Mark.Stroke.of(view.blank(), LineType.EDGE));
    edges.add(new Mark.Fill(view.plate().contours(), 0.08));
    view.plate().contours().forEach(c -> edges.add(Mark.Stroke.of(c, LineType.EDGE)));
    for (BlankView.Strip strip : view.strips()) {
      edges.add(Mark.Stroke.of(strip.contour(), LineType.EDGE));
      Box box = strip.contour().box();
      boolean upright = box.height() > box.width();
      double height = Math.min(TEXT * unit, 0.6 * Math.min(box.width(), box.height()));
      double turn = upright ? Math.PI / 2 : 0;
      Point base = box.centre().plus(Point.polar(height / 2, turn - Math.PI / 2));
      words.add(new Mark.Label(strip.label(), base, height, turn, Anchor.MIDDLE));
    }
    sizes(blank, mould);
    words.add(label(view.title(), mould.minX(), mould.maxY() + 13 * unit, 1.3 * TEXT));
    double y = mould.minY() - 12 * unit;
    double wide =
        Math.max(mould.maxX(), mould.minX() + TextWidth.of(view.title(), 1.3 * TEXT * unit));
    for (String line : view.words()) {
      words.add(label(line, mould.minX(), y, TEXT));
      wide = Math.max(wide, mould.minX() + TextWidth.of(line, TEXT * unit));
      y -= 1.7 * TEXT * unit;
    }
    Drawing drawing =
        new Drawing(
            List.of(
                new Drawing.Layer("tape-lines", tape),
                new Drawing.Layer("edges", edges),
                new Drawing.Layer("words", words)));
    Box page =
        new Box(mould.minX() - 14 * unit, y - 2 * unit, wide + 8 * unit, mould.maxY() + 22 * unit);
    return new Picture(drawing, page, unit);
  }

  private Mark label(String text, double x, double y, double height) {
    return Mark.Label.of(text, new Point(x, y), height * unit, Anchor.START);
  }

  /** Ticks along the mould's edges at the pitch of the tape grid, counted from the plate's axes. */
  private void grid(Box mould) {
    double step = view.grid();
    double tick = 4 * unit;
    for (double x = step * Math.ceil(mould.minX() / step); x <= mould.maxX(); x += step) {
      stroke(tape, x, mould.minY(), x, mould.minY() + tick, LineType.THIN);
      stroke(tape, x, mould.maxY() - tick, x, mould.maxY(), LineType.THIN);
    }
    for (double y = step * Math.ceil(mould.minY() / step); y <= mould.maxY(); y += step) {
      stroke(tape, mould.minX(), y, mould.minX() + tick, y, LineType.THIN);
      stroke(tape, mould.maxX() - tick, y, mould.maxX(), y, LineType.THIN);
    }
  }

  /** Both axes of the plate, and both lines at 45 degrees through its origin, on the mould. */
  private void middles(Box mould) {
    stroke(tape, mould.minX(), 0, mould.maxX(), 0, LineType.CENTRE);
    stroke(tape, 0, mould.minY(), 0, mould.maxY(), LineType.CENTRE);
    for (int sign = -1; sign <= 1; sign += 2) {
      double low = Math.max(mould.minX(), sign > 0 ? mould.minY() : -mould.maxY());
      double high = Math.min(mould.maxX(), sign > 0 ? mould.maxY() : -mould.minY());
      stroke(tape, low, sign * low, high, sign * high, LineType.CENTRE);
    }
    words.add(
        Mark.Label.of(
            "0\u00b0", new Point(mould.maxX() - 2 * unit, unit), TEXT * unit, Anchor.END));
    words.add(label("90\u00b0", unit, mould.maxY() - 2 * unit - TEXT * unit, TEXT));
    double at = Math.min(mould.maxX(), mould.maxY()) - 6 * unit;
    words.add(
        Mark.Label.of(
            "+45\u00b0", new Point(at - 2 * unit, at - TEXT * unit), TEXT * unit, Anchor.END));
  }

  private void sizes(Box blank, Box mould) {
    String across = Numbers.brief(blank.width(), 1) + " mm";
    String up = Numbers.brief(blank.height(), 1) + " mm";
    double y = mould.minY() - 5 * unit;
    stroke(edges, blank.minX(), y, blank.maxX(), y, LineType.THIN);
    stroke(edges, blank.minX(), y - unit, blank.minX(), y + unit, LineType.THIN);
    stroke(edges, blank.maxX(), y - unit, blank.maxX(), y + unit, LineType.THIN);
    words.add(
        Mark.Label.of(across, new Point(blank.centre().x(), y + unit), TEXT * unit, Anchor.MIDDLE));
    double x = mould.minX() - 5 * unit;
    stroke(edges, x, blank.minY(), x, blank.maxY(), LineType.THIN);
    stroke(edges, x - unit, blank.minY(), x + unit, blank.minY(), LineType.THIN);
    stroke(edges, x - unit, blank.maxY(), x + unit, blank.maxY(), LineType.THIN);
    words.add(
        new Mark.Label(
            up, new Point(x - unit, blank.centre().y()), TEXT * unit, Math.PI / 2, Anchor.MIDDLE));
  }

  private static void stroke(
      List<Mark> marks, double x1, double y1, double x2, double y2, LineType type) {
    marks.add(Mark.Stroke.of(new Line(new Point(x1, y1), new Point(x2, y2)), type));
  }
}
