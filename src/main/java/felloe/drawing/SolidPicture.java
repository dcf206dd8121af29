package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.solid.Shaded;
import felloe.solid.Solid;
import felloe.solid.View;
import java.util.ArrayList;
import java.util.List;

/**
 * Bodies as they look, shaded, from the front and slanted, side by side at one scale. Not to be
 * measured.
 */
public final class SolidPicture {

  /** Width of both views together, mm, and how high the taller may be. */
  private static final double WIDE = 240;

  private static final double HIGH = 130;
  private static final double GAP = 8;
  private static final double TEXT = 3.2;
  private static final double MARGIN = 3;

  /** Dots a millimetre, as many as a good printer shows in greys; common practice. */
  private static final double DOTS = 8;

  private SolidPicture() {}

  /**
   * The picture of bodies where they stand.
   *
   * @param title what they are
   */
  public static Picture of(String title, List<Solid> bodies) {
    List<Mark> marks = new ArrayList<>();
    Box front = seen(bodies, View.FRONT);
    Box slanted = seen(bodies, View.SLANTED);
    double scale =
        Math.min(
            (WIDE - GAP) / (front.width() + slanted.width()),
            HIGH / Math.max(front.height(), slanted.height()));
    double high = scale * Math.max(front.height(), slanted.height());
    double beside = scale * front.width() + GAP;
    marks.add(shade(bodies, View.FRONT, front, scale, new Point(0, 0), high));
    marks.add(shade(bodies, View.SLANTED, slanted, scale, new Point(beside, 0), high));
    double end = beside + scale * slanted.width();
    List<Mark> words = new ArrayList<>();
    double under = -TEXT - 3;
    words.add(word("from the front", scale * front.width() / 2, under, TEXT, Anchor.MIDDLE));
    words.add(word("slanted", (beside + end) / 2, under, TEXT, Anchor.MIDDLE));
    double head = high + 4;
    words.add(word(title, 0, head, 1.25 * TEXT, Anchor.START));
    double right = Math.max(end, TextWidth.of(title, 1.25 * TEXT));
    Box page = new Box(0, under - 1.5, right, head + 1.25 * TEXT).grown(MARGIN);
    Drawing drawing =
        new Drawing(List.of(new Drawing.Layer("bodies", marks), new Drawing.Layer("words", words)));
    return new Picture(drawing, page, 1);
  }

  private static Mark word(String text, double x, double y, double height, Anchor anchor) {
    return Mark.Label.of(text, new Point(x, y), height, anchor);
  }

  private static Box seen(List<Solid> bodies, View view) {
    return bodies.stream()
        .flatMap(body -> body.vertices().stream())
        .map(v -> Box.of(view.at(v), view.at(v)))
        .reduce(Box::union)
        .orElseThrow();
  }

  /** One view, in the middle of its height. */
  private static Mark shade(
      List<Solid> bodies, View view, Box seen, double scale, Point at, double high) {
    double longer = scale * Math.max(seen.width(), seen.height());
    Shaded shaded = Shaded.of(bodies, view, (int) Math.max(64, DOTS * longer));
    double left = at.x() + scale * (shaded.box().minX() - seen.minX());
    double low =
        at.y() + (high - scale * seen.height()) / 2 + scale * (shaded.box().minY() - seen.minY());
    return new Mark.Shade(
        shaded,
        new Box(
            left, low, left + scale * shaded.box().width(), low + scale * shaded.box().height()));
  }
}
