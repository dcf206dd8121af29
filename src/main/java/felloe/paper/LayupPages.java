package felloe.paper;

import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The pages of a lay-up: the plan in words with boxes to tick, the stack, the cutting plan of the
 * cloth, the blank on its mould, and what the plan rests on.
 */
public final class LayupPages {

  private static final double MARGIN = 14;
  private static final double FOOT = 12;
  private static final double TEXT = 2.5;

  private final Paper paper;
  private final String title;
  private final String foot;

  private LayupPages(Paper paper, String title, String foot) {
    this.paper = paper;
    this.title = title;
    this.foot = foot;
  }

  /**
   * What the pages carry.
   *
   * @param title of every page
   * @param foot at the lower edge of every page
   * @param plan words before the pictures
   * @param stack the stack
   * @param roll the cutting plan
   * @param blank the blank
   * @param after words after the pictures
   */
  public record Content(
      String title,
      String foot,
      List<WordBlock> plan,
      StackView stack,
      RollView roll,
      BlankView blank,
      List<WordBlock> after) {

    /** Copies the lists. */
    public Content {
      plan = List.copyOf(plan);
      after = List.copyOf(after);
    }
  }

  /** The pages, upright. */
  public static List<Page> of(Content content, Paper paper) {
    return new LayupPages(paper, content.title(), content.foot()).pages(content);
  }

  private List<Page> pages(Content content) {
    Box field =
        new Box(MARGIN, MARGIN + FOOT, paper.width() - MARGIN, paper.height() - MARGIN - FOOT);
    List<Drawing> drawings = new ArrayList<>(WordFlow.set(content.plan(), field));
    drawings.add(Reduced.in(StackPicture.of(content.stack()), field));
    drawings.add(Reduced.in(RollPicture.in(content.roll(), field.width(), field.height()), field));
    drawings.add(Reduced.in(BlankPicture.of(content.blank()), field));
    drawings.addAll(WordFlow.set(content.after(), field));
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < drawings.size(); i++) {
      Drawing frame = frame(i + 1, drawings.size());
      pages.add(
          new Page(
              "Lay-up " + (i + 1),
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
