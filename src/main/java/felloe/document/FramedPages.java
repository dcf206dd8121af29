package felloe.document;

import felloe.drawing.Anchor;
import felloe.drawing.Correction;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.Paragraph;
import felloe.drawing.TextWidth;
import felloe.drawing.TextWrap;
import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Pages of words and pictures under one title, numbered, with a foot on each. */
public final class FramedPages {

  private static final double MARGIN = 13;
  private static final double HEAD = 9;
  private static final double TITLE = 4;
  private static final double SMALL = 2.5;
  private static final double PITCH = 3.5;
  private static final double TEXT = 2.5;

  private final Paper paper;
  private final String title;
  private final String foot;

  private FramedPages(Paper paper, String title, String foot) {
    this.paper = paper;
    this.title = title;
    this.foot = foot;
  }

  /**
   * What a page's drawing may fill.
   *
   * @param foot at the lower edge of every page, in as many lines as it takes
   */
  public static Box field(Paper paper, String foot) {
    double rule = footRule(foot(paper, foot));
    return new Box(MARGIN, rule + 2, paper.width() - MARGIN, paper.height() - MARGIN - HEAD);
  }

  /**
   * The same of the first page of a drawing, above its title block.
   *
   * @param block its title block
   */
  public static Box field(Paper paper, String foot, TitleBlock block) {
    Box field = field(paper, foot);
    double above = field.minY() + block.height(field.width()) + 2;
    return new Box(field.minX(), above, field.maxX(), field.maxY());
  }

  private static List<String> foot(Paper paper, String foot) {
    return Paragraph.wrap(foot, SMALL, paper.width() - 2 * MARGIN);
  }

  private static double footRule(List<String> lines) {
    return MARGIN + lines.size() * PITCH + 1;
  }

  /**
   * The pages of a report, upright, called by its title and their number.
   *
   * @param drawings one a page, in the field
   */
  public static List<Page> of(Report report, List<Drawing> drawings, Paper paper) {
    FramedPages set = new FramedPages(paper, report.title(), report.foot());
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < drawings.size(); i++) {
      Drawing frame = set.frame(i + 1, drawings.size());
      if (i == 0 && report.titleBlock().isPresent()) {
        frame = frame.and(set.titled(report.titleBlock().get(), drawings.size()));
      }
      pages.add(
          new Page(
              report.title() + " " + (i + 1),
              paper.width(),
              paper.height(),
              List.of(Page.Placed.of(drawings.get(i)), Page.Placed.of(frame)),
              Correction.NONE));
    }
    return pages;
  }

  private Drawing titled(TitleBlock block, int sheets) {
    Box field = field(paper, foot);
    Point corner = new Point(field.minX(), field.minY());
    return Drawing.of("title-block", block.marks(corner, field.width(), 1, sheets));
  }

  private Drawing frame(int number, int all) {
    double left = MARGIN;
    double right = paper.width() - MARGIN;
    double top = paper.height() - MARGIN;
    List<Mark> marks = new ArrayList<>();
    String count = "page " + number + " of " + all;
    double room = right - left - TextWidth.of(count, TEXT) - 4;
    marks.addAll(title(left, top, room));
    marks.add(Mark.Label.of(count, new Point(right, top - TITLE), TEXT, Anchor.END));
    marks.add(rule(left, right, top - 7, LineType.EDGE));
    List<String> lines = foot(paper, foot);
    double rule = footRule(lines);
    marks.addAll(Paragraph.labels(lines, left, rule - 1.5, SMALL, PITCH));
    marks.add(rule(left, right, rule, LineType.THIN));
    return Drawing.of("frame", marks);
  }

  /** On one line, or smaller on two: its end has the revision, which must not be lost. */
  private List<Mark> title(double left, double top, double room) {
    if (TextWidth.of(title, TITLE) <= room) {
      return Paragraph.labels(List.of(title), left, top, TITLE, 0);
    }
    return Paragraph.labels(TextWrap.lines(title, TEXT, room, 2), left, top, TEXT, PITCH);
  }

  private static Mark rule(double from, double to, double y, LineType type) {
    return Mark.Stroke.of(new Line(new Point(from, y), new Point(to, y)), type);
  }
}
