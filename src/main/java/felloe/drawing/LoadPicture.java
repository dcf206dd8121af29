package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** The picture of a plate under a load: its maps side by side, and what belongs to them. */
public final class LoadPicture {

  /** The width or height that one unit of lettering is made for, mm. */
  private static final double USUAL = 280;

  private static final double LEADING = 1.6;

  /** What has room on the smaller of the usual papers, mm. */
  private static final Box PAGE = new Box(0, 0, 182, 228);

  private static final double HEAD = 3.5;
  private static final double PAGE_TEXT = 2.2;
  private static final double PITCH = 3.6;
  private static final double GAP = 5;

  private LoadPicture() {}

  /** Draws it. */
  public static Picture of(LoadView view) {
    Box plate = view.region().outer().box();
    double unit = Math.max(plate.width(), plate.height()) / USUAL;
    Drawing drawing = new Drawing(List.of());
    Box page = null;
    for (LoadView.Map map : view.maps()) {
      Picture picture = LoadMap.of(view, map, unit);
      double shift = page == null ? 0 : page.maxX() + 6 * unit - picture.page().minX();
      Point by = new Point(shift, 0);
      Box moved =
          new Box(
              picture.page().minX() + shift,
              picture.page().minY(),
              picture.page().maxX() + shift,
              picture.page().maxY());
      drawing = drawing.and(ScaledPicture.moved(picture.drawing(), by));
      page = page == null ? moved : page.union(moved);
    }
    double text = LoadMap.TEXT * unit;
    double left = page.minX() + 6 * unit;
    double wide = page.width() - 12 * unit;
    List<Mark> words = new ArrayList<>();
    double large = 1.4 * text;
    List<String> head = Paragraph.wrap(view.title() + ": " + view.load(), large, wide);
    double rise = (head.size() - 1) * LEADING * large;
    double top = page.maxY() + 2 * unit + large + rise;
    words.addAll(Paragraph.labels(head, left, top, large, LEADING * large));
    double y = page.minY();
    for (String sentence : view.words()) {
      for (String line : Paragraph.wrap(sentence, text, wide)) {
        y -= LEADING * text;
        words.add(Mark.Label.of(line, new Point(left, y), text, Anchor.START));
      }
    }
    Box all = new Box(page.minX(), y - 5 * unit, page.maxX(), page.maxY() + 12 * unit + rise);
    return new Picture(drawing.and(Drawing.of("words", words)), all, unit);
  }

  /** For a page of its own: the maps one below the other, words at the foot, at full size. */
  public static Picture stacked(LoadView view) {
    List<String> lines = new ArrayList<>();
    view.words().forEach(text -> lines.addAll(Paragraph.wrap(text, PAGE_TEXT, PAGE.width())));
    double foot = PAGE.minY() + lines.size() * PITCH;
    List<Mark> words = new ArrayList<>();
    String title = Paragraph.fit(view.load(), HEAD, PAGE.width());
    Point head = new Point(PAGE.minX(), PAGE.maxY() - HEAD);
    words.add(Mark.Label.of(title, head, HEAD, Anchor.START));
    words.addAll(Paragraph.labels(lines, PAGE.minX(), foot, PAGE_TEXT, PITCH));
    Drawing drawing = Drawing.of("words", words);
    double top = PAGE.maxY() - HEAD - GAP;
    double each = (top - foot - GAP) / view.maps().size();
    Box size = new Box(PAGE.minX(), top - each, PAGE.maxX(), top - 1);
    for (Picture map : LoadMap.fitted(view, size, PAGE_TEXT)) {
      Box room = new Box(PAGE.minX(), top - each, PAGE.maxX(), top - 1);
      drawing = drawing.and(ScaledPicture.in(map, room));
      top -= each;
    }
    return new Picture(drawing, PAGE.grown(1), 1);
  }
}
