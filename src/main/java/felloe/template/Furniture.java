package felloe.template;

import felloe.drawing.Anchor;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Paragraph;
import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The strip and the column of a page: name, title block, cautions, map, check bars. */
final class Furniture {

  private final PageFrame frame;
  private final StripText text;

  Furniture(PageFrame frame, StripText text) {
    this.frame = frame;
    this.text = text;
  }

  /** Lower edge of the cells beside the notes. */
  private double base() {
    double width = frame.strip().width();
    return frame.strip().minY() + (StripText.stacked(width) ? text.notesHeight(width) : 0);
  }

  /** Where the map goes: up to the strip's upper edge where the check bar leaves room. */
  private Box mapBox() {
    Box strip = frame.strip();
    double width = StripText.mapCell(strip.width());
    boolean besideBar = frame.bar() + 4 + width <= strip.width();
    boolean bars = frame.kind() == PageFrame.Kind.FRAMED;
    double top = besideBar || !bars ? strip.maxY() : strip.maxY() - PageFrame.BAR_ROW;
    return new Box(strip.maxX() - width + StripText.PAD, base() + 0.7, strip.maxX() - 0.5, top - 1);
  }

  /**
   * Everything of it, in page coordinates.
   *
   * @param name the page's name
   * @param count which page of how many
   * @param map the map's marks for the box that it gets
   */
  Drawing draw(String name, String count, Function<Box, List<Mark>> map) {
    boolean bars = frame.kind() == PageFrame.Kind.FRAMED;
    Box strip = frame.strip();
    double width = strip.width();
    boolean stacked = StripText.stacked(width);
    double foot = strip.maxY() - (bars ? PageFrame.BAR_ROW : 0);
    double base = base();
    double names = strip.minX() + StripText.nameCell(width);
    double maps = strip.maxX() - StripText.mapCell(width);
    double titles = maps - StripText.titleCell(width);
    Box mapBox = mapBox();
    boolean high = mapBox.maxY() > foot;
    List<Mark> lines = new ArrayList<>();
    lines.add(line(strip.minX(), strip.maxY(), strip.maxX(), strip.maxY()));
    if (bars) {
      lines.add(line(strip.minX(), foot, high ? maps : strip.maxX(), foot));
    }
    lines.add(line(names, base, names, foot));
    if (stacked) {
      lines.add(line(strip.minX(), base, strip.maxX(), base));
    } else {
      lines.add(line(titles, base, titles, foot));
    }
    lines.add(line(maps, base, maps, high ? strip.maxY() : foot));
    List<Mark> words = new ArrayList<>();
    name(name, count, strip.minX(), names - strip.minX(), foot, words);
    double left = stacked ? strip.minX() : names + StripText.PAD;
    double top = (stacked ? base : foot) - 1;
    words.addAll(Paragraph.labels(text.lines(width), left, top, StripText.SMALL, StripText.PITCH));
    title(titles, StripText.titleCell(width), foot, words);
    List<Mark> ticks = new ArrayList<>();
    if (bars) {
      ticks.addAll(CheckBars.across(new Point(strip.minX() + 1, foot + 1.2), frame.bar()));
      double x = frame.column().maxX() - 1;
      ticks.addAll(CheckBars.up(new Point(x, frame.column().minY() + 1), frame.bar()));
    }
    return layers(lines, words, ticks, map.apply(mapBox));
  }

  /** The same on a page on which it stands where the drawing leaves room. */
  Drawing draw(String name, String count, Function<Box, List<Mark>> map, PagePieces pieces) {
    Box block = pieces.title();
    double titles = block.minX() + PagePieces.NAME;
    List<Mark> lines = new ArrayList<>();
    lines.add(Mark.Stroke.of(Contour.rectangle(block), LineType.THIN));
    List<Mark> words = new ArrayList<>();
    name(name, count, block.minX(), PagePieces.NAME, block.maxY(), words);
    title(titles, block.width() - PagePieces.NAME, block.maxY(), words);
    Box notes = pieces.notes();
    words.addAll(
        Paragraph.labels(
            text.lines(notes.width()),
            notes.minX(),
            notes.maxY() - 1,
            StripText.SMALL,
            StripText.PITCH));
    List<Mark> ticks = new ArrayList<>();
    Point across = new Point(pieces.across().minX() + 1, pieces.across().minY() + 0.5);
    ticks.addAll(CheckBars.across(across, frame.bar()));
    Point up = new Point(pieces.up().maxX() - 0.5, pieces.up().minY() + 1);
    ticks.addAll(CheckBars.up(up, frame.bar()));
    return layers(lines, words, ticks, map.apply(pieces.map()));
  }

  private static Drawing layers(
      List<Mark> lines, List<Mark> words, List<Mark> bars, List<Mark> map) {
    return new Drawing(
        List.of(
            new Drawing.Layer("frame", lines),
            new Drawing.Layer("title-block", words),
            new Drawing.Layer("check-bars", bars),
            new Drawing.Layer("map", map)));
  }

  private static void name(
      String name, String count, double left, double width, double foot, List<Mark> words) {
    double height = height(name, width - 2, 7, 5, 3.5, 2.5);
    double middle = left + width / 2;
    words.add(Mark.Label.of(name, new Point(middle, foot - 2 - height), height, Anchor.MIDDLE));
    Point below = new Point(middle, foot - 5.5 - height);
    words.add(Mark.Label.of(count, below, StripText.SMALL, Anchor.MIDDLE));
  }

  private void title(double left, double cell, double foot, List<Mark> words) {
    words.addAll(text.title(left, cell, foot));
    List<String> facts =
        text.facts().stream()
            .filter(f -> frame.kind() != PageFrame.Kind.WORDS || !f.startsWith(TemplateWords.SCALE))
            .map(f -> Paragraph.fit(f, StripText.SMALL, cell - 2 * StripText.PAD))
            .toList();
    words.addAll(
        Paragraph.labels(
            facts,
            left + StripText.PAD,
            foot - text.titleHeight(cell),
            StripText.SMALL,
            StripText.PITCH));
  }

  private static Mark line(double x1, double y1, double x2, double y2) {
    return Mark.Stroke.of(new Line(new Point(x1, y1), new Point(x2, y2)), LineType.THIN);
  }

  /** The first of some heights after ISO 3098 at which a text fits; the last when none does. */
  private static double height(String text, double width, double... heights) {
    for (double height : heights) {
      if (TextWidth.of(text, height) <= width) {
        return height;
      }
    }
    return heights[heights.length - 1];
  }
}
