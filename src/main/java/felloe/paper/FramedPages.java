package felloe.paper;

import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Pages of words and pictures under one title, numbered, with a foot on each. */
final class FramedPages {

  private static final double MARGIN = 14;
  private static final double FOOT = 12;
  private static final double TEXT = 2.5;

  private final Paper paper;
  private final String title;
  private final String foot;

  private FramedPages(Paper paper, String title, String foot) {
    this.paper = paper;
    this.title = title;
    this.foot = foot;
  }

  /** What a page's drawing may fill. */
  static Box field(Paper paper) {
    return new Box(MARGIN, MARGIN + FOOT, paper.width() - MARGIN, paper.height() - MARGIN - FOOT);
  }

  /**
   * Pages of drawings, upright.
   *
   * @param name what pages are called before their number
   * @param title of every page
   * @param foot at the lower edge of every page
   * @param drawings one a page, in the field
   */
  static List<Page> of(
      String name, String title, String foot, List<Drawing> drawings, Paper paper) {
    FramedPages set = new FramedPages(paper, title, foot);
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < drawings.size(); i++) {
      Drawing frame = set.frame(i + 1, drawings.size());
      pages.add(
          new Page(
              name + " " + (i + 1),
              paper.width(),
              paper.height(),
              List.of(Page.Placed.of(drawings.get(i)), Page.Placed.of(frame)),
              Correction.NONE));
    }
    return pages;
  }

  private Drawing frame(int number, int all) {
    double left = MARGIN;
    double right = paper.width() - MARGIN;
    double top = paper.height() - MARGIN;
    List<Mark> marks = new ArrayList<>();
    String count = "page " + number + " of " + all;
    double room = right - left - TextWidth.of(count, TEXT) - 4;
    marks.add(
        Mark.Label.of(Paragraph.fit(title, 4, room), new Point(left, top - 4), 4, Anchor.START));
    marks.add(Mark.Label.of(count, new Point(right, top - 4), TEXT, Anchor.END));
    marks.add(
        Mark.Stroke.of(
            new Line(new Point(left, top - 6.5), new Point(right, top - 6.5)), LineType.EDGE));
    List<String> lines = Paragraph.wrap(foot, 2, right - left);
    marks.addAll(
        Paragraph.labels(lines.subList(0, Math.min(3, lines.size())), left, MARGIN + 9, 2, 3.2));
    marks.add(
        Mark.Stroke.of(
            new Line(new Point(left, MARGIN + 10.5), new Point(right, MARGIN + 10.5)),
            LineType.THIN));
    return Drawing.of("frame", marks);
  }
}
