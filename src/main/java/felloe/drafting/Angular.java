package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.drawing.TextWidth;
import felloe.geometry.Arc;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The direction of a line from the hub axis, as its angle from the axis on either side of it, the
 * figure along the arc.
 */
final class Angular {

  private static final double QUARTER = Math.PI / 2;
  private static final double STEP = 2;
  private static final double BESIDE = 0.9;

  /** From the arc to the top of the figure, in heights of letters. */
  private static final double TALL = 1.6;

  private static final double BEYOND_COST = 4;

  /** An arc over a narrower angle has no room for a figure, radians. */
  private static final double LEAST = Math.toRadians(8);

  private final Point centre;
  private final String prefix;
  private final double text;
  private final List<Option> options = new ArrayList<>();

  /**
   * @param centre the hub axis on the sheet
   * @param prefix how often the angle is there
   * @param text height of the figure, mm
   */
  Angular(Point centre, String prefix, double text) {
    this.centre = centre;
    this.prefix = prefix;
    this.text = text;
  }

  List<Option> options() {
    return options;
  }

  /** Degrees from the nearest axis as they are written; 0 on an axis. */
  static String aside(Point direction) {
    return Board.figure(Math.toDegrees(Math.abs(Math.IEEEremainder(direction.angle(), QUARTER))));
  }

  /**
   * Adds the ways to draw it.
   *
   * @param ray direction of the line, radians
   * @param from where on the line the extension line begins, mm from the centre
   * @param least radius of the smallest arc, mm
   * @param most radius of the largest arc, mm
   */
  Angular to(double ray, double from, double least, double most) {
    double before = QUARTER * Math.floor(ray / QUARTER);
    for (double axis : new double[] {before, before + QUARTER}) {
      if (Math.abs(ray - axis) > LEAST) {
        between(axis, ray, from, least, most);
      }
    }
    return this;
  }

  private void between(double axis, double ray, double from, double least, double most) {
    double start = Math.min(axis, ray);
    double sweep = Math.abs(ray - axis);
    String figure = prefix + Board.figure(Math.toDegrees(sweep)) + "\u00b0";
    double unit = text / DimensionStyle.TEXT;
    for (double radius = least; radius <= most; radius += STEP) {
      double at = radius;
      double cost = (radius - least) / 4 + sweep;
      if (radius * sweep < 2 * DimensionStyle.ARROW * unit + STEP) {
        continue;
      }
      // So much of the turn the figure takes, with white at both sides.
      double taken = taken(figure, radius);
      double spare = (sweep - taken) / 2;
      double middle = start + sweep / 2;
      for (double aside = 0; aside <= spare; aside += STEP / radius) {
        double to = aside;
        options.add(
            new Option(
                cost + aside, () -> piece(figure, start, sweep, ray, from, at, middle + to)));
        options.add(
            new Option(
                cost + aside, () -> piece(figure, start, sweep, ray, from, at, middle - to)));
      }
      if (taken > QUARTER) {
        continue;
      }
      double beyond = cost + BEYOND_COST;
      options.add(
          new Option(beyond, () -> piece(figure, start, sweep, ray, from, at, start - taken / 2)));
      options.add(
          new Option(
              beyond, () -> piece(figure, start, sweep, ray, from, at, start + sweep + taken / 2)));
    }
  }

  /** The turn that the figure takes, also where it stands on the hollow side, radians. */
  private double taken(String figure, double radius) {
    return (TextWidth.of(figure, text) + 2 * BESIDE) / Math.max(1, radius - TALL * text);
  }

  private Piece piece(
      String figure,
      double start,
      double sweep,
      double ray,
      double from,
      double radius,
      double middle) {
    Piece.Maker maker = new Piece.Maker(text);
    double width = TextWidth.of(figure, text);
    double half = taken(figure, radius) / 2;
    double first = Math.min(start, middle - half);
    double last = Math.max(start + sweep, middle + half);
    maker.segment(Arc.of(centre, radius, first, last - first), Ink.DIMENSION);
    if (radius > from) {
      maker.line(
          centre.plus(Point.polar(from, ray)),
          centre.plus(Point.polar(radius + DimensionStyle.BEYOND, ray)),
          Ink.EXTENSION);
    }
    // Along the chord, so that the arrowhead's middle lies on the arc.
    double head = DimensionStyle.ARROW * text / DimensionStyle.TEXT / radius / 2;
    maker.arrow(centre.plus(Point.polar(radius, start)), start + Math.PI / 2 + head);
    maker.arrow(
        centre.plus(Point.polar(radius, start + sweep)), start + sweep - Math.PI / 2 - head);
    double turn = DimensionStyle.readable(middle + Math.PI / 2);
    Point up = Point.polar(1, turn).left();
    // On the hollow side the ends of the base line are nearer to the arc than its middle.
    boolean outward = up.dot(Point.polar(1, middle)) > 0;
    double hollow = outward ? 0 : radius - Math.sqrt(radius * radius - width * width / 4);
    maker.text(
        figure,
        centre.plus(Point.polar(radius, middle)).plus(up, DimensionStyle.OVER + hollow),
        turn);
    return maker.made();
  }
}
