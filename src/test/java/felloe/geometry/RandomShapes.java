package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded random contours of lines and arcs: star-shaped about a centre, some corners smooth. */
public final class RandomShapes {

  private RandomShapes() {}

  /** A contour with 3 to 12 corners, about {@code size} mm across, edges straight or bulged. */
  public static Contour contour(long seed, double size) {
    Random random = new Random(seed);
    while (true) {
      try {
        return attempt(random, size);
      } catch (GeometryException e) {
        // Bulges may cross; the next draw of the same seeded source is as good.
        continue;
      }
    }
  }

  private static Contour attempt(Random random, double size) {
    int n = 3 + random.nextInt(10);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / n;
      corners.add(Point.polar(size * (0.25 + 0.25 * random.nextDouble()), angle));
    }
    List<Segment> edges = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % n);
      double rise = a.distance(b) * (random.nextDouble() - 0.5) * 0.6;
      edges.add(random.nextInt(3) == 0 ? new Line(a, b) : Arc.withRise(a, b, rise));
    }
    return new Contour(edges);
  }

  /** A rounded rectangle about the origin: four lines and four arcs. */
  public static Contour roundedRectangle(double width, double height, double radius) {
    double x = width / 2 - radius;
    double y = height / 2 - radius;
    double q = Math.PI / 2;
    Point[] centres = {
      new Point(x, y), new Point(-x, y), new Point(-x, -y), new Point(x, -y),
    };
    List<Segment> edges = new ArrayList<>();
    List<Arc> arcs = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Point c = centres[i];
      Point from = c.plus(quarter(i), radius);
      Point to = c.plus(quarter(i + 1), radius);
      arcs.add(new Arc(from, to, c, radius, q));
    }
    for (int i = 0; i < 4; i++) {
      edges.add(arcs.get(i));
      edges.add(new Line(arcs.get(i).to(), arcs.get((i + 1) % 4).from()));
    }
    return new Contour(edges);
  }

  private static Point quarter(int i) {
    return switch (i % 4) {
      case 0 -> new Point(1, 0);
      case 1 -> new Point(0, 1);
      case 2 -> new Point(-1, 0);
      default -> new Point(0, -1);
    };
  }
}
