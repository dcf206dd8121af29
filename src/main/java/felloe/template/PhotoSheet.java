package felloe.template;

import felloe.document.BenchPages;
import felloe.document.BenchPiece;
import felloe.document.Block;
import felloe.drawing.Anchor;
import felloe.drawing.Correction;
import felloe.drawing.Drawing;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A sheet of marks at true scale to lay beside a part, or to lay it on, for a photo that it is
 * measured on.
 *
 * @param name printed at its head, such as {@code Sheet 2 of 4}
 * @param black squares, from the lower left corner of the marks
 * @param white on the black
 * @param steps what to do, in sentences
 */
public record PhotoSheet(String name, List<Box> black, List<Box> white, List<String> steps) {

  private static final double TITLE = 4;

  /** Below the marks: the bar, and between marks and words, mm. */
  private static final double BAR = 9;

  private static final double SPACE = 5;

  /** What is told stands in no less than this, mm. */
  private static final double WORDS = 20;

  /** Copies the lists. */
  public PhotoSheet {
    black = List.copyOf(black);
    white = List.copyOf(white);
    steps = List.copyOf(steps);
  }

  /**
   * The page on a paper, upright.
   *
   * @throws BadInput when the paper is too small, or the reading of its bars is more than 5 % off
   */
  public Page on(Paper paper, double margin, Optional<BarReading> reading, AskedAt asked) {
    Box marks = black.stream().reduce(Box::union).orElseThrow();
    double bar = PageFrame.bar(paper.width(), paper.height(), margin);
    Correction correction = reading.map(r -> r.against(bar, asked.bars())).orElse(Correction.NONE);
    Box room =
        correction.room(new Box(margin, margin, paper.width() - margin, paper.height() - margin));
    List<String> told = new ArrayList<>(steps);
    told.add(0, new BarWords(reading, asked.bars()).printed(bar));
    BenchPiece words = BenchPages.column(List.of(Block.Steps.of(told)), room.width() - BAR - SPACE);
    double high = words.height() + BAR + 2 * SPACE + marks.height() + TITLE;
    if (marks.width() + BAR > room.width() || high > room.height()) {
      throw tooSmall(paper, asked.paper());
    }
    Point corner =
        new Point(
            room.minX() + BAR + (room.width() - BAR - marks.width()) / 2,
            room.maxY() - TITLE - SPACE - marks.height());
    List<Mark> all = new ArrayList<>();
    for (Box square : black) {
      all.add(new Mark.Fill(List.of(at(square, corner)), 1));
    }
    for (Box square : white) {
      all.add(new Mark.Fill(List.of(at(square, corner)), 0));
    }
    List<Mark> texts = new ArrayList<>();
    texts.add(
        Mark.Label.of(
            name, new Point(room.minX() + BAR, room.maxY() - TITLE), TITLE - 1, Anchor.START));
    texts.addAll(words.at(new Point(room.minX() + BAR, corner.y() - SPACE)));
    List<Mark> bars = new ArrayList<>();
    bars.addAll(CheckBars.across(new Point(room.minX() + BAR + 1, room.minY() + 1), bar));
    bars.addAll(CheckBars.up(new Point(room.minX() + BAR - 2, room.minY() + BAR), bar));
    Drawing drawing =
        new Drawing(
            List.of(
                new Drawing.Layer("marks", all),
                new Drawing.Layer("check-bars", bars),
                new Drawing.Layer("notes", texts)));
    return new Page(
        name, paper.width(), paper.height(), List.of(Page.Placed.of(drawing)), correction);
  }

  private static Contour at(Box box, Point corner) {
    return Contour.rectangle(
        new Box(
            box.minX() + corner.x(),
            box.minY() + corner.y(),
            box.maxX() + corner.x(),
            box.maxY() + corner.y()));
  }

  private static BadInput tooSmall(Paper paper, Place place) {
    return new BadInput(
        new Problem(
            place,
            "",
            paper.title(),
            "is too small for the sheets of the photo frame with this margin",
            "print them on A4 or Letter with a margin of 10 mm, or on larger paper"));
  }
}
