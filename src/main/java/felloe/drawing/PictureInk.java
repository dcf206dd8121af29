package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * Gathers the marks of one layer of a picture, and tells the layout what room they take. Lengths
 * are in units of the picture: one unit is a millimetre on a part some 280 mm across.
 */
final class PictureInk {

  /** Height of capitals of dimensions and callouts, units. */
  static final double TEXT = DimensionStyle.TEXT;

  /** Height of capitals of small print, units. */
  static final double SMALL = DimensionStyle.SMALL;

  /** Distance of base lines as a multiple of the capitals' height. */
  static final double LEADING = 1.75;

  private final double unit;
  private final PictureRoom room;
  private final List<Mark> marks = new ArrayList<>();

  PictureInk(double unit, PictureRoom room) {
    this.unit = unit;
    this.room = room;
  }

  double unit() {
    return unit;
  }

  PictureRoom room() {
    return room;
  }

  Drawing.Layer layer(String name) {
    return new Drawing.Layer(name, marks);
  }

  void fill(List<Contour> contours, double ink) {
    marks.add(new Mark.Fill(contours, ink));
  }

  /** A contour's line. */
  void contour(Contour contour, LineType type) {
    marks.add(Mark.Stroke.of(contour, type));
    contour.segments().forEach(room::takeLine);
  }

  /** A chain of segments, each starting where the one before ends. */
  void chain(List<Segment> chain, LineType type) {
    marks.add(new Mark.Stroke(chain, false, type));
    chain.forEach(room::takeLine);
  }

  /** A segment's line. */
  void segment(Segment segment, LineType type) {
    marks.add(Mark.Stroke.of(segment, type));
    room.takeLine(segment);
  }

  /** A straight line; nothing where its ends are one point. */
  void line(Point from, Point to, LineType type) {
    if (!from.near(to, Tolerances.SAME_POINT)) {
      segment(new Line(from, to), type);
    }
  }

  /** A chain line: an axis or a pitch circle. */
  void centreLine(Segment segment) {
    marks.add(Mark.Stroke.of(segment, LineType.CENTRE));
    room.takeCentreLine(segment);
  }

  /** Wipes a box white, so that lettering on it stands clear of centre lines. */
  void wipe(Box box) {
    Contour edge = Contour.rectangle(box);
    marks.add(new Mark.Fill(List.of(edge), 0));
  }

  /** A filled arrowhead with its tip at a point, coming from a direction (radians). */
  void arrow(Point tip, double from) {
    Contour head = DimensionStyle.arrow(tip, from, unit);
    marks.add(new Mark.Fill(List.of(head), 1));
    room.takeSolid(head.box());
  }

  /** A filled dot. */
  void dot(Point at, double radius) {
    Contour dot = Contour.circle(at, radius * unit);
    marks.add(new Mark.Fill(List.of(dot), 1));
    room.takeSolid(dot.box());
  }

  /** A filled area on white. */
  void patch(Contour contour, double ink) {
    marks.add(new Mark.Fill(List.of(contour), ink));
    room.takeSolid(contour.box());
  }

  /** A line of text; its height in units. */
  void text(String text, Point at, double height, double turn, Anchor anchor) {
    if (TextWidth.of(text, 1) == 0) {
      return;
    }
    marks.add(new Mark.Label(text, at, height * unit, turn, anchor));
    if (turn == 0) {
      room.takeSolid(textBox(text, at, height, anchor));
    } else {
      takeTurned(text, at, height, turn, anchor);
    }
  }

  /** Lines of text downward from the first base line; returns the last base line's y. */
  double lines(List<String> lines, Point at, double height, Anchor anchor) {
    double y = at.y();
    for (int i = 0; i < lines.size(); i++) {
      y = at.y() - i * LEADING * height * unit;
      text(lines.get(i), new Point(at.x(), y), height, 0, anchor);
    }
    return y;
  }

  /** Room that an upright line of text takes. */
  Box textBox(String text, Point at, double height, Anchor anchor) {
    double tall = height * unit;
    double width = TextWidth.of(text, tall);
    double left = at.x() - before(anchor) * width;
    double tails = TextWidth.TAILS / TextWidth.CAPITALS * tall;
    return new Box(left, at.y() - tails, left + width, at.y() + tall);
  }

  private static double before(Anchor anchor) {
    return switch (anchor) {
      case START -> 0;
      case MIDDLE -> 0.5;
      case END -> 1;
    };
  }

  private void takeTurned(String text, Point at, double height, double turn, Anchor anchor) {
    double tall = height * unit;
    double width = TextWidth.of(text, tall);
    int pieces = (int) Math.max(1, Math.ceil(width / tall));
    for (int i = 0; i < pieces; i++) {
      double along = width * ((i + 0.5) / pieces - before(anchor));
      Point middle = at.plus(Point.polar(along, turn)).plus(Point.polar(tall / 2, turn).left());
      room.takeSolid(Box.of(middle, middle).grown(tall / 2));
    }
  }
}
