package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.drawing.TextWidth;
import felloe.geometry.Line;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * A length between two ends, drawn with its line at several distances, and with its figure over the
 * middle of the line, elsewhere over it, or where it is short beyond its end.
 *
 * <p>Lengths along the dimension are {@code u}, across it {@code v}, to the left of {@code u}.
 */
final class Linear {

  /** White between a figure and the extension lines at either side, mm. */
  private static final double BESIDE = 0.9;

  /** Figures are moved along their line by so much at a time, mm. */
  private static final double STEP = 2;

  /** A bent line's shelf is so much longer than the figure on it, mm. */
  private static final double SHELF = 1;

  /** A line so near to an edge's end still ends on it, mm. */
  private static final double HAIR = 0.01;

  private static final double ASIDE_COST = 0.15;
  private static final double OUTSIDE_COST = 4;
  private static final double BENT_COST = 5;

  /**
   * What a length is measured to: an edge or an axis across it, or a single point.
   *
   * @param u where it is along the dimension
   * @param low where the edge begins, across
   * @param high where it ends
   * @param gap white between it and an extension line
   */
  record End(double u, double low, double high, double gap) {

    /** Whether a line ends on the edge itself, or far enough from it for an extension line. */
    private boolean allows(double v) {
      double beyond = Math.max(v - high, low - v);
      return beyond < HAIR || beyond > gap;
    }
  }

  private final Point along;
  private final String figure;
  private final double text;
  private final double unit;
  private final List<Line> prolonged = new ArrayList<>();
  private final List<Option> options = new ArrayList<>();

  /**
   * @param along direction in which the length is measured, a vector of length one
   * @param figure what is written
   * @param text height of the figure, mm
   */
  Linear(Point along, String figure, double text) {
    this.along = along;
    this.figure = figure;
    this.text = text;
    this.unit = text / DimensionStyle.TEXT;
  }

  List<Option> options() {
    return options;
  }

  Point along() {
    return along;
  }

  /** Adds a line that is drawn with it in any case: an edge prolonged to where it is measured. */
  void prolong(Point from, Point to) {
    prolonged.add(new Line(from, to));
  }

  /** An end at a point. */
  End at(Point p, double gap) {
    return new End(p.dot(along), along.cross(p), along.cross(p), gap);
  }

  /** An end at an edge between two points across the dimension. */
  End at(Point a, Point b, double gap) {
    double v = along.cross(a);
    double w = along.cross(b);
    return new End(a.dot(along), Math.min(v, w), Math.max(v, w), gap);
  }

  private Point point(double u, double v) {
    return new Point(u * along.x() - v * along.y(), u * along.y() + v * along.x());
  }

  /**
   * Adds the ways to draw it with its line at one distance.
   *
   * @param a the end with the lesser {@code u}
   * @param b the other end
   * @param v where the line runs
   * @param cost of that distance
   */
  Linear line(End a, End b, double v, double cost) {
    if (!a.allows(v) || !b.allows(v)) {
      return this;
    }
    double length = b.u - a.u;
    double width = TextWidth.of(figure, text);
    double arrow = DimensionStyle.ARROW * unit;
    boolean inside = length >= 2 * arrow + STEP;
    double spare = (length - width) / 2 - BESIDE;
    for (double aside = 0; aside <= spare; aside += STEP) {
      double middle = (a.u + b.u) / 2;
      double more = cost + ASIDE_COST * aside;
      double to = aside;
      add(more, () -> within(a, b, v, inside, middle + to));
      if (aside > 0) {
        add(more, () -> within(a, b, v, inside, middle - to));
      }
    }
    for (boolean last : new boolean[] {true, false}) {
      add(cost + OUTSIDE_COST, () -> beyond(a, b, v, inside, last));
      bent(a, b, v, cost, last, 1, 0);
    }
    return this;
  }

  /** Adds more ways, for a line that can be at that one distance only: bent farther away. */
  Linear farther(End a, End b, double v, double cost) {
    for (boolean last : new boolean[] {true, false}) {
      for (int tail = 1; tail <= 3; tail++) {
        for (int lead = 0; lead <= 3; lead++) {
          bent(a, b, v, cost, last, tail, lead);
        }
      }
    }
    return this;
  }

