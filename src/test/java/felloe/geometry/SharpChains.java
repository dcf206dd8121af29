package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Sharp-cornered chains to round. */
final class SharpChains {

  private SharpChains() {}

  /** The corners of a rectangle about the origin, counter-clockwise from the lower left. */
  static List<Point> rectangle(double width, double height) {
    double x = width / 2;
    double y = height / 2;
    return List.of(new Point(-x, -y), new Point(x, -y), new Point(x, y), new Point(-x, y));
  }

  /** A star-shaped chain of 3 to 10 straight or bulged edges. */
  static List<Segment> star(Random random) {
    int n = 3 + random.nextInt(8);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / n;
      corners.add(Point.polar(40 + 80 * random.nextDouble(), angle));
    }
    List<Segment> chain = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % n);
      double rise = (random.nextDouble() - 0.5) * 0.4 * a.distance(b);
      chain.add(random.nextBoolean() ? new Line(a, b) : Arc.withRise(a, b, rise));
    }
    return chain;
  }
}
