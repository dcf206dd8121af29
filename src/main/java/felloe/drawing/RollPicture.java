package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Combine;
import felloe.geometry.Contour;
import felloe.geometry.LargestCircle;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * The cutting plan of a cloth. A long roll may be shown in several lengths side by side; each then
 * goes on where the one to its left ends.
 */
public final class RollPicture {

  private static final double USUAL = 190;
  private static final double TEXT = 3;
  private static final int MOST = 8;

  private final RollView view;
  private final int columns;
  private final double each;
  private final double gap;
  private final double unit;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Mark> words = new ArrayList<>();

  private RollPicture(RollView view, int columns) {
    this.view = view;
    this.columns = columns;
    this.each = view.length() / columns;
    this.gap = 0.2 * view.width();
    this.unit = Math.max(columns * (view.width() + gap), 0.8 * each) / USUAL;
  }

  /** The whole roll in one length, at its true coordinates. */
  public static Picture of(RollView view) {
    return new RollPicture(view, 1).draw();
  }

  /** The roll in as many lengths as make it largest in a field of a width and height. */
  public static Picture in(RollView view, double width, double height) {
    int best = 1;
    double largest = 0;
    for (int columns = 1; columns <= MOST; columns++) {
      double wide = columns * 1.2 * view.width();
      double high = 1.25 * view.length() / columns;
      double scale = Math.min(width / wide, height / high);
      if (scale > 1.001 * largest) {
        best = columns;
        largest = scale;
      }
    }
    return new RollPicture(view, best).draw();
  }

  private Picture draw() {
    for (int i = 0; i < columns; i++) {
      column(i);
    }
    double right = columns * view.width() + (columns - 1) * gap;
    double top = each;
    words.add(label(view.title(), 0, top + 9 * unit, 1.3 * TEXT));
    double y = -5 * unit;
    List<String> lines = new ArrayList<>(view.words());
    if (columns > 1) {
      lines.add(
          "The roll is shown in "
              + columns
              + " lengths: each goes on where the one to its left ends.");
    }
    double wide = TextWidth.of(view.title(), 1.3 * TEXT * unit);
    for (String line : lines) {
      y -= 1.7 * TEXT * unit;
      words.add(label(line, 0, y, TEXT));
      wide = Math.max(wide, TextWidth.of(line, TEXT * unit));
    }
    Box page =
        new Box(-14 * unit, y - 4 * unit, Math.max(right, wide) + 12 * unit, top + 18 * unit);
    Drawing drawing =
        new Drawing(List.of(new Drawing.Layer("pieces", marks), new Drawing.Layer("words", words)));
    return new Picture(drawing, page, unit);
  }

  private Mark label(String text, double x, double y, double height) {
    return Mark.Label.of(text, new Point(x, y), height * unit, Anchor.START);
  }

  /** One length of the roll; the roll's own y starts at the bottom of the first. */
  private void column(int index) {
    double low = index * each;
    double left = index * (view.width() + gap);
    Box box = new Box(left, 0, left + view.width(), each);
    marks.add(Mark.Stroke.of(Contour.rectangle(box), LineType.THIN));
    Region seen = Region.of(Contour.rectangle(new Box(-1, low, view.width() + 1, low + each)));
    RigidTransform motion = RigidTransform.shift(left, -low);
    for (RollView.Piece piece : view.pieces()) {
      Box all = piece.region().outer().box();
      if (all.maxY() <= low || all.minY() >= low + each) {
        continue;
      }
      boolean whole = all.minY() >= low && all.maxY() <= low + each;
      List<Region> parts =
          whole
              ? List.of(piece.region())
              : Combine.intersection(List.of(piece.region()), List.of(seen));
      for (Region part : parts) {
        Contour edge = part.outer().moved(motion);
        marks.add(new Mark.Fill(List.of(edge), 0.06));
        marks.add(Mark.Stroke.of(edge, LineType.EDGE));
      }
      // The name stands on the largest part alone.
      double most = Math.min(all.maxY(), low + each) - Math.max(all.minY(), low);
      if (most >= 0.5 * all.height() - Tolerances.ROUNDING && !parts.isEmpty()) {
        name(piece, parts.get(0).outer().moved(motion));
      }
    }
    warp(left, box);
    ticks(low, left);
  }

  private void name(RollView.Piece piece, Contour edge) {
    LargestCircle found = LargestCircle.inside(edge);
    double room = 1.7 * found.radius();
    double height = fitted(piece.label(), Math.min(1.4 * TEXT * unit, 0.6 * found.radius()), room);
    double small = fitted(piece.direction(), 0.7 * height, room);
    Point at = found.centre();
    words.add(Mark.Label.of(piece.label(), at, height, Anchor.MIDDLE));
    Point below = at.minus(new Point(0, 1.6 * small));
    words.add(Mark.Label.of(piece.direction(), below, small, Anchor.MIDDLE));
  }

  private static double fitted(String text, double height, double room) {
    double width = TextWidth.of(text, height);
    return width > room ? height * room / width : height;
  }

  private void warp(double left, Box box) {
    double x = left + view.width() + gap / 2;
    double y = 0.3 * box.height();
    double length = Math.min(30 * unit, 0.4 * box.height());
    Point tip = new Point(x, y + length);
    marks.add(Mark.Stroke.of(new Line(new Point(x, y), tip), LineType.EDGE));
    marks.add(
        new Mark.Fill(
            List.of(
                Contour.polygon(
                    List.of(
                        tip,
                        tip.minus(new Point(unit, 3 * unit)),
                        tip.minus(new Point(-unit, 3 * unit))))),
            1));
    words.add(
        new Mark.Label(
            "warp",
            new Point(x - unit, y + length / 2),
            0.9 * TEXT * unit,
            Math.PI / 2,
            Anchor.MIDDLE));
  }

  /** How far along the roll, at the left edge. */
  private void ticks(double low, double left) {
    double step = each > 4000 ? 1000 : each > 1500 ? 500 : 200;
    for (double y = step * Tolerances.up(low / step);
        y <= low + each + Tolerances.ROUNDING;
        y += step) {
      Point at = new Point(left, y - low);
      marks.add(Mark.Stroke.of(new Line(at.minus(new Point(2 * unit, 0)), at), LineType.THIN));
      words.add(
          Mark.Label.of(
              Numbers.brief(y / 1000, 1),
              at.minus(new Point(2.5 * unit, 0.4 * TEXT * unit)),
              0.8 * TEXT * unit,
              Anchor.END));
    }
  }
}
