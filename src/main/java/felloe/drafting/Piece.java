package felloe.drafting;

import felloe.drawing.Anchor;
import felloe.drawing.DimensionStyle;
import felloe.drawing.Mark;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * One dimension, note or label as it may be drawn.
 *
 * @param lines its lines
 * @param arrows its arrowheads
 * @param texts its words and figures
 */
record Piece(List<Stroke> lines, List<Arrow> arrows, List<Mark.Label> texts) {

  Piece {
    lines = List.copyOf(lines);
    arrows = List.copyOf(arrows);
    texts = List.copyOf(texts);
  }

  /**
   * A line of it.
   *
   * @param segment where it runs
   * @param ink what it is for
   */
  record Stroke(Segment segment, Ink ink) {

    Mark mark() {
      return Mark.Stroke.of(segment, ink.type());
    }
  }

  /**
   * An arrowhead.
   *
   * @param tip where it points to
   * @param from the direction that it comes from, radians
   * @param unit its size, 1 with figures of 3.5 mm
   */
  record Arrow(Point tip, double from, double unit) {

    Mark mark() {
      return new Mark.Fill(List.of(DimensionStyle.arrow(tip, from, unit)), 1);
    }
  }

  /** Puts a piece together. */
  static final class Maker {
    private final double text;
    private final List<Stroke> lines = new ArrayList<>();
    private final List<Arrow> arrows = new ArrayList<>();
    private final List<Mark.Label> texts = new ArrayList<>();

    /**
     * @param text height of its letters, mm
     */
    Maker(double text) {
      this.text = text;
    }

    /** A straight line; nothing where its ends are one point. */
    Maker line(Point from, Point to, Ink ink) {
      if (!from.near(to, Tolerances.SAME_POINT)) {
        lines.add(new Stroke(new Line(from, to), ink));
      }
      return this;
    }

    Maker segment(Segment segment, Ink ink) {
      lines.add(new Stroke(segment, ink));
      return this;
    }

    Maker arrow(Point tip, double from) {
      arrows.add(new Arrow(tip, from, text / DimensionStyle.TEXT));
      return this;
    }

    /** A text whose base line's middle stands at a point. */
    Maker text(String words, Point at, double turn) {
      return text(words, at, turn, Anchor.MIDDLE);
    }

    Maker text(String words, Point at, double turn, Anchor anchor) {
      texts.add(new Mark.Label(words, at, text, turn, anchor));
      return this;
    }

    Piece made() {
      return new Piece(lines, arrows, texts);
    }
  }
}
