package felloe.board;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.service.MeasuredHub;
import felloe.service.MeasuredHub.NextReading;
import felloe.service.MeasuredHub.Spot;
import java.util.List;
import java.util.Optional;

/** Draws the holes of a hub as far as they are known, and the reading that is asked for. */
final class HubSketch {

  /** How many times as large as it is a doubt is drawn. */
  static final int DOUBT = 20;

  /** Of a hole whose size is not known, and of letters, as a part of the circle. */
  private static final double HOLE = 0.07;

  /** Axes end before the letters. */
  private static final double AXIS = 1.1;

  private static final double AROUND = 1.45;

  private final List<Spot> spots;
  private final Optional<NextReading> next;
  private final double radius;
  private final StringBuilder svg = new StringBuilder();

  private HubSketch(MeasuredHub hub) {
    this.spots = hub.spots();
    this.next = hub.next().stream().findFirst();
    this.radius = spots.stream().mapToDouble(s -> s.at().norm()).max().orElse(1);
  }

  /** The sketch as SVG. */
  static String of(MeasuredHub hub) {
    return new HubSketch(hub).draw();
  }

  private String draw() {
    double half = AROUND * radius;
    String words = spots.size() + " holes" + next.map(n -> "; measure " + n.words()).orElse("");
    svg.append("<svg class=\"hub\" role=\"img\" aria-label=\"").append(words);
    svg.append("\" viewBox=\"").append(n(-half)).append(' ').append(n(-half)).append(' ');
    svg.append(n(2 * half)).append(' ').append(n(2 * half)).append("\">\n");
    circle("axis", Point.ORIGIN, radius);
    double axis = AXIS * radius;
    line("axis", new Point(-axis, 0), new Point(axis, 0));
    line("axis", new Point(0, -axis), new Point(0, axis));
    spots.forEach(this::spot);
    next.ifPresent(this::asked);
    return svg.append("</svg>").toString();
  }

  private double size(Spot spot) {
    return spot.size().filter(d -> d > 0).orElse(2 * HOLE * radius) / 2;
  }

  private void spot(Spot spot) {
    if (spot.within() > 0) {
      circle("doubt", spot.at(), Math.min(radius, DOUBT * spot.within()));
    }
    circle(asks(spot) ? "hole lit" : "hole", spot.at(), size(spot));
    Point at = spot.at().plus(unit(spot.at()), 3.2 * HOLE * radius);
    svg.append("<text text-anchor=\"middle\" x=\"").append(n(at.x())).append("\" y=\"");
    svg.append(n(-at.y() + 0.6 * HOLE * radius)).append("\" font-size=\"");
    svg.append(n(1.9 * HOLE * radius)).append("\">").append(spot.label()).append("</text>\n");
  }

  private boolean asks(Spot spot) {
    return next.filter(n -> n.from().equals(spot.label()) || n.to().equals(spot.label()))
        .isPresent();
  }

  private void asked(NextReading reading) {
    Optional<Spot> from = named(reading.from());
    Optional<Spot> to = named(reading.to());
    if (from.isEmpty() || to.isEmpty()) {
      return;
    }
    Point a = from.get().at();
    Point b = to.get().at();
    if (reading.diameter()) {
      Point off = new Point(size(from.get()), 0);
      line("jaws", a.minus(off), a.plus(off));
      return;
    }
    double side = reading.over().equals("outside") ? 1 : reading.over().equals("inside") ? -1 : 0;
    Point along = unit(b.minus(a));
    Point start = a.minus(along.times(side * size(from.get())));
    Point end = b.plus(along.times(side * size(to.get())));
    Point jaw = new Point(-along.y(), along.x()).times(2 * HOLE * radius);
    line("jaws", start, end);
    line("jaws", start.minus(jaw), start.plus(jaw));
    line("jaws", end.minus(jaw), end.plus(jaw));
  }

  private static Point unit(Point along) {
    return along.norm() < Tolerances.SAME_LENGTH ? new Point(0, 1) : along.unit();
  }

  private Optional<Spot> named(String label) {
    return spots.stream().filter(s -> s.label().equals(label)).findFirst();
  }

  private void circle(String kind, Point at, double r) {
    svg.append("<circle class=\"").append(kind).append("\" cx=\"").append(n(at.x()));
    svg.append("\" cy=\"").append(n(-at.y())).append("\" r=\"").append(n(r)).append("\"/>\n");
  }

  private void line(String kind, Point from, Point to) {
    svg.append("<path class=\"").append(kind).append("\" d=\"M").append(n(from.x()));
    svg.append(',').append(n(-from.y())).append('L').append(n(to.x())).append(',');
    svg.append(n(-to.y())).append("\"/>\n");
  }

  private static String n(double figure) {
    return Numbers.brief(figure, 3);
  }
}
