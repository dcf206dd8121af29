package felloe.template;

import felloe.document.BenchPages;
import felloe.document.BenchPiece;
import felloe.document.Block;
import felloe.drawing.Anchor;
import felloe.drawing.Correction;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.BadInput;
import felloe.plate.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A sheet of its own to try a printer with before paper is spent: check bars both ways, a square
 * with its diagonals, a circle, rulers at the edges that show the printer's margin, and samples of
 * all lines.
 */
public final class CheckSheet {

  private static final double SIDE = 100;
  private static final double EDGE = 16;
  private static final int RULER = 15;

  private final Paper paper;
  private final double bar;
  private final List<Mark> lines = new ArrayList<>();
  private final List<Mark> words = new ArrayList<>();
  private final List<Mark> bars = new ArrayList<>();
  private final List<Mark> rulers = new ArrayList<>();

  private CheckSheet(Paper paper, double bar) {
    this.paper = paper;
    this.bar = bar;
  }

  /**
   * The sheet for a paper, upright.
   *
   * @param margin of the templates that are to follow, mm; the check bars have the length of theirs
   * @param reading what an earlier print measured, to try the correction with
   * @param place where a reading is given
   * @throws BadInput when the reading is more than 5 % off
   */
  public static Page of(Paper paper, double margin, Optional<BarReading> reading, Place place) {
    double bar = PageFrame.bar(paper.width(), paper.height(), margin);
    Correction correction = reading.map(r -> r.against(bar, place)).orElse(Correction.NONE);
    CheckSheet sheet = new CheckSheet(paper, bar);
    sheet.rulers();
    sheet.bars();
    sheet.figures(sheet.words(new BarWords(reading, place)));
    Drawing drawing =
        new Drawing(
            List.of(
                new Drawing.Layer("figures", sheet.lines),
                new Drawing.Layer("check-bars", sheet.bars),
                new Drawing.Layer("notes", sheet.words)));
    return new Page(
        "Check",
        paper.width(),
        paper.height(),
        List.of(Page.Placed.of(Drawing.of("rulers", sheet.rulers)), Page.Placed.of(drawing)),
        correction);
  }

  private void bars() {
    bars.addAll(CheckBars.across(new Point(EDGE + 10, EDGE + 2), bar));
    bars.addAll(CheckBars.up(new Point(EDGE + 6, EDGE + 10), bar));
  }

  /** Title and steps along the upper edge; returns the height at which they end. */
  private double words(BarWords told) {
    double left = EDGE + 10;
    double top = paper.height() - EDGE - 1;
    words.add(
        Mark.Label.of(
            "Print check, " + paper.title() + ", " + paper.size(),
            new Point(left + 2, top - 5),
            5,
            Anchor.START));
    List<String> steps =
        List.of(
            "Print at 100 % (actual size), no \u201cfit to page\u201d. More than 5 % off: the print"
                + " was scaled.",
            told.printed(bar),
            "Both diagonals of the square 141.4 mm: the paper is fed square.",
            "Count the lines that are missing at the four edges: so many mm is the printer's"
                + " margin.");
    String title =
        told.reading().map(r -> "Corrected for bars " + r.text()).orElse("Not corrected");
    BenchPiece piece =
        BenchPages.column(
            List.of(new Block.Heading(title), Block.Steps.of(steps)),
            paper.width() - EDGE - left - 2);
    words.addAll(piece.at(new Point(left + 2, top - 8)));
    return top - 8 - piece.height() - 3;
  }

  private void figures(double top) {
    double left = EDGE + 12;
    Box square = new Box(left, top - SIDE, left + SIDE, top);
    lines.add(Mark.Stroke.of(Contour.rectangle(square), LineType.THIN));
    lines.add(line(square.minX(), square.minY(), square.maxX(), square.maxY(), LineType.THIN));
    lines.add(line(square.minX(), square.maxY(), square.maxX(), square.minY(), LineType.THIN));
    lines.add(Mark.Stroke.of(Contour.circle(square.centre(), 0.4 * SIDE), LineType.EDGE));
    label("square 100 mm", square.centre().x(), square.minY() + 3, Anchor.MIDDLE);
    label("circle \u00d880 mm", square.centre().x(), square.maxY() - 18, Anchor.MIDDLE);
    boolean beside = square.maxX() + 55 < paper.width() - EDGE;
    if (beside) {
      samples(square.maxX() + 6, square.maxY() - 8);
    }
    double below = square.minY() - 12;
    if (below > EDGE + 15) {
      double middle = left + (paper.width() - EDGE - left) / 2;
      field("measured across, mm", left, middle - 3, below);
      field("measured up, mm", middle + 3, paper.width() - EDGE, below);
      field("printer, paper, settings", left, paper.width() - EDGE, below - 14);
    }
  }

  private void samples(double x, double top) {
    String[] names = {"finish line", "rough line", "centre line", "seam, glue line", "thin line"};
    LineType[] types = {
      LineType.EDGE, LineType.ROUGH, LineType.CENTRE, LineType.DASHED, LineType.THIN
    };
    for (int i = 0; i < types.length; i++) {
      double y = top - 7 * i;
      lines.add(line(x, y, x + 20, y, types[i]));
      String text = names[i] + " " + Numbers.brief(types[i].width(), 2);
      label(text, x + 22, y - 0.9, Anchor.START);
    }
  }

  /** A line to write on. */
  private void field(String name, double from, double to, double y) {
    lines.add(line(from, y, to, y, LineType.THIN));
    label(name, from, y - 3, Anchor.START);
  }

  private void label(String text, double x, double y, Anchor anchor) {
    words.add(Mark.Label.of(text, new Point(x, y), StripText.SMALL, anchor));
  }

  /** Lines at whole millimetres from each edge; those that the printer cannot reach are missing. */
  private void rulers() {
    double w = paper.width();
    double h = paper.height();
    double x = 0.78 * w;
    double y = 0.87 * h;
    for (int i = 1; i <= RULER; i++) {
      double half = i % 5 == 0 ? 3.5 : 2;
      rulers.add(line(x - half, i, x + half, i, LineType.THIN));
      rulers.add(line(x - half, h - i, x + half, h - i, LineType.THIN));
      rulers.add(line(i, y - half, i, y + half, LineType.THIN));
      rulers.add(line(w - i, y - half, w - i, y + half, LineType.THIN));
      if (i % 5 == 0) {
        String text = Integer.toString(i);
        double drop = StripText.SMALL / 2;
        number(text, x + 4.5, i - drop, Anchor.START);
        number(text, x + 4.5, h - i - drop, Anchor.START);
        number(text, i, y + 4.5, Anchor.MIDDLE);
        number(text, w - i, y + 4.5, Anchor.MIDDLE);
      }
    }
  }

  private void number(String text, double x, double y, Anchor anchor) {
    rulers.add(Mark.Label.of(text, new Point(x, y), StripText.SMALL, anchor));
  }

  private static Mark line(double x1, double y1, double x2, double y2, LineType type) {
    return Mark.Stroke.of(new Line(new Point(x1, y1), new Point(x2, y2)), type);
  }
}
