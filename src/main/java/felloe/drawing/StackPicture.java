package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * The picture of a stack: the plies one on the other, each hatched along its yarns, beside it the
 * directions on the plate. Not to scale through the thickness.
 */
public final class StackPicture {

  /** Sine of an angle below which yarns are drawn as one line along the ply. */
  private static final double FLAT = 1e-6;

  private static final double BAR = 90;
  private static final double HIGHEST = 9;
  private static final double TALLEST = 200;
  private static final double TEXT = 3;

  private final StackView view;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Mark> words = new ArrayList<>();

  private StackPicture(StackView view) {
    this.view = view;
  }

  /** Draws it. */
  public static Picture of(StackView view) {
    return new StackPicture(view).draw();
  }

  private Picture draw() {
    double ply = Math.min(HIGHEST, TALLEST / view.plies().size());
    double top = ply * view.plies().size();
    for (int i = 0; i < view.plies().size(); i++) {
      ply(view.plies().get(i), new Box(0, i * ply, BAR, (i + 1) * ply));
    }
    words.add(label("Front face (the driver's)", 0, top + 2.5, TEXT));
    words.add(label("Back face, on the mould: ply 1", 0, -TEXT - 2.5, TEXT));
    double middle = top / 2;
    // Outside of the numbers and directions, which stand on the line when the plies are odd.
    for (double[] x : new double[][] {{-14, -8}, {0, BAR}, {BAR + 20, BAR + 30}}) {
      marks.add(
          Mark.Stroke.of(
              new Line(new Point(x[0], middle), new Point(x[1], middle)), LineType.CENTRE));
    }
    words.add(label("middle", BAR + 31, middle - TEXT / 2, 0.8 * TEXT));
    double right = rose(BAR + 75, Math.max(30, top - 28));
    double head = Math.max(top, 60) + 16;
    words.add(label(view.title(), 0, head, 1.3 * TEXT));
    words.add(label(view.thickness() + ". " + view.properties() + ".", 0, head - 6, 0.9 * TEXT));
    double wide =
        Math.max(
            TextWidth.of(view.title(), 1.3 * TEXT),
            TextWidth.of(view.thickness() + ". " + view.properties() + ".", 0.9 * TEXT));
    Drawing drawing =
        new Drawing(List.of(new Drawing.Layer("plies", marks), new Drawing.Layer("words", words)));
    Box page = new Box(-16, -12, Math.max(right, wide) + 6, head + 8);
    return new Picture(drawing, page, 1);
  }

  private static Mark label(String text, double x, double y, double height) {
    return Mark.Label.of(text, new Point(x, y), height, Anchor.START);
  }

  private void ply(StackView.Ply ply, Box box) {
    Contour edge = Contour.rectangle(box);
    hatch(ply.angle(), box);
    if (view.woven()) {
      hatch(ply.angle() + 90, box);
    }
    marks.add(Mark.Stroke.of(edge, LineType.EDGE));
    double height = Math.min(TEXT, 0.6 * box.height());
    double base = box.centre().y() - height / 2;
    words.add(
        Mark.Label.of(Integer.toString(ply.number()), new Point(-2, base), height, Anchor.END));
    words.add(label(ply.words(), BAR + 2.5, base, height));
  }

  /** Lines along the yarns as seen from the front; yarns along x are one line, across it ticks. */
  private void hatch(double angle, Box box) {
    double a = Math.toRadians(angle);
    double sin = Math.abs(Math.sin(a));
    if (sin < FLAT) {
      double y = box.centre().y();
      marks.add(
          Mark.Stroke.of(
              new Line(new Point(box.minX(), y), new Point(box.maxX(), y)), LineType.THIN));
      return;
    }
    double lean = box.height() * Math.cos(a) / Math.sin(a);
    double step = 4;
    for (double x = box.minX() - Math.abs(lean); x <= box.maxX() + Math.abs(lean); x += step) {
      double t0 = clip(x, lean, box, true);
      double t1 = clip(x, lean, box, false);
      if (t1 - t0 > 0.02) {
        Point from = new Point(x + t0 * lean, box.minY() + t0 * box.height());
        Point to = new Point(x + t1 * lean, box.minY() + t1 * box.height());
        marks.add(Mark.Stroke.of(new Line(from, to), LineType.THIN));
      }
    }
  }

  /** Where a leaning line enters or leaves the bar, as a share of its height. */
  private static double clip(double x, double lean, Box box, boolean enters) {
    if (Math.abs(lean) < Tolerances.ROUNDING) {
      boolean inside = x > box.minX() + Tolerances.ROUNDING && x < box.maxX() - Tolerances.ROUNDING;
      return enters || !inside ? 0 : 1;
    }
    double a = (box.minX() - x) / lean;
    double b = (box.maxX() - x) / lean;
    double low = Math.max(0, Math.min(a, b));
    double high = Math.min(1, Math.max(a, b));
    return enters ? low : Math.max(low, high);
  }

  /** Directions on the plate, seen from the front; returns its right end. */
  private double rose(double x, double y) {
    double arm = 22;
    Point centre = new Point(x, y);
    marks.add(Mark.Stroke.of(Contour.circle(centre, arm), LineType.THIN));
    for (double degrees : new double[] {0, 45, 90, -45}) {
      Point out = Point.polar(arm + 4, Math.toRadians(degrees));
      marks.add(Mark.Stroke.of(new Line(centre.minus(out), centre.plus(out)), LineType.CENTRE));
      Point at = centre.plus(Point.polar(arm + 6, Math.toRadians(degrees)));
      String text = (degrees > 0 ? "+" : "") + (int) degrees + "\u00b0";
      double low = degrees == 90 ? 0 : TEXT / 2;
      words.add(
          Mark.Label.of(
              text,
              at.minus(new Point(0, low)),
              0.9 * TEXT,
              degrees == 90 ? Anchor.MIDDLE : Anchor.START));
    }
    words.add(label("warp, seen from the front;", x - arm - 4, y - arm - 11, 0.8 * TEXT));
    words.add(
        label("0\u00b0 is the plate's x, to the right", x - arm - 4, y - arm - 15, 0.8 * TEXT));
    return x + arm + 18;
  }
}