  private void bent(End a, End b, double v, double cost, boolean last, int tail, int lead) {
    boolean inside = b.u - a.u >= 2 * DimensionStyle.ARROW * unit + STEP;
    double tails = tail * DimensionStyle.TAIL * unit;
    double leads = lead * DimensionStyle.TAIL * unit;
    for (boolean right : new boolean[] {true, false}) {
      add(cost + BENT_COST + tail + lead, () -> bent(a, b, v, inside, last, right, tails, leads));
    }
  }

  private void add(double cost, Supplier<Piece> piece) {
    options.add(new Option(cost, piece));
  }

  private Piece.Maker frame(End a, End b, double v) {
    Piece.Maker maker = new Piece.Maker(text);
    extension(maker, a, v);
    extension(maker, b, v);
    prolonged.forEach(line -> maker.segment(line, Ink.EXTENSION));
    return maker;
  }

  private void extension(Piece.Maker maker, End end, double v) {
    if (v > end.high + HAIR) {
      maker.line(
          point(end.u, end.high + end.gap), point(end.u, v + DimensionStyle.BEYOND), Ink.EXTENSION);
    } else if (v < end.low - HAIR) {
      maker.line(
          point(end.u, end.low - end.gap), point(end.u, v - DimensionStyle.BEYOND), Ink.EXTENSION);
    }
  }

  /** Arrowheads at both ends, from inside or with short tails from outside. */
  private void arrows(Piece.Maker maker, End a, End b, double v, boolean inside) {
    double way = along.angle();
    maker.arrow(point(a.u, v), inside ? way : way + Math.PI);
    maker.arrow(point(b.u, v), inside ? way + Math.PI : way);
  }

  private Piece within(End a, End b, double v, boolean inside, double middle) {
    Piece.Maker maker = frame(a, b, v);
    double tail = inside ? 0 : DimensionStyle.TAIL * unit;
    maker.line(point(a.u - tail, v), point(b.u + tail, v), Ink.DIMENSION);
    arrows(maker, a, b, v, inside);
    maker.text(figure, over(point(middle, v), along), DimensionStyle.readable(along.angle()));
    return maker.made();
  }

  /** The figure over the line prolonged beyond one end. */
  private Piece beyond(End a, End b, double v, boolean inside, boolean last) {
    Piece.Maker maker = frame(a, b, v);
    double width = TextWidth.of(figure, text);
    double near = (inside ? 0 : DimensionStyle.ARROW * unit) + BESIDE;
    double far = near + width;
    double other = inside ? 0 : DimensionStyle.TAIL * unit;
    maker.line(
        point(a.u - (last ? other : far), v), point(b.u + (last ? far : other), v), Ink.DIMENSION);
    arrows(maker, a, b, v, inside);
    double middle = last ? b.u + near + width / 2 : a.u - near - width / 2;
    maker.text(figure, over(point(middle, v), along), DimensionStyle.readable(along.angle()));
    return maker.made();
  }

  /** The line prolonged beyond one end and bent to a level shelf, at its end the figure. */
  private Piece bent(
      End a,
      End b,
      double v,
      boolean inside,
      boolean last,
      boolean right,
      double far,
      double lead) {
    Piece.Maker maker = frame(a, b, v);
    double other = inside ? 0 : DimensionStyle.TAIL * unit;
    Point knee = last ? point(b.u + far, v) : point(a.u - far, v);
    maker.line(last ? point(a.u - other, v) : point(b.u + other, v), knee, Ink.DIMENSION);
    arrows(maker, a, b, v, inside);
    double width = TextWidth.of(figure, text) + SHELF;
    Point level = new Point(right ? 1 : -1, 0);
    maker.line(knee, knee.plus(level, lead + width), Ink.DIMENSION);
    maker.text(figure, over(knee.plus(level, lead + width / 2), new Point(1, 0)), 0);
    return maker.made();
  }

  /** Where the base line of a figure over a line has its middle. */
  private static Point over(Point on, Point along) {
    return on.plus(
        Point.polar(1, DimensionStyle.readable(along.angle())).left(), DimensionStyle.OVER);
  }
}
