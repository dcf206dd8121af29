package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.plate.Plate;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The main dimensions of a plate after ISO 129-1: overall width and height outside the part, the
 * rim where it is narrowest beside a grip window. Figures stand over their line and are read from
 * below or from the right.
 */
final class PictureDimensions {

  private static final double AWAY = 13;
  private static final double NARROW = 12;
  private static final int SAMPLES = 24;

  private final PictureInk ink;
  private final double unit;

  PictureDimensions(PictureInk ink) {
    this.ink = ink;
    this.unit = ink.unit();
  }

  /** Overall width below the plate and overall height to its left. */
  void overall(Contour outline) {
    Box box = outline.box();
    Point left = outline.extreme(new Point(-1, 0), new Point(0, -1));
    Point right = outline.extreme(new Point(1, 0), new Point(0, -1));
    double y = box.minY() - AWAY * unit;
    for (Point end : List.of(left, right)) {
      ink.line(
          new Point(end.x(), end.y() - DimensionStyle.GAP * unit),
          new Point(end.x(), y - DimensionStyle.BEYOND * unit),
          LineType.THIN);
    }
    between(new Point(left.x(), y), new Point(right.x(), y), figure(box.width()));
    Point bottom = outline.extreme(new Point(0, -1), new Point(-1, 0));
    Point top = outline.extreme(new Point(0, 1), new Point(-1, 0));
    double x = box.minX() - AWAY * unit;
    for (Point end : List.of(bottom, top)) {
      ink.line(
          new Point(end.x() - DimensionStyle.GAP * unit, end.y()),
          new Point(x - DimensionStyle.BEYOND * unit, end.y()),
          LineType.THIN);
    }
    between(new Point(x, bottom.y()), new Point(x, top.y()), figure(box.height()));
  }

  /** The rim beside the grip windows (else the plain ones), where there is room to show it. */
  void rim(Plate plate) {
    boolean grips = plate.windows().stream().anyMatch(w -> w.use() == WindowUse.GRIP);
    WindowUse use = grips ? WindowUse.GRIP : WindowUse.OPEN;
    // A web wider than this is no rim that a hand closes round.
    double widest = Math.min(plate.box().width(), plate.box().height()) / 3;
    Region material = plate.region();
    List<Rim> rims = new ArrayList<>();
    for (Window window : plate.windows()) {
      if (window.use() == use) {
        rims.addAll(rims(plate.outline(), window.contour()));
      }
    }
    Optional<Rim> best =
        rims.stream()
            .filter(rim -> rim.width() >= NARROW * unit && rim.width() <= widest)
            .filter(rim -> rim.isWithin(material))
            .min(Comparator.comparingDouble(this::cost));
    best.filter(rim -> cost(rim) < 8 * unit)
        .ifPresent(rim -> between(rim.inner, rim.outer, text(rim)));
  }

  private static String text(Rim rim) {
    return "rim " + figure(rim.width());
  }

  private record Rim(Point inner, Point outer) {
    double width() {
      return inner.distance(outer);
    }

    boolean isWithin(Region material) {
      return IntStream.range(1, SAMPLES)
          .allMatch(i -> material.contains(inner.towards(outer, (double) i / SAMPLES)));
    }
  }

  /** Places where the rim is as narrow as anywhere, within a hundredth. */
  private static List<Rim> rims(Contour outline, Contour window) {
    Gap gap = outline.gap(window);
    List<Rim> rims = new ArrayList<>();
    rims.add(new Rim(gap.to(), gap.from()));
    for (Segment segment : window.segments()) {
      for (int i = 0; i < SAMPLES; i++) {
        Point inner = segment.at((i + 0.5) / SAMPLES);
        Point outer = outline.nearest(inner);
        if (inner.distance(outer) <= 1.002 * gap.distance()) {
          rims.add(new Rim(inner, outer));
        }
      }
    }
    return rims;
  }

  /** Lettering and lines in the way count; so does, a little, being far from the lower left. */
  private double cost(Rim rim) {
    Point middle = rim.inner.middle(rim.outer);
    double angle = rim.outer.minus(rim.inner).angle();
    double aside = Math.abs(Math.IEEEremainder(angle - Math.toRadians(215), 2 * Math.PI));
    Point over = over(rim.inner, rim.outer);
    double half = TextWidth.of(text(rim), PictureInk.TEXT * unit) / 2;
    Point along = Point.polar(half, DimensionStyle.readable(angle));
    double taken = 0;
    for (double t : new double[] {-1, -0.5, 0, 0.5, 1}) {
      Point p =
          middle
              .plus(along, t)
              .plus(over, 0.5 * PictureInk.TEXT * unit + DimensionStyle.OVER * unit);
      taken += ink.room().cost(Box.of(p, p).grown(0.6 * PictureInk.TEXT * unit));
      Point q = rim.inner.towards(rim.outer, 0.5 + 0.42 * t);
      taken += ink.room().cost(Box.of(q, q).grown(unit));
    }
    double tooLong = Math.max(0, 2 * half - rim.width() + 2 * unit);
    return taken + aside * unit + 10 * tooLong;
  }

  /** A dimension line from one point to another with its figure in the middle. */
  private void between(Point from, Point to, String figure) {
    double angle = to.minus(from).angle();
    if (from.distance(to) < NARROW * unit) {
      outside(from, to, figure);
      return;
    }
    ink.line(from, to, LineType.THIN);
    ink.arrow(from, angle);
    ink.arrow(to, angle + Math.PI);
    Point middle = from.middle(to).plus(over(from, to), DimensionStyle.OVER * unit);
    ink.text(figure, middle, PictureInk.TEXT, DimensionStyle.readable(angle), Anchor.MIDDLE);
  }

  /** A short dimension: arrows from outside, the figure beyond the second. */
  private void outside(Point from, Point to, String figure) {
    Point along = to.minus(from).unit();
    double width = TextWidth.of(figure, PictureInk.TEXT * unit);
    Point end = to.plus(along, DimensionStyle.TAIL * unit + width);
    ink.line(from.plus(along, -DimensionStyle.TAIL * unit), end, LineType.THIN);
    ink.arrow(from, along.angle() + Math.PI);
    ink.arrow(to, along.angle());
    Point middle =
        to.plus(along, DimensionStyle.TAIL * unit + width / 2)
            .plus(over(from, to), DimensionStyle.OVER * unit);
    ink.text(
        figure, middle, PictureInk.TEXT, DimensionStyle.readable(along.angle()), Anchor.MIDDLE);
  }

  /** The direction from a dimension line to its figure. */
  private static Point over(Point from, Point to) {
    return Point.polar(1, DimensionStyle.readable(to.minus(from).angle())).left();
  }

  /** A length as it is written on the picture: millimetres, at most two decimals. */
  static String figure(double length) {
    return Numbers.brief(length, 2);
  }
}
