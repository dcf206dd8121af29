package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds places for the lettering of a map, each on a white box of its own. */
final class MapLabels {

  private static final double CLEAR = 0.7;
  private static final double[] FRACTIONS = {
    0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78, 0.15, 0.85, 0.1, 0.9
  };

  private final Region region;
  private final Box field;
  private final double unit;
  private final List<Box> taken = new ArrayList<>();
  private final List<Point> edges = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();

  /**
   * @param field where lettering may stand, mm
   * @param unit of lettering, mm
   */
  MapLabels(Region region, Box field, double unit) {
    this.region = region;
    this.field = field;
    this.unit = unit;
    for (Contour contour : region.contours()) {
      edges.addAll(Outlines.points(contour.segments(), unit));
    }
  }

  List<Mark> marks() {
    return List.copyOf(marks);
  }

  /** Keeps a box free of lettering. */
  void take(Box box) {
    taken.add(box);
  }

  /** Words beside a mark, with a line to it when they stand away from it. */
  void beside(String text, Point at, double radius, double height) {
    Box best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double away : new double[] {2, 5, 9, 14, 20, 28, 38}) {
      for (int i = 0; i < 24; i++) {
        Point out = Point.polar(1, Math.PI / 12 * i);
        Box box = box(text, at.plus(out, radius + away * unit), out, height);
        double cost =
            cost(box) + struck(at, nearest(box, at), radius) + 1.2 * away + (i % 6 == 0 ? 0 : 0.5);
        if (cost < least) {
          least = cost;
          best = box;
        }
      }
    }
    Point end = nearest(best, at);
    double gap = end.distance(at);
    if (gap > radius + 4 * unit) {
      Point start = at.towards(end, radius / gap);
      Point stop = at.towards(end, 1 - 1.2 * unit / gap);
      marks.add(Mark.Stroke.of(new Line(start, stop), LineType.THIN));
    }
    put(text, best, height);
  }

  /** A figure on the longest of some lines, and on the next when that is long as well. */
  void on(List<Isobands.Isoline> lines, String text, double height) {
    double width = TextWidth.of(text, height * unit);
    List<Isobands.Isoline> longest =
        lines.stream()
            .sorted(Comparator.comparingDouble(MapLabels::length).reversed())
            .limit(2)
            .toList();
    for (Isobands.Isoline line : longest) {
      if (length(line) < 2.2 * width) {
        return;
      }
      for (double fraction : FRACTIONS) {
        Point p = along(line, fraction);
        Box box = box(p, width, height);
        boolean free =
            taken.stream().noneMatch(box.grown(CLEAR * unit)::touches)
                && edges.stream().noneMatch(box.grown(0.3 * unit)::contains);
        if (free) {
          put(text, box, height);
          break;
        }
      }
    }
  }

  private static List<Segment> segments(Isobands.Isoline line) {
    List<Segment> segments = new ArrayList<>();
    List<Point> points = line.points();
    int count = line.closed() ? points.size() : points.size() - 1;
    for (int i = 0; i < count; i++) {
      Point to = points.get((i + 1) % points.size());
      if (!points.get(i).near(to, Tolerances.SAME_POINT)) {
        segments.add(new Line(points.get(i), to));
      }
    }
    return segments;
  }

  private static double length(Isobands.Isoline line) {
    return segments(line).stream().mapToDouble(Segment::length).sum();
  }

  private static Point along(Isobands.Isoline line, double fraction) {
    double left = fraction * length(line);
    for (Segment segment : segments(line)) {
      if (left <= segment.length()) {
        return segment.at(left / segment.length());
      }
      left -= segment.length();
    }
    return line.points().get(0);
  }

  private Box box(Point middle, double width, double height) {
    double half = height * unit / 2;
    return new Box(
        middle.x() - width / 2, middle.y() - half, middle.x() + width / 2, middle.y() + half);
  }

  /** A box that stands off from a point in a direction. */
  private Box box(String text, Point from, Point out, double height) {
    double width = TextWidth.of(text, height * unit);
    double tall = height * unit;
    double x = from.x() + out.x() * width / 2;
    double y = from.y() + out.y() * tall / 2;
    return box(new Point(x, y), width, height);
  }

  private double cost(Box box) {
    Box clear = box.grown(CLEAR * unit);
    double cost = 0;
    for (Box other : taken) {
      cost += clear.touches(other) ? 1000 : 0;
    }
    for (Point edge : edges) {
      cost += clear.contains(edge) ? 3 : 0;
    }
    boolean inside =
        field.contains(new Point(clear.minX(), clear.minY()))
            && field.contains(new Point(clear.maxX(), clear.maxY()));
    return cost + (inside ? 0 : 10_000) + (region.contains(box.centre()) ? 14 : 0);
  }

  /** What a line from a mark to its words would strike through. */
  private double struck(Point at, Point end, double radius) {
    double cost = 0;
    double gap = at.distance(end);
    for (double s = radius + unit; s < gap; s += unit) {
      Point p = at.towards(end, s / gap);
      for (Box other : taken) {
        cost += other.contains(p) && !other.contains(at) ? 100 : 0;
      }
    }
    return cost;
  }

  private static Point nearest(Box box, Point p) {
    return new Point(
        Math.max(box.minX(), Math.min(box.maxX(), p.x())),
        Math.max(box.minY(), Math.min(box.maxY(), p.y())));
  }

  private void put(String text, Box box, double height) {
    Box white = box.grown(0.5 * unit);
    marks.add(new Mark.Fill(List.of(Contour.rectangle(white)), 0));
    Point at = new Point(box.centre().x(), box.minY());
    marks.add(Mark.Label.of(text, at, height * unit, Anchor.MIDDLE));
    taken.add(white);
  }
}
